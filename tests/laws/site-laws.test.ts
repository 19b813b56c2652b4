/** Laws of a site's bonding, each held against the plainest way to work the same thing out: change the file and look again. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { bondingOf } from '../../src/bonding/bonding-of.ts';
import { membersOf } from '../../src/bonding/members.ts';
import { dcOf } from '../../src/network/dc-of.ts';
import { follow, nodesOf, plainOf, sizeOf } from './plain-metal.ts';
import {
  docOf,
  isSpanBySpan,
  isTapped,
  type Members,
  runs,
  type Spec,
  siteOfSpec,
  siteOfText,
  specs,
  textOf,
  withWires,
} from './small-sites.ts';

/** Points that a bond may be added between, by the part that they belong to. */
const ends = [
  'R1',
  'R2',
  'R3',
  'bar',
  'bar2',
  'panel',
  'sub',
  'box',
  'mast@base',
  'mast@top',
  'mast@5 m',
  'beam',
  'a1',
];
const partOf = (point: string) => point.split('@')[0]!;
const allPairs = ends.flatMap((a) => ends.filter((b) => partOf(a) !== partOf(b)).map((b) => [a, b] as const));
const pairs = fc.constantFrom(...allPairs);

function withBond(spec: Spec, [from, to]: readonly [string, string], more: Readonly<Record<string, unknown>> = {}) {
  return siteOfText(textOf(spec.service, withWires(docOf(spec), { added: { from, to, ...more } })));
}

test('groups are what bonds lead to, and each part stands in one', () => {
  fc.assert(
    fc.property(specs, (spec) => {
      const plain = plainOf(siteOfSpec(spec));
      const { groups, groupOf } = plain.run.bonding;
      expect(groups.flatMap((g) => g.parts).sort()).toEqual([...plain.members.keys()].sort());
      for (const { id, parts } of groups) {
        for (const part of parts) expect(groupOf.get(part)).toBe(id);
        const single = parts.filter((part) => plain.members.get(part)!.length === 1 || part === 'mast');
        const reached = single.length === 0 ? null : follow(plain, nodesOf(plain, [single[0]!]));
        if (reached === null) continue;
        for (const part of parts) expect(nodesOf(plain, [part]).some((node) => reached.has(node))).toBe(true);
        for (const part of [...plain.members.keys()].filter((m) => !parts.includes(m))) {
          const own = nodesOf(plain, [part]);
          // What several things land on without being joined stands in one of their groups.
          if (own.length === 1 || part === 'mast') expect(own.some((node) => reached.has(node))).toBe(false);
        }
      }
    }),
    runs,
  );
});

test('a bond within a group adds no weak point, and no loss to one', () => {
  fc.assert(
    fc.property(specs, fc.nat(), (spec, pick) => {
      const before = bondingOf(siteOfSpec(spec), null).bonding;
      const groupOf = (point: string) => before.groupOf.get(partOf(point));
      const within = allPairs.filter(([a, b]) => groupOf(a) !== undefined && groupOf(a) === groupOf(b));
      fc.pre(within.length > 0);
      const pair = within[pick % within.length]!;
      const after = bondingOf(withBond(spec, pair), null).bonding;
      const was = new Map(before.weakPoints.map((w) => [w.at, w]));
      for (const weak of after.weakPoints) {
        const { at, losesService, losesEarth } = weak;
        const lost = was.get(at) ?? { losesService: [], losesEarth: [] };
        if (isSpanBySpan(spec, at)) {
          // Reported with its worst span: which of two equals is a choice.
          expect(sizeOf(weak), at).toBeLessThanOrEqual(sizeOf(lost));
          continue;
        }
        expect(lost.losesService, `${at} loses the service`).toEqual(expect.arrayContaining([...losesService]));
        expect(lost.losesEarth, `${at} loses earth`).toEqual(expect.arrayContaining([...losesEarth]));
      }
    }),
    runs,
  );
});

test('a bond between any two parts never adds a group, and takes nothing off the service or off earth', () => {
  fc.assert(
    fc.property(specs, pairs, (spec, pair) => {
      const before = bondingOf(siteOfSpec(spec), null).bonding;
      const after = bondingOf(withBond(spec, pair), null).bonding;
      expect(after.groups.length).toBeLessThanOrEqual(before.groups.length);
      for (const kind of ['bonds', 'bondsAndShields', 'bondsAndCords', 'perhaps'] as const) {
        for (const id of before.serviceBy[kind]) expect(after.serviceBy[kind].has(id), `${id} ${kind}`).toBe(true);
      }
      for (const id of before.earthBy.bonds) expect(after.earthBy.bonds.has(id)).toBe(true);
      for (const id of after.unbondedElectrodes ?? []) expect(before.unbondedElectrodes).toContain(id);
    }),
    runs,
  );
});

test('a bond between any two parts raises no resistance to earth', () => {
  const figures = fc.constantFrom({ resistance: '0 ohm', joints: 'none' }, { resistance: '2 ohm' }, {});
  fc.assert(
    fc.property(specs, pairs, figures, (spec, pair, more) => {
      const before = dcOf(bondingOf(siteOfSpec(spec), null)).earth.ofPart;
      const after = dcOf(bondingOf(withBond(spec, pair, more), null)).earth.ofPart;
      for (const [part, was] of before) {
        const is = after.get(part)!;
        expect(is, part).toBeDefined();
        expect(is.low, `${part} low`).toBeLessThanOrEqual(was.low * (1 + 1e-9));
        expect(is.high, `${part} high`).toBeLessThanOrEqual(was.high * (1 + 1e-9));
        // A likely figure stands for unknown ties within a hundredth.
        if (was.value !== null && is.value !== null) expect(is.value, part).toBeLessThanOrEqual(was.value * 1.01);
      }
    }),
    runs,
  );
});

