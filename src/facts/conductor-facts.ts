import type { Bonding, Way } from '../bonding/bonding.ts';
import { resistancePerMetre } from '../materials/conductor-resistance.ts';
import { straightInductance } from '../materials/straight-inductance.ts';
import type { Answer, Conductor, Site } from '../site/site.ts';
import { type Interval, mul, sum } from '../units/interval.ts';
import type { ConductorFacts, ConductorRole } from './facts.ts';
import { type PartIndex, partIndex } from './part-index.ts';

/** What each conductor is and does: its role by what it joins, whether it lies in soil or indoors, whether a strike uses it. */
export function conductorFacts(site: Site, bonding: Bonding): readonly ConductorFacts[] {
  const index = partIndex(site);
  const onLightningPath = lightningParts(site, bonding);
  const only = new Set(
    bonding.weakPoints.filter((w) => w.kind === 'conductor' && w.losesEarth.length > 0).map((w) => w.at),
  );
  return site.conductors
    .filter((c) => c.present !== 'no')
    .map((c) => {
      const lengthM = c.lengthM ?? (c.lengthsM.length > 0 ? sum(c.lengthsM) : null);
      return {
        id: c.id,
        part: c,
        role: roleOf(c, site, index),
        wire: c.wire,
        areaM2: c.wire?.areaM2 ?? null,
        lengthM,
        resistanceOhm: resistanceOf(c, lengthM),
        inductanceH: c.inductanceH ?? straightInductance(c.wire, lengthM),
        inSoil: inSoil(c),
        indoors: indoors(c, index),
        ends: [c.from.part, c.to.part],
        passes: c.passes.flatMap((p) => (p.at.part === null ? [] : [p.at.part])),
        deadEnd: only.has(c.id),
        bends: c.bends,
        lightningPath: onLightningPath.has(c.id),
      };
    });
}

/** Stated, else from material, section and length; of its metal at 20 °C, joints left out. */
function resistanceOf(c: Conductor, lengthM: Interval | null): Interval | null {
  if (c.resistance !== null && !c.resistance.overRange) return c.resistance.ohm;
  const perMetre = c.wire === null ? null : resistancePerMetre(c.wire);
  return perMetre === null || lengthM === null ? null : mul(perMetre, lengthM);
}

function inSoil(c: Conductor): Answer {
  if (c.buriedM === 'no') return 'no';
  return c.buriedM === null ? 'unknown' : 'yes';
}

/** Both ends in one building, or its own word: yes; both outside: no. */
function indoors(c: Conductor, index: PartIndex): Answer {
  if (c.where !== null) return c.where === 'outside' ? 'no' : 'yes';
  if (c.buriedM !== null && c.buriedM !== 'no') return 'no';
  const ends = [index.whereOf(c.from.part), index.whereOf(c.to.part)];
  if (ends.some((w) => w === null)) return 'unknown';
  if (ends.every((w) => w === 'outside')) return 'no';
  return ends.every((w) => w !== 'outside') ? 'yes' : 'unknown';
}

const typedRoles: readonly ConductorRole[] = [
  'service electrode wire',
  'electrode tie',
  'mast lead',
  'down conductor',
  'protective',
  'bond',
];

function roleOf(c: Conductor, site: Site, index: PartIndex): ConductorRole {
  const typed = typedRoles.find((role) => role === c.role);
  if (typed !== undefined) return typed;
  const ends = [c.from.part, c.to.part, ...c.passes.map((p) => p.at.part)];
  if (c.from.part === null || c.to.part === null) return 'unknown';
  const has = (test: (id: string) => boolean) => ends.some((id) => id !== null && test(id));
  const is = (section: string) => (id: string) => index.get(id)?.section === section;
  if (has(is('electrodes')) && has((id) => isService(id, site, index))) return 'service electrode wire';
  if (has(is('supports')) || has(is('antennas'))) return 'mast lead';
  if (has(is('arresters'))) return 'arrester lead';
  return ends.every((id) => id !== null && is('electrodes')(id)) ? 'electrode tie' : 'bond';
}

function isService(id: string, site: Site, index: PartIndex): boolean {
  if (id === site.header.service && index.get(id)?.section !== 'electrodes') return true;
  const kind = index.get(id)?.kind;
  return kind === 'service panel' || kind === 'meter box';
}

/** Protectors of services: what they lead off comes in on the line, not by a strike to the station. */
const ofServices: ReadonlySet<string> = new Set(['mains protector', 'telephone protector', 'data protector']);

/** Parts on the best way to earth of anything that a strike may meet: antennas, metal supports, arresters, entry panels. */
function lightningParts(site: Site, bonding: Bonding): ReadonlySet<string> {
  const units = site.arresters.filter((a) => !ofServices.has(a.kind));
  const struck = new Set([...site.antennas, ...site.supports, ...units].map((p) => p.id));
  for (const bar of site.bars) if (bar.kind === 'entry panel' || bar.kind === 'tower bar') struck.add(bar.id);
  const ways = bonding.ways.filter((w) => struck.has(w.part)).map((w) => w.toElectrode);
  return new Set(ways.flatMap((way: Way | null) => way?.pieces.map((piece) => piece.part) ?? []));
}
