import { placeOf, type Report } from '../reading/report.ts';
import type { TypedPart, TypedSite } from '../reading/typed-site.ts';
import type { Building, Part, PartSection, Place, Site, Soil } from '../site.ts';
import type { Build } from './build.ts';
import { buildHeader } from './header.ts';
import { builders } from './parts.ts';
import { placesOf } from './places.ts';
import { buildReading } from './readings.ts';
import { buildStates, plainValue } from './states.ts';

/** Turns the typed file into a site; notes what only shows once everything is known. */
export function buildSite(typed: TypedSite, report: Report, file: string): Site {
  const places = placesOf(typed, report);
  const build: Build = { places, source: report.source };
  const parts = <S extends PartSection, P extends Part>(section: S) =>
    typed.parts[section].map((part) => (builders[section] as (p: TypedPart<S>, b: Build) => Part)(part, build) as P);
  return {
    file,
    header: buildHeader(typed),
    soil: buildSoil(typed, report),
    buildings: typed.buildings.map((b) => buildBuilding(b, build)),
    places: typed.places.map((p) => buildPlace(p, build)),
    electrodes: parts('electrodes'),
    supports: parts('supports'),
    antennas: parts('antennas'),
    bars: parts('bars'),
    arresters: parts('arresters'),
    equipment: parts('equipment'),
    lines: parts('lines'),
    conductors: parts('conductors'),
    joints: parts('joints'),
    metalwork: parts('metalwork'),
    states: buildStates(typed, build),
    readings: typed.readings.map((r) => buildReading(r, places)),
    prices: buildPrices(typed),
    sections: typed.sections,
    questions: [],
    defaults: [],
  };
}

function buildSoil({ soil }: TypedSite, report: Report): Soil | null {
  if (soil === null) return null;
  const { layers, type, frost, known } = soil.values;
  return {
    layers: (layers ?? []).map((l) => ({ resistivityOhmM: l?.resistivity ?? null, thicknessM: l?.thickness ?? null })),
    type,
    frostM: frost,
    known: known ?? 'told',
    source: placeOf({ path: 'soil', report }, soil.node.at),
  };
}

function buildBuilding({ id, values, source }: TypedSite['buildings'][number], { places }: Build): Building {
  const { height, walls, roof, dwelling } = values;
  return { id, corners: places.corners(id), heightM: height, walls, roof, dwelling: dwelling ?? 'unknown', source };
}

function buildPlace({ id, values, source }: TypedSite['places'][number], { places }: Build): Place {
  return { id, position: places.position(values.at), where: places.where(values.where, values.at, null), source };
}

/** Figures as numbers, everything else as text. */
function buildPrices({ prices }: TypedSite): Site['prices'] {
  if (prices === null) return null;
  return Object.fromEntries(
    prices.entries.map(({ key, value }) => {
      const plain = plainValue(value);
      const figure = typeof plain === 'string' && /^\d+(?:\.\d+)?$/.test(plain) ? Number(plain) : plain;
      return [key, typeof figure === 'number' ? figure : String(figure ?? 'unknown')];
    }),
  );
}
