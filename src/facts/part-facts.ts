import type { Bonding } from '../bonding/bonding.ts';
import { isMetal } from '../bonding/support-metal.ts';
import type { Line, Site } from '../site/site.ts';
import type { ArresterFacts, BoxFacts, MastFacts } from './facts.ts';
import { partIndex } from './part-index.ts';

/** Supports with what they are made of and the antennas that they carry. */
export function mastFacts(site: Site): readonly MastFacts[] {
  return site.supports
    .filter((s) => s.present !== 'no')
    .map((s) => ({
      id: s.id,
      part: s,
      metal: isMetal(s),
      antennas: site.antennas.filter((a) => a.on?.part === s.id).map((a) => a.id),
    }));
}

export function arresterFacts(site: Site, bonding: Bonding): readonly ArresterFacts[] {
  const index = partIndex(site);
  const linesAt = linesByStop(site.lines);
  return site.arresters
    .filter((a) => a.present !== 'no')
    .map((a) => {
      const lines = linesAt.get(a.id) ?? [];
      return {
        id: a.id,
        part: a,
        lines: lines.map((l) => l.id),
        lineKinds: lines.map((l) => l.kind),
        where: index.whereOf(a.id),
        bonded: bonding.earthBy.bonds.has(a.id) ? 'yes' : bonding.earthBy.perhaps.has(a.id) ? 'unknown' : 'no',
      };
    });
}

export function boxFacts(site: Site): readonly BoxFacts[] {
  const index = partIndex(site);
  const mainsAt = linesByStop(site.lines.filter((l) => l.kind === 'mains'));
  return site.equipment
    .filter((e) => e.present !== 'no')
    .map((e) => ({
      id: e.id,
      part: e,
      where: index.whereOf(e.id),
      mains: (mainsAt.get(e.id) ?? []).map((l) => l.id),
    }));
}

/** Lines by the parts that they stop at, each once, in the order of the lines. */
function linesByStop(lines: readonly Line[]): ReadonlyMap<string, readonly Line[]> {
  const byStop = new Map<string, Line[]>();
  for (const line of lines) {
    const stops = new Set(line.path.flatMap((s) => (s.is === 'part' && s.at.part !== null ? [s.at.part] : [])));
    for (const stop of stops) byStop.set(stop, [...(byStop.get(stop) ?? []), line]);
  }
  return byStop;
}
