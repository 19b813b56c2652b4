import { below, refuse } from '../reading/report.ts';
import { sayNode } from '../reading/tree.ts';
import type { Field, Fields, FieldType, Json, Schema, ValuesOf } from './field.ts';
import { readValue, refuseOtherKeys } from './read-value.ts';

/** A list of values, or one value alone; an unknown item is null. The word `none` is an empty list. */
export function list<T>(type: FieldType<T>): FieldType<readonly (T | null)[]> {
  return {
    schema: { anyOf: [wrapped(type.schema), { type: 'array', items: wrapped(type.schema) }, { const: 'none' }] },
    expects: `a list, each item ${type.expects}`,
    read: (node, spot) => {
      if (node.is === 'text' && node.text.trim() === 'none') return [];
      if (node.is !== 'list') return [readValue(type, node, spot)];
      return node.items.map((item, i) => readValue(type, item, below(spot, i + 1)));
    },
  };
}

/** A list of which unknown and refused items are left out. */
export function listOfKnown<T>(type: FieldType<T>): FieldType<readonly T[]> {
  const whole = list(type);
  return {
    ...whole,
    read: (node, spot) => whole.read(node, spot)?.filter((item): item is T => item !== null) ?? null,
  };
}

/** A group of fields of its own. */
export function record<F extends Fields>(fields: F): FieldType<ValuesOf<F>> {
  const keys = Object.keys(fields);
  return {
    schema: recordSchema(fields),
    expects: `a group of ${keys.join(', ')}`,
    read: (node, spot) => {
      if (node.is !== 'map')
        return refuse(spot, node.at, 'not-a-group', { found: sayNode(node), keys: keys.join(', ') });
      refuseOtherKeys(node, keys, spot);
      const values: Record<string, unknown> = Object.fromEntries(keys.map((key) => [key, null]));
      for (const { key, value } of node.entries) {
        const known = Object.hasOwn(fields, key) ? fields[key] : undefined;
        if (known !== undefined) values[key] = readValue(known.type, value, below(spot, key));
      }
      return values as ValuesOf<F>;
    },
  };
}

/** The first type whose shape fits: `fits` looks at the node only, so that the problem is that of the type meant. */
export function recordOr<A, B>(whenMap: FieldType<A>, otherwise: FieldType<B>): FieldType<A | B> {
  return {
    schema: { anyOf: [wrapped(otherwise.schema), whenMap.schema] },
    expects: `${otherwise.expects}, or ${whenMap.expects}`,
    read: (node, spot) => (node.is === 'map' ? whenMap.read(node, spot) : otherwise.read(node, spot)),
  };
}

/** The same type with what was read turned into something else. */
export function mapped<T, U>(type: FieldType<T>, turn: (value: T) => U): FieldType<U> {
  return {
    ...type,
    read: (node, spot) => {
      const value = type.read(node, spot);
      return value === null ? null : turn(value);
    },
  };
}

/** A group's schema: every field with its sentence, nothing else. */
export function recordSchema(fields: Fields): Schema {
  const properties = Object.entries(fields).map(([name, f]): [string, Json] => [name, fieldSchema(f)]);
  return { type: 'object', additionalProperties: false, properties: Object.fromEntries(properties) };
}

export function fieldSchema(f: Field<unknown>): Schema {
  return { description: f.says, ...wrapped(f.type.schema) };
}

/** A key inside a value: may be unknown or blank, but says nothing of how it is known. */
export function keySchema(schema: Schema, says: string): Schema {
  return { description: says, anyOf: [schema, { $ref: '#/$defs/unknown' }] };
}

/** Any value may be unknown, blank, or `{is, known}`. */
export function wrapped(schema: Schema): Schema {
  return { anyOf: [schema, { $ref: '#/$defs/unknown' }, { $ref: '#/$defs/wrapped' }] };
}
