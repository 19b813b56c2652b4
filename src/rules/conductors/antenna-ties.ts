import type { ConductorFacts, Facts } from '../../facts/facts.ts';
import { onceFor } from '../../units/once-for.ts';
import { communicationsTies } from '../conductor-sizes/communications-ties.ts';
import { communicationsBlocks, communicationsProtectors } from '../conductor-sizes/leads-of.ts';
import { purposesOf } from '../electrodes/purposes-of.ts';
import { hasSide, meetsWithout, sideOf } from './side-of.ts';

type Asked = Pick<Facts, 'bonding' | 'conductors' | 'site'>;

/**
 * Conductors that join the electrode of an antenna to the system of the service: with such a conductor taken away, each of its
 * ends still reaches an electrode or the service. What hangs on one end (a radio, a fence, an entry panel without an electrode
 * of its own) is bonded or grounded by it, which other clauses ask. The ties of telephone and cable have a clause of their own.
 */
export function antennaTies(facts: Asked): readonly ConductorFacts[] {
  const before = kept.get(facts.conductors);
  if (before !== undefined) return before;
  const others = new Set(communicationsTies(facts).map((c) => c.id));
  const ties = facts.conductors.filter((c) => !others.has(c.id) && isTie(c, facts));
  kept.set(facts.conductors, ties);
  return ties;
}

/** Four rules ask, of the same facts. */
const kept = new WeakMap<Asked['conductors'], readonly ConductorFacts[]>();

function isTie(c: ConductorFacts, facts: Asked): boolean {
  if (c.role === 'electrode tie') return hasAntennaSide(c, facts);
  if (c.role === 'service electrode wire') return isOfAntenna(c, facts);
  const ends = [...new Set(c.ends)].filter((id) => id !== null);
  if (ends.length < 2 || (c.role !== 'bond' && c.role !== 'mast lead')) return false;
  if (c.role === 'bond') return ends.every((id) => hasSide(id, c.id, facts));
  // the lead of a mast with an electrode of its own, where it is what joins the two to the service
  const masts = mastsOf(facts.site);
  const sides = ends.map((id) => ({ isMast: masts.has(id), reaches: sideOf(id, c.id, facts) }));
  const hasService = sides.some((s) => !s.isMast && s.reaches === 'service');
  return hasService && sides.some((s) => s.isMast && s.reaches === 'electrode');
}

/** A wire between two electrodes of the service alone is sized by the clauses of the service. */
function hasAntennaSide({ id, ends, passes }: ConductorFacts, facts: Asked): boolean {
  const outdoors = outdoorsOf(facts.site);
  const starts = [...ends, ...passes].filter((end) => end !== null);
  return starts.some((start) => meetsWithout(start, id, facts, (met) => outdoors.has(met)));
}

/** What an electrode of an antenna is there for. */
const outdoorsOf = onceFor((site: Asked['site']): ReadonlySet<string> => {
  const street = communicationsProtectors(site);
  const arresters = site.arresters.filter((a) => a.kind !== 'mains protector' && !street.has(a.id));
  const blocks = communicationsBlocks(site);
  const panels = site.bars.filter((b) => b.kind === 'entry panel' && !blocks.has(b.id));
  return new Set([...site.supports, ...site.antennas, ...arresters, ...panels].map((p) => p.id));
});

const mastsOf = onceFor(
  ({ supports, antennas }: Asked['site']) => new Set([...supports, ...antennas].map((p) => p.id)),
);

/** From an entry panel down to a point to ground at, where it joins no two electrodes: the lead of what is bolted to the panel. */
export function panelLeads(facts: Asked): readonly ConductorFacts[] {
  const { site, conductors } = facts;
  const blocks = communicationsBlocks(site);
  const panels = new Set(site.bars.filter((b) => b.kind === 'entry panel' && !blocks.has(b.id)).map((b) => b.id));
  const points = new Set([
    ...site.electrodes.map((e) => e.id),
    ...site.bars.filter((b) => servicePoints.includes(b.kind)).map((b) => b.id),
    ...site.equipment.filter((e) => servicePoints.includes(e.kind)).map((e) => e.id),
  ]);
  const has = (c: ConductorFacts, ids: ReadonlySet<string>) => c.ends.some((id) => id !== null && ids.has(id));
  const ties = new Set(antennaTies(facts).map((c) => c.id));
  return conductors.filter((c) => c.role === 'bond' && has(c, panels) && has(c, points) && !ties.has(c.id));
}

const servicePoints: readonly string[] = [
  'intersystem bonding termination',
  'main earthing bar',
  'service panel',
  'meter box',
];

/** From an electrode put in for an antenna straight to the panel: the panel has another one. */
function isOfAntenna(c: ConductorFacts, facts: Asked): boolean {
  const { site, conductors } = facts;
  const landed = site.electrodes.filter((e) => c.ends.includes(e.id));
  const isAntennas = landed.some((e) => {
    const serves = purposesOf(e, facts);
    return (serves.has('antenna') || serves.has('tower')) && !e.serves.includes('service');
  });
  const own = conductors.filter((o) => o.role === 'service electrode wire' && o.id !== c.id);
  return isAntennas && own.some((o) => !o.ends.some((id) => landed.some((e) => e.id === id)));
}
