import type { ConductorFacts } from '../../facts/facts.ts';
import type { Electrode } from '../../site/site.ts';
import { isAtLeast } from '../../units/interval.ts';
import { nothingThere } from '../looked-at.ts';
import { rule, type Verdict } from '../rule.ts';

/** 18 in, printed as 0.45 m. */
const leastM = 0.4572;
const printedShare = 0.45 / leastM;

export const aluminium18Inch = rule({
  id: 'aluminium-18-inch',
  family: 'code',
  severity: 'defect',
  codeSets: ['us'],
  source: { document: 'NFPA 70', edition: '1999', clause: '810.21(A), 250.64(A)', provenance: 'read' },
  limits: [{ key: 'heightM', value: leastM, sense: 'least' }],
  needs: ['sections', 'conductors', 'site'],
  check({ sections, conductors, site }) {
    const asked = conductors.filter((c) => c.indoors !== 'yes' && /aluminium/.test(c.wire?.metal?.name ?? ''));
    return asked.length === 0
      ? nothingThere({ sections }, 'conductors')
      : asked.map((c) => ofConductor(c, site.electrodes));
  },
});

const driven: readonly string[] = ['rod', 'rods', 'pipe', 'buried wire', 'radial', 'plate', 'drilled rod'];

function ofConductor(c: ConductorFacts, electrodes: readonly Electrode[]): Verdict {
  const at = [c.id];
  if (c.inSoil === 'yes') return { is: 'not met', at, because: { key: 'in soil' } };
  const { aboveSoilM = null } = c.part;
  if (aboveSoilM !== null) {
    const measured = { key: 'heightM', value: aboveSoilM, limit: leastM, sense: 'least' } as const;
    const high = isAtLeast(aboveSoilM, leastM * printedShare);
    if (high === 'yes') return { is: 'met', at, because: { key: 'clear' }, measured };
    if (high === 'no') return { is: 'not met', at, because: { key: 'near' }, measured };
    return { is: 'cannot tell', at, because: { key: 'not known' }, settle: { key: 'measure it' }, measured };
  }
  if (electrodes.some((e) => [...c.ends, ...c.passes].includes(e.id) && isAtGrade(e)))
    return { is: 'not met', at, because: { key: 'on electrode' } };
  return { is: 'cannot tell', at, because: { key: 'not known' }, settle: { key: 'measure it' } };
}

/** Its top was typed, and stands less than that out of the ground. */
function isAtGrade({ kind, topM, typed }: Electrode): boolean {
  if (!driven.includes(kind)) return false;
  if (kind === 'rod' || kind === 'rods' || kind === 'pipe')
    return typed.top !== undefined && topM !== null && topM.low > -leastM;
  return true;
}
