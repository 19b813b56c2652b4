import type { Study, StudyFinding } from '../../study/study.ts';
import type { ChangeValue } from '../../study/written-lists.ts';
import { readQuantity } from '../../units/quantity.ts';
import type { Work } from '../work.ts';
import { heightText, isStop, type LinePath, linePath, stopName, withStop } from './line-path.ts';
import { bondsOfLine } from './needed-first.ts';
import { each, newWork } from './new-work.ts';
import { bareRules, hasShield, pathChanges, protectionOf } from './protector-works.ts';
import { ownerOf, type Scene } from './scene.ts';

type Line = Study['lines'][number];

const mastRules: readonly string[] = ['shield-bonded-top-and-base', 'line-goes-down-before-in'];

/** Height of the bond at the foot, metres; and how far below the antenna that at the top is. Common practice, no source. */
const footM = 0.6;
const belowTopM = 0.6;
/** A line that leaves its mast higher than this is led down first, metres: ours, half of what the rules ask. */
const leavesHighM = 1.5;

/** Lines whose shield is not bonded to the mast, or that leave it high up: led down the mast, bonded at top and foot, and in at the panel. */
export function lineWorks(scene: Scene): readonly Work[] {
  return scene.study.lines.flatMap((line) => {
    const wrong = scene.findings(...mastRules).filter((f) => f.at[0] === line.id);
    return wrong.length === 0 ? [] : led(scene, line, wrong);
  });
}

function led(scene: Scene, line: Line, wrong: readonly StudyFinding[]): readonly Work[] {
  const path = linePath(scene, line.id);
  const mast = mastOf(scene, line);
  if (path === null || mast === null) return [];
  const down = loweredBends(scene, path, mast.id);
  const isShielded = hasShield(line);
  const bonded = isShielded ? withBonds(scene, down, line, mast) : down;
  const protection = protectionOf(scene, line, bonded);
  const after = protection?.path ?? bonded;
  const bare = protection === null ? [] : scene.findings(...bareRules).filter((f) => f.at.includes(line.id));
  const bonds =
    after.stops.filter((s) => isStop(s, 'bond')).length - path.stops.filter((s) => isStop(s, 'bond')).length;
  const needs = [...(protection?.needs ?? []), ...bondsOfLine(scene, line.id)];
  if (JSON.stringify(after) === JSON.stringify(path)) return [];
  return [
    newWork({
      kind: 'move-line',
      subject: line.id,
      at: [line.id, mast.id, ...(protection?.panels ?? [])],
      answers: [...wrong, ...bare].map((f) => f.id),
      changes: [...(protection?.changes ?? []), ...pathChanges(line.id, path, after)],
      needs: [...new Set(needs)],
      materials: [...(bonds > 0 ? [each('shield grounding kit', bonds)] : []), ...(protection?.materials ?? [])],
      values: { line: line.id, support: mast.id, bonds, panel: protection?.panels.join(', ') ?? null },
    }),
  ];
}

interface Mast {
  readonly id: string;
  /** Height at which the line starts; null: not known. */
  readonly topM: number | null;
}

/** The metal support at which a line begins, by its antenna or machine. */
function mastOf(scene: Scene, line: Line): Mast | null {
  for (const stop of [line.stops[0], line.stops.at(-1)]) {
    const point = stop === undefined ? null : pointOnMast(scene, stop);
    if (point !== null) return { id: ownerOf(point), topM: heightOf(scene, point) };
  }
  return null;
}

function pointOnMast(scene: Scene, stop: string): string | null {
  const part = scene.part(ownerOf(stop));
  if (part === undefined) return null;
  if (part.section === 'supports') return /wood|tree|face/.test(part.kind) ? null : stop;
  return part.section === 'antennas' || part.section === 'equipment'
    ? part.on === null
      ? null
      : pointOnMast(scene, part.on)
    : null;
}

function heightOf(scene: Scene, point: string): number | null {
  const mark = point.split('@')[1] ?? 'top';
  if (mark === 'base') return 0;
  if (mark === 'top') return scene.part(ownerOf(point))?.heightM?.low ?? null;
  const read = readQuantity(mark, 'length', { bareUnit: scene.study.site.units });
  return read.ok ? read.interval.low : null;
}

/** Bends high on the mast come down to its foot. */
function loweredBends(scene: Scene, path: LinePath, mast: string): LinePath {
  const foot = `${mast}@${heightText(footM, scene)}`;
  const lowered = path.stops.map((s): ChangeValue => {
    if (!isStop(s, 'bend')) return s;
    const at = String((s as { readonly bend: ChangeValue }).bend);
    return ownerOf(at) === mast && (heightOf(scene, at) ?? 0) > leavesHighM ? { bend: foot } : s;
  });
  return { ...path, stops: lowered };
}

/** Bonds just below the antenna and at the foot, where there is none yet. */
function withBonds(scene: Scene, path: LinePath, line: Line, { id, topM }: Mast): LinePath {
  const heights = line.stops
    .filter((s) => s.startsWith('bond ') && ownerOf(s.slice(5)) === id)
    .map((s) => heightOf(scene, s.slice(5)));
  const top = topM === null ? null : Math.max(topM - belowTopM, footM);
  const isAtTop = heights.some((h) => h !== null && topM !== null && topM - h <= leavesHighM * 2);
  const isAtFoot = heights.some((h) => h !== null && h <= leavesHighM);
  const starts = pointOnMast(scene, stopName(path.stops[0] ?? '')) !== null;
  if (!starts) return path;
  const foot = { bond: `${id}@${heightText(footM, scene)}` };
  const topText = top === null ? 'top' : heightText(top, scene);
  const withTop = isAtTop ? path : withStop(path, 1, { bond: `${id}@${topText}` });
  if (isAtFoot) return withTop;
  const last = withTop.stops.reduce<number>((at, s, i) => (isOn(s, id) ? i : at), isAtTop ? 0 : 1);
  return withStop(withTop, last + 1, foot);
}

/** A stop that still is on the mast: bonds and bends there. */
function isOn(stop: ChangeValue, mast: string): boolean {
  if (isStop(stop, 'bond')) return stopName(stop) === mast;
  return isStop(stop, 'bend') && ownerOf(String((stop as { readonly bend: ChangeValue }).bend)) === mast;
}
