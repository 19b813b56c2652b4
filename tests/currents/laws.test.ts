import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { differenceV, flow } from '../../src/currents/flow.ts';
import type { Branch, Network } from '../../src/currents/network.ts';
import { resistanceBetween, resistancesToEarth } from '../../src/currents/resistance.ts';
import { solve } from './networks.ts';

/** From a joint of 10 micro-ohms to rock of 5 megohms. */
const ohms = fc.double({ min: Math.log(1e-5), max: Math.log(5e6), noNaN: true }).map((x) => Math.exp(x));

const networks: fc.Arbitrary<Network> = fc.integer({ min: 2, max: 12 }).chain((nodeCount) => {
  const node = fc.nat(nodeCount - 1);
  return fc.record({
    nodeCount: fc.constant(nodeCount),
    branches: fc.array(fc.record({ from: node, to: node, resistanceOhm: ohms }), { maxLength: 24 }),
    earth: fc
      .array(fc.tuple(node, ohms), { minLength: 1, maxLength: 4 })
      .map((all) => ({ nodes: all.map(([at]) => at), resistanceOhm: all.map(([, ohm]) => ohm) })),
  });
});

const withTwoNodes = networks.chain((of) =>
  fc.record({ of: fc.constant(of), a: fc.nat(of.nodeCount - 1), b: fc.nat(of.nodeCount - 1) }),
);

const near = (a: number | null, b: number | null, share = 1e-12): void => {
  if (a === null || b === null) expect(a).toBe(b);
  else expect(Math.abs(a - b)).toBeLessThanOrEqual(share * Math.max(Math.abs(a), Math.abs(b)));
};

describe('laws that every network keeps', () => {
  it('what goes in comes out, at every node and through the soil', () => {
    fc.assert(
      fc.property(withTwoNodes, ({ of, a }) => {
        const flowed = flow(solve(of), [{ node: a, currentA: 3 }]);
        expect(flowed.residual).toBeLessThan(1e-14);
        if (flowed.stranded.length > 0) return;
        near(
          flowed.earthA.reduce((sum: number, current) => sum + current!, 0),
          3,
        );
      }),
    );
  });

  it('a current into a lifts b as much as the same into b lifts a', () => {
    fc.assert(
      fc.property(withTwoNodes, ({ of, a, b }) => {
        const solved = solve(of);
        const lifted = flow(solved, [{ node: a, currentA: 1 }]);
        const other = flow(solved, [{ node: b, currentA: 1 }]);
        if (lifted.potentialV[b] === null || other.potentialV[a] === null) return;
        near(lifted.potentialV[b]!, other.potentialV[a]!);
      }),
    );
  });

  it('the resistances to earth of all nodes at once are those of each alone', () => {
    fc.assert(
      fc.property(withTwoNodes, ({ of, a }) => {
        const solved = solve(of);
        near(resistancesToEarth(solved)[a]!, flow(solved, [{ node: a, currentA: 1 }]).potentialV[a]!);
      }),
    );
  });

  it('one more branch never raises a resistance to earth', () => {
    fc.assert(
      fc.property(withTwoNodes, ohms, ({ of, a, b }, resistanceOhm) => {
        const more = { ...of, branches: [...of.branches, { from: a, to: b, resistanceOhm }] };
        const before = resistancesToEarth(solve(of));
        for (const [node, after] of resistancesToEarth(solve(more)).entries()) {
          if (before[node] !== null) expect(after!).toBeLessThanOrEqual(before[node]! * (1 + 1e-15));
        }
      }),
    );
  });

  it('all resistances times k give k times every resistance and the same currents', () => {
    fc.assert(
      fc.property(withTwoNodes, fc.double({ min: 1e-3, max: 1e3, noNaN: true }), ({ of, a, b }, k) => {
        const scaled: Network = {
          nodeCount: of.nodeCount,
          branches: of.branches.map((branch) => ({ ...branch, resistanceOhm: branch.resistanceOhm * k })),
          earth: { ...of.earth, resistanceOhm: of.earth.resistanceOhm.map((ohm) => (ohm as number) * k) },
        };
        const [plain, other] = [solve(of), solve(scaled)];
        const between = resistanceBetween(plain, a, b);
        near(resistanceBetween(other, a, b), between === null ? null : between * k);
        const currents = flow(plain, [{ node: a, currentA: 1 }]).branchA;
        for (const [at, current] of flow(other, [{ node: a, currentA: 1 }]).branchA.entries()) {
          if (current === null) expect(currents[at]).toBeNull();
          else expect(Math.abs(current - currents[at]!)).toBeLessThan(1e-12);
        }
      }),
    );
  });

  it('a branch cut in two at a new node changes nothing', () => {
    fc.assert(
      fc.property(
        withTwoNodes,
        fc.nat(),
        fc.double({ min: 0.01, max: 0.99, noNaN: true }),
        ({ of, a, b }, pick, cut) => {
          fc.pre(of.branches.length > 0);
          const at = pick % of.branches.length;
          const whole = of.branches[at]!;
          const first: Branch = { from: whole.from, to: of.nodeCount, resistanceOhm: whole.resistanceOhm * cut };
          const second: Branch = { from: of.nodeCount, to: whole.to, resistanceOhm: whole.resistanceOhm * (1 - cut) };
          const branches = [...of.branches.filter((_, index) => index !== at), first, second];
          const split = { ...of, nodeCount: of.nodeCount + 1, branches };
          near(resistanceBetween(solve(split), a, b), resistanceBetween(solve(of), a, b));
          near(resistancesToEarth(solve(split))[a]!, resistancesToEarth(solve(of))[a]!);
        },
      ),
    );
  });

  it('other numbers for the nodes change nothing', () => {
    fc.assert(
      fc.property(withTwoNodes, fc.nat(), ({ of, a, b }, turn) => {
        const renumber = (node: number): number => of.nodeCount - 1 - ((node + turn) % of.nodeCount);
        const other: Network = {
          nodeCount: of.nodeCount,
          branches: of.branches
            .map(({ from, to, resistanceOhm }) => ({ from: renumber(to), to: renumber(from), resistanceOhm }))
            .reverse(),
          earth: { ...of.earth, nodes: of.earth.nodes.map(renumber) },
        };
        near(resistanceBetween(solve(other), renumber(a), renumber(b)), resistanceBetween(solve(of), a, b));
        near(resistancesToEarth(solve(other))[renumber(a)]!, resistancesToEarth(solve(of))[a]!);
      }),
    );
  });

  it('a difference of potential is current times resistance, however small', () => {
    fc.assert(
      fc.property(withTwoNodes, ({ of, a, b }) => {
        const solved = solve(of);
        const flowed = flow(solved, [
          { node: a, currentA: 1 },
          { node: b, currentA: -1 },
        ]);
        near(differenceV(solved, flowed, a, b), resistanceBetween(solved, a, b), 1e-14);
      }),
    );
  });
});
