import { describe, expect, it } from 'vitest';
import { surgeModes } from '../../src/surge/surge-modes.ts';
import type { SurgeNetwork } from '../../src/surge/surge-network.ts';
import { surgeRun } from '../../src/surge/surge-run.ts';
import { wave1x200 } from '../../src/surge/wave-presets.ts';
import { modesOf } from './modes-of.ts';

const wire = (from: number, to: number, resistanceOhm = 1e-3, inductanceH = 1e-6) => ({
  from,
  to,
  resistanceOhm,
  inductanceH,
});

const plain: SurgeNetwork = {
  nodeCount: 3,
  branches: [wire(0, 1), wire(1, 2), wire(0, 2)],
  mutualH: null,
  earth: { nodes: [2], resistanceOhm: [10] },
};

/** Own inductances of 1 uH. */
const coupled = (shares: readonly number[]) => {
  const [a, b, c] = shares as [number, number, number];
  return { ...plain, mutualH: Float64Array.of(1, a, b, a, 1, c, b, c, 1).map((share) => share * 1e-6) };
};

describe('a network that cannot be solved', () => {
  it('names the nodes that no metal joins to an electrode', () => {
    const island = { ...plain, nodeCount: 6, branches: [...plain.branches, wire(4, 5)] };
    expect(surgeModes(island)).toEqual({ ok: false, reason: 'no way to earth', nodes: [3, 4, 5], branches: [] });
    const nothing = surgeModes({ ...plain, earth: { nodes: [], resistanceOhm: [] } });
    expect(nothing).toEqual({ ok: false, reason: 'no way to earth', nodes: [0, 1, 2], branches: [] });
  });

  it('names the two branches that are coupled more tightly than metal can be', () => {
    const reason = 'inductance not positive definite';
    expect(surgeModes(coupled([0.2, 1.01, 0.1]))).toEqual({ ok: false, reason, nodes: [], branches: [0, 2] });
    expect(surgeModes(coupled([1, 0, 0]))).toEqual({ ok: false, reason, nodes: [], branches: [0, 1] });
    // no two by themselves, but all three
    expect(surgeModes(coupled([-0.6, -0.6, -0.6]))).toMatchObject({ ok: false, reason });
    expect(surgeModes(coupled([0.9, 0.9, 0.9]))).toMatchObject({ ok: true });
  });

  it('names a joint without inductance that is coupled, and takes one that is not', () => {
    const branches = [wire(0, 1), wire(1, 2, 1e-3, 0), wire(0, 2)];
    const matrix = (mutual: number) =>
      Float64Array.of(1, mutual, 0, mutual, 0, 0, 0, 0, 1).map((microhenry) => microhenry * 1e-6);
    const reason = 'inductance not positive definite';
    expect(surgeModes({ ...plain, branches, mutualH: matrix(0.1) })).toMatchObject({ reason, branches: [0, 1] });
    expect(surgeModes({ ...plain, branches, mutualH: matrix(0) })).toMatchObject({ ok: true });
  });

  it('names the two electrodes that feel each other more than themselves, and one without resistance', () => {
    const reason = 'earth not positive definite';
    const earth = (ohms: number[][]) => ({ ...plain, earth: { nodes: [2, 0], resistanceOhm: ohms } });
    expect(surgeModes(earth([[10, 10.1], [10.1, 10]]))).toMatchObject({ ok: false, reason, nodes: [2, 0] }); // biome-ignore format: one matrix
    const none = { nodes: [2, 1], resistanceOhm: [10, 0] };
    expect(surgeModes({ ...plain, earth: none })).toMatchObject({ ok: false, reason, nodes: [1] });
  });
});

describe('what no site can lead to is a RangeError', () => {
  it.each([
    ['no node 7', { ...plain, branches: [wire(0, 7)] }],
    ['no node 9', { ...plain, earth: { nodes: [9], resistanceOhm: [1] } }],
    ['-1 is no resistance in ohm', { ...plain, branches: [wire(0, 1, -1)] }],
    ['NaN is no inductance in henry', { ...plain, branches: [wire(0, 1, 1, Number.NaN)] }],
    ['a branch of nothing: its two ends are one node', { ...plain, branches: [wire(0, 1, 0, 0)] }],
    ['one row for each electrode', { ...plain, earth: { nodes: [2], resistanceOhm: [1, 2] } }],
    ['one row of inductances for each branch', { ...plain, mutualH: new Float64Array(4) }],
    ['branch 0 has 0.000001 H of its own, the matrix has 0', { ...plain, mutualH: new Float64Array(9) }],
    ['inductances are lopsided at 1, 0', { ...plain, mutualH: Float64Array.of(1e-6, 0, 0, 1e-7, 1e-6, 0, 0, 0, 1e-6) }],
    ['earth matrix is lopsided at 1, 0', { ...plain, earth: { nodes: [2, 1], resistanceOhm: [[3, 1], [2, 3]] } }], // biome-ignore format: one matrix
  ])('%s', (text, network) => {
    expect(() => surgeModes(network)).toThrow(new RangeError(text));
  });

  it('says what is wrong with a source', () => {
    const modes = modesOf(plain);
    const run = (node: number, peakA: number) => () =>
      surgeRun(modes, { node, wave: { ...wave1x200(1), peakA }, channelH: null }, { untilS: 1e-5 });
    expect(run(5, 1e3)).toThrow(new RangeError('no node 5 to strike'));
    expect(run(0, 0)).toThrow(RangeError);
    expect(run(0, 1e12)).toThrow(new RangeError('a peak of 1000000000000 A is beyond any stroke (1000000 A)'));
    expect(run(0, 1e3)).not.toThrow();
    const endless = () => surgeRun(modes, { node: 0, wave: wave1x200(1), channelH: null }, { untilS: 0 });
    expect(endless).toThrow(new RangeError('0 s is no time to run'));
    const short = () =>
      surgeRun(modes, { node: 0, wave: wave1x200(1), channelH: new Float64Array(2) }, { untilS: 1e-5 });
    expect(short).toThrow(new RangeError('one mutual inductance for each branch'));
  });
});
