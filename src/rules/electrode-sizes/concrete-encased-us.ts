import type { Electrode } from '../../site/site.ts';
import { leastAsPrinted } from '../as-printed.ts';
import { nothingThere } from '../looked-at.ts';
import { rule, type Verdict } from '../rule.ts';
import { sizeVerdict } from './least-sizes.ts';

/** 20 ft (6.0 m) of bar of 1/2 in or of bare copper of 4 AWG, in 2 in (50 mm) of concrete. */
const lengthM = 6.096;
const barM = 0.0127;
const copperM2 = 21.2e-6;
const coverM = 0.0508;
const leastCoverM = leastAsPrinted(coverM, 0.05);
const bars = [
  {
    metals: 'any',
    least: [
      { figure: 'length', limit: lengthM, printed: 6 },
      { figure: 'diameter', limit: barM },
    ],
  },
] as const;
const copper = [
  {
    metals: 'any',
    least: [
      { figure: 'length', limit: lengthM, printed: 6 },
      { figure: 'wire', limit: copperM2 },
    ],
  },
] as const;

export const concreteEncasedUs = rule({
  id: 'concrete-encased-us',
  family: 'code',
  severity: 'defect',
  codeSets: ['us'],
  source: { document: 'NFPA 70', edition: null, clause: '250.52(A)(3)', provenance: 'read' },
  limits: [
    { key: 'runLengthM', value: lengthM, sense: 'least' },
    { key: 'diameterM', value: barM, sense: 'least', of: 'bar' },
    { key: 'areaM2', value: copperM2, sense: 'least', of: 'bare copper' },
    { key: 'concreteM', value: coverM, sense: 'least' },
  ],
  needs: ['sections', 'electrodes'],
  check({ sections, electrodes }) {
    const footings = electrodes.filter((e) => e.part.kind === 'concrete-encased');
    return footings.length === 0 ? nothingThere({ sections }, 'electrodes') : footings.map((e) => ofFooting(e.part));
  },
});

function ofFooting(e: Electrode): Verdict {
  const at = [e.id];
  if (e.membrane === 'yes') return { is: 'not met', at, because: { key: 'membrane' } };
  if (e.painted === 'yes') return { is: 'not met', at, because: { key: 'coated bars' } };
  if (e.concreteM !== null && e.concreteM.high < leastCoverM) {
    const measured = { key: 'concreteM', value: e.concreteM, limit: coverM, sense: 'least' } as const;
    return { is: 'not met', at, because: { key: 'thin concrete' }, measured };
  }
  const size = ofMetal(e);
  if (size.is !== 'met') return size;
  const isKnown = e.membrane === 'no' && e.painted === 'no' && e.concreteM !== null && e.concreteM.low >= leastCoverM;
  return isKnown ? size : { is: 'cannot tell', at, because: { key: 'not seen' }, settle: { key: 'ask who poured it' } };
}

/** By its bars or by the copper laid in it, whichever was typed; one of the two is enough. */
function ofMetal(e: Electrode): Verdict {
  const [byBars, byCopper] = [sizeVerdict(e, bars), sizeVerdict(e, copper)];
  if (e.wire === null || byBars.is === 'met') return byBars;
  return e.diameterM === null || byCopper.is === 'met' ? byCopper : byBars;
}
