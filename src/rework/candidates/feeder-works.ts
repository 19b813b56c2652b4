import type { Study, StudyFinding } from '../../study/study.ts';
import { readQuantity } from '../../units/quantity.ts';
import type { Work } from '../work.ts';
import { feedersOf, feederWorkId, hasConductor } from './feeders.ts';
import { newWork } from './new-work.ts';
import type { Scene } from './scene.ts';
import { isUs } from './usual-wire.ts';

type Line = Study['lines'][number];

/** What a sub-panel lacks that no protective conductor brings back to the supply. */
const lackRules: readonly string[] = [
  'earth-is-not-a-fault-path',
  'no-orphan-equipment',
  'separate-building-electrode',
];

/** Feeders without a protective conductor, where something is wrong with their panel for that: one is laid with them. */
export function feederWorks(scene: Scene): readonly Work[] {
  const works = lackingFeeders(scene).map((line) => feederWork(scene, line));
  return works.filter((w) => w.answers.length > 0);
}

/** Those that other works need, by their ids. */
export function neededFeeders(scene: Scene, ids: readonly string[]): readonly Work[] {
  const wanted = scene.study.lines.filter((l) => ids.includes(feederWorkId(l)));
  return wanted.map((line) => feederWork(scene, line));
}

function lackingFeeders(scene: Scene): readonly Line[] {
  const panels = scene.parts('equipment').filter((e) => e.kind === 'sub-panel');
  const lines = panels.flatMap((p) => feedersOf(scene, p.id)).filter((l) => hasConductor(scene, l) === 'no');
  return [...new Set(lines)];
}

function feederWork(scene: Scene, line: Line): Work {
  const { site } = scene.study;
  const [from, ...rest] = line.stops;
  const has = hasConductor(scene, line);
  const read = readQuantity(scene.part(line.id)?.typed.length ?? '', 'length', { bareUnit: site.units });
  const lengthM = read.ok ? read.interval : { low: 0, high: Infinity };
  const name = isUs(site.region) ? 'equipment grounding conductor' : 'protective conductor';
  return newWork({
    kind: 'put-right',
    words: 'feeder-conductor',
    subject: line.id,
    at: [line.id],
    answers: has === 'no' ? answersOf(scene, line).map((f) => f.id) : [],
    changes: [{ is: 'set', section: 'lines', id: line.id, field: 'protective_conductor', value: 'yes' }],
    materials: [{ name, unit: 'm', count: lengthM }],
    runs: [{ part: line.id, routeM: [], lengthM: read.ok ? lengthM : null, depthM: null }],
    values: {
      part: line.id,
      from: from ?? '',
      to: rest.at(-1) ?? '',
      lengthM: read.ok ? lengthM : null,
      ...(has === 'unknown' ? { unsure: 'yes' } : {}),
    },
  });
}

/** Of the panels that it feeds, and of what is tied to them and to nothing else. */
function answersOf(scene: Scene, line: Line): readonly StudyFinding[] {
  const panels = line.stops.filter((s) => scene.part(s)?.kind === 'sub-panel' && feedersOf(scene, s).includes(line));
  const groups = panels.flatMap((p) => scene.groupOf(p)?.id ?? []);
  return scene.findings(...lackRules).filter(({ rule, at, because }) => {
    if (rule === 'separate-building-electrode')
      return because.key === 'no conductor with the feeder' && panels.includes(at[0] ?? '');
    const isOfPanel = at.some((id) => panels.includes(id) || groups.includes(scene.groupOf(id)?.id ?? ''));
    return isOfPanel || panels.includes(String(because.values.panel));
  });
}
