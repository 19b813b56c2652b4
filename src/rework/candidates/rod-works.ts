import type { StudyFinding } from '../../study/study.ts';
import type { Work } from '../work.ts';
import { bondIdFor, ownElectrodes } from './apart-groups.ts';
import { besideWall } from './building-walls.ts';
import { feedersFirst, lacksConductor } from './feeders.ts';
import { firstRods } from './first-rods.ts';
import { buildingOf, isUp } from './foot-height.ts';
import { legsOf } from './legs-of.ts';
import { rodOfService, serviceRodId } from './needed-first.ts';
import { type Driven, driveRod, usualRod } from './new-rod.ts';
import { newWork } from './new-work.ts';
import { electrodesOfMasts } from './panel-spot.ts';
import { rodSpacingM } from './rod-spacing.ts';
import { rodSpot } from './rod-spot.ts';
import { ownerOf, type Scene } from './scene.ts';
import { type Spot, spotsOf } from './way-to-lay.ts';

/** Rods where there are too few: beside a lone one, at a panel without any, at a tower, at a mast of a field station. */
export function rodWorks(scene: Scene): readonly Work[] {
  const forService = serviceAnswers(scene).length > 0 ? serviceRod(scene, rodOfService(scene)) : [];
  return [...forService, ...besideLone(scene), ...atPanels(scene), ...atTowers(scene), ...atMasts(scene)];
}

const antennaRule = 'iec-antenna-electrode-minimum';
const loneRules: readonly string[] = ['single-rod-25-ohm', 'site-10-ohm', 'water-pipe-supplemented', antennaRule];
/** One rod of this length is enough for an antenna (IEC 60728-11, second-hand). */
const antennaRodM = 2.5;

/** One more; for the goal of ten ohm as many as it takes, one after the other. A reading cannot be worked away. */
function besideLone(scene: Scene): readonly Work[] {
  const wrong = scene
    .findings(...loneRules)
    .filter((f) => f.rule !== 'site-10-ohm' || f.because.key === 'works out high');
  const places = [...new Set(wrong.flatMap((f) => besideOf(scene, f)))].filter((id) => scene.part(id) !== undefined);
  return places.flatMap((id) => {
    const answers = wrong.filter((f) => besideOf(scene, f).includes(id) && rodsAsked(f) <= mostRods);
    if (answers.length === 0) return [];
    const spacingM = rodSpacingM(scene, id);
    const driven = inLine(scene, id, spacingM, Math.max(...answers.map(rodsAsked)));
    return driven.length === 0 ? [] : [rodsOf(scene, id, driven, answers, spacingM)];
  });
}

/** Beside which electrode: of those of an antenna the one that its mast is led to. None where our rod is too short for it. */
function besideOf(scene: Scene, { rule, at }: StudyFinding): readonly string[] {
  if (rule !== antennaRule) return at.slice(0, 1);
  if (usualRod(scene).lengthM < antennaRodM) return [];
  const masts = scene.parts('supports').map((s) => s.id);
  const led = electrodesOfMasts(scene, masts).map(ownerOf);
  const own = at.filter((id) => /rod|pipe/.test(scene.part(id)?.kind ?? ''));
  return [...own.filter((id) => led.includes(id)), ...own].slice(0, 1);
}

/** Rods beside each other feel one another: so much more than their number would say. Ours. */
const crowding = 1.4;

function rodsAsked({ rule, measured }: StudyFinding): number {
  if (rule !== 'site-10-ohm' || measured === null) return 1;
  const ohm = typeof measured.value === 'number' ? measured.value : measured.value.high;
  return Math.ceil((crowding * ohm) / measured.limit) - 1;
}

/** From one to the next; [] where they find no place, or are so many that another remedy is wanted. */
function inLine(scene: Scene, id: string, spacingM: number, count: number): readonly Driven[] {
  if (!(count >= 1 && count <= mostRods)) return [];
  const driven: Driven[] = [];
  let [from] = spotsOf(scene.part(id));
  let to = id;
  const taken: Spot[] = [];
  for (let n = 0; n < count; n++) {
    const spot = from === undefined ? null : rodSpot(scene, from, spacingM, taken);
    if (from !== undefined && spot === null) return [];
    const rod = scene.newId(n === 0 ? `rod-${id}` : `rod-${id}-${n + 1}`);
    driven.push(driveRod(scene, { id: rod, to, spot, spacingM, beside: n === 0 ? null : from }));
    if (spot !== null) taken.push(spot);
    [from, to] = [spot ?? undefined, rod];
  }
  return driven;
}

/** What a feeder lacks no rod makes good: its protective conductor comes with it. */
function atPanels(scene: Scene): readonly Work[] {
  const bare = scene.findings('separate-building-electrode').filter((f) => f.because.key === 'no electrode');
  return bare.flatMap((f) => {
    const [panel] = f.at;
    if (panel === undefined) return [];
    const work = atBox(scene, panel, [f]);
    const feeders = lacksConductor(scene, panel) ? feedersFirst(scene, panel) : [];
    return [{ ...work, needs: [...new Set([...work.needs, ...feeders])] }];
  });
}

/** The rods of a service that has no electrode, where another work needs them or they are asked for themselves. */
export function serviceRod(scene: Scene, ids: readonly string[]): readonly Work[] {
  const { service } = scene.study.site;
  return ids.includes(serviceRodId(scene)) ? [atBox(scene, service, serviceAnswers(scene))] : [];
}

