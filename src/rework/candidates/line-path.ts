import type { ChangeValue } from '../../study/written-lists.ts';
import { footM } from '../../units/unit-table.ts';
import { ownerOf, type Scene } from './scene.ts';

/** A line as it is typed: its stops, and a length for each piece between stops (bends left out), or none. */
export interface LinePath {
  readonly stops: readonly ChangeValue[];
  readonly lengths: readonly string[];
}

export function linePath(scene: Scene, line: string): LinePath | null {
  const written = scene.study.written?.lines.find((l) => l.id === line);
  return written === undefined ? null : { stops: written.path, lengths: written.lengths };
}

/** What a stop is called where a line crosses a wall: a part, a plug, or `bend` for all of them. */
export function stopName(stop: ChangeValue): string {
  if (typeof stop !== 'object') return ownerOf(String(stop));
  if (isStop(stop, 'bend')) return 'bend';
  const [value] = Object.values(stop) as readonly ChangeValue[];
  return isStop(stop, 'plug') ? String(value) : ownerOf(String(value));
}

export function isStop(stop: ChangeValue, kind: 'plug' | 'bend' | 'bond'): boolean {
  return typeof stop === 'object' && kind in stop;
}

/** A stop put in at a place of the path. Its piece is cut in two of which nobody knows the lengths, unless they are given. */
export function withStop(
  { stops, lengths }: LinePath,
  at: number,
  stop: ChangeValue,
  cut: readonly [string, string] = ['unknown', 'unknown'],
): LinePath {
  const piece = stops.slice(0, at).filter((s) => !isStop(s, 'bend')).length - 1;
  const longer = [...lengths.slice(0, piece), ...cut, ...lengths.slice(piece + 1)];
  return {
    stops: [...stops.slice(0, at), stop, ...stops.slice(at)],
    lengths: lengths.length === 0 || isStop(stop, 'bend') || piece < 0 ? lengths : longer,
  };
}

/** A height as typed: `tower@2 ft`, `mast@0.5 m`. */
export function heightText(heightM: number, scene: Scene): string {
  const { units } = scene.study.site;
  const inFeet = units === 'ft';
  return inFeet ? `${Math.round(heightM / footM)} ft` : `${Math.round(heightM * 2) / 2} m`;
}
