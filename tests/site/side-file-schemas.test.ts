import { describe, expect, it } from 'vitest';
import { parse } from 'yaml';
import { rules } from '../../src/rules/index.ts';
import { knownRules } from '../../src/shell/known-rules.ts';
import type { Json } from '../../src/site/format/field.ts';
import { ownSubjects } from '../../src/site/standard/owner-standard.ts';
import { readAgreed } from '../../src/site/standard/read-agreed.ts';
import { readStandard } from '../../src/site/standard/read-standard.ts';
import { agreedSchema, standardSchema } from '../../src/site/standard/side-file-schemas.ts';
import { validator } from './schema-validator.ts';

const known = knownRules();
const files = {
  standard: {
    schema: standardSchema(known),
    problems: (text: string) => readStandard(text, 'landlord.yaml', known).problems,
  },
  agreed: { schema: agreedSchema(), problems: (text: string) => readAgreed(text, 'agreed.yaml').problems },
} as const;
type File = keyof typeof files;

const right: readonly (readonly [File, string])[] = [
  [
    'standard',
    `name: site standard of the landlord
edition: 3
note: asked of every tenant
limits:
  big-tie: {of: conductors between bars, wire: at least 2 AWG, severity: hazard, because: the contract says so}
  metric-tie: {of: mast leads, wire: at least 35 mm2, length: at most 6 in, metal: [copper, tinned copper]}
  lugs: {of: joints on bars, kind: bolted lug, bolts: at least 2, listed: yes, remedy: Ask the landlord.}
  rods: {of: rods, length: at least 10 ft, diameter: at least 5/8 in, resistance: at most 10 ohm}
  tubes: {of: arresters, kind: [gas tube, mov], lead: at most 1 ft}
  whole: {of: site, resistance: at most 5 ohm}
rules:
  rod-length-us: {limit: at least 10 ft, severity: advice, because: rock}
  mast-grounded: {severity: defect}
`,
  ],
  ['standard', 'name: of the club'],
  ['standard', 'limits: none\nrules: none'],
  ['standard', 'limits:\nedition: unknown'],
  ['agreed', 'agreed: [{rule: rod-length-us, at: E1, reason: rock, by: the owner, date: 2026-05-02}]\nnote: kept'],
  ['agreed', 'agreed: {rule: rod-length-us}'],
  ['agreed', 'agreed: none'],
  ['agreed', 'agreed: unknown'],
];

describe('the schema of a file beside a site takes what its reader takes', () => {
  it.each(right)('%s: %s', (file, text) => {
    expect(validator(files[file].schema)(parse(text))).toBeNull();
    expect(files[file].problems(text)).toEqual([]);
  });
});

const wrong: readonly (readonly [File, string, at: string])[] = [
  ['standard', '[]', ''],
  ['standard', 'nmae: x', '.nmae'],
  ['standard', 'limits: [a]', '.limits'],
  ['standard', 'limits: {a: {wire: at least 2 AWG}}', '.limits.a'],
  ['standard', 'limits: {a: {of: joints}}', '.limits.a'],
  ['standard', 'limits: {a: {of: conductor, wire: at least 2 AWG}}', '.limits.a.of'],
  ['standard', 'limits: {a: {of: joints, wire: at least 2 AWG}}', '.limits.a'],
  ['standard', 'limits: {a: {of: joints, bolts: 2}}', '.limits.a.bolts'],
  ['standard', 'limits: {a: {of: joints, bolts: at least 2, severity: grave}}', '.limits.a.severity'],
  ['standard', 'limits: {a: {of: joints, bolts: at least 2, colour: red}}', '.limits.a.colour'],
  ['standard', 'rules: {rod-lenght-us: {severity: advice}}', '.rules.rod-lenght-us'],
  ['standard', 'rules: {mast-grounded: {limit: at least 2 m}}', '.rules.mast-grounded.limit'],
  ['standard', 'rules: {mast-grounded: {remedy: none}}', '.rules.mast-grounded.remedy'],
  ['standard', 'rules: {rod-length-us: {limit: 10 ft}}', '.rules.rod-length-us.limit'],
  ['standard', 'rules: {rod-length-us: {limit: at most 10 ft}}', '.rules.rod-length-us.limit'],
  ['agreed', 'agreed: rod-length-us', '.agreed'],
  ['agreed', 'agreed: [{at: E1, reason: rock}]', '.agreed'],
  ['agreed', 'agreed: [{rule: rod-length-us, why: rock}]', '.agreed'],
  ['agreed', 'allowed: [{rule: rod-length-us}]', '.allowed'],
];

