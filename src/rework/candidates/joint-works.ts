import type { Study, StudyFinding } from '../../study/study.ts';
import type { SiteChange } from '../../study/try-change.ts';
import type { ChangeValue } from '../../study/written-lists.ts';
import type { Work } from '../work.ts';
import { each, newWork } from './new-work.ts';
import { ownerOf, type Scene } from './scene.ts';
import { isForBoth, type UsualJoint, usualJoint } from './usual-joint.ts';

/** What is put right by making a joint anew as its place wants it. */
const jointRules: readonly string[] = [
  'no-solder-in-path',
  'joint-method-allowed',
  'no-twist-joint',
  'no-sheet-metal-screw',
  'clamp-listed-for-burial',
  'concealed-joint-welded',
  'condition-sound',
  'no-copper-aluminium-contact',
  'clamp-metal-match',
  'electrode-conductor-continuous',
  'galvanic-pair',
];

type Conductor = Study['conductors'][number];
type Written = NonNullable<Study['written']>['conductors'][number];

/** A joint of a conductor that is to be made anew. */
interface Faulty {
  readonly index: number;
  readonly answers: readonly StudyFinding[];
}

/** Joints that their place does not want, conductor by conductor, so that one visit makes all of them. */
export function jointWorks(scene: Scene): readonly Work[] {
  const rows = scene.study.written?.conductors ?? [];
  const ofConductors = rows.flatMap((written) => {
    const row = scene.study.conductors.find((c) => c.id === written.id);
    const faulty = row === undefined ? [] : faultyJoints(scene, written);
    return row === undefined || faulty.length === 0 ? [] : [anew(scene, row, written, faulty)];
  });
  return [...ofConductors, ...ownClamps(scene)];
}

function faultyJoints(scene: Scene, { id, joints, jointIds }: Written): readonly Faulty[] {
  if (joints === null) return [];
  const wrong = scene.findings(...jointRules);
  const shared = scene.findings('one-conductor-per-clamp');
  const row = scene.study.conductors.find((c) => c.id === id)!;
  return jointIds.flatMap((joint, index) => {
    if (joint === null) return [];
    const isOwn = scene.part(joint) === undefined;
    const usual = jointAt(scene, row, index, jointIds.length);
    if (usual === null) return [];
    const isWeld = usual.material === 'exothermic weld';
    const about = wrong.filter((f) => f.at[0] === joint && (isWeld || f.rule !== 'galvanic-pair'));
    const own = isOwn ? about : [];
    const crowded = shared.filter((f) => f.at[0] === joint && heldFirst(f) !== id && !isOwn);
    const answers = [...own, ...crowded];
    return answers.length === 0 ? [] : [{ index, answers }];
  });
}

/** The wire that stays under a clamp which holds several. */
function heldFirst({ because }: StudyFinding): string {
  const holds = because.values.holds;
  return Array.isArray(holds) ? String(holds[0]) : '';
}

function anew(scene: Scene, row: Conductor, { id, joints, jointIds }: Written, faulty: readonly Faulty[]): Work {
  const made = faulty.map(({ index }) => jointAt(scene, row, index, jointIds.length)!);
  const typed = (joints ?? []).map((j, i) => {
    const k = faulty.findIndex((f) => f.index === i);
    return k < 0 ? j : made[k]!.typed;
  });
  return newWork({
    kind: 'replace-joint',
    subject: id,
    at: [id, ...faulty.map((f) => jointIds[f.index]!)],
    answers: faulty.flatMap((f) => f.answers.map((a) => a.id)),
    changes: [{ is: 'set', section: 'conductors', id, field: 'joints', value: typed }],
    materials: made.map((m) => each(m.material)),
    values: {
      joints: faulty.map((f) => jointIds[f.index]!).join(', '),
      kinds: [...new Set(made.map((m) => m.material))].join(', '),
      count: made.length,
      ...saysAluminium(made),
    },
  });
}

/** Says that the step on aluminium is told. */
function saysAluminium(made: readonly UsualJoint[]): Readonly<Record<string, string>> {
  return made.some(isForBoth) ? { aluminium: 'yes' } : {};
}

/** A splice is crimped for good; an end has what the part there wants, a guy a clamp that its strands stand. null: nothing does. */
function jointAt(scene: Scene, row: Conductor, index: number, count: number): UsualJoint | null {
  if (index > 0 && index < count - 1) return crimp;
  const end = index === 0 ? row.from : row.to;
  const isGuy = scene.study.guys.some((g) => g.id === ownerOf(end));
  return isGuy ? guyClamp : usualJoint(scene, end, row.wire);
}

const crimp: UsualJoint = { typed: { kind: 'irreversible crimp', listed: 'yes' }, material: 'irreversible crimp' };
export const guyClamp: UsualJoint = {
  typed: { kind: 'split bolt', metal: 'stainless steel', listed: 'yes' },
  material: 'split bolt',
};

/** Clamps of the section of joints, and clamps by which a bar, an arrester or a box hangs on something. */
function ownClamps(scene: Scene): readonly Work[] {
  const wrong = scene.findings(...jointRules).filter((f) => f.at.length === 1);
  const named = wrong.filter((f) => scene.part(f.at[0]!)?.section === 'joints');
  return [...new Set(named.map((f) => f.at[0]!))].flatMap((id) => {
    const answers = named.filter((f) => f.at[0] === id);
    const joint = ownJoint(scene, id);
    if (joint === null) return [];
    const fields = { listed: 'yes', for_burial: 'yes', condition: 'sound', ...fieldsOf(joint.typed) };
    // the metal of the old clamp goes with it
    const gone = 'metal' in fields || scene.part(id)?.typed.metal === undefined ? {} : { metal: null };
    const changes = Object.entries({ ...fields, ...gone }).map(
      ([field, value]): SiteChange => ({ is: 'set', section: 'joints', id, field, value }),
    );
    return newWork({
      kind: 'replace-joint',
      subject: id,
      at: [id],
      answers: answers.map((f) => f.id),
      changes,
      materials: [each(joint.material)],
      values: { joints: id, kinds: joint.material, count: 1, ...saysAluminium([joint]) },
    });
  });
}

/** By the part that it is on, and by the wires that it holds: one of aluminium is enough. null: nothing does for one of them. */
function ownJoint(scene: Scene, id: string): UsualJoint | null {
  const row = scene.study.joints.find((j) => j.id === id);
  const wires = scene.study.conductors.filter((c) => row?.holds.includes(c.id)).map((c) => c.wire);
  const wanted = [...wires, null].map((wire) => usualJoint(scene, row?.on ?? null, wire));
  return wanted.includes(null) ? null : (wanted.find((joint) => isForBoth(joint!)) ?? wanted[0] ?? null);
}

function fieldsOf(joint: ChangeValue): Readonly<Record<string, ChangeValue>> {
  return typeof joint === 'string' ? { kind: joint } : (joint as Readonly<Record<string, ChangeValue>>);
}
