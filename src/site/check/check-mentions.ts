import { nearName } from '../../units/near-name.ts';
import { ask, type Mention, type Report, refuse } from '../reading/report.ts';
import type { TypedPart, TypedSite } from '../reading/typed-site.ts';
import type { Ids, Known } from './ids.ts';
import { jointNamesOf } from './joint-names.ts';

/** Near names are sought for this many unknown ids of a file: each is compared with every id. */
const nearLimit = 100;

/** Looks up every name that stands anywhere in the file, and what follows it. */
export function checkMentions(site: TypedSite, ids: Ids, report: Report): void {
  const supports = new Map(site.parts.supports.map((s) => [s.id, s]));
  const electrodes = new Map(site.parts.electrodes.map((e) => [e.id, e]));
  const joints = jointNamesOf(site);
  let missing = 0;
  for (const mention of report.mentions) {
    const known = find(mention, ids, missing < nearLimit);
    if (known === null) missing++;
    if (known === null) continue;
    checkMember(mention, known, { supports, electrodes, joints });
    checkHeight(mention, known, supports, electrodes);
  }
}

interface Lookup {
  readonly supports: ReadonlyMap<string, TypedPart<'supports'>>;
  readonly electrodes: ReadonlyMap<string, TypedPart<'electrodes'>>;
  readonly joints: ReadonlyMap<string, readonly string[]>;
}

function find(mention: Mention, ids: Ids, seekNear: boolean): Known | null {
  const { ref, spot, at, to } = mention;
  const id = ref.part ?? '';
  const known = ids.get(id);
  if (known === undefined) {
    const fitting = [...ids.values()].filter((k) => to.includes(k.section)).map((k) => k.id);
    const sought = () => nearName(id, [...fitting, ...mention.alsoNear]) ?? nearName(id, [...ids.keys()]);
    const near = seekNear ? sought() : null;
    if (isOnly(to, 'joints') && near === null)
      return refuse(spot, at, 'joint-unknown', { id, known: mention.alsoNear.join(', ') });
    return refuse(spot, at, isOnly(to, 'buildings') ? 'building-unknown' : 'id-unknown', { id }, near);
  }
  if (to.includes(known.section)) return known;
  const values = { id, section: known.section, sections: to.join(', ') };
  return refuse(spot, at, `id-wrong-section`, values);
}

function isOnly(to: Mention['to'], section: Mention['to'][number]): boolean {
  return to.length === 1 && to[0] === section;
}

/** `.leg2`, `.2`, `.ne`, `:E1`. */
function checkMember(mention: Mention, known: Known, lookup: Lookup): void {
  const { ref, spot, at } = mention;
  if (ref.member === null) {
    if (mention.form === 'corner' && known.section === 'buildings')
      refuse(spot, at, 'corner-missing', { id: known.id });
    return;
  }
  const members = membersOf(known, lookup, ref.text.includes(':'));
  if (members.some((m) => m === ref.member)) return;
  const key = members.length === 0 ? 'member-none' : 'member-unknown';
  const list = members.slice(0, 12).join(', ');
  refuse(spot, at, key, { id: known.id, member: ref.member, members: list }, nearName(ref.member, members));
}

const cornerNames = ['ne', 'nw', 'se', 'sw', 'n', 'e', 's', 'w'];

function membersOf(known: Known, { supports, electrodes, joints }: Lookup, isJoint: boolean): readonly string[] {
  if (isJoint) return joints.get(known.id) ?? [];
  if (known.section === 'buildings') return cornerNames;
  if (known.section === 'supports') {
    const legs = supports.get(known.id)?.values.legs ?? 4;
    return Array.from({ length: legs }, (_, i) => `leg${i + 1}`);
  }
  if (known.section !== 'electrodes' || !['rods', 'radial', 'unknown', 'other'].includes(known.kind)) return [];
  const count = electrodes.get(known.id)?.values.count ?? 100;
  return Array.from({ length: Math.min(count, 1000) }, (_, i) => String(i + 1));
}

const along = ['buried wire', 'radial', 'strap on rock', 'unknown', 'other'];

/** `@45 ft`, `@top`, `@anchor`. */
function checkHeight(
  mention: Mention,
  known: Known,
  supports: Lookup['supports'],
  electrodes: Lookup['electrodes'],
): void {
  const { ref, spot, at } = mention;
  const { section, kind, id } = known;
  if (ref.mark === null && ref.atM === null) return;
  const place = ref.text.slice(ref.text.indexOf('@') + 1);
  const guyMark = ref.mark === 'tower' || ref.mark === 'anchor';
  const fits =
    (section === 'supports' && !guyMark) ||
    (section === 'guys' && guyMark) ||
    (ref.atM !== null &&
      ((section === 'electrodes' && along.includes(kind)) || section === 'conductors' || section === 'metalwork'));
  if (!fits) {
    refuse(spot, at, 'mark-not-here', { id, place, section });
    return;
  }
  if (ref.atM === null) return;
  const reach = section === 'supports' ? supports.get(id)?.values.height : electrodes.get(id)?.values.length;
  if (reach != null && ref.atM.low > reach.high) {
    ask(spot, at, section === 'supports' ? 'point-above-top' : 'point-beyond-end', { id, place });
  }
}
