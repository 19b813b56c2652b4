import type { Run, SoilPoint } from './body.ts';
import type { Figures } from './closed-form.ts';
import { type RodLayout, rodPositions } from './rod-group.ts';
import { rodRuns } from './rod-runs.ts';

/**
 * Equal rods round the origin, all at one angle if at any. The bare wire that joins them is metal in the soil too, where
 * its thickness is known and it lies below grade: from rod to rod (a closed layout all the way round, a star from the middle).
 */
export function rodsRuns(count: number, layout: RodLayout | null, f: Figures): readonly Run[] {
  const positions = count > 1 && layout !== null ? rodPositions(layout, count, f.spacingM!) : [[0, 0] as const];
  const one = rodRuns(f);
  const moved = ([eastM, northM]: readonly [number, number], [e, n, depthM]: SoilPoint): SoilPoint => [
    eastM + e,
    northM + n,
    depthM,
  ];
  const rods = positions.flatMap((at) =>
    one.map((run) => ({ ...run, from: moved(at, run.from), to: moved(at, run.to) })),
  );
  return [...rods, ...joiningRuns(positions, layout, f)];
}

function joiningRuns(
  positions: readonly (readonly [number, number])[],
  layout: RodLayout | null,
  { joiningRadiusM, joiningDepthM }: Figures,
): readonly Run[] {
  if (joiningRadiusM === undefined || joiningDepthM === undefined || !(joiningDepthM > 0)) return [];
  return pairsOf(positions.length, layout).map(([i, j]): Run => {
    const [a, b] = [positions[i]!, positions[j]!];
    return { from: [...a, joiningDepthM], to: [...b, joiningDepthM], radiusM: joiningRadiusM, sheath: null };
  });
}

/** Which rods a wire joins. */
function pairsOf(count: number, layout: RodLayout | null): readonly (readonly [number, number])[] {
  const others = Array.from({ length: Math.max(0, count - 1) }, (_, at) => at + 1);
  if (layout === 'star') return others.map((at) => [0, at]);
  const chain = others.map((at) => [at - 1, at] as const);
  return layout === 'line' || count < 3 ? chain : [...chain, [count - 1, 0]];
}
