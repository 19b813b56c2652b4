import type { Electrode } from '../../site/site.ts';
import { nothingThere } from '../looked-at.ts';
import { rule, type Verdict } from '../rule.ts';
import { sizeVerdict } from './least-sizes.ts';

/** 10 ft, 3.0 m, in the soil. */
const lengthM = 3.048;
const rows = [{ metals: 'any', least: [{ figure: 'length', limit: lengthM, printed: 3 }] }] as const;

export const waterPipeElectrode = rule({
  id: 'water-pipe-electrode',
  family: 'code',
  severity: 'defect',
  codeSets: ['us'],
  source: { document: 'NFPA 70', edition: null, clause: '250.52(A)(1)', provenance: 'second-hand' },
  limits: [{ key: 'runLengthM', value: lengthM, sense: 'least' }],
  needs: ['sections', 'electrodes'],
  check({ sections, electrodes }) {
    const pipes = electrodes.filter((e) => e.part.kind === 'water pipe');
    return pipes.length === 0 ? nothingThere({ sections }, 'electrodes') : pipes.map((e) => ofPipe(e.part));
  },
});

function ofPipe(e: Electrode): Verdict {
  if (e.continuous === 'no') return { is: 'not met', at: [e.id], because: { key: 'plastic' } };
  const size = sizeVerdict(e, rows);
  if (size.is !== 'met' || e.continuous === 'yes') return size;
  return { is: 'cannot tell', at: [e.id], because: { key: 'perhaps plastic' }, settle: { key: 'ask about plastic' } };
}
