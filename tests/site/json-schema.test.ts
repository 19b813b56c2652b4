import { describe, expect, it } from 'vitest';
import { parse } from 'yaml';
import type { Json } from '../../src/site/format/field.ts';
import { sections } from '../../src/site/format/format.ts';
import { jsonSchema } from '../../src/site/json-schema.ts';
import { readSite } from '../../src/site/read-site.ts';
import { validator } from './schema-validator.ts';
import { siteTexts } from './site-texts.ts';

const schema = jsonSchema();
const validate = validator(schema);

describe('the schema takes', () => {
  const texts = siteTexts();

  it('more than a hundred files, or this test looks at nothing', () => expect(texts.length).toBeGreaterThan(100));

  it.each(texts)('$file', ({ text }) => expect(validate(parse(text))).toBeNull());

  it.each(['{}', 'electrodes:', 'electrodes: unknown', 'electrodes: none', 'site: unknown', 'electrodes: {E1: }'])(
    'what the format lets one leave out: %s',
    (text) => expect(validate(parse(text))).toBeNull(),
  );

  it('a value with how it is known, and unknown with it', () => {
    for (const value of ['{is: 8 ft, known: told}', '{is: unknown}', '{is: 8, note: to the bend}', 'unknown', ''])
      expect(validate(parse(`electrodes: {E1: {kind: rod, length: ${value}}}`))).toBeNull();
  });

  it('fields of any kind where the kind is other, unknown or left out', () => {
    for (const kind of ['kind: other, ', 'kind: unknown, ', ''])
      expect(validate(parse(`electrodes: {E1: {${kind}cage: tied, diameter: 5/8 in}}`))).toBeNull();
  });
});

/** What is wrong, where the schema must say so. */
const wrong: readonly (readonly [text: string, at: string])[] = [
  ['[]', ''],
  ['hello', ''],
  ['electrode: {E1: {kind: rod}}', '.electrode'],
  ['site: {region: mars}', '.site.region'],
  ['site: {units: yards}', '.site.units'],
  ['site: {temporary: maybe}', '.site.temporary'],
  ['site: {without: [gas]}', '.site.without'],
  ['site: {incomplete: [cables]}', '.site.incomplete'],
  ['site: {prepared: {from: me}}', '.site.prepared.from'],
  ['site: [name]', '.site'],
  ['soil: {layers: [{resistivity: 100}]}', '.soil.layers'],
  ['soil: {layers: [{resistance: 100 ohm m}]}', '.soil.layers'],
  ['buildings: {house: {corners: [[0, 0], [1, 1]]}}', '.buildings.house.corners'],
  ['places: {desk: {at: [1]}}', '.places.desk.at'],
  ['places: {desk: {from: door, to: window}}', '.places.desk'],
  ['places: {desk: {distance: 3 ft}}', '.places.desk'],
  ['electrodes: [rod]', '.electrodes'],
  ['electrodes: some', '.electrodes'],
  ['electrodes: {E1: rod}', '.electrodes.E1'],
  ['electrodes: {unknown: {kind: rod}}', '.electrodes.unknown'],
  ['electrodes: {"E 1": {kind: rod}}', '.electrodes.E 1'],
  ['electrodes: {E1: {kind: stake}}', '.electrodes.E1.kind'],
  ['electrodes: {E1: {kind: 3}}', '.electrodes.E1.kind'],
  ['electrodes: {E1: {kind: rod, long: 8 ft}}', '.electrodes.E1.long'],
  ['electrodes: {E1: {kind: rod, cage: tied}}', '.electrodes.E1.cage'],
  ['electrodes: {E1: {kind: plate, diameter: 1 ft}}', '.electrodes.E1.diameter'],
  ['electrodes: {E1: {kind: rods, count: 0}}', '.electrodes.E1.count'],
  ['electrodes: {E1: {kind: rods, count: 2.5}}', '.electrodes.E1.count'],
  ['electrodes: {E1: {kind: rod, length: [8 ft]}}', '.electrodes.E1.length'],
  ['electrodes: {E1: {kind: rod, length: {is: [8 ft]}}}', '.electrodes.E1.length'],
  ['electrodes: {E1: {kind: rod, length: {is: 8 ft, sure: no}}}', '.electrodes.E1.length'],
  ['electrodes: {E1: {kind: rod, length: {known: told}}}', '.electrodes.E1.length'],
  ['electrodes: {E1: {kind: rod, length: {is: 8 ft, known: guessed}}}', '.electrodes.E1.length'],
  ['electrodes: {E1: {kind: rod, diameter: 0.6}}', '.electrodes.E1.diameter'],
  ['electrodes: {E1: {kind: rod, known: guessed}}', '.electrodes.E1.known'],
  ['electrodes: {E1: {kind: rod, photo: {front: a.jpg}}}', '.electrodes.E1.photo'],
  ['supports: {mast: {kind: mast, legs: 40}}', '.supports.mast.legs'],
  ['supports: {mast: {kind: mast, guys: [a, b]}}', '.supports.mast.guys'],
  ['supports: {mast: {kind: mast, guys: {a: {length: 3 m}}}}', '.supports.mast.guys'],
  ['antennas: {a: {kind: yagi, dc_path: joined}}', '.antennas.a.dc_path'],
  ['antennas: {a: {kind: [yagi]}}', '.antennas.a.kind'],
  ['arresters: {a: {kind: gas tube, covers: some}}', '.arresters.a.covers'],
  ['arresters: {a: {kind: mov, between: [x, y, z]}}', '.arresters.a.between'],
  ['lines: {l: {kind: coax, path: radio}}', '.lines.l.path'],
  ['lines: {l: {kind: coax, path: [{tie: tower}]}}', '.lines.l.path'],
  ['lines: {l: {kind: coax, path: [{bond: tower, plug: j1}]}}', '.lines.l.path'],
  ['lines: {l: {kind: coax, metal_inside: yes}}', '.lines.l.metal_inside'],
  ['lines: {l: {kind: coax, along: {part: m, gap: 2 in}}}', '.lines.l.along'],
  ['conductors: {c: {role: decoration}}', '.conductors.c.role'],
  ['conductors: {c: {joints: [bolted lug]}}', '.conductors.c.joints'],
  ['conductors: {c: {joints: [bolted lug, {type: solder}]}}', '.conductors.c.joints'],
  ['conductors: {c: {passes: [{joint: solder}]}}', '.conductors.c.passes'],
  ['conductors: {c: {passes: [{part: E1, joint: {colour: red}}]}}', '.conductors.c.passes'],
  ['conductors: {c: {condition: rusty}}', '.conductors.c.condition'],
  ['joints: {j: {listed: perhaps}}', '.joints.j.listed'],
  ['states: {s: {open: [{gap: 2 in}]}}', '.states.s.open'],
  ['states: {s: {end: free}}', '.states.s.end'],
  ['readings: {r: {kind: joint, spacing: 3 m}}', '.readings.r.spacing'],
  ['prices: {rod: [1, 2]}', '.prices.rod'],
];

