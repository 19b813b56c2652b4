import type { Study, StudyFinding } from '../../study/study.ts';
import type { SiteChange } from '../../study/try-change.ts';
import type { ChangeValue } from '../../study/written-lists.ts';
import type { Work } from '../work.ts';
import { bondIdFor } from './apart-groups.ts';
import { panelFor } from './entry-panel.ts';
import { isStop, type LinePath, linePath, stopName, withStop } from './line-path.ts';
import { each, newWork } from './new-work.ts';
import type { Scene } from './scene.ts';
import { sparkoverFor } from './sparkover-for.ts';

type Line = Study['lines'][number];
type Crossing = Line['crossings'][number];

/** What a protector on the entry panel, its shield bonded there, puts right. */
const bareRules: readonly string[] = [
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
  const walls = bareWalls(line);
  if (path === null || walls.length === 0) return [];
  const panel = panelFor(scene, walls[0]!.building);
  const ids = walls.map((_, i) => scene.newId(i === 0 ? `arrester-${line.id}` : `arrester-${line.id}-${i + 1}`));
  const after = walls.reduce<LinePath | null>(
    (now, wall, i) => (now === null ? null : through(now, wall, ids[i]!)),
    path,
  );
  if (after === null) return [];
  const kind = kinds[line.kind] ?? 'data protector';
  const added = ids.map((id) => protector(id, panel.id, kind, line, scene));
  return [
    newWork({
      kind: 'add-protector',
      subject: line.id,
      at: [line.id, panel.id],
      answers: answers.map((f) => f.id),
      changes: [...added, ...pathChanges(line.id, path, after)],
      needs: panel.work === null ? needsOf(scene, panel.id) : [panel.work],
      materials: [each(kind, ids.length), each('bolted lug', ids.length)],
      values: { line: line.id, kind, panel: panel.id, count: ids.length },
    }),
  ];
}

function needsOf(scene: Scene, panel: string): readonly string[] {
  const bond = bondIdFor(scene, panel);
  return bond === null ? [] : [bond];
}

/** Walls through which a core comes without a protector, each once; those of a line without a core by its shield. */
function bareWalls({ crossings }: Line): readonly Crossing[] {
  const cores = crossings.filter((c) => c.which === 'core' && c.certain && c.protector === null);
  const shields = crossings.filter((c) => c.which === 'shield' && c.certain && c.bondedTo === null);
  const isSame = (a: Crossing, b: Crossing) =>
    a.after === b.after && a.before === b.before && a.building === b.building;
  return [...cores, ...shields.filter((s) => !cores.some((c) => isSame(c, s)))];
}

/** The path with a protector between the last stop outside and the wall, before a plug there; null: the stops are not found. */
export function through(path: LinePath, { before, after }: Crossing, id: string): LinePath | null {
  const names = path.stops.map(stopName);
  const [outside, inside] = [names.indexOf(before), names.indexOf(after)];
  if (outside < 0 || inside < 0) return null;
  const step = outside < inside ? 1 : -1;
  let at = outside + step;
  while (at !== inside && !isStop(path.stops[at]!, 'plug')) at += step;
  return withStop(path, step === 1 ? at : at + 1, id);
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
