import type { ConductorFacts, Facts } from '../../facts/facts.ts';
import { onceFor } from '../../units/once-for.ts';
import { communicationsTies } from '../conductor-sizes/communications-ties.ts';
import { purposesOf } from '../electrodes/purposes-of.ts';

type Asked = Pick<Facts, 'bonding' | 'conductors' | 'site'>;

/**
 * Conductors that join the electrode of an antenna to the system of the service: with such a conductor taken away, each of its
 * ends still reaches an electrode or the service. What hangs on one end (a radio, a fence, an entry panel without an electrode
 * of its own) is bonded or grounded by it, which other clauses ask. The ties of telephone and cable have a clause of their own.
 */
export function antennaTies(facts: Asked): readonly ConductorFacts[] {
  const others = new Set(communicationsTies(facts).map((c) => c.id));
  return facts.conductors.filter((c) => !others.has(c.id) && isTie(c, facts));
}

function isTie(c: ConductorFacts, facts: Asked): boolean {
  if (c.role === 'electrode tie') return true;
  if (c.role === 'service electrode wire') return isOfAntenna(c, facts);
  const ends = [...new Set(c.ends)].filter((id) => id !== null);
  if (ends.length < 2 || (c.role !== 'bond' && c.role !== 'mast lead')) return false;
  const sides = ends.map((id) => ({ id, ...sideOf(id, c.id, facts) }));
  if (c.role === 'bond') return sides.every((s) => s.hasElectrode || s.hasService);
  // the lead of a mast with an electrode of its own, where it is what joins the two to the service
  const [masts, others] = [true, false].map((isMast) => sides.filter((s) => isOfMast(s.id, facts.site) === isMast));
  return others!.some((s) => s.hasService) && masts!.some((s) => s.hasElectrode && !s.hasService);
}

function isOfMast(id: string, { supports, antennas }: Asked['site']): boolean {
  return [...supports, ...antennas].some((p) => p.id === id);
}

/** From an entry panel down to a point to ground at, where it joins no two electrodes: the lead of what is bolted to the panel. */
export function panelLeads(facts: Asked): readonly ConductorFacts[] {
  const { site, conductors } = facts;
  const panels = new Set(site.bars.filter((b) => b.kind === 'entry panel').map((b) => b.id));
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

/** What a part still reaches by permanent metal without that conductor. */
function sideOf(start: string, without: string, { bonding, site }: Asked) {
  const next = metalOf(bonding);
  const ends = endsOf(site);
  const reached = new Set([start]);
  // A set goes on to what is added while it is walked.
  for (const id of reached) {
    if (ends.has(id)) continue;
    for (const { to, part } of next.get(id) ?? []) if (part !== without) reached.add(to);
  }
  return {
    hasElectrode: site.electrodes.some((e) => e.present !== 'no' && reached.has(e.id)),
    hasService: bonding.service.part !== null && reached.has(bonding.service.part),
  };
}

/** What passes no bond on: radios and the like, arresters, metal that is not known to be one piece. */
const endsOf = onceFor(({ equipment, arresters, metalwork }: Asked['site']) => {
  const boxes = equipment.filter((e) => !/panel|meter box|cabinet|rack|generator/.test(e.kind));
  const pieces = metalwork.filter((m) => m.continuous !== 'yes');
  return new Set([...boxes, ...arresters, ...pieces].map((p) => p.id));
});

/** Ties of permanent metal by either end, with what makes them; those that may not be there count. */
const metalOf = onceFor(({ ties }: Asked['bonding']) => {
  const next = new Map<string, { readonly to: string; readonly part: string }[]>();
  const add = (from: string, to: string, part: string) => {
    const list = next.get(from);
    if (list === undefined) next.set(from, [{ to, part }]);
    else list.push({ to, part });
  };
  for (const { a, b, kind, part } of ties) {
    if (kind !== 'metal') continue;
    add(a, b, part);
    add(b, a, part);
  }
  return next;
});