describe('the schema refuses', () => {
  it.each(wrong)('%s', (text, at) => {
    const fault = validate(parse(text));
    expect(fault).not.toBeNull();
    expect(`${fault}`.startsWith(at)).toBe(true);
  });

  it.each(wrong)('nothing that the reader takes: %s', (text) => {
    expect(readSite(text, 'wrong.site.yaml').site).toBeNull();
  });
});

/** Every schema with its path, definitions and alternatives included. */
function* schemasIn(at: string, node: Json): Generator<readonly [string, Readonly<Record<string, Json>>]> {
  if (typeof node !== 'object' || node === null) return;
  if (!Array.isArray(node)) yield [at, node as Readonly<Record<string, Json>>];
  for (const [key, value] of Object.entries(node))
    if (key !== 'if' && key !== 'then') yield* schemasIn(`${at}/${key}`, value);
}

/** Keys of every group, with the schema of each; `properties` itself may not be a key's name. */
const keys = [...schemasIn('', schema)].flatMap(([at, { type, properties }]) =>
  type === 'object' ? Object.entries(properties ?? {}).map(([key, value]) => ({ key: `${at} ${key}`, value })) : [],
);

describe('an editor', () => {
  it('has a sentence for every section, kind and field, and every key inside a value', () => {
    expect(keys.length).toBeGreaterThan(300);
    for (const { key, value } of keys) expect(sentenceOf(value), key).toMatch(/^\S.*\.$/s);
    for (const { name, says, kinds } of sections) {
      expect(says).toMatch(/\.$/);
      const listed = kinds === null ? [] : kindsIn(name);
      expect(listed.map(([kind]) => kind)).toEqual(Object.keys(kinds ?? {}));
      for (const [, sentence] of listed) expect(sentence).toMatch(/\S/);
    }
  });

  it('may leave every field unknown or blank; only what names the thing itself may not', () => {
    const never = keys.filter(({ value }) => {
      const check = validator({ ...value, $defs: schema.$defs! });
      return check('unknown') !== null || check(null) !== null;
    });
    const names = new Set(never.map(({ key }) => key.replace(/^\S*\//, '').replace(/^\d+ /, '')));
    // The id of a plug, and the plug or stop that is opened.
    expect([...names].sort()).toEqual(['at', 'plug']);
  });
});

function sentenceOf(value: Json): string {
  const { description, $ref } = value as { description?: string; $ref?: string };
  if (description !== undefined || $ref === undefined) return description ?? '';
  const name = $ref.replace('#/$defs/', '');
  return sentenceOf((schema.$defs as Record<string, Json>)[name]!);
}

function kindsIn(section: string): readonly (readonly [string, string])[] {
  const found = [...schemasIn('', (schema.$defs as Record<string, Json>)[section]!)].find(([at]) =>
    at.endsWith('/properties/kind'),
  );
  const choices = (found?.[1].anyOf ?? []) as readonly { const?: string | null; description: string }[];
  return choices.flatMap((c) => (typeof c.const === 'string' ? [[c.const, c.description] as const] : []));
}
