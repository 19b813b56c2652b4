import { schemaWords as words } from '../../words/schema-words.ts';
import { fieldSchema, recordSchema } from '../format/collections.ts';
import type { Fields, Json, Schema } from '../format/field.ts';
import { valueDefinitions } from '../json-schema.ts';
import { agreedFields } from './agreed-format.ts';
import { limit } from './limit-type.ts';
import { ownSubjects } from './owner-standard.ts';
import type { KnownRule } from './read-standard.ts';
import {
  conditionFields,
  noteFields,
  ruleLimitFields,
  ruleWordFields,
  standardFields,
  standardGroups,
  subjectFields,
  wordFields,
} from './standard-format.ts';

const unknown: Schema = { $ref: '#/$defs/unknown' };
const none: Schema = { description: words.none, const: 'none' };

/** JSON Schema (draft 2020-12) of a file of findings that were agreed to stand, made from the table that reads it. */
export function agreedSchema(): Schema {
  return file(words.agreedTitle, words.agreedFile, recordSchema(agreedFields));
}

/** JSON Schema of an owner's standard, made from the tables that read it, with the rules of the pack by name. */
export function standardSchema(rules: readonly KnownRule[]): Schema {
  const groups = {
    limits: grouped(standardGroups.limits, { additionalProperties: limitSchema() }),
    rules: grouped(standardGroups.rules, { additionalProperties: false, properties: ruleSchemas(rules) }),
  } satisfies Record<keyof typeof standardGroups, Schema>;
  const { properties, ...group } = recordSchema({ ...standardFields, ...noteFields });
  return file(words.standardTitle, words.standardFile, {
    ...group,
    properties: { ...(properties as Schema), ...groups },
  });
}

function file(title: string, description: string, group: Schema): Schema {
  const $schema = 'https://json-schema.org/draft/2020-12/schema';
  return { $schema, title, description, ...group, $defs: valueDefinitions() };
}

function grouped(says: string, entries: Schema): Schema {
  return { description: says, anyOf: [{ type: 'object', ...entries }, none, unknown] };
}

/** For the subjects that the same can be asked of, one shape; each asks at least one thing. */
function limitSchema(): Schema {
  const tables = [...new Set(Object.values(conditionFields))];
  const shapes = tables.map((conditions): Json => {
    const subjects = ownSubjects.filter((s) => conditionFields[s] === conditions);
    const of = { of: { description: subjectFields.of.says, enum: subjects } };
    const { properties, ...group } = recordSchema({ ...conditions, ...wordFields } as Fields);
    const asks = Object.keys(conditions).map((key) => ({ required: [key] }));
    const isOfThem = { required: ['of'], properties: { of: { enum: subjects } } };
    const shape = { ...group, properties: { ...of, ...(properties as Schema) }, anyOf: asks };
    // biome-ignore lint/suspicious/noThenProperty: a keyword of JSON Schema.
    return { if: isOfThem, then: shape };
  });
  const of = { description: subjectFields.of.says, enum: ownSubjects };
  return { description: words.ownLimit, type: 'object', required: ['of'], properties: { of }, allOf: shapes };
}

function ruleSchemas(rules: readonly KnownRule[]): Schema {
  const each = rules.map(({ id, key, senses, says }): readonly [string, Json] => {
    const { properties, ...group } = recordSchema(ruleWordFields);
    // the figure itself is read by the unit of the rule
    const figure = { limit: fieldSchema({ type: limit('number', senses), says: ruleLimitFields.limit, kinds: null }) };
    const fields = { ...(key === null ? {} : figure), ...(properties as Schema) };
    return [id, { description: says ?? id, ...group, properties: fields }];
  });
  return Object.fromEntries(each);
}
