import type { Interval } from '../math/interval.ts';
import type { ClosedForm, Figures } from './closed-form.ts';
import type { Figure, RodsShape } from './electrode.ts';
import { rodFigures, rodOf, rodOutOfRange, rodSpan } from './rod-form.ts';
import { type RodLayout, rodGroup, rodPositions, spacingFromRadius } from './rod-group.ts';

/** Several rods joined: each pair by its mutual resistance. */
export function rodsForm(shape: RodsShape): ClosedForm {
  const { count, layout } = shape;
  const spacingM = spacingOf(shape);
  const isKnown = isCount(count) && layout !== null;
  const positions = (f: Figures) => rodPositions(layout!, count!, f.spacingM!);
  return {
    formula: "1 / (1' M^-1 1), M the self and mutual resistances of the rods",
    source: {
      document: 'H. B. Dwight, Calculation of resistances to ground, Trans. AIEE 55, 1319-1328, and circuit theory',
      edition: '1936',
      clause: null,
      provenance: 'memory',
    },
    errorShare: { low: -0.02, high: 0 },
    figures: { ...rodFigures(shape), ...(needsSpacing(shape) ? { spacingM } : {}), ...joiningFigures(shape) },
    alsoMissing: [...(isCount(count) ? [] : ['count']), ...(layout === null && count !== 1 ? ['layout'] : [])],
    outOfRange: rodOutOfRange,
    perOhmM: (f) => rodGroup(rodOf(f), f.diameterM!, isKnown && count > 1 ? positions(f) : [[0, 0]]),
    insideOhm: () => 0,
    spanM: rodSpan,
    extentM: (f) => Math.max(f.lengthM!, isKnown && count > 1 ? acrossM(positions(f)) : 0),
  };
}

/** Of the wire between the rods, which the closed form leaves out. */
function joiningFigures({ count, joiningWire, topM }: RodsShape): Readonly<Record<string, Figure>> {
  if (count === 1 || joiningWire == null || joiningWire.radiusM === null) return {};
  return { joiningRadiusM: joiningWire.radiusM, joiningDepthM: joiningWire.depthM ?? topM };
}

/** Not for one rod, nor while a radius only waits for the count or the layout. */
function needsSpacing({ count, layout, spacingM, radiusM }: RodsShape): boolean {
  if (count === 1) return false;
  return spacingM !== null || radiusM === null || (isCount(count) && layout !== null);
}

function isCount(count: number | null): count is number {
  return count !== null && Number.isInteger(count) && count >= 1;
}

function spacingOf({ count, layout, spacingM, radiusM }: RodsShape): Interval | null {
  if (spacingM !== null || radiusM === null || layout === null || !isCount(count)) return spacingM;
  const [low, high] = [radiusM.low, radiusM.high].map((end) => spacingFromRadius(layout as RodLayout, count, end));
  return low === null || low === undefined || high === null || high === undefined ? null : { low, high };
}

function acrossM(positions: readonly (readonly [number, number])[]): number {
  return 2 * Math.max(...positions.map(([eastM, northM]) => Math.hypot(eastM, northM)));
}
