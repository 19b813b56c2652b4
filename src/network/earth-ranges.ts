import type { RangedEarth } from '../currents/bounds.ts';
import { mutualResistance } from '../electrodes/mutual-resistance.ts';
import type { Electrode, Position } from '../site/site.ts';
import type { SoilLayers } from '../soil/layers.ts';
import { exact } from '../units/interval.ts';
import type { AloneOhm } from './alone-ohm.ts';
import { electrodeShape } from './electrode-shape.ts';

/** An electrode of a group, at a node of its network. */
export interface EarthPoint {
  readonly electrode: Electrode;
  readonly node: number;
  readonly alone: AloneOhm;
}

export interface EarthRanges {
  readonly earth: RangedEarth;
  /** Pairs whose coupling through the soil had to be left out. */
  readonly leftOut: readonly (readonly [string, string])[];
}

type Matrix = readonly (readonly number[])[];

/**
 * Resistances to remote earth of a group's electrodes with what they feel of each other through the soil, at the low, the
 * likely and the high figures. A pair without known places, or too near for the closed form, is left out and named.
 */
export function earthRanges(points: readonly EarthPoint[], soil: SoilLayers): EarthRanges {
  const leftOut: (readonly [string, string])[] = [];
  const mutual = new Map<string, { readonly low: number; readonly value: number; readonly high: number }>();
  points.forEach((a, i) => {
    points.slice(i + 1).forEach((b, j) => {
      const ohm = coupling(a, b, soil);
      if (ohm === null) leftOut.push([a.electrode.id, b.electrode.id]);
      else mutual.set(`${i},${i + 1 + j}`, ohm);
    });
  });
  const matrix = (own: (p: EarthPoint) => number, pick: 'low' | 'value' | 'high'): Matrix =>
    points.map((p, i) =>
      points.map((_, j) => (i === j ? own(p) : (mutual.get(i < j ? `${i},${j}` : `${j},${i}`)?.[pick] ?? 0))),
    );
  const known = points.every((p) => p.alone.ohm?.value != null);
  const earth: RangedEarth = {
    nodes: points.map((p) => p.node),
    lowOhm: matrix((p) => p.alone.ohm?.low ?? 0, 'low'),
    highOhm: matrix((p) => p.alone.ohm?.high ?? Number.POSITIVE_INFINITY, 'high'),
    nominalOhm: known ? matrix((p) => p.alone.ohm!.value!, 'value') : null,
  };
  return { earth, leftOut };
}

/** The same electrodes as if the soil joined none of them; every pair is named as left out. */
export function withoutCoupling({ earth, leftOut }: EarthRanges, points: readonly EarthPoint[]): EarthRanges {
  const own = (matrix: RangedEarth['lowOhm']) => matrix.map((row, i) => (typeof row === 'number' ? row : row[i]!));
  const pairs = points.flatMap((a, i) => points.slice(i + 1).map((b) => [a.electrode.id, b.electrode.id] as const));
  return {
    earth: {
      nodes: earth.nodes,
      lowOhm: own(earth.lowOhm),
      highOhm: own(earth.highOhm),
      nominalOhm: earth.nominalOhm === null ? null : own(earth.nominalOhm),
    },
    leftOut: pairs.length > 0 ? pairs : leftOut,
  };
}

function coupling(a: EarthPoint, b: EarthPoint, soil: SoilLayers) {
  const [shapeA, shapeB] = [electrodeShape(a.electrode), electrodeShape(b.electrode)];
  const [from, to] = [a.electrode.position, b.electrode.position];
  if (shapeA === null || shapeB === null || from === null || to === null) return null;
  const { ohm } = mutualResistance(shapeA, shapeB, exact(distance(from, to)), soil);
  return ohm === null || ohm.value === null ? null : { low: ohm.low, value: ohm.value, high: ohm.high };
}

function distance(a: Position, b: Position): number {
  return Math.hypot(a[0] - b[0], a[1] - b[1]);
}
