import type { StudyFinding } from '../../study/study.ts';
import type { SiteChange } from '../../study/try-change.ts';
import type { ChangeValue } from '../../study/written-lists.ts';
import type { Work } from '../work.ts';
import { mountFor, neededForPanel } from './entry-panel.ts';
import { bondsOfLine } from './needed-first.ts';
import { each, newWork } from './new-work.ts';
import type { Scene } from './scene.ts';
import { sparkoverFor } from './sparkover-for.ts';

const placeRules: readonly string[] = ['arrester-bonded', 'discharge-unit-place', 'discharge-unit-away-from-fuel'];
const shieldRules: readonly string[] = [
  'shield-bonded-at-entry',
  'canada-coax-shield-grounded',
  'discharge-unit-present',
];
const sizeRule = 'arrester-fits-power';

/** Arresters that hang in the air or stand in the room: onto the panel outside; those of the wrong size: another one. */
export function arresterWorks(scene: Scene): readonly Work[] {
  return scene.study.arresters.flatMap((a) => {
    const misplaced = scene.findings(...placeRules).filter((f) => f.at.includes(a.id));
    const unfit = scene.findings(sizeRule).filter((f) => f.at.includes(a.id));
    return [
      ...(misplaced.length > 0 ? moved(scene, a.id, misplaced) : []),
      ...(unfit.length > 0 ? resized(scene, a.id, unfit) : []),
    ];
  });
}

function moved(scene: Scene, id: string, misplaced: readonly StudyFinding[]): readonly Work[] {
  const row = scene.study.arresters.find((a) => a.id === id)!;
  if (row.on === scene.study.site.service) return [];
  const lines = scene.study.lines.filter((l) => row.lines.includes(l.id));
  const building = lines.flatMap((l) => l.crossings)[0]?.building ?? scene.part(id)?.where ?? 'inside';
  const mount = mountFor(scene, building, row.kind === 'gas tube' || row.kind === 'quarter-wave stub');
  if (mount === null || row.on === mount.id) return [];
  const shields = scene
    .findings(...shieldRules)
    .filter((f) => lines.some((l) => f.at[0] === l.id && isInside(scene, l.id, id)));
  const first = neededForPanel(scene, mount);
  return [
    newWork({
      kind: 'move-arrester',
      subject: id,
      at: [id, mount.id],
      answers: [...misplaced, ...shields].map((f) => f.id),
      changes: onto(scene, id, mount.id),
      needs: [...new Set([...first, ...lines.flatMap((l) => bondsOfLine(scene, l.id))])],
      materials: [each('bolted lug')],
      values: { arrester: id, panel: mount.id, lines: lines.map((l) => l.id).join(', ') },
    }),
  ];
}

function isInside(scene: Scene, line: string, arrester: string): boolean {
  const row = scene.study.lines.find((l) => l.id === line);
  return row?.crossings.some((c) => c.after === arrester) ?? false;
}

function onto(scene: Scene, id: string, panel: string): readonly SiteChange[] {
  const { typed } = scene.part(id)!;
  const set = (field: string, value: ChangeValue | null): SiteChange => ({
    is: 'set',
    section: 'arresters',
    id,
    field,
    value,
  });
  const gone = ['at', 'bonded', 'near', 'lead'].filter((field) => typed[field] !== undefined);
  return [
    set('on', panel),
    set('where', 'outside'),
    set('joint', 'bolted lug'),
    ...gone.map((field) => set(field, null)),
  ];
}

function resized(scene: Scene, id: string, unfit: readonly StudyFinding[]): readonly Work[] {
  const row = scene.study.arresters.find((a) => a.id === id)!;
  const lines = scene.study.lines.filter((l) => row.lines.includes(l.id));
  const fits = lines.map((l) => sparkoverFor(scene, l));
  if (fits.length === 0 || fits.some((v) => v === null)) return [];
  const sparkoverV = Math.max(...fits.map((v) => v!));
  const { typed } = scene.part(id)!;
  const changes: SiteChange[] = [{ is: 'set', section: 'arresters', id, field: 'sparkover', value: `${sparkoverV} V` }];
  if (typed.rated_power !== undefined)
    changes.push({ is: 'set', section: 'arresters', id, field: 'rated_power', value: 'unknown' });
  return [
    newWork({
      kind: 'put-right',
      words: 'arrester-size',
      subject: id,
      at: [id],
      answers: unfit.map((f) => f.id),
      changes,
      materials: [each(row.kind)],
      values: { arrester: id, sparkoverV, kind: row.kind },
    }),
  ];
}
