import type { Conductor, JointUse, PointRef, Site } from '../site/site.ts';

/** A meeting of a conductor with something: an end, a clamp that it passes, or a splice in it. */
export interface Meeting {
  /** Id of the joint; null where the wire is one piece with what it meets. */
  readonly joint: string | null;
  readonly use: JointUse;
  /** null for a splice. */
  readonly at: PointRef | null;
}

export interface Meetings {
  readonly from: Meeting;
  readonly passes: readonly Meeting[];
  readonly splices: readonly Meeting[];
  readonly to: Meeting;
}

/**
 * The joints of a conductor with their ids: that of the `joints` section where one is named, else `c1:E1` where only one
 * end or pass meets E1, else `c1:from`, `c1:to`; passes `c1:R1`; splices `c1:splice1`.
 */
export function meetingsOf(c: Conductor): Meetings {
  const meeting = (at: PointRef, use: JointUse, mark: string): Meeting => ({
    joint: jointOf(c, use, () => meetingId(c, at, mark)),
    use,
    at,
  });
  return {
    from: meeting(c.from, c.fromJoint, 'from'),
    passes: c.passes.map((p) => meeting(p.at, p.joint, p.at.text)),
    splices: c.splices.map((use, i) => ({ joint: jointOf(c, use, () => `${c.id}:splice${i + 1}`), use, at: null })),
    to: meeting(c.to, c.toJoint, 'to'),
  };
}

function jointOf(c: Conductor, use: JointUse, own: () => string): string | null {
  if (c.onePiece || use.kind === 'none') return null;
  return use.named ?? own();
}

function meetingId(c: Conductor, point: PointRef, mark: string): string {
  const meets = [c.from, c.to, ...c.passes.map((p) => p.at)].filter((p) => p.part === point.part);
  return point.part !== null && meets.length === 1 ? `${c.id}:${point.part}` : `${c.id}:${mark}`;
}

/**
 * Id of the joint that a text such as `c1:E1`, `c1:from`, `c1:splice1` or `a1:entry` means; of a named clamp its own id. null
 * where the site has none.
 */
export function jointMeant(site: Site, text: string): string | null {
  const [owner, ...rest] = text.split(':');
  const mark = rest.join(':');
  const mounted = [...site.bars, ...site.arresters, ...site.equipment, ...site.metalwork];
  if (mounted.some(({ id, on }) => id === owner && on?.part === mark)) return text;
  const conductor = site.conductors.find(({ id }) => id === owner);
  if (conductor === undefined) return null;
  const { from, to, passes, splices } = meetingsOf(conductor);
  if (mark === 'from' || mark === 'to') return (mark === 'from' ? from : to).joint;
  const all = [from, ...passes, ...splices, to];
  const exact = all.find(({ joint }) => joint === text);
  const meeting = exact ?? all.find(({ at }) => at !== null && (at.part === mark || at.text === mark));
  return meeting?.joint ?? null;
}
