import type { PartSection, SectionName } from '../site.ts';
import { antennas } from './antennas.ts';
import { arresters } from './arresters.ts';
import { bars } from './bars.ts';
import { commonFields } from './common-fields.ts';
import { conductors } from './conductors.ts';
import { electrodes } from './electrodes.ts';
import { equipment } from './equipment.ts';
import type { Fields } from './field.ts';
import { buildingFields, placeFields, soilFields } from './ground.ts';
import { headerFields } from './header.ts';
import { joints } from './joints.ts';
import { lines } from './lines.ts';
import { metalwork } from './metalwork.ts';
import { readingFields, readingKinds } from './readings.ts';
import { everyKind, type PartFormat } from './section.ts';
import { stateFields } from './states.ts';
import { supports } from './supports.ts';

/** The sections that hold parts. */
export const partFormats = {
  electrodes,
  supports,
  antennas,
  bars,
  arresters,
  equipment,
  lines,
  conductors,
  joints,
  metalwork,
} as const;

/** One section as a reader of the file or the schema sees it. */
export interface SectionFormat {
  readonly name: SectionName | 'site';
  readonly says: string;
  /** fields: the section is one group; members: ids with a group each; lines: free names with a figure each. */
  readonly holds: 'fields' | 'members' | 'lines';
  /** null: its members have no kind. */
  readonly kinds: Readonly<Record<string, string>> | null;
  readonly kindsAre: 'closed' | 'free' | 'joint';
  readonly fields: Fields;
}

/** The whole format, in the order in which a file is written. */
export const sections: readonly SectionFormat[] = [
  group('site', 'The site as a whole.', headerFields),
  group('soil', 'The ground.', soilFields),
  members('buildings', 'Buildings, by id.', null, buildingFields),
  members('places', 'Named places, by id.', null, placeFields),
  ...Object.values(partFormats).map(ofParts),
  members('states', 'Other states of the same site, such as unplugged for the storm.', null, stateFields),
  members('readings', 'What was measured, by id.', readingKinds, readingFields),
  {
    name: 'prices',
    says: 'What things cost where you are.',
    holds: 'lines',
    kinds: null,
    kindsAre: 'closed',
    fields: {},
  },
];

/** Fields of the parts of one section: its own and those of every part. */
export type PartFields<S extends PartSection> = (typeof partFormats)[S]['fields'] & typeof commonFields;

/** All fields of a part of a section: its own first. */
export function fieldsOf(section: PartSection): Fields {
  return { ...partFormats[section].fields, ...commonFields };
}

function group(name: 'site' | 'soil', says: string, fields: Fields): SectionFormat {
  return { name, says, holds: 'fields', kinds: null, kindsAre: 'closed', fields };
}

function members(
  name: SectionName,
  says: string,
  kinds: Readonly<Record<string, string>> | null,
  fields: Fields,
): SectionFormat {
  const all = kinds === null ? null : { ...kinds, ...everyKind };
  return { name, says, holds: 'members', kinds: all, kindsAre: 'closed', fields };
}

function ofParts(format: PartFormat<Fields>): SectionFormat {
  const { section, says, kindsAre } = format;
  const kinds = { ...format.kinds, ...everyKind };
  return { name: section, says, holds: 'members', kinds, kindsAre, fields: fieldsOf(section) };
}
