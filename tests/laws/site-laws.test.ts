/** Laws of a site's bonding, each held against the plainest way to work the same thing out: change the file and look again. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { WeakPoint } from '../../src/bonding/bonding.ts';
import { bondingOf } from '../../src/bonding/bonding-of.ts';
import { membersOf } from '../../src/bonding/members.ts';
import { withLost } from '../../src/bonding/without.ts';
import { dcOf } from '../../src/network/dc-of.ts';
import {
  electrodesOf,
  follow,
  type Gone,
  membersAmong,
  nodesOf,
  type Plain,
  plainOf,
  serviceOf,
} from './plain-metal.ts';
import { docOf, type Members, type Spec, siteOfSpec, siteOfText, specs, textOf, withWires } from './small-sites.ts';

/** Each run reads and works out several sites. */
const few = { numRuns: Number(process.env.LAW_RUNS ?? 25) };
const runs = { numRuns: Number(process.env.LAW_RUNS ?? 60) };

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
      for (const { at, losesService, losesEarth } of after.weakPoints) {
        const lost = was.get(at);
        expect(lost?.losesService ?? [], `${at} loses the service`).toEqual(expect.arrayContaining([...losesService]));
        expect(lost?.losesEarth ?? [], `${at} loses earth`).toEqual(expect.arrayContaining([...losesEarth]));
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
      expect(two.words).toEqual(one.words);
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
      bonding.groups.map((g) => ({
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

/** Everything that can fail by itself: what goes with it, by place; a wire has one place for each of its spans. */
function failures({ run, members, edges }: Plain): ReadonlyMap<string, readonly Gone[]> {
  const all = new Map<string, readonly Gone[]>();
  run.graph.forEachNode((node, { kind }) => {
    if (kind === 'joint' || (kind !== 'landing' && members.get(node)?.length === 1))
      all.set(node, [{ nodes: new Set([node]) }]);
  });
  for (const [id, nodes] of members) {
    const own = id === 'mast' || (id === 'crank' && nodes.length > 1) ? nodes : nodes.filter((node) => node === id);
    if (nodes.length > 1) all.set(id, [{ nodes: new Set(own) }]);
  }
  for (const [edge, , , tie] of edges) {
    const isWire = (/^c\d/.test(tie.part) && tie.body === 'span') || tie.kind === 'feeder';
    if (isWire && !tie.part.includes(':')) all.set(tie.part, [...(all.get(tie.part) ?? []), { edge }]);
  }
  return all;
}

/** Members that reach a root and do not without what is gone; that itself is not counted. */
function lostWith(plain: Plain, roots: readonly string[], gone: Gone): readonly string[] {
  const starts = nodesOf(plain, roots);
  const before = membersAmong(plain, follow(plain, starts, gone.possible === true ? { possible: true } : {}));
  const after = new Set(membersAmong(plain, follow(plain, starts, gone)));
  const isGone = (id: string) => plain.members.get(id)!.every((node) => gone.nodes?.has(node) === true);
  return before.filter((id) => !after.has(id) && !isGone(id));
}

type Losses = Pick<WeakPoint, 'losesService' | 'losesEarth'>;

function lossesOf(plain: Plain, at: string, gone: Gone): Losses {
  const service = serviceOf(plain);
  return {
    losesService: service.includes(at) ? [] : lostWith(plain, service, gone),
    losesEarth: lostWith(plain, electrodesOf(plain), gone),
  };
}

const sizeOf = ({ losesService, losesEarth }: Losses) => losesService.length + losesEarth.length;

test('a weak point takes off what it says when it is taken away, and what is none takes off nothing', () => {
  fc.assert(
    fc.property(specs, (spec) => {
      const plain = plainOf(siteOfSpec(spec));
      const reported = new Map(plain.run.bonding.weakPoints.map((w) => [w.at, w]));
      for (const [at, places] of failures(plain)) {
        const tried = places.map((gone) => lossesOf(plain, at, gone));
        const worst = Math.max(...tried.map(sizeOf));
        const weak = reported.get(at);
        expect(weak === undefined ? 0 : sizeOf(weak), at).toBe(worst);
        if (weak === undefined) continue;
        const fitting = places.filter((_gone, i) => sizeOf(tried[i]!) === worst);
        const { losesService, losesEarth } = weak;
        expect(tried, at).toContainEqual({ losesService, losesEarth });
        expect(
          fitting.map((gone) => isCertain(plain, at, gone)),
          `${at} certain`,
        ).toContain(weak.certain);
        reported.delete(at);
      }
      expect([...reported.keys()]).toEqual([]);
    }),
    runs,
  );
});

/** Whether all of it is lost with every tie that may be there, too. */
function isCertain(plain: Plain, at: string, gone: Gone): boolean {
  const known = lossesOf(plain, at, gone);
  const possible = lossesOf(plain, at, { ...gone, possible: true });
  const holds = (some: readonly string[], all: readonly string[]) => some.every((id) => all.includes(id));
  return holds(known.losesService, possible.losesService) && holds(known.losesEarth, possible.losesEarth);
}

test('the file without a weak point falls apart as it says', () => {
  fc.assert(
    fc.property(specs, (spec) => {
      const site = siteOfSpec(spec);
      const plain = plainOf(site);
      const reported = new Map(plain.run.bonding.weakPoints.map((w) => [w.at, w]));
      const before = reachedBy(plain);
      const passing = new Set(spec.wires.flatMap((w, i) => (w.passes === null ? [] : [`c${i}`])));
      // Points of a crank and rods of a group are parts of a part: the file loses all of it at once.
      const whole = [...failures(plain).keys()].filter((at) => !/^(crank|rods)/.test(at) && !passing.has(at));
      for (const at of whole) {
        const lost = withLost(site, null, [at]);
        const then = plainOf(lost.site, lost.state);
        const after = reachedBy(then);
        // A rod of a group that nobody joined, or a point of a mast, may be there only for what landed on it.
        const gone = (was: readonly string[], is: readonly string[]) =>
          was.filter((id) => id !== at && then.members.has(id) && !is.includes(id));
        const isService = serviceOf(plain).includes(at);
        const { losesService, losesEarth } = reported.get(at) ?? { losesService: [], losesEarth: [] };
        const left = (ids: readonly string[]) => ids.filter((id) => then.members.has(id));
        if (!isService) expect(gone(before.service, after.service), `${at} service`).toEqual(left(losesService));
        expect(gone(before.earth, after.earth), `${at} earth`).toEqual(left(losesEarth));
      }
    }),
    few,
  );
});

function reachedBy(plain: Plain) {
  const reached = (roots: readonly string[]) => membersAmong(plain, follow(plain, nodesOf(plain, roots)));
  return { service: reached(serviceOf(plain)), earth: reached(electrodesOf(plain)) };
}

test('what is unknown: tried out with every setting, the answers are those that are given, and the named fields decide', () => {
  fc.assert(
    fc.property(specs, (drawn) => {
      // A wire that lands on rods nobody joined lands on one of them; which one is no field of the file.
      const joined = drawn.joined === 'no' && drawn.wires.some(({ from, to }) => from === 'rods' || to === 'rods');
      const spec = joined ? { ...drawn, joined: 'yes' } : drawn;
      const doc = fewUnknown(docOf(spec), 5);
      const fields = unknownFields(doc);
      const { bonding } = bondingOf(siteOfText(textOf(spec.service, doc)), null);
      const settings = Array.from({ length: 2 ** fields.length }, (_, bits) => unbondedIn(spec, doc, fields, bits));
      if (settings.every((set) => set === null)) {
        expect([[], null]).toContainEqual(bonding.unbondedElectrodes);
        return;
      }
      const electrodes = [...new Set(settings.flatMap((set) => [...set!.all]))].sort();
      const out = (id: string) => settings.map((set) => set!.unbonded.has(id));
      expect(bonding.unbondedElectrodes).toEqual(electrodes.filter((id) => out(id).every(Boolean)));
      const some = electrodes.filter((id) => out(id).some(Boolean) && !out(id).every(Boolean));
      expect(bonding.perhapsUnbonded.map(({ electrode }) => electrode)).toEqual(some);
      for (const { electrode, decidedBy } of bonding.perhapsUnbonded) {
        expect(fields, electrode).toEqual(expect.arrayContaining([...decidedBy]));
        const bits = decidedBy.reduce((mask, field) => mask | (1 << fields.indexOf(field)), 0);
        const answers = out(electrode);
        // Settings that agree in the named fields agree in the answer.
        for (const [i, answer] of answers.entries()) {
          expect(answers[i & bits], `${electrode} by ${decidedBy}`).toBe(answer);
        }
      }
    }),
    few,
  );
});

/** Paths of what is unknown in the file and decides a tie. That nobody says how the sections of a crank-up meet is typed by leaving it out. */
function unknownFields(doc: ReturnType<typeof docOf>): readonly string[] {
  const paths = Object.entries(doc).flatMap(([section, members]) =>
    Object.entries(members).flatMap(([id, fields]) =>
      Object.entries(fields)
        .filter(([field, value]) => value === 'unknown' && field !== 'joined')
        .map(([field]) => `${section}.${id}.${field}`),
    ),
  );
  const crank = doc.supports!.crank!;
  return crank.sections === undefined ? [...paths, 'supports.crank.sections'] : paths;
}

/** The same file with what is unknown beyond so many fields set to yes. */
function fewUnknown(doc: ReturnType<typeof docOf>, most: number) {
  return unknownFields(doc)
    .slice(most)
    .reduce((held, path) => withField(held, path, true), doc);
}

function withField(doc: ReturnType<typeof docOf>, path: string, isYes: boolean): ReturnType<typeof docOf> {
  const [section, id, field] = path.split('.') as [string, string, string];
  const values = field === 'sections' ? ['bolted', 'sliding'] : ['yes', 'no'];
  const more = { [field]: isYes ? values[0] : values[1], ...(field === 'sections' && !isYes ? { jumpers: 'no' } : {}) };
  return { ...doc, [section]: { ...doc[section], [id]: { ...doc[section]![id], ...more } } };
}

/** Electrodes that the bonds of one setting do not tie to the service; null with no service known. */
function unbondedIn(spec: Spec, doc: ReturnType<typeof docOf>, fields: readonly string[], bits: number) {
  const set = fields.reduce((held, path, i) => withField(held, path, ((bits >> i) & 1) === 1), doc);
  const plain = plainOf(siteOfText(textOf(spec.service, set)));
  if (plain.run.bonding.service.is !== 'known') return null;
  const reached = new Set(membersAmong(plain, follow(plain, nodesOf(plain, serviceOf(plain)))));
  const all = electrodesOf(plain);
  return { all, unbonded: new Set(all.filter((id) => !reached.has(id))) };
}
