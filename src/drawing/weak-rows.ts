import type { Study } from '../study/study.ts';

type WeakPoint = Study['bonding']['weakPoints'][number];

/** Weak points that undo the same things, under one mark. */
export interface WeakRow {
  /** `W1` upwards. */
  readonly mark: string;
  readonly points: readonly WeakPoint[];
}

/**
 * A wire, its two joints and the clamp beyond them undo the same: they are one row, in the drawing and in the table. Rows
 * that undo most come first; equal ones in the order of the study.
 */
export function weakRows({ bonding }: Study): readonly WeakRow[] {
  const rows = new Map<string, WeakPoint[]>();
  for (const w of bonding.weakPoints) {
    const key = JSON.stringify([w.losesService, w.losesEarth, w.electrodesLost, w.certain]);
    const row = rows.get(key);
    if (row === undefined) rows.set(key, [w]);
    else row.push(w);
  }
  const sorted = [...rows.values()].sort((a, b) => weight(b[0]!) - weight(a[0]!));
  return sorted.map((points, i) => ({ mark: `W${i + 1}`, points }));
}

function weight(w: WeakPoint): number {
  return w.electrodesLost.length + new Set([...w.losesService, ...w.losesEarth]).size;
}
