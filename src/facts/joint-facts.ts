import { meetingsOf } from '../bonding/joint-id.ts';
import type { Metal } from '../materials/metals.ts';
import type { Answer, Conductor, JointUse, Part, Site } from '../site/site.ts';
import type { Interval } from '../units/interval.ts';
import type { JointFacts } from './facts.ts';
import { type PartIndex, partIndex } from './part-index.ts';

interface Meeting {
  readonly id: string;
  readonly use: JointUse;
  readonly conductor: Conductor;
  readonly on: string | null;
}

/** Every joint of the site: clamps that several wires share once, the others one for each end, pass and splice. */
export function jointFacts(site: Site, resistanceOf: ReadonlyMap<string, Interval>): readonly JointFacts[] {
  const index = partIndex(site);
  const byId = new Map<string, Meeting[]>();
  for (const c of site.conductors) {
    if (c.present === 'no') continue;
    for (const meeting of typedMeetings(c)) byId.set(meeting.id, [...(byId.get(meeting.id) ?? []), meeting]);
  }
  return [...byId]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([id, all]) => factsOfJoint(id, all, index, resistanceOf.get(id) ?? null));
}

function typedMeetings(c: Conductor): readonly Meeting[] {
  const { from, to, passes, splices } = meetingsOf(c);
  return [from, to, ...passes, ...splices].flatMap(({ joint, use, at }) =>
    joint === null ? [] : [{ id: joint, use, conductor: c, on: at?.part ?? null }],
  );
}

function factsOfJoint(
  id: string,
  all: readonly Meeting[],
  index: PartIndex,
  resistanceOhm: Interval | null,
): JointFacts {
  const { use } = all[0]!;
  const named = index.get(id);
  const on = (named?.section === 'joints' ? (named.on?.part ?? null) : null) ?? all[0]!.on;
  const target = on === null ? undefined : index.get(on);
  const own = named?.section === 'joints' ? named : null;
  return {
    id,
    kind: own !== null ? (own.kind === 'unknown' ? null : own.kind) : use.kind,
    metal: own?.metal ?? use.metal,
    holds: [...new Set(all.map((m) => m.conductor.id))].sort(),
    on,
    wireMetals: all.map((m) => m.conductor.wire?.metal ?? null),
    onMetal: metalOf(target),
    buried: buried(all, target),
    listed: own?.listed ?? use.listed,
    forBurial: own?.forBurial ?? use.forBurial,
    accessible: own?.accessible ?? use.accessible,
    condition: own?.condition ?? use.condition,
    resistanceOhm,
    shim: own?.shim ?? use.shim ?? null,
    bolts: own?.bolts ?? use.bolts ?? null,
    forWires: own?.forWires ?? use.forWires ?? null,
    cleaned: own?.cleaned ?? use.cleaned ?? 'unknown',
    contactM2: own?.contactM2 ?? use.contactM2 ?? null,
    sealed: own?.sealed ?? use.sealed ?? 'unknown',
    forTest: own?.forTest ?? use.forTest ?? 'unknown',
    typed: own !== null || use.kind !== null,
  };
}

function metalOf(part: Part | undefined): Metal | null {
  if (part === undefined) return null;
  if (part.section === 'supports') return part.metal === 'none' ? null : part.metal;
  if (part.section === 'electrodes') return part.metal ?? part.wire?.metal ?? null;
  return part.section === 'metalwork' ? part.metal : null;
}

/** In soil when what it is on begins below grade or the wire that meets it lies in soil; unknown unless both are known. */
function buried(all: readonly Meeting[], target: Part | undefined): Answer {
  if (target === undefined || target.section !== 'electrodes') return 'no';
  const top = target.topM;
  if (top !== null && top.low > 0) return 'yes';
  if (/wire|ring|radial|plate/.test(target.kind)) return 'yes';
  if (target.typed.top !== undefined && top !== null && top.high <= 0) return 'no';
  const wires = all.map((m) => m.conductor.buriedM);
  if (wires.some((b) => b === 'yes' || (b !== null && b !== 'no' && b.low > 0))) return 'yes';
  return wires.every((b) => b === 'no') ? 'no' : 'unknown';
}
