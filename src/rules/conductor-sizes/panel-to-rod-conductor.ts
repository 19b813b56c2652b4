import type { ConductorFacts } from '../../facts/facts.ts';
import { type Interval, isAtLeast } from '../../units/interval.ts';
import { antennaTies } from '../conductors/antenna-ties.ts';
import { nothingThere } from '../looked-at.ts';
import { rule, type Verdict } from '../rule.ts';
import { sizedElsewhere } from './sized-elsewhere.ts';

/** A strap 1 1/2 in wide, printed as 40 mm, or 6 AWG of any metal; metres, square metres. */
const leastWidthM = 38.1e-3;
const leastM2 = 13.3e-6;

export const panelToRodConductor = rule({
  id: 'panel-to-rod-conductor',
  family: 'practice',
  severity: 'advice',
  codeSets: ['any'],
  source: { document: 'common practice, no source', edition: null, clause: null, provenance: 'ours' },
  limits: [
    { key: 'widthM', value: leastWidthM, sense: 'least', of: 'strap' },
    { key: 'areaM2', value: leastM2, sense: 'least', of: 'wire' },
  ],
  needs: ['sections', 'bonding', 'conductors', 'site'],
  check(facts) {
    const { conductors, site } = facts;
    const panels = new Set(site.bars.filter((b) => b.kind === 'entry panel').map((b) => b.id));
    const electrodes = new Set(site.electrodes.map((e) => e.id));
    const has = (c: ConductorFacts, ids: ReadonlySet<string>) => c.ends.some((id) => id !== null && ids.has(id));
    const down = conductors.filter((c) => has(c, panels) && has(c, electrodes));
    if (down.length === 0) return nothingThere(facts, 'bars');
    const ties = new Set(antennaTies(facts).map((c) => c.id));
    return sizedElsewhere(down.map(ofConductor), (id) =>
      ties.has(id) ? 'antenna-electrode-bond-size' : 'mast-ground-size',
    );
  },
});

const ofStrap = (value: Interval) => ({ key: 'widthM', value, limit: leastWidthM, sense: 'least' }) as const;
const ofWire = (value: Interval) => ({ key: 'areaM2', value, limit: leastM2, sense: 'least' }) as const;

function ofConductor({ id, wire, areaM2 }: ConductorFacts): Verdict {
  const at = [id];
  const width = wire?.widthM ?? null;
  const isWide = width === null ? 'no' : isAtLeast(width, leastWidthM * (1 - 2e-3));
  const isThick = areaM2 === null ? 'unknown' : isAtLeast(areaM2, leastM2 * (1 - 3e-3));
  if (width !== null && isWide === 'yes')
    return { is: 'met', at, because: { key: 'enough' }, measured: ofStrap(width) };
  if (areaM2 !== null && isThick === 'yes')
    return { is: 'met', at, because: { key: 'enough' }, measured: ofWire(areaM2) };
  if (areaM2 !== null && isWide === 'no' && isThick === 'no') {
    const measured = width === null ? ofWire(areaM2) : ofStrap(width);
    return { is: 'not met', at, because: { key: 'small' }, measured };
  }
  return { is: 'cannot tell', at, because: { key: 'size unknown' }, settle: { key: 'measure it' } };
}