test('renaming and reordering change nothing but names, order and the choice among equals', () => {
  const turned = fc.tuple(specs, fc.infiniteStream(fc.nat({ max: 99 })));
  fc.assert(
    fc.property(turned, ([spec, numbers]) => {
      const doc = docOf(spec);
      const ids = [...new Set(Object.values(doc).flatMap((members) => Object.keys(members)))];
      const shuffled = [...ids].map((id) => [numbers.next().value!, id] as const).sort(([a], [b]) => a - b);
      const newName = new Map(shuffled.map(([, id], i) => [id, `n${String(i).padStart(2, '0')}n`]));
      const oldName = new Map([...newName].map(([id, name]) => [name, id]));
      const rename = (text: string) => text.replace(/[a-z]+\d?/gi, (word) => newName.get(word) ?? word);
      const back = (text: string) => text.replace(/n\d\dn/g, (name) => oldName.get(name)!);
      const turn = (members: object) =>
        Object.fromEntries(
          Object.entries(members)
            .map(([id, fields]) => [newName.get(id)!, renamed(fields, rename)] as const)
            .sort(() => (numbers.next().value! % 2 === 0 ? 1 : -1)),
        );
      const other = Object.fromEntries(
        Object.entries(doc).map(([section, members]) => [section, turn(members) as Members]),
      );
      const one = whatStands(siteOfSpec(spec), (text) => text);
      const two = whatStands(siteOfText(textOf(newName.get(spec.service) ?? spec.service, other)), back);
      // Three wires that meet in the air are drawn to the nearest part: a choice among equals.
      const ties = isTapped(spec) ? { ties: [] } : {};
      expect({ ...two.words, ...ties }).toEqual({ ...one.words, ...ties });
      expect([...two.figures.keys()].sort()).toEqual([...one.figures.keys()].sort());
      for (const [key, figure] of one.figures) expect(two.figures.get(key), key).toSatisfy(near(figure));
    }),
    runs,
  );
});

/** Names stand where points, ids and lists of them do; kinds, words and figures stay. */
function renamed(value: unknown, rename: (text: string) => string, key = ''): unknown {
  const naming = ['from', 'to', 'on', 'passes', 'path', 'joints'];
  if (typeof value === 'string') return naming.includes(key) && !keep.has(value) ? rename(value) : value;
  if (Array.isArray(value)) return value.map((item) => renamed(item, rename, key));
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([k, item]) => [k, renamed(item, rename, k)]));
}
const keep: ReadonlySet<string> = new Set(['none', 'bolted lug', 'rod clamp', 'twist']);

const near = (figure: number) => (other: unknown) =>
  other === figure || Math.abs((other as number) - figure) <= 1e-9 * Math.abs(figure);

/** Everything that must not hang on names and order. */
function whatStands(site: ReturnType<typeof siteOfSpec>, back: (text: string) => string) {
  const run = bondingOf(site, null);
  const { bonding } = run;
  const named = (ids: readonly string[] | null) => ids?.map(back).sort() ?? null;
  // What several things land on without being joined stands in one of their groups: a choice among equals.
  const members = membersOf(run.metal);
  const isOne = (id: string) => members.get(id)!.length === 1 || back(id) === 'mast' || back(id) === 'crank';
  const single = (ids: readonly string[]) => ids.filter(isOne);
  const sorted = (list: readonly unknown[]) => list.map((item) => JSON.stringify(item)).sort();
  const { earth } = dcOf(run);
  const words = {
    service: bonding.service.part === null ? null : back(bonding.service.part),
    groups: sorted(
      bonding.groups
        .filter((g) => g.parts.some(isOne))
        .map((g) => ({
          ...g,
          id: '',
          byFeeder: [],
          parts: named(single(g.parts)),
          electrodes: named(g.electrodes),
        })),
    ),
    unbonded: named(bonding.unbondedElectrodes),
    perhaps: sorted(bonding.perhapsUnbonded.map((p) => [back(p.electrode), named(p.decidedBy)])),
    weak: sorted(bonding.weakPoints.map((w) => [back(w.at), w.kind, w.losesService.length + w.losesEarth.length])),
    ways: sorted(
      bonding.ways.map((w) => [
        back(w.part),
        ...[w.toElectrode, w.toService].map((way) => way && [way.lengthAtLeastM, way.lengthM === null]),
        named(w.perhaps.toElectrode),
        named(w.perhaps.toService),
      ]),
    ),
    alone: named(bonding.tiedToNothing),
    ties: sorted(bonding.ties.map((t) => [named([t.a, t.b]), t.kind, t.is, back(t.part)])),
    reach: sorted(bonding.reach.map((r) => [back(r.part), sorted(r.by.map((by) => [back(by.line), back(by.from)]))])),
    lines: sorted(
      bonding.lines.map((l) => [
        back(l.id),
        l.conductors.map((c) => [c.which, named(c.bondedAt), named(c.protectedBy), named(c.drainedBy)]),
      ]),
    ),
    openEnds: sorted([...bonding.openEnds.values()].map((fields) => named(fields))),
    service2: Object.values(bonding.serviceBy).map((ids) => named([...ids])),
    earth: Object.values(bonding.earthBy).map((ids) => named([...ids])),
  };
  const figures = new Map<string, number>();
  for (const [part, { low, high, value }] of earth.ofPart) {
    figures
      .set(`${back(part)} low`, low)
      .set(`${back(part)} high`, high)
      .set(`${back(part)} value`, value ?? -1);
  }
  for (const [id, share] of earth.currentShare) figures.set(`${back(id)} share`, share);
  return { words, figures };
}
