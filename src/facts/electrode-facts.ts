import type { Bonding, Group } from '../bonding/bonding.ts';
import type { AloneOhm } from '../network/alone-ohm.ts';
import type { Electrode, Site } from '../site/site.ts';
import { lazily } from '../units/lazily.ts';
import { once } from '../units/once.ts';
import type { ElectrodeFacts } from './facts.ts';

/** Electrodes with their resistance alone, how it is known, and how many stand in their group (rods counted
 * singly; a group of rods that nobody counted has two at least). */
export function electrodeFacts(
  site: Site,
  bonding: Bonding,
  aloneOf: (electrode: string) => AloneOhm | undefined,
): readonly ElectrodeFacts[] {
  const members = new Map(site.electrodes.map((e) => [e.id, e.kind === 'rods' ? (e.members ?? 2) : 1]));
  return site.electrodes
    .filter((e) => e.present !== 'no')
    .map((e) => {
      const group = bonding.groupOf.get(e.id) ?? null;
      const alone = once(() => aloneOf(e.id));
      return lazily<ElectrodeFacts>({
        id: () => e.id,
        part: () => e,
        aloneOhm: () => alone()?.ohm ?? null,
        how: () => alone()?.how ?? 'unknown',
        formula: () => alone()?.formula ?? null,
        source: () => alone()?.source ?? null,
        missing: () => alone()?.missing ?? [],
        measuredOhm: () => measuredOhm(e, site),
        group: () => group,
        electrodesInGroup: () =>
          countIn(
            bonding.groups.find((g) => g.id === group),
            members,
          ),
      });
    });
}

function countIn(group: Group | undefined, members: ReadonlyMap<string, number>): number {
  return (group?.electrodes ?? []).reduce((sum, id) => sum + (members.get(id) ?? 1), 0);
}

/** Stated as measured alone (the format's default), else the range of its fall-of-potential readings. */
function measuredOhm(e: Electrode, site: Site): ElectrodeFacts['measuredOhm'] {
  if (e.resistance !== null && e.measured !== 'bonded') return e.resistance;
  const readings = site.readings.filter((r) => r.kind === 'fall of potential' && r.on?.part === e.id);
  const all = readings.flatMap((r) => r.resistance);
  if (all.length === 0) return null;
  if (all.some((r) => r.overRange)) return all.find((r) => r.overRange)!;
  const [lows, highs] = [all.map((r) => r.ohm.low), all.map((r) => r.ohm.high)];
  return { ohm: { low: Math.min(...lows), high: Math.max(...highs) }, overRange: false };
}
