import { readWire } from '../../materials/wire.ts';
import { gaugeAreaM2, gaugeNames, gaugeNumber, metricSizes } from '../../materials/wire-sizes.ts';
import type { Study, StudyFinding } from '../../study/study.ts';
import type { SiteChange } from '../../study/try-change.ts';
import type { ChangeValue } from '../../study/written-lists.ts';
import type { Work } from '../work.ts';
import { typedWay } from './foot-height.ts';
import { endSlackM } from './lay-conductor.ts';
import { newWork } from './new-work.ts';
import { plannedLength } from './owner-units.ts';
import type { Scene } from './scene.ts';
import { isUs, usualWire } from './usual-wire.ts';
import { wayToLay } from './way-to-lay.ts';

type Conductor = Study['conductors'][number];

/** Conductors too thin, gone, or led through the house: laid anew. */
export function conductorWorks(scene: Scene): readonly Work[] {
  return scene.study.conductors.flatMap((row) => {
    const about = scene.wrong.filter((f) => f.at[0] === row.id);
    const thin = about.filter(isSize);
    const indoors = about.filter((f) => f.rule === 'no-lightning-path-through-building');
    const worn = about.filter((f) => f.rule === 'condition-sound');
    const answers = [...thin, ...indoors, ...worn, ...about.filter((f) => f.rule === 'only-bond-stands-strike')];
    return thin.length + indoors.length + worn.length === 0 ? [] : [anew(scene, row, thin, indoors, worn, answers)];
  });
}

/** A finding of a section that is too small, with the least that is asked. */
function isSize({ measured, because }: StudyFinding): boolean {
  return measured !== null && measured.unit === 'm2' && ['small', 'thin'].includes(because.key);
}

function anew(
  scene: Scene,
  row: Conductor,
  thin: readonly StudyFinding[],
  indoors: readonly StudyFinding[],
  worn: readonly StudyFinding[],
  answers: readonly StudyFinding[],
): Work {
  const wire = thin.length > 0 || row.wire === null ? wireFor(scene, row, thin) : row.wire;
  const way = indoors.length > 0 ? outside(scene, row) : null;
  const lengthM = way === null ? row.lengthM : way.lengthM;
  const set = (field: string, value: ChangeValue | null): SiteChange => {
    return { is: 'set', section: 'conductors', id: row.id, field, value };
  };
  const changes = [
    ...(wire === row.wire ? [] : [set('wire', wire)]),
    ...(way?.fields.map(([field, value]) => set(field, value)) ?? []),
    ...(worn.length > 0 ? [set('condition', 'sound')] : []),
  ];
  return newWork({
    kind: 'replace-conductor',
    subject: row.id,
    at: [row.id],
    answers: answers.map((f) => f.id),
    changes,
    materials: [{ name: wire, unit: 'm', count: lengthM ?? { low: 0, high: Number.POSITIVE_INFINITY } }],
    runs: [{ part: row.id, routeM: way?.routeM ?? [], lengthM, depthM: null }],
    values: { conductor: row.id, wire, lengthM, from: row.from, to: row.to, outside: way !== null },
  });
}

/** The least size that all ask, of copper; never thinner than is usual, nor than it was. */
function wireFor(scene: Scene, row: Conductor, thin: readonly StudyFinding[]): string {
  const limits = thin.map((f) => f.measured!.limit);
  const leastM2 = Math.max(0, ...limits, row.areaM2?.high ?? 0) * (1 - printed);
  const usual = usualWire(scene, 'lead');
  const read = readWire(usual);
  if (read.ok && (read.wire.areaM2?.low ?? 0) >= leastM2) return usual;
  const us = gaugeNames.filter((n) => gaugeAreaM2(gaugeNumber(n)!) >= leastM2).map((n) => `${n} AWG copper`);
  const metric = metricSizes.filter((m) => m.areaMm2 * 1e-6 >= leastM2).map((m) => `${m.areaMm2} mm2 copper`);
  // Beyond the last gauge sizes go by area everywhere.
  return (isUs(scene.study.site.region) ? us[0] : undefined) ?? metric[0] ?? usual;
}

/** A size as printed is met by a size as printed. */
const printed = 2e-3;

/** Round the house, of a length that is known only where both ends have places. */
function outside(scene: Scene, row: Conductor) {
  const { units } = scene.study.site;
  const typed = scene.part(row.id)?.typed ?? {};
  const way = wayToLay(scene, row.from, row.to);
  const upM = way?.downM === undefined ? betweenM(scene, row) : way.downM;
  const length = way === null || upM === null ? null : plannedLength(way.lengthM + upM + endSlackM, units);
  const points = way?.routeM ?? [];
  const corners = points.length < 3 ? [] : typedWay(scene, row.from, row.to, points);
  const fields: (readonly [string, ChangeValue | null])[] = [
    ['where', 'outside'],
    ['length', length?.text ?? 'unknown'],
    ...(typed.runs === undefined ? [] : [['runs', null] as const]),
    ...(typed.lengths === undefined ? [] : [['lengths', null] as const]),
    ...(corners.length > 0
      ? [['route', corners] as const]
      : typed.route === undefined
        ? []
        : [['route', null] as const]),
  ];
  return {
    fields,
    routeM: way?.routeM ?? [],
    lengthM: length === null ? null : { low: length.lengthM, high: length.lengthM },
  };
}

/** What it climbs beside what a plan shows. */
function betweenM(scene: Scene, row: Conductor): number {
  const heights = [row.from, row.to].map((p) => scene.part(p.split('@')[0]!.split('.')[0]!)?.positionM?.[2] ?? 0);
  return Math.abs(heights[0]! - heights[1]!);
}
