import type { Body, Run } from '../../src/electrodes/body.ts';
import { solveBodies } from '../../src/electrodes/solve-bodies.ts';
import { soilImages } from '../../src/soil/layer-images.ts';
import { layeredSoil } from '../../src/soil/layered-soil.ts';

/** A straight bare round conductor, metres; depth positive down. */
export function run(from: Run['from'], to: Run['to'], radiusM: number): Run {
  return { from, to, radiusM, sheath: null };
}

/** Each run a body by itself. */
export function bodies(runs: readonly Run[]): readonly Body[] {
  return runs.map((r) => ({ runs: [r] }));
}

/** Bodies of metal solved in soil, all tied to one point: 1 / (1' R^-1 1), by Gauss. Ohm. */
export function joinedOhm(
  all: readonly Body[],
  resistivityOhmM: readonly number[],
  thicknessM: readonly number[] = [],
) {
  const solved = solveBodies(all, soilImages(layeredSoil(resistivityOhmM, thicknessM)));
  if (!solved.ok) throw new Error(solved.reason);
  const size = all.length;
  const rows = all.map((_, i) => [...solved.resistanceOhm.slice(i * size, (i + 1) * size)]);
  const currents = gauss(
    rows,
    all.map(() => 1),
  );
  return 1 / currents.reduce((sum, a) => sum + a, 0);
}

/** A x = b with the largest pivot of each column. */
export function gauss(matrix: readonly (readonly number[])[], right: readonly number[]): readonly number[] {
  const rows = matrix.map((row, i) => [...row, right[i]!]);
  const size = rows.length;
  for (let at = 0; at < size; at++) {
    let best = at;
    for (let i = at + 1; i < size; i++) if (Math.abs(rows[i]![at]!) > Math.abs(rows[best]![at]!)) best = i;
    [rows[at], rows[best]] = [rows[best]!, rows[at]!];
    for (let i = at + 1; i < size; i++) {
      const share = rows[i]![at]! / rows[at]![at]!;
      for (let k = at; k <= size; k++) rows[i]![k] = rows[i]![k]! - share * rows[at]![k]!;
    }
  }
  const found = new Array<number>(size).fill(0);
  for (let i = size - 1; i >= 0; i--) {
    let rest = rows[i]![size]!;
    for (let k = i + 1; k < size; k++) rest -= rows[i]![k]! * found[k]!;
    found[i] = rest / rows[i]![i]!;
  }
  return found;
}
