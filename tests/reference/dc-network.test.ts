import { describe, expect, it } from 'vitest';
import type { Network } from '../../src/currents/network.ts';
import { resistanceBetween, resistancesToEarth } from '../../src/currents/resistance.ts';
import { oneAmpere, solve } from '../currents/networks.ts';
import { findPython } from './python.ts';

interface Asked {
  readonly nodeCount: number;
  readonly branches: readonly (readonly [number, number, number])[];
  readonly electrodes: readonly number[];
  readonly earth: readonly (readonly number[])[];
  readonly into: number;
  readonly pair: readonly [number, number];
}

interface Answer {
  readonly potentials: readonly number[];
  readonly branches: readonly number[];
  readonly electrodes: readonly number[];
  readonly toEarth: readonly number[];
  readonly between: number;
}

/** Numbers from 0 to 1, the same in every run (Lehmer, 2^31 - 1). */
function numbers(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state * 48271) % 2147483647;
    return state / 2147483647;
  };
}

/** A random tree and as many more branches as asked, resistances spread evenly by their logarithm. */
function randomNetwork(seed: number, nodeCount: number, more: number, lowOhm: number, spread: number): Asked {
  const next = numbers(seed);
  const ohm = (): number => lowOhm * spread ** next();
  const node = (): number => Math.floor(next() * nodeCount);
  const tree = Array.from(
    { length: nodeCount - 1 },
    (_, at) => [Math.floor(next() * (at + 1)), at + 1, ohm()] as const,
  );
  const rest = Array.from({ length: more }, () => [node(), node(), ohm()] as const);
  const electrodes = Array.from({ length: 1 + Math.floor(next() * 4) }, node);
  const own = electrodes.map(ohm);
  const isCoupled = next() < 0.5;
  // less than 1 / 4 of the geometric mean each: positive definite with up to four
  const earth = own.map((a, i) => own.map((b, j) => (i === j ? a : isCoupled ? 0.24 * Math.sqrt(a * b) : 0)));
  return { nodeCount, branches: [...tree, ...rest], electrodes, earth, into: node(), pair: [node(), node()] };
}

function asNetwork({ nodeCount, branches, electrodes, earth }: Asked): Network {
  const isCoupled = earth.some((row, i) => row.some((ohm, j) => i !== j && ohm !== 0));
  return {
    nodeCount,
    branches: branches.map(([from, to, resistanceOhm]) => ({ from, to, resistanceOhm })),
    earth: { nodes: electrodes, resistanceOhm: isCoupled ? earth : earth.map((row, i) => row[i]!) },
  };
}

/** Largest difference relative to `scale`, or to each figure itself where that is null. */
function gap(ours: readonly (number | null)[], theirs: readonly number[], scale: number | null): number {
  expect(ours.length).toBe(theirs.length);
  return Math.max(0, ...ours.map((own, at) => Math.abs(own! - theirs[at]!) / (scale ?? (Math.abs(theirs[at]!) || 1))));
}

function compare(asked: Asked, answer: Answer, currentScale: number | null): void {
  const solved = solve(asNetwork(asked));
  const flowed = oneAmpere(solved, asked.into);
  expect(gap(flowed.potentialV, answer.potentials, null)).toBeLessThan(1e-9);
  expect(gap(resistancesToEarth(solved), answer.toEarth, null)).toBeLessThan(1e-9);
  expect(gap([resistanceBetween(solved, ...asked.pair)], [answer.between], null)).toBeLessThan(1e-9);
  expect(gap(flowed.branchA, answer.branches, currentScale)).toBeLessThan(1e-9);
  expect(gap(flowed.earthA, answer.electrodes, currentScale)).toBeLessThan(1e-9);
  expect(flowed.residual).toBeLessThan(1e-9);
}

const scipy = findPython(['numpy', 'scipy'], 'direct-current networks against scipy');
const plain = findPython([], 'direct-current networks against exact fractions');

describe.skipIf(scipy === null)(`against scipy${scipy === null ? ' (SKIPPED: no python3 with scipy)' : ''}`, () => {
  it('agrees to 1e-9 on random networks with resistances up to 1e5 apart', () => {
    const networks = Array.from({ length: 60 }, (_, seed) =>
      randomNetwork(seed + 1, 2 + ((seed * 7) % 90), (seed * 5) % 120, 1e-3, 1e5),
    );
    const answers = scipy!.run('dc-network.py', { networks }) as readonly Answer[];
    expect(answers.length).toBe(networks.length);
    for (const [at, asked] of networks.entries()) compare(asked, answers[at]!, 1);
  });
});

describe.skipIf(plain === null)(`against exact fractions${plain === null ? ' (SKIPPED: no python3)' : ''}`, () => {
  it('agrees to 1e-9 of every figure with joints of 10 micro-ohms beside rock of 5 megohms', () => {
    const networks = Array.from({ length: 24 }, (_, seed) =>
      randomNetwork(seed + 101, 2 + (seed % 14), seed % 11, 1e-5, 5e11),
    );
    const answers = plain!.run('dc-network-exact.py', { networks }) as readonly Answer[];
    expect(answers.length).toBe(networks.length);
    for (const [at, asked] of networks.entries()) compare(asked, answers[at]!, null);
  });
});