function serviceAnswers(scene: Scene): readonly StudyFinding[] {
  return scene.findings('service-electrode-known', 'arrester-bonded').filter((f) => isAtService(scene, f));
}

function isAtService(scene: Scene, { rule, at }: StudyFinding): boolean {
  const arrester = scene.study.arresters.find((a) => a.id === at[0]);
  return rule !== 'arrester-bonded' || arrester?.on === scene.study.site.service;
}

/** Off the wall, at arm's length from the panel; in the United States a second one, since nobody has measured the first. */
function atBox(scene: Scene, box: string, answers: readonly StudyFinding[]): Work {
  const [here] = spotsOf(scene.part(box));
  const where = scene.part(box)?.where ?? '';
  const spot = here === undefined ? null : (besideWall(scene, where, here, wallOffM) ?? here);
  return rodsOf(scene, box, firstRods(scene, box, box, spot, wallOffM), answers, 2 * usualRod(scene).lengthM);
}

const wallOffM = 0.8;

const towerRules: readonly string[] = ['electrode-count-per-tower-leg', 'tower-rods-count'];

/** As many rods as are missing, round the foot, each with a lead of its own from the steel; none round a foot on a roof. */
function atTowers(scene: Scene): readonly Work[] {
  const wrong = scene.findings(...towerRules).filter((f) => f.because.key === 'too few');
  const towers = [...new Set(wrong.flatMap((f) => f.at.slice(0, 1)))];
  return towers.flatMap((tower) => {
    const answers = wrong.filter((f) => f.at[0] === tower);
    const missing = isUp(scene.part(tower)) ? 0 : Math.max(...answers.map((f) => lackOf(f)));
    if (!(missing > 0 && missing <= mostRods)) return [];
    return [roundFoot(scene, tower, missing, answers)];
  });
}

/** Rods round the foot of a mast, each with a lead of its own, from leg to leg. */
function roundFoot(scene: Scene, mast: string, count: number, answers: readonly StudyFinding[]): Work {
  const [foot] = spotsOf(scene.part(mast));
  const radiusM = usualRod(scene).lengthM;
  const legs = legsOf(scene, mast);
  const spots: (Spot | null)[] = [];
  for (let n = 0; n < count; n++) {
    const taken = spots.filter((s) => s !== null);
    spots.push(foot === undefined ? null : rodSpot(scene, foot, radiusM, taken));
  }
  const driven = spots.map((spot, n) => {
    const to = legs > 1 ? `${mast}.leg${(n % legs) + 1}@base` : `${mast}@base`;
    return driveRod(scene, { id: scene.newId(`rod-${mast}-${n + 1}`), to, spot, spacingM: radiusM });
  });
  return rodsOf(scene, mast, driven, answers, radiusM);
}

const mostRods = 12;

function lackOf({ because }: StudyFinding): number {
  const { rods, legs, needed } = because.values as Readonly<Record<string, number | undefined>>;
  return (legs ?? needed ?? 0) - (rods ?? 0);
}

/** A mast that has nothing to be led to: a field station, or a service that nobody knows. */
function atMasts(scene: Scene): readonly Work[] {
  const { main } = scene;
  if (main !== null && (ownElectrodes(scene, main).length > 0 || rodOfService(scene).length > 0)) return [];
  return scene.findings('mast-grounded', 'iec-mast-earthed', 'field-mast-rod').flatMap((f) => {
    const [mast] = f.at;
    if (mast === undefined || scene.part(mast)?.section !== 'supports') return [];
    if (isUp(scene.part(mast))) return [belowRoof(scene, mast, f)];
    const legs = legsOf(scene, mast);
    if (legs > 1) return [roundFoot(scene, mast, legs, [f])];
    const [foot] = spotsOf(scene.part(mast));
    const spot = foot === undefined ? null : rodSpot(scene, foot, atFootM);
    return [
      rodsOf(scene, mast, firstRods(scene, `${mast}@base`, mast, spot, atFootM), [f], 2 * usualRod(scene).lengthM),
    ];
  });
}

const atFootM = 1;

/** A mast on a roof is led down to rods off the wall of its building, at the place that is nearest to it. */
function belowRoof(scene: Scene, mast: string, f: StudyFinding): Work {
  const [foot] = spotsOf(scene.part(mast));
  const building = buildingOf(scene, scene.part(mast));
  const spot = foot === undefined || building === null ? null : besideWall(scene, building, foot, wallOffM);
  const driven = firstRods(scene, `${mast}@base`, mast, spot, null);
  const work = rodsOf(scene, mast, driven, [f], 2 * usualRod(scene).lengthM);
  return { ...work, values: { ...work.values, down: 'yes' } };
}

function rodsOf(
  scene: Scene,
  subject: string,
  driven: readonly Driven[],
  answers: readonly StudyFinding[],
  spacingM: number,
): Work {
  const bond = bondIdFor(scene, ownerOf(subject));
  const size = usualRod(scene);
  return newWork({
    kind: 'add-rods',
    subject,
    at: [subject],
    answers: answers.map((f) => f.id),
    changes: driven.flatMap((d) => d.changes),
    needs: bond === null ? [] : [bond],
    materials: driven.flatMap((d) => d.materials),
    runs: driven.flatMap((d) => d.runs),
    values: { to: subject, count: driven.length, spacingM, rodLengthM: size.lengthM },
  });
}
