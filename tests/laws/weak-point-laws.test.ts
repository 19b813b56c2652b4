/** Weak points, each held against the plainest way to find them: take it away and look who is cut off. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { withLost } from '../../src/bonding/without.ts';
import {
  electrodesOf,
  follow,
  type Gone,
  type Losses,
  membersAmong,
  nodesOf,
  type Plain,
  plainOf,
  serviceOf,
  sizeOf,
} from './plain-metal.ts';
import { few, isSpanBySpan, runs, siteOfSpec, specs } from './small-sites.ts';

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

function lossesOf(plain: Plain, at: string, gone: Gone): Losses {
  const service = serviceOf(plain);
  return {
    losesService: service.includes(at) ? [] : lostWith(plain, service, gone),
    losesEarth: lostWith(plain, electrodesOf(plain), gone),
  };
}

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
      // Points of a crank and rods of a group are parts of a part: the file loses all of it at once.
      const whole = [...failures(plain).keys()].filter((at) => !/^(crank|rods)/.test(at) && !isSpanBySpan(spec, at));
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
