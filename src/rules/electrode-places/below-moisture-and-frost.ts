import type { Electrode } from '../../site/site.ts';
import { add, type Interval, isAtLeast } from '../../units/interval.ts';
import { underLength } from '../electrode-sizes/under-length.ts';
import { printedShare } from '../electrodes/driven.ts';
import { nothingThere } from '../looked-at.ts';
import { rule, type Verdict } from '../rule.ts';

const kinds: readonly string[] = ['rod', 'rods', 'plate', 'drilled rod'];

export const belowMoistureAndFrost = rule({
  id: 'below-moisture-and-frost',
  family: 'practice',
  severity: 'advice',
  codeSets: ['any'],
  source: { document: 'NFPA 70', edition: null, clause: '250.53(A)(1)', provenance: 'second-hand' },
  needs: ['sections', 'electrodes', 'site'],
  check({ sections, electrodes, site }) {
    const frost = site.soil?.frostM ?? null;
    // The clause speaks of rods, pipes and plates; how deep the soil freezes stands under `soil`.
    const asked = electrodes.filter((e) => kinds.includes(e.part.kind) && e.part.present === 'yes');
    if (frost === null) return [{ is: 'not applicable', because: { key: 'no frost' } }];
    if (asked.length === 0) return nothingThere({ sections }, 'electrodes');
    return underLength(
      asked.map((e) => ofElectrode(e.part, frost)),
      asked,
    );
  },
});

function ofElectrode(e: Electrode, frost: Interval): Verdict {
  const at = [e.id];
  const value = deepest(e);
  if (value === null)
    return { is: 'cannot tell', at, because: { key: 'depth unknown' }, settle: { key: 'measure it' } };
  const measured = { key: 'depthM', value, limit: frost.high, sense: 'least' } as const;
  if (isAtLeast(value, frost.high * printedShare) === 'yes')
    return { is: 'met', at, because: { key: 'below' }, measured };
  if (isAtLeast(value, frost.low * printedShare) === 'no')
    return { is: 'not met', at, because: { key: 'above' }, measured };
  return { is: 'cannot tell', at, because: { key: 'depth unknown' }, settle: { key: 'measure it' } };
}

/** Lower end, metres below grade; a rod aslant reaches less deep. */
function deepest({ kind, topM, lengthM, depthM, angleDeg }: Electrode): Interval | null {
  if (kind === 'plate') return depthM;
  if (topM === null || lengthM === null) return null;
  const share = (deg: number) => Math.max(0, Math.cos((deg * Math.PI) / 180));
  return add(topM, {
    low: lengthM.low * share(angleDeg?.high ?? 0),
    high: lengthM.high * share(angleDeg?.low ?? 0),
  });
}
