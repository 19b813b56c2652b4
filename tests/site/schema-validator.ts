import type { Json } from '../../src/site/format/field.ts';

type Schema = boolean | Readonly<Record<string, Json>>;

/** Says where and why a value does not fit a schema; null where it fits. */
export type Validate = (value: unknown) => string | null;

type Check = (value: unknown, at: string) => string | null;

/**
 * A validator for the part of JSON Schema (draft 2020-12) that the schema of the site file uses. Written from the
 * specification (sections 10 and 11 of Core, section 6 of Validation); a keyword that it does not know stops it.
 */
export function validator(root: Schema): Validate {
  const named = new Map<string, Check>();
  const compile = (schema: Schema): Check => {
    if (typeof schema === 'boolean') return (_, at) => (schema ? null : `${at}: is not allowed here`);
    const checks = Object.entries(schema).map(([keyword, given]) => {
      const make = keywords[keyword];
      if (make === undefined) throw new Error(`the validator does not know the keyword ${keyword}`);
      return make({ given, schema, compile, refer });
    });
    const real = checks.filter((check) => check !== null);
    return (value, at) => firstFault(real, (check) => check(value, at));
  };
  const refer = (pointer: string): Check => {
    const found = named.get(pointer);
    if (found !== undefined) return found;
    // A definition may mention itself: the name is known before it is compiled.
    named.set(pointer, (value, at) => compiled(value, at));
    const compiled = compile(lookUp(root, pointer));
    return compiled;
  };
  const check = compile(root);
  return (value) => check(value, '');
}

interface Keyword {
  readonly given: Json;
  readonly schema: Readonly<Record<string, Json>>;
  readonly compile: (schema: Schema) => Check;
  readonly refer: (pointer: string) => Check;
}

const annotation = () => null;

const keywords: Readonly<Record<string, (keyword: Keyword) => Check | null>> = {
  $schema: annotation,
  $defs: annotation,
  title: annotation,
  description: annotation,
  examples: annotation,
  // biome-ignore lint/suspicious/noThenProperty: a keyword of JSON Schema; `if` looks at it.
  then: annotation,
  $ref: ({ given, refer }) => refer(given as string),
  type: ({ given }) => {
    const types = [given].flat() as string[];
    return (value, at) => (types.some((type) => isOfType(value, type)) ? null : `${at}: is not ${types.join(' or ')}`);
  },
  const:
    ({ given }) =>
    (value, at) =>
      value === given ? null : `${at}: is not ${given}`,
  enum: ({ given }) => {
    const words = given as readonly Json[];
    return (value, at) => (words.includes(value as Json) ? null : `${at}: is none of ${words.join(', ')}`);
  },
  pattern: ({ given }) => {
    const pattern = new RegExp(given as string, 'u');
    return (value, at) => (typeof value !== 'string' || pattern.test(value) ? null : `${at}: does not fit ${given}`);
  },
  minimum:
    ({ given }) =>
    (value, at) =>
      typeof value !== 'number' || value >= (given as number) ? null : `${at}: is below ${given}`,
  maximum:
    ({ given }) =>
    (value, at) =>
      typeof value !== 'number' || value <= (given as number) ? null : `${at}: is above ${given}`,
  minItems:
    ({ given }) =>
    (value, at) =>
      !Array.isArray(value) || value.length >= (given as number) ? null : `${at}: has fewer than ${given} items`,
  maxItems:
    ({ given }) =>
    (value, at) =>
      !Array.isArray(value) || value.length <= (given as number) ? null : `${at}: has more than ${given} items`,
  items: ({ given, compile }) => {
    const check = compile(given as Schema);
    return (value, at) =>
      Array.isArray(value) ? firstFault([...value.entries()], ([i, item]) => check(item, `${at}.${i + 1}`)) : null;
  },
  required: ({ given }) => {
    const keys = given as readonly string[];
    return (value, at) =>
      isGroup(value) ? firstFault(keys, (key) => (Object.hasOwn(value, key) ? null : `${at}: lacks ${key}`)) : null;
  },
  properties: ({ given, compile }) => {
    const checks = compiledEntries(given, compile);
    return (value, at) =>
      isGroup(value) ? firstFault(Object.entries(value), ([k, v]) => checks.get(k)?.(v, `${at}.${k}`) ?? null) : null;
  },
  additionalProperties: ({ given, schema, compile }) => {
    const listed = Object.keys((schema.properties ?? {}) as object);
    const check = compile(given as Schema);
    return (value, at) =>
      isGroup(value)
        ? firstFault(Object.entries(value), ([k, v]) => (listed.includes(k) ? null : check(v, `${at}.${k}`)))
        : null;
  },
  propertyNames: ({ given, compile }) => {
    const check = compile(given as Schema);
    return (value, at) => (isGroup(value) ? firstFault(Object.keys(value), (key) => check(key, `${at}.${key}`)) : null);
  },
  not: ({ given, compile }) => {
    const check = compile(given as Schema);
    return (value, at) => (check(value, at) === null ? `${at}: is what it must not be` : null);
  },
  anyOf: ({ given, compile }) => {
    const checks = (given as readonly Schema[]).map(compile);
    return (value, at) => {
      const faults: string[] = [];
      for (const check of checks) {
        const fault = check(value, at);
        if (fault === null) return null;
        faults.push(fault);
      }
      // The fault farthest inside belongs to the alternative that was most likely meant.
      return faults.reduce((far, fault) => (depthOf(fault) > depthOf(far) ? fault : far));
    };
  },
  allOf: ({ given, compile }) => {
    const checks = (given as readonly Schema[]).map(compile);
    return (value, at) => firstFault(checks, (check) => check(value, at));
  },
  if: ({ given, schema, compile }) => {
    const condition = compile(given as Schema);
    const consequence = compile((schema.then ?? true) as Schema);
    return (value, at) => (condition(value, at) === null ? consequence(value, at) : null);
  },
};

function firstFault<T>(items: readonly T[], check: (item: T) => string | null): string | null {
  for (const item of items) {
    const fault = check(item);
    if (fault !== null) return fault;
  }
  return null;
}

function compiledEntries(given: Json, compile: (schema: Schema) => Check): ReadonlyMap<string, Check> {
  return new Map(Object.entries(given as Record<string, Schema>).map(([key, schema]) => [key, compile(schema)]));
}

function depthOf(fault: string): number {
  return fault.split(':', 1)[0]!.split('.').length;
}

function isGroup(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

function isOfType(value: unknown, type: string): boolean {
  if (type === 'null') return value === null;
  if (type === 'array') return Array.isArray(value);
  if (type === 'object') return isGroup(value);
  if (type === 'integer') return Number.isInteger(value);
  if (['string', 'number', 'boolean'].includes(type)) return typeof value === type;
  throw new Error(`the validator does not know the type ${type}`);
}

function lookUp(root: Schema, pointer: string): Schema {
  const [hash, ...names] = pointer.split('/');
  if (hash !== '#') throw new Error(`the validator follows no ${pointer}`);
  const found = names.reduce<unknown>((at, name) => (isGroup(at) ? at[name] : undefined), root);
  if (found === undefined) throw new Error(`nothing is at ${pointer}`);
  return found as Schema;
}