describe('the schema of a file beside a site refuses', () => {
  it.each(wrong)('%s: %s, and its reader too', (file, text, at) => {
    const fault = validator(files[file].schema)(parse(text));
    expect(fault).not.toBeNull();
    expect(`${fault}`.startsWith(at)).toBe(true);
    expect(files[file].problems(text).length).toBeGreaterThan(0);
  });
});

/** Every group of keys in a schema with its path, alternatives included. */
function* groupsIn(at: string, node: Json): Generator<readonly [string, Readonly<Record<string, Json>>]> {
  if (typeof node !== 'object' || node === null) return;
  const { properties } = node as { readonly properties?: Readonly<Record<string, Json>> };
  if (properties !== undefined && !Array.isArray(node)) yield [at, properties];
  for (const [key, value] of Object.entries(node)) if (key !== 'if') yield* groupsIn(`${at}/${key}`, value);
}

describe.each(Object.keys(files) as File[])('the schema of the file %s', (file) => {
  const { schema, problems } = files[file];
  const groups = [...groupsIn('', schema)];

  it('has a sentence for every field', () => {
    const bare = groups.flatMap(([at, properties]) =>
      Object.entries(properties).flatMap(([key, value]) =>
        /^\S/.test((value as { description?: string }).description ?? '') || '$ref' in (value as object)
          ? []
          : [`${at} ${key}`],
      ),
    );
    expect(bare).toEqual([]);
  });

  // the reader names the keys that it knows when it meets one that it does not
  it('has every key that its reader knows, and no other, at the top', () => {
    const [problem] = problems('zzzzzzzz: 1');
    expect(problem!.key).toBe('key-unknown');
    const asked = String(problem!.values.keys).split(', ').sort();
    expect(Object.keys(schema.properties as object).sort()).toEqual(asked);
  });
});

/** The keys that the reader says it knows at a place where one stands that it does not. */
function keysKnown(file: File, text: string): readonly string[] {
  const found = files[file].problems(text).find((p) => p.key === 'key-unknown');
  return String(found!.values.keys).split(', ').sort();
}

it.each(ownSubjects)('a limit of %s has every key that the reader knows there, and no other', (subject) => {
  const { limits } = files.standard.schema.properties as {
    limits: { anyOf: readonly [{ additionalProperties: Json }] };
  };
  const { allOf } = limits.anyOf[0].additionalProperties as unknown as {
    allOf: readonly { then: { properties: Readonly<Record<string, { enum?: readonly string[] }>> } }[];
  };
  const shapes = allOf.map(({ then }) => then).filter(({ properties }) => properties.of!.enum!.includes(subject));
  expect(shapes.length).toBe(1);
  const asked = keysKnown('standard', `limits: {a: {of: ${subject}, zzzzzzzz: 1}}`);
  expect(Object.keys(shapes[0]!.properties).sort()).toEqual(asked);
});

it('a rule of the pack has every key that the reader knows there, and a limit only where it has a figure', () => {
  const group = (files.standard.schema.properties as { rules: { anyOf: readonly [{ properties: object }] } }).rules
    .anyOf[0];
  const each = group.properties as Readonly<Record<string, { properties: object }>>;
  expect(Object.keys(each)).toEqual(rules.map((r) => r.id));
  const asked = keysKnown('standard', 'rules: {rod-length-us: {zzzzzzzz: 1}}');
  expect(Object.keys(each['rod-length-us']!.properties).sort()).toEqual(asked);
  for (const { id, limits = [] } of rules)
    expect(Object.hasOwn(each[id]!.properties, 'limit'), id).toBe(limits.length > 0);
});

it('an agreement has every key that the reader knows there', () => {
  const asked = keysKnown('agreed', 'agreed: [{rule: x, zzzzzzzz: 1}]');
  const group = [...groupsIn('', files.agreed.schema)].find(([, properties]) => Object.hasOwn(properties, 'rule'))!;
  expect(Object.keys(group[1]).sort()).toEqual(asked);
});
