import type { Study, StudyPart } from '../../study/study.ts';
import { fittingFor } from '../candidates/usual-joint.ts';
import type { Material, Step, WorkRun, WorksPlan } from '../work.ts';

export type SheetConductor = Study['conductors'][number];
export type SheetJoint = Study['joints'][number] & {
  /** The fitting that is bought for it, where that goes by another name than its kind. */
  readonly bought: string | null;
};

/** What a contractor has to know about one work, from its edit of the file and the studies before and after. */
export interface SheetFacts {
  /** New, or changed in what it is made of or how it runs. */
  readonly conductors: readonly SheetConductor[];
  readonly runOf: (id: string) => WorkRun | null;
  /** Joints to make: of new conductors all, of others those that are not as they were. */
  readonly joints: readonly SheetJoint[];
  readonly electrodes: readonly StudyPart[];
  readonly arresters: Study['arresters'];
  readonly lines: Study['lines'];
  readonly bars: readonly StudyPart[];
  /** Parts that are there by then and that new metal lands on, or a device is mounted on. */
  readonly lands: readonly { readonly part: StudyPart; readonly inService: boolean }[];
  /** What has live parts inside and would have to be opened. */
  readonly panels: readonly string[];
  /** What has to be dug or driven: ids. */
  readonly inSoil: readonly string[];
}

export function sheetFacts({ work }: Step, plan: WorksPlan): SheetFacts {
  const { before, after } = plan;
  const changed = (section: string) =>
    new Set(work.changes.filter((c) => c.section === section && c.is !== 'remove').map((c) => c.id ?? ''));
  const of = <T extends { readonly id: string }>(list: readonly T[], section: string): readonly T[] =>
    list.filter((x) => changed(section).has(x.id));
  const runs = new Map(work.runs.map((r) => [r.part, r]));
  const conductors = after.conductors.filter((c) => changed('conductors').has(c.id) && isOther(c, before, plan));
  const electrodes = of(after.parts, 'electrodes');
  const arresters = of(after.arresters, 'arresters');
  const joints = newJoints(
    {
      remade: new Set([...conductors, ...arresters].map((x) => x.id)),
      touched: changed('conductors'),
      joints: changed('joints'),
    },
    plan,
  );
  const touched = [
    ...conductors.flatMap((c) => [c.from, c.to]),
    ...arresters.flatMap((a) => (a.on === null ? [] : [a.on])),
    ...of(after.parts, 'metalwork').map((p) => p.id),
    ...work.at,
    ...joints.flatMap((j) => (j.on === null ? [] : [j.on])),
  ];
  const made = work.changes.flatMap((c) => (c.is === 'add' ? [c.id] : []));
  const moved = [...made, ...['bars', 'lines', 'conductors', 'arresters'].flatMap((section) => [...changed(section)])];
  const lands = landingsOf(touched, plan, moved);
  return {
    conductors,
    runOf: (id) => runs.get(id) ?? null,
    joints: joints.map((j) => ({ ...j, bought: boughtFor(j, work.materials, plan) })),
    electrodes,
    arresters,
    lines: of(after.lines, 'lines'),
    bars: of(after.parts, 'bars'),
    lands,
    panels: panelsOf([...lands.map((l) => l.part), ...before.parts.filter((p) => work.at.includes(p.id))]),
    inSoil: [...conductors.filter((c) => isInSoil(c, runs.get(c.id))).map((c) => c.id), ...electrodes.map((e) => e.id)],
  };
}

/** Not there before, or typed otherwise in anything but its joints. */
function isOther({ id }: SheetConductor, before: Study, { after }: WorksPlan): boolean {
  const was = before.parts.find((p) => p.id === id);
  const is = after.parts.find((p) => p.id === id);
  if (was === undefined || is === undefined) return true;
  const { joints: _before, ...typedBefore } = was.typed;
  const { joints: _after, ...typedAfter } = is.typed;
  return JSON.stringify(typedBefore) !== JSON.stringify(typedAfter);
}

function isInSoil(c: SheetConductor, run: WorkRun | undefined): boolean {
  return c.buried === 'yes' || (run !== undefined && run.depthM !== null && run.depthM > 0);
}

/** All joints of conductors that are new or other; of those that only have other joints, and of joints by themselves, what was not so before. */
function newJoints(
  ids: {
    readonly remade: ReadonlySet<string>;
    readonly touched: ReadonlySet<string>;
    readonly joints: ReadonlySet<string>;
  },
  { before, after }: WorksPlan,
): Study['joints'] {
  const were = new Map(before.joints.map((j) => [j.id, j]));
  return after.joints.filter((j) => {
    if (ids.remade.has(j.id.split(':', 1)[0]!) || j.holds.some((h) => ids.remade.has(h))) return true;
    if (!ids.joints.has(j.id) && !j.holds.some((h) => ids.touched.has(h))) return false;
    const was = were.get(j.id);
    return was === undefined || was.kind !== j.kind || was.condition !== j.condition || was.listed !== j.listed;
  });
}

function boughtFor({ kind, on }: Study['joints'][number], materials: readonly Material[], { after }: WorksPlan) {
  const names = materials.map((m) => m.name);
  const part = on === null ? undefined : after.parts.find((p) => p.id === partOf(on));
  return kind === null ? null : fittingFor(kind, part?.kind ?? null, names);
}

/** Where a work before it has made what it lands on, that is there as well by then. */
function landingsOf(
  points: readonly string[],
  { before, after }: WorksPlan,
  moved: readonly string[],
): SheetFacts['lands'] {
  const ids = [...new Set(points.map(partOf))].filter((id) => !moved.includes(id));
  return ids.flatMap((id) => {
    const study = [before, after].find((s) => s.parts.some((p) => p.id === id));
    const part = study?.parts.find((p) => p.id === id);
    if (study === undefined || part === undefined || part.section === 'lines') return [];
    const service = study.bonding.groups.find((g) => g.hasService === true);
    return [{ part, inService: service?.parts.includes(id) === true || service?.electrodes.includes(id) === true }];
  });
}

const liveKinds: readonly string[] = ['service panel', 'meter box', 'sub-panel', 'generator', 'mains protector'];

function panelsOf(parts: readonly StudyPart[]): readonly string[] {
  return [...new Set(parts.filter((p) => liveKinds.includes(p.kind)).map((p) => p.id))];
}

/** The part that a point is on: `tower@45 ft`, `rods.2`, `c1:E1`. */
function partOf(point: string): string {
  return point.split(/[@.:]/, 1)[0]!;
}
