import type { Study, StudyPart } from '../study/study.ts';
import type { StudySurface } from '../study/study-earth.ts';
import type { Ground } from './plan-scale.ts';

/** What a contour map shows of a site: electrodes, supports and buildings that stand on the piece of ground worked out. */
export function contourSite(study: Study, { grid, touch }: StudySurface): Study {
  const [west, south] = [grid.westM, grid.southM];
  const [east, north] = [west + (grid.columns - 1) * grid.stepM, south + (grid.rows - 1) * grid.stepM];
  const isOn = ([e, n]: readonly [number, number, number?]) => e >= west && e <= east && n >= south && n <= north;
  const shown = (p: StudyPart) => p.section === 'electrodes' || p.section === 'supports' || p.id === touch?.part;
  const parts = study.parts
    .filter(shown)
    .map((p) => ({
      ...p,
      positionM: p.positionM !== null && isOn(p.positionM) ? p.positionM : null,
      routeM: p.routeM.some(isOn) ? p.routeM : [],
    }))
    .filter((p) => p.positionM !== null || p.routeM.length > 0);
  const buildings = study.buildings.filter((b) => meets(b.cornersM, [west, south], [east, north]));
  return { ...study, parts, buildings, guys: [], conductors: [], findings: [] };
}

/** Whether the box round a building overlaps the ground. */
function meets(corners: readonly (readonly [number, number, number])[], [w, s]: Ground, [e, n]: Ground): boolean {
  if (corners.length === 0) return false;
  const [easts, norths] = [corners.map((c) => c[0]), corners.map((c) => c[1])];
  return Math.min(...easts) <= e && Math.max(...easts) >= w && Math.min(...norths) <= n && Math.max(...norths) >= s;
}
