import type { Metal } from '../materials/metals.ts';
import type { Answer, Conductor, JointUse, Part, PointRef, Site } from '../site/site.ts';
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
export function jointFacts(site: Site, resistanceOf: (joint: string) => Interval | null): readonly JointFacts[] {
  const index = partIndex(site);
  const byId = new Map<string, Meeting[]>();
  for (const c of site.conductors) {
    if (c.present === 'no' || c.onePiece) continue;
    for (const meeting of meetingsOf(c)) byId.set(meeting.id, [...(byId.get(meeting.id) ?? []), meeting]);
  }
  return [...byId]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([id, all]) => factsOfJoint(id, all, index, resistanceOf(id)));
}

function meetingsOf(c: Conductor): readonly Meeting[] {
  const end = (point: PointRef, use: JointUse, mark: string): Meeting => ({
    id: use.named ?? endId(c, point, mark),
    use,
    conductor: c,
    on: point.part,
  });
  return [
    end(c.from, c.fromJoint, 'from'),
    end(c.to, c.toJoint, 'to'),
    ...c.passes.map((p) => end(p.at, p.joint, p.at.text)),
    ...c.splices.map((use, i) => ({ id: use.named ?? `${c.id}:splice${i + 1}`, use, conductor: c, on: null })),
  ].filter((m) => m.use.kind !== 'none');
}

/** `c1:E1` where only one end meets E1, else `c1:from`, `c1:to`. */
function endId(c: Conductor, point: PointRef, mark: string): string {
  const meets = [c.from, c.to, ...c.passes.map((p) => p.at)].filter((p) => p.part === point.part);
  return point.part !== null && meets.length === 1 ? `${c.id}:${point.part}` : `${c.id}:${mark}`;
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
