import { describe, expect, it } from 'vitest';
import { soilImages } from '../../src/soil/layer-images.ts';
import { boundariesM, layeredSoil } from '../../src/soil/layered-soil.ts';
import { pointPotential } from '../../src/soil/point-potential.ts';
import { findPython } from '../reference/python.ts';

interface Case {
  readonly ohmM: readonly number[];
  readonly thickM: readonly number[];
}

interface Answer {
  readonly ohm: readonly number[];
  /** What cutting its integrals finer changed. */
  readonly errorShare: readonly number[];
}

/** Invented soils: frost, dried-out tops, clay over rock, thin sheets that hold off or draw current, up to 1e4 apart. */
const soils: readonly Case[] = [
  { ohmM: [100, 300], thickM: [2] },
  { ohmM: [1e4, 1], thickM: [1] },
  { ohmM: [1, 1e4], thickM: [1] },
  { ohmM: [5000, 100, 1000], thickM: [0.3, 3] },
  { ohmM: [5000, 100, 20], thickM: [0.3, 3] },
  { ohmM: [5000, 100, 20], thickM: [0.3, 0.33] },
  { ohmM: [1, 1e4, 1], thickM: [1, 1.1] },
  { ohmM: [1, 1e4, 1], thickM: [0.3, 5] },
  { ohmM: [1e4, 1, 1e4], thickM: [0.3, 5] },
  { ohmM: [100, 1e4, 10], thickM: [0.01, 30] },
  { ohmM: [100, 10, 1e4], thickM: [10, 0.05] },
  { ohmM: [1, 1e4, 10], thickM: [100, 0.01] },
  { ohmM: [5000, 100, 1000, 20], thickM: [0.3, 1, 3] },
  { ohmM: [100, 200, 50, 400], thickM: [1, 2, 4] },
  { ohmM: [1e4, 1, 1e4, 1], thickM: [0.3, 1, 3] },
  { ohmM: [1e4, 1, 100, 1e4], thickM: [0.05, 20, 0.1] },
  { ohmM: [1e4, 1e3, 100, 10, 1], thickM: [1, 1, 1, 1] },
];

/** Further apart than the aim is stated for, up to the limit. */
const hardest: readonly Case[] = [
  { ohmM: [1e6, 1], thickM: [1] },
  { ohmM: [1, 1e6], thickM: [1] },
  { ohmM: [1e6, 1, 1e6], thickM: [1, 2] },
  { ohmM: [1, 1e6, 1, 1e6], thickM: [0.1, 2, 30] },
  { ohmM: [1e6, 1e3, 1], thickM: [1e-3, 1e3] },
];

const distancesM = [0.01, 0.3, 3, 30, 1000];

/** The surface, the middle of every layer, every boundary from above and from below, and far down. */
function depthsOf({ thickM, ohmM }: Case): readonly number[] {
  const feet = boundariesM({ resistivityOhmM: ohmM, thicknessM: thickM });
  const within = feet.flatMap((foot, at) => {
    const top = feet[at - 1] ?? 0;
    return [(top + foot) / 2, foot, foot * (1 + 1e-9)];
  });
  return [0, ...within, 3 * feet.at(-1)!];
}

function worstShare(soil: Case, fineness: 'fine' | 'coarse', answer: Answer): number {
  const images = soilImages(layeredSoil(soil.ohmM, soil.thickM), fineness);
  const depths = depthsOf(soil);
  const ours = depths.flatMap((source) =>
    distancesM.flatMap((distanceM) => depths.map((depth) => pointPotential(images, source, depth, distanceM))),
  );
  expect(ours.length).toBe(answer.ohm.length);
  return Math.max(...ours.map((ohm, at) => Math.abs(ohm / answer.ohm[at]! - 1)));
}

const python = findPython(['numpy', 'scipy'], 'potential in layers against a numerical Hankel inversion');

describe.skipIf(python === null)(
  `potential of a point in layers, against a numerical Hankel inversion by scipy${python === null ? ' (SKIPPED: no python3 with scipy)' : ''}`,
  () => {
    const ask = (cases: readonly Case[]): readonly Answer[] => {
      const asked = cases.map((c) => ({ ...c, depthsM: depthsOf(c), distancesM }));
      return (python!.run('layered-potential.py', { cases: asked }) as { readonly cases: readonly Answer[] }).cases;
    };

    it('source and receiver in every pair of layers and on boundaries: 1e-6, up to 1e4 apart', () => {
      const answers = ask(soils);
      for (const [at, soil] of soils.entries()) {
        const name = `${soil.ohmM.join('/')} ohm m, ${soil.thickM.join('/')} m`;
        // the other hand itself must be good enough to judge
        expect(Math.max(...answers[at]!.errorShare), name).toBeLessThan(1e-8);
        expect(worstShare(soil, 'fine', answers[at]!), name).toBeLessThan(1e-6);
        expect(worstShare(soil, 'coarse', answers[at]!), name).toBeLessThan(1e-3);
      }
    });

    it('up to 1e6 apart: 1e-5', () => {
      const answers = ask(hardest);
      for (const [at, soil] of hardest.entries()) {
        const name = `${soil.ohmM.join('/')} ohm m, ${soil.thickM.join('/')} m`;
        expect(Math.max(...answers[at]!.errorShare), name).toBeLessThan(1e-7);
        expect(worstShare(soil, 'fine', answers[at]!), name).toBeLessThan(1e-5);
        expect(worstShare(soil, 'coarse', answers[at]!), name).toBeLessThan(5e-3);
      }
    });
  },
);
