import type { Study, StudyFinding } from '../../study/study.ts';
import type { SiteChange } from '../../study/try-change.ts';
import type { ChangeValue } from '../../study/written-lists.ts';
import type { Material, Work } from '../work.ts';
import { mountFor, neededForPanel, type Panel } from './entry-panel.ts';
import { isStop, type LinePath, linePath, stopName, withStop } from './line-path.ts';
import { bondsOfLine } from './needed-first.ts';
import { each, newWork } from './new-work.ts';
import type { Scene } from './scene.ts';
import { sparkoverFor } from './sparkover-for.ts';

type Line = Study['lines'][number];
type Crossing = Line['crossings'][number];

/** What a protector on the entry panel, its shield bonded there, puts right. */
export const bareRules: readonly string[] = [
  'shield-bonded-at-entry',
  'canada-coax-shield-grounded',
  'discharge-unit-present',
  'arrester-on-every-feed-line',
  'arrester-on-every-control-line',
];

/** Kind of protector by kind of line. */
const kinds: Readonly<Record<string, string>> = {
  coax: 'gas tube',
  'open-wire': 'gas tube',
  'single wire': 'gas tube',
  'cable tv': 'gas tube',
  telephone: 'telephone protector',
  control: 'control protector',
  'dc supply': 'control protector',
};

/** Each outside line that comes in bare: a protector on the entry panel, outside, on its way. */
export function protectorWorks(scene: Scene): readonly Work[] {
  const wrong = scene.findings(...bareRules);
  return scene.study.lines.flatMap((line) => {
    const answers = wrong.filter((f) => f.at.includes(line.id));
    return answers.length === 0 ? [] : protect(scene, line, answers);
  });
}

function protect(scene: Scene, line: Line, answers: readonly StudyFinding[]): readonly Work[] {
  const path = linePath(scene, line.id);
  const protection = path === null ? null : protectionOf(scene, line, path);
  if (path === null || protection === null) return [];
  const { kind, count, panels } = protection;
  return [
    newWork({
      kind: 'add-protector',
      subject: line.id,
      at: [line.id, ...panels],
      answers: answers.map((f) => f.id),
      changes: [...protection.changes, ...pathChanges(line.id, path, protection.path)],
      needs: protection.needs,
      materials: protection.materials,
      values: { line: line.id, kind, panel: panels.join(', '), count, ...(hasShield(line) ? { shield: 'yes' } : {}) },
    }),
  ];
}

export function hasShield(line: Line): boolean {
  return line.conductors.some((c) => c.which === 'shield');
}

/** Protectors at every wall through which a line comes in bare. */
export interface Protection {
  readonly path: LinePath;
  readonly kind: string;
  readonly count: number;
  readonly panels: readonly string[];
  readonly changes: readonly SiteChange[];
  readonly needs: readonly string[];
  readonly materials: readonly Material[];
}

/** null: it comes in nowhere bare, or nobody can say where in its path, or on which panel at each wall. */
export function protectionOf(scene: Scene, line: Line, path: LinePath): Protection | null {
  const walls = bareWalls(scene, line);
  if (walls.length === 0) return null;
  const ids = walls.map((_, i) => scene.newId(i === 0 ? `arrester-${line.id}` : `arrester-${line.id}-${i + 1}`));
  const after = walls.reduce<LinePath | null>((now, w, i) => (now === null ? null : through(now, w, ids[i]!)), path);
  if (after === null) return null;
  const mounts = mountsAt(scene, line, walls);
  if (mounts === null) return null;
  const kind = kinds[line.kind] ?? 'data protector';
  const needs = [...mounts.flatMap((m) => neededForPanel(scene, m)), ...bondsOfLine(scene, line.id)];
  return {
    path: after,
    kind,
    count: ids.length,
    panels: [...new Set(mounts.map((m) => m.id))],
    changes: ids.map((id, i) => protector(id, mounts[i]!.id, kind, line, scene)),
    needs: [...new Set(needs)],
    materials: [each(kind, ids.length), each('bolted lug', ids.length)],
  };
}

/** What each wall has; null: nobody can tell of one, or one panel would have to hang on two buildings. */
function mountsAt(scene: Scene, { kind }: Line, walls: readonly Crossing[]): readonly Panel[] | null {
  const mounts = walls.flatMap((w) => mountFor(scene, w.building, feedKinds.includes(kind)) ?? []);
  const [ids, buildings] = [mounts.map((m) => m.id), walls.map((w) => w.building)].map((all) => new Set(all).size);
  return mounts.length === walls.length && ids === buildings ? mounts : null;
}

const feedKinds: readonly string[] = ['coax', 'open-wire', 'single wire', 'cable tv'];

/**
 * Walls through which a core comes without a protector, each once; those of a line without a core by its shield. One with
 * an arrester just inside has it moved.
 */
function bareWalls(scene: Scene, { crossings }: Line): readonly Crossing[] {
  const cores = crossings.filter((c) => c.which === 'core' && c.certain && c.protector === null);
  const shields = crossings.filter((c) => c.which === 'shield' && c.certain && c.bondedTo === null);
  const isBare = (c: Crossing) => scene.part(c.after)?.section !== 'arresters';
  const isSame = (a: Crossing, b: Crossing) =>
    a.after === b.after && a.before === b.before && a.building === b.building;
  return [...cores, ...shields.filter((s) => !cores.some((c) => isSame(c, s)))].filter(isBare);
}

/** The path with a protector between the last stop outside and the wall, before a plug there; null: the stops are not found. */
export function through(path: LinePath, wall: Crossing, id: string): LinePath | null {
  const stops = stopsAtWall(path, wall);
  if (stops === null) return null;
  const step = stops.outside < stops.inside ? 1 : -1;
  let at = stops.outside + step;
  while (at !== stops.inside && !isStop(path.stops[at]!, 'plug')) at += step;
  return withStop(path, step === 1 ? at : at + 1, id);
}

/** Places in the path of the stop outside a wall and of that inside, the two that stand nearest to one another. */
export function stopsAtWall(
  path: LinePath,
  { before, after }: Crossing,
): { readonly outside: number; readonly inside: number } | null {
  const named = (name: string) => path.stops.flatMap((s, i) => (stopName(s) === name ? [i] : []));
  const pairs = named(before).flatMap((outside) => named(after).map((inside) => ({ outside, inside })));
  const apart = ({ outside, inside }: { outside: number; inside: number }) => Math.abs(outside - inside);
  return pairs.length === 0 ? null : pairs.reduce((best, p) => (apart(p) < apart(best) ? p : best));
}

function protector(id: string, panel: string, kind: string, line: Line, scene: Scene): SiteChange {
  const isCoax = line.kind === 'coax';
  const sparkover = isCoax ? sparkoverFor(scene, line) : null;
  const fields: Record<string, ChangeValue> = {
    kind,
    on: panel,
    ...(sparkover === null ? {} : { sparkover: `${sparkover} V` }),
    ...(isCoax ? { bleed: 'yes' } : { covers: 'all' }),
    listed: 'yes',
    joint: 'bolted lug',
    known: 'planned',
  };
  return { is: 'add', section: 'arresters', id, fields };
}

export function pathChanges(line: string, was: LinePath, now: LinePath): readonly SiteChange[] {
  const set = (field: string, value: ChangeValue): SiteChange => ({
    is: 'set',
    section: 'lines',
    id: line,
    field,
    value,
  });
  const same = JSON.stringify(was.lengths) === JSON.stringify(now.lengths);
  return [set('path', now.stops), ...(same ? [] : [set('lengths', now.lengths)])];
}
