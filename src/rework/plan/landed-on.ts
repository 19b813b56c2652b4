import type { Study } from '../../study/study.ts';
import type { SiteChange } from '../../study/try-change.ts';
import type { Work, WorkKind } from '../work.ts';

/** The parts that a conductor ends on, or that a clamp is on; [] of all else. */
export type EndsOf = (id: string) => readonly string[];

export function endsIn({ conductors, joints }: Study): EndsOf {
  const ends = new Map<string, readonly string[]>([
    ...joints.map((j) => [j.id, j.on === null ? [] : [ownerOf(j.on)]] as const),
    ...conductors.map((c) => [c.id, [ownerOf(c.from), ownerOf(c.to)]] as const),
  ]);
  return (id) => ends.get(id) ?? [];
}

/** Works that make an electrode anew or drive it deeper: nobody welds to the old one first. */
const renewing: readonly WorkKind[] = ['put-right', 'deepen-rod'];

/** Electrodes that a work makes anew, drives deeper or drives elsewhere, and bars that it moves. */
export function renewedBy({ kind, changes }: Work): ReadonlySet<string> {
  const electrodes = renewing.includes(kind)
    ? changes.flatMap((c) => (c.is === 'set' && c.section === 'electrodes' && c.id !== null ? [c.id] : []))
    : [];
  return new Set([...electrodes, ...movedBars(changes)]);
}

/** Parts that a work joins something to: with a new conductor, with a joint made anew, with a protector that is mounted. */
export function landsOn(work: Work, endsOf: EndsOf): ReadonlySet<string> {
  const { kind, at, changes } = work;
  const mounted = changes.flatMap((c) =>
    c.is === 'add' && c.section === 'arresters' && c.fields.on !== undefined ? [ownerOf(String(c.fields.on))] : [],
  );
  const anew = kind === 'replace-joint' ? at.flatMap((joint) => joinedBy(joint, endsOf)) : [];
  const relaid = kind === 'replace-conductor' ? at.flatMap(endsOf) : [];
  return new Set([...laidTo(changes), ...mounted, ...anew, ...relaid]);
}

/** Bars that changes put at another place: what another work lays to them was measured to the old one. */
export function movedBars(changes: readonly SiteChange[]): ReadonlySet<string> {
  return new Set(
    changes.flatMap((c) => (c.is === 'set' && c.section === 'bars' && c.field === 'at' && c.id !== null ? [c.id] : [])),
  );
}

/** Parts that conductors are laid to. */
export function laidTo(changes: readonly SiteChange[]): ReadonlySet<string> {
  const ends = changes.flatMap((c) =>
    c.is === 'add' && c.section === 'conductors' ? [c.fields.from, c.fields.to] : [],
  );
  return new Set(ends.map((end) => ownerOf(String(end))));
}

/** A joint of a conductor is called by the conductor and the part; the conductor alone stands for no joint. */
function joinedBy(joint: string, endsOf: EndsOf): readonly string[] {
  const [conductor, part] = joint.split(':', 2);
  if (part !== undefined) return [ownerOf(part)];
  return endsOf(conductor!).length === 1 ? endsOf(conductor!) : [];
}

function ownerOf(point: string): string {
  return point.split(/[@.]/, 1)[0]!;
}
