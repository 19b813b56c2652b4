import type { StudyFinding, StudyPart } from '../../study/study.ts';
import type { Work } from '../work.ts';
import { apartGroups, bondIdFor, bondKind, bondSubject, cutOffPanels } from './apart-groups.ts';
import { panelFor } from './entry-panel.ts';
import { isUp } from './foot-height.ts';
import { buildingOfBoxes, landingsFor, landingsOf } from './landings.ts';
import { type Duty, layConductor } from './lay-conductor.ts';
import { bondsOfLine, rodOfService, shieldedLinesOf } from './needed-first.ts';
import { newWork } from './new-work.ts';
import { newPanelSpot } from './panel-spot.ts';
import { type Group, ownerOf, type Scene } from './scene.ts';
import { type Pair, shortestPair } from './shortest-pair.ts';
import { apartM, spotsOf } from './spots.ts';
import { tinned, usualWire } from './usual-wire.ts';

/** What is wrong while a group, or a part alone, stands apart from the service. */
const apartRules: readonly string[] = [
  'all-electrodes-one-system',
  'antenna-rod-is-not-a-substitute',
  'iec-antenna-electrode-to-main-bar',
  'uk-multiple-earth-rf-rod-bond',
  'panel-tied-to-service',
  'screens-not-sole-bond',
  'outlet-ground-not-lightning-ground',
  'mast-grounded',
  'iec-mast-earthed',
  'metalwork-bonded',
  'no-orphan-equipment',
  'arrester-bonded',
  'pool-fixed-metal-bonded',
  'pool-zone-bonding-iec',
  'uk-service-pipe-bond',
  'racks-bonded',
];

/** Two things that one person can touch. */
const pairRule = 'shelters-within-reach-bonded';

/** Each group that stands apart and has something wrong with it for that: tied to the service's by the shortest way. */
export function bondWorks(scene: Scene): readonly Work[] {
  const wrong = scene.findings(...apartRules);
  const pairs = scene.findings(pairRule);
  return apartGroups(scene).flatMap((group) => {
    const answers = [
      ...wrong.filter((f) => f.at.some((at) => isIn(scene, group, at))),
      ...pairs.filter(
        (f) => f.at.some((at) => isIn(scene, group, at)) && f.at.some((at) => isIn(scene, scene.main!, at)),
      ),
    ];
    return answers.length === 0 ? [] : bondOf(scene, group, answers);
  });
}

/** Bonds that other works need, whether or not anything is wrong with the group by itself. */
export function neededBonds(scene: Scene, ids: readonly string[]): readonly Work[] {
  const groups = apartGroups(scene).filter((g) => ids.includes(bondIdFor(scene, g.id) ?? ''));
  return groups.flatMap((group) => bondOf(scene, group, []));
}

function isIn(scene: Scene, group: Group, at: string): boolean {
  return scene.groupOf(at)?.id === group.id || group.electrodes.includes(at);
}

function bondOf(scene: Scene, group: Group, answers: readonly StudyFinding[]): readonly Work[] {
  if (cutOffPanels(scene, group).length > 0) return [];
  const pair = shortestPair(scene, landingsOf(scene, group), landingsFor(scene, group, scene.main!));
  const subject = bondSubject(scene, group);
  if (pair === null) return toNewPanel(scene, group, answers);
  return [tieOf(scene, { kind: bondKind(scene, group), subject, pair, answers })];
}

/** Boxes of a building that has nothing to tie them to: to the panel that it gets. */
function toNewPanel(scene: Scene, group: Group, answers: readonly StudyFinding[]): readonly Work[] {
  const building = buildingOfBoxes(scene, group);
  const panel = building === null ? null : panelFor(scene, building);
  const [from] = landingsOf(scene, group);
  if (building === null || panel === null || panel.work === null || from === undefined) return [];
  const [spot, here] = [newPanelSpot(scene, building), spotsOf(scene.part(ownerOf(from)))[0]];
  const way = spot === null || here === undefined ? null : { routeM: [here, spot], lengthM: apartM(here, spot) };
  const pair = { from, to: panel.id, way };
  const work = tieOf(scene, { kind: 'tie-metalwork', subject: bondSubject(scene, group), pair, answers });
  return [{ ...work, needs: [...new Set([panel.work, ...work.needs])] }];
}

interface Tie {
  readonly kind: Work['kind'];
  readonly subject: string;
  readonly pair: Pair;
  readonly answers: readonly StudyFinding[];
}

/** A work that is one conductor. */
export function tieOf(scene: Scene, { kind, subject, pair, answers }: Tie): Work {
  const { from, to } = pair;
  const prefix = kind === 'bond' ? 'bond' : 'tie';
  const duty = dutyOf(scene, pair);
  const usual = usualWire(scene, duty);
  const wire = [from, to].some((p) => isZincInSoil(scene, ownerOf(p))) ? tinned(usual) : usual;
  const laid = layConductor(scene, { id: scene.newId(`${prefix}-${subject}`), ...pair, duty, wire });
  return newWork({
    kind,
    subject,
    at: [from, to].map(ownerOf),
    answers: answers.map((f) => f.id),
    laid: [laid],
    needs: needsOf(scene, [from, to].map(ownerOf)).filter((id) => id !== `${kind}:${subject}`),
    values: { from, to, wire: laid.wire, lengthM: laid.run.lengthM, depthM: laid.run.depthM, ...laid.says },
  });
}

/** Zinc-coated itself, or tied to the anchor of a guy, where a rod of copper has another work: one of zinc in its place. */
function isZincInSoil({ study }: Scene, id: string): boolean {
  const electrode = study.electrodes?.find((e) => e.id === id);
  if (electrode === undefined) return false;
  if (electrode.metal === 'galvanised steel' || electrode.metal === 'steel') return true;
  const guys = new Set(study.guys.map((g) => g.id));
  return study.conductors.some(({ from, to }) => {
    const [a, b] = [ownerOf(from), ownerOf(to)];
    return (a === id && guys.has(b)) || (b === id && guys.has(a));
  });
}

/** Bonds of what it lands on, and of what a shield on one of its ends would else be the only tie of. */
function needsOf(scene: Scene, ends: readonly string[]): readonly string[] {
  const own = ends.flatMap((id) => bondIdFor(scene, id) ?? []);
  const byShield = ends.flatMap((id) => shieldedLinesOf(scene, id)).flatMap((line) => bondsOfLine(scene, line));
  const rod = ends.some((id) => scene.part(id)?.section === 'supports') ? rodOfService(scene) : [];
  return [...new Set([...rod, ...own, ...byShield])];
}

/** From a metre or two on what joins things that stand in soil lies in soil. */
const shortM = 2;

export function dutyOf(scene: Scene, { from, to, way }: Pair): Duty {
  const ends = [from, to].map((p) => scene.part(ownerOf(p)));
  if (ends.some((p) => p?.section === 'equipment' || p?.where === undefined)) {
    const outside = ends.some((p) => p?.section === 'electrodes' || p?.section === 'supports');
    return outside ? 'lead' : 'indoors';
  }
  const isLow = ends.every((p) => p !== undefined && standsInSoil(p));
  return isLow && (way === null || way.lengthM > shortM) ? 'in soil' : 'lead';
}

/** Cladding, gutters and foil hang on a wall; a mast on a roof or on a wall is led down first. */
function standsInSoil(part: StudyPart): boolean {
  if (part.section === 'metalwork') return /fence|pipe|pool|tank|rail/.test(part.kind);
  return part.section === 'electrodes' || (part.section === 'supports' && !isUp(part));
}
