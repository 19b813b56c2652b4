import { schemaWords } from '../words/schema-words.ts';
import type { Field, Fields, Json, Schema } from './format/field.ts';
import { type SectionFormat, sections } from './format/format.ts';
import { reservedIds } from './format/points.ts';
import { howKnownWords } from './format/read-value.ts';

/**
 * JSON Schema (draft 2020-12) of the site file, made from the table of the format, with a sentence for every section, kind
 * and field. It is for completing and explaining while typing: it knows shapes and words, but not ids, units or figures,
 * and of several spellings of a word only the listed one. What it refuses beyond that the reader refuses too.
 */
export function jsonSchema(): Schema {
  const shared = sharedTypes();
  const members = sections.filter((s) => s.holds === 'members');
  return {
    $schema: 'https://json-schema.org/draft/2020-12/schema',
    title: schemaWords.title,
    description: schemaWords.file,
    type: 'object',
    additionalProperties: false,
    properties: Object.fromEntries(sections.map((s) => [s.name, sectionSchema(s, shared)])),
    $defs: {
      ...valueDefinitions(),
      id: {
        description: schemaWords.id,
        pattern: '^[\\p{L}\\p{M}\\p{N}_-]+$',
        not: { enum: [...reservedIds] },
      },
      ...Object.fromEntries(members.map((s) => [s.name, memberSchema(s, shared)])),
      ...Object.fromEntries(shared.values()),
    },
  };
}

/** What every value may be besides itself, in the schema of any file. */
export function valueDefinitions(): { readonly [name: string]: Schema } {
  return {
    unknown: { description: schemaWords.unknown, enum: ['unknown', null] },
    known: { description: schemaWords.known, enum: [...howKnownWords, 'unknown', null] },
    note: { description: schemaWords.note, type: ['string', 'number', 'boolean', 'null'] },
    wrapped: wrapperOf({}),
  };
}

const unknown: Schema = { $ref: '#/$defs/unknown' };
const none: Schema = { description: schemaWords.none, const: 'none' };

/** Schema as JSON → its name among the definitions, and itself. */
type Shared = ReadonlyMap<string, readonly [name: string, schema: Schema]>;

/** Large schemas that several fields have, under the name of the first. */
function sharedTypes(): Shared {
  const shared = new Map<string, [string, Schema]>();
  for (const { name: section, fields } of sections) {
    for (const [name, { type }] of Object.entries(fields)) {
      const text = JSON.stringify(type.schema);
      if (text.length > 120 && !shared.has(text)) shared.set(text, [`${section}.${name}`, type.schema]);
    }
  }
  return shared;
}

function sectionSchema(section: SectionFormat, shared: Shared): Schema {
  const { says, holds } = section;
  if (holds === 'fields') return { description: says, anyOf: [groupSchema(section, shared), unknown] };
  const each: Schema =
    holds === 'lines'
      ? { description: schemaWords.prices, type: ['string', 'number', 'null'] }
      : { $ref: `#/$defs/${section.name}` };
  const ids: Schema = holds === 'lines' ? {} : { propertyNames: { $ref: '#/$defs/id' } };
  const listed: Schema = { type: 'object', ...ids, additionalProperties: each };
  return { description: says, anyOf: holds === 'lines' ? [listed, unknown] : [listed, none, unknown] };
}

/** A part, place, state or reading; blank where nothing is known of it. A place may be a position alone. */
function memberSchema(section: SectionFormat, shared: Shared): Schema {
  const position = section.name === 'places' ? [typeOf(section.fields.at!, shared)] : [];
  const description = `${section.says} ${schemaWords.member}`;
  return { description, anyOf: [groupSchema(section, shared), unknown, ...position] };
}

function groupSchema({ kinds, kindsAre, fields }: SectionFormat, shared: Shared): Schema {
  const listed = Object.entries(fields).map(([name, f]): [string, Json] => [name, fieldSchema(f, shared)]);
  const properties = Object.fromEntries(listed);
  const group = { type: 'object', additionalProperties: false };
  if (kinds === null) return { ...group, properties };
  const conditions = kindConditions(kinds, fields);
  return {
    ...group,
    properties: { kind: kindSchema(kinds, kindsAre), ...properties },
    ...(conditions.length === 0 ? {} : { allOf: conditions }),
  };
}

/** Every value may be unknown, blank, or `{is, known}`. */
function fieldSchema(f: Field<unknown>, shared: Shared): Schema {
  const whose = f.kinds === null ? '' : ` ${schemaWords.kinds.replace('{kinds}', f.kinds.join(', '))}`;
  const type = typeOf(f, shared);
  return { description: `${f.says}${whose}`, anyOf: [type, unknown, wrapperOf(type)] };
}

function typeOf({ type }: Field<unknown>, shared: Shared): Schema {
  const found = shared.get(JSON.stringify(type.schema));
  return found === undefined ? type.schema : { $ref: `#/$defs/${found[0]}` };
}

function wrapperOf(schema: Schema): Schema {
  return {
    description: schemaWords.wrapped,
    type: 'object',
    additionalProperties: false,
    required: ['is'],
    properties: {
      is: { description: schemaWords.is, anyOf: [schema, unknown] },
      known: { $ref: '#/$defs/known' },
      note: { $ref: '#/$defs/note' },
    },
  };
}

/** Each kind with its sentence, so that an editor shows it; any word besides, where kinds are free words. */
function kindSchema(kinds: Readonly<Record<string, string>>, kindsAre: SectionFormat['kindsAre']): Schema {
  const listed = Object.entries(kinds).map(([kind, says]): Schema => ({ const: kind, description: says }));
  const blank: Schema = { description: schemaWords.unknown, const: null };
  const word: Schema = kindsAre === 'closed' ? { enum: Object.keys(kinds) } : { type: 'string' };
  const others = kindsAre === 'closed' ? [] : [word];
  return { description: schemaWords.kind, anyOf: [...listed, ...others, blank, wrapperOf(word)] };
}

/** For each kind that lacks some fields: these are refused there. All fields stay listed above, for completion. */
function kindConditions(kinds: Readonly<Record<string, string>>, fields: Fields): readonly Schema[] {
  return Object.keys(kinds).flatMap((kind) => {
    const free = kind === 'other' || kind === 'unknown';
    const lacking = Object.entries(fields).filter(([, f]) => !free && f.kinds !== null && !f.kinds.includes(kind));
    if (lacking.length === 0) return [];
    const refused = Object.fromEntries(lacking.map(([name]) => [name, false]));
    const isKind = { required: ['kind'], properties: { kind: { const: kind } } };
    // biome-ignore lint/suspicious/noThenProperty: a keyword of JSON Schema.
    return [{ if: isKind, then: { properties: refused } }];
  });
}
