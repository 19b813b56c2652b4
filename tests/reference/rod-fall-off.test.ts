import { describe, expect, it } from 'vitest';
import { type FlushRod, stepShare, surfacePotential } from '../../src/electrodes/fall-off.ts';
import { slenderRod } from '../../src/electrodes/rod.ts';
import { solveBodies } from '../../src/electrodes/solve-bodies.ts';
import { potentialAt, surfacePotential as surfaceOf } from '../../src/electrodes/surface-potential.ts';
import { soilImages } from '../../src/soil/layer-images.ts';
import { layeredSoil } from '../../src/soil/layered-soil.ts';
import { findPython } from './python.ts';

const [footM, inchM] = [0.3048, 0.0254];
const paceM = 3 * footM;

/**
 * What a pace of 3 ft from a rod of 1 in spans of its potential. Print: MIL-HDBK-419A volume I (read), drawn from the form of even
 * leakage, which `even` is by hand to three digits.
 */
const rows = [
  { feet: 5, printed: 0.75, even: 0.752 },
  { feet: 10, printed: 0.68, even: 0.673 },
  { feet: 20, printed: 0.61, even: 0.604 },
  { feet: 50, printed: 0.53, even: 0.531 },
  { feet: 100, printed: 0.48, even: 0.486 },
] as const;
const rodOf = (feet: number): FlushRod => ({ lengthM: feet * footM, radiusM: inchM / 2 });

interface Solved {
  readonly ohm_per_ohm_m: number;
  readonly shares: readonly number[];
  readonly even_ohm_per_ohm_m: number;
  readonly even_shares: readonly number[];
}

const python = findPython(['numpy', 'scipy'], 'fall-off round rods against rings of charge');

describe.skipIf(python === null)('fall-off round a rod against rings of charge on its skin, by another hand', () => {
  const distancesOf = ({ lengthM }: FlushRod) => [0.1, 0.3, paceM, 2, lengthM, 3 * lengthM];
  const asked = rows.map(({ feet }) => rodOf(feet));
  const theirs = (python?.run('rod-fall-off.py', {
    rods: asked.map((rod) => [rod.lengthM, rod.radiusM, distancesOf(rod)]),
  }) ?? []) as readonly Solved[];

  it.each(rows.map((row, i) => ({ ...row, i })))('the form of even leakage: $even for $feet ft', ({ even, i }) => {
    const rod = asked[i]!;
    const step = stepShare(rod, null, paceM);
    expect(Math.abs(step / even - 1)).toBeLessThan(0.001);
    expect(step).toBeCloseTo(1 - theirs[i]!.even_shares[2]!, 9);
    expect(slenderRod({ lengthM: rod.lengthM, topM: 0 }, 2 * rod.radiusM)).toBeCloseTo(
      theirs[i]!.even_ohm_per_ohm_m,
      9,
    );
  });

  it.each(rows.map((row, i) => ({ ...row, i })))('as solved, at every distance, for $feet ft', ({ i }) => {
    const rod = asked[i]!;
    const { shares, ohm_per_ohm_m: ohm } = theirs[i]!;
    const run = { from: [0, 0, 0], to: [0, 0, rod.lengthM], radiusM: rod.radiusM, sheath: null } as const;
    const solved = solveBodies([{ runs: [run] }], soilImages(layeredSoil([1])));
    if (!solved.ok) throw new Error(solved.reason);
    expect(Math.abs(solved.aloneOhm[0]! / ohm - 1)).toBeLessThan(0.005);
    const places = Float64Array.from(distancesOf(rod).flatMap((x) => [x, 0]));
    const ours = surfaceOf(solved, [1], places);
    shares.forEach((share, k) => {
      expect(Math.abs(ours[k]! / share - 1), `${k}: ${ours[k]} ${share}`).toBeLessThan(0.005);
    });
    // what a pace spans, to a third of a per cent
    expect(Math.abs((1 - ours[2]!) / (1 - shares[2]!) - 1)).toBeLessThan(0.003);
    expect(potentialAt(solved, [1], Float64Array.of(paceM, 0, 0))[0]!).toBeCloseTo(ours[2]!, 5);
  });

  // current leaves a rod more by its foot than by its head, and the longer it is the more so: by its head the soil lies lower
  // than even leakage has it, by more than the rod itself does, and a pace spans more
  it('even leakage is 0.3 to 3 % short of the truth in what a pace spans, and the print with it', () => {
    const short = theirs.map(({ shares, even_shares: even }) => (1 - shares[2]!) / (1 - even[2]!) - 1);
    expect(short.map((share) => Number((100 * share).toFixed(1)))).toEqual([0.3, 1, 1.7, 2.5, 3]);
    for (const { ohm_per_ohm_m: ohm, even_ohm_per_ohm_m: even, shares, even_shares: evenShares } of theirs) {
      expect(ohm).toBeLessThan(even);
      expect((shares[2]! * ohm) / (evenShares[2]! * even)).toBeLessThan(ohm / even);
    }
    // right to its last digit where even leakage and the chart's reading make up for each other
    const isRight = rows.map(({ printed }, i) => Math.abs(1 - theirs[i]!.shares[2]! - printed) <= 0.005);
    expect(isRight).toEqual([true, true, true, false, false]);
  });

  it('the soil by the form of even leakage is that of a line of current', () => {
    for (const [i, rod] of asked.entries()) {
      const at = surfacePotential(rod, paceM);
      expect(at / theirs[i]!.even_ohm_per_ohm_m).toBeCloseTo(theirs[i]!.even_shares[2]!, 9);
    }
  });
});
