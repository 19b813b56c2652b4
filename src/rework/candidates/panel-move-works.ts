import type { StudyFinding, StudyPart } from '../../study/study.ts';
import type { Work } from '../work.ts';
import { bondIdFor } from './apart-groups.ts';
import { type BetterSpot, betterSpots } from './better-panel-spots.ts';
import { alongWall, buildingAt, wallM } from './building-walls.ts';
import { comesDownM, movedPanel, type NewLead } from './moved-panel.ts';
import { newWork } from './new-work.ts';
import { placeM, plannedLength, typedPlace } from './owner-units.ts';
import { holdersOf } from './panel-holders.ts';
import { carriedBy, type PanelShift, wiresOf } from './panel-shift.ts';
import { ownerOf, type Scene } from './scene.ts';
import { apartM, spotsOf } from './way-to-lay.ts';

/** What a panel is moved for that hangs too far from what lies in the soil. */
const farRules: readonly string[] = ['bond-run-short', 'entry-lead-volts'];

/**
 * Entry panels that hang where findings say that they should not: moved along the wall, with all that hangs on them. Where
 * nobody can say what the site would be like then, a work that is told and not tried.
 */
export function panelMoveWorks(scene: Scene): readonly Work[] {
  const panels = scene.parts('bars').filter((b) => b.kind === 'entry panel');
  return [...panels.flatMap((p) => nearer(scene, p)), ...together(scene)];
}

/** To an electrode by the wall, or beside the service; one that nothing ties yet is tied first. */
function nearer(scene: Scene, { id }: StudyPart): readonly Work[] {
  const about = wrongAt(scene, id);
  if (about.length === 0 || bondIdFor(scene, id) !== null) return [];
  const building = wallOf(scene, id);
  // that it could be nearer is advice of the finding itself
  if (building === null)
    return unreckoned(
      id,
      about.filter((f) => f.severity !== 'advice'),
      [id],
    );
  const spots = betterSpots(scene, { panel: id, building, from: spotsOf(scene.part(id))[0]!, about });
  const held = holdersOf(scene, id);
  if (held.length > 0) return unreckoned(id, spots[0]?.answers ?? [], held);
  return spots.map((s) => ofSpot(scene, s));
}

/** Of the panel itself, and of wires from it to the service, to an electrode or to another bar; not of those to a box. */
function wrongAt(scene: Scene, panel: string): readonly StudyFinding[] {
  const wires = new Set(
    wiresOf(scene, carriedBy(scene, panel)).flatMap(({ row, other }) => (isOfSystem(scene, other) ? [row.id] : [])),
  );
  return [
    ...scene.findings(...farRules).filter((f) => f.at[0] === panel),
    ...scene.findings('bond-between-groups-long').filter((f) => wires.has(f.at[0] ?? '')),
  ];
}

function isOfSystem(scene: Scene, point: string): boolean {
  const id = ownerOf(point);
  return id === scene.study.site.service || ['bars', 'electrodes'].includes(scene.part(id)?.section ?? '');
}

/** The building on whose wall a bar hangs outside; null: nobody knows where it is, or it stands free. */
function wallOf(scene: Scene, bar: string): string | null {
  const part = scene.part(bar);
  const [spot] = spotsOf(part);
  if (spot === undefined || (part?.where ?? 'outside') !== 'outside') return null;
  const building = buildingAt(scene, spot);
  return building === null || wallM(scene, building, spot)! > onWallM ? null : building;
}

/** What is farther off a wall than this does not hang on it: ours. */
const onWallM = 1;

function ofSpot(scene: Scene, { shift, lead, isAtService, answers }: BetterSpot): Work {
  const { service } = scene.study.site;
  const subject = isAtService ? `${shift.panel}-to-${service}` : shift.panel;
  return moveOf(scene, { shift, lead, subject, beside: isAtService ? service : lead.to, answers });
}

interface Move {
  readonly shift: PanelShift;
  readonly lead: NewLead;
  readonly subject: string;
  /** What it hangs beside then. */
  readonly beside: string;
  readonly answers: readonly StudyFinding[];
  /** Key of its sentences; left out: those of the kind. */
  readonly words?: string;
}

function moveOf(scene: Scene, { shift, lead, subject, beside, answers, words = 'move-panel' }: Move): Work {
  const { values, ...made } = movedPanel(scene, shift, lead);
  return newWork({
    kind: 'move-panel',
    words,
    subject,
    at: [...new Set([shift.panel, lead.to, beside])],
    answers: answers.map((f) => f.id),
    ...made,
    values: { ...values, beside },
  });
}

/** A move that nobody can reckon, by what stands in its way. */
function unreckoned(subject: string, answers: readonly StudyFinding[], by: readonly string[]): readonly Work[] {
  if (answers.length === 0) return [];
  const ids = answers.map((f) => f.id);
  const values = { words: 'panel-not-moved', panel: subject };
  const work = newWork({ kind: 'move-panel', subject, at: [subject], answers: ids, values });
  return [{ ...work, unreckoned: by }];
}

/** Two panels at one building that nothing short joins: one goes beside the other, joined to it by a strap. */
function together(scene: Scene): readonly Work[] {
  return scene.findings('single-entry-panel').flatMap((f) => {
    if (f.at.some((id) => bondIdFor(scene, id) !== null)) return [];
    const kept = keptOf(scene, f.at);
    const [mover, ...more] = f.at.filter((id) => id !== kept);
    if (kept === null || mover === undefined) return unreckoned(f.at.join('+'), [f], f.at);
    const building = scene.part(mover)?.kind === 'entry panel' ? wallOf(scene, mover) : null;
    // three and more have no room at both sides of one
    if (building === null || more.length > 0) return unreckoned([mover, ...more].join('+'), [f], [mover, ...more]);
    const held = holdersOf(scene, mover);
    if (held.length > 0) return unreckoned(mover, [f], held);
    const beside = besideOf(scene, mover, kept, building);
    if (beside === null) return unreckoned(mover, [f], [kept]);
    const words = 'panels-together';
    return [moveOf(scene, { ...beside, subject: `${mover}-to-${kept}`, beside: kept, answers: [f], words })];
  });
}

/** The one that stays: on a wall outside, the nearest to the service; where that has no place the first. */
function keptOf(scene: Scene, bars: readonly string[]): string | null {
  const [service] = spotsOf(scene.part(scene.study.site.service));
  const farM = (id: string) => (service === undefined ? 0 : apartM(spotsOf(scene.part(id))[0]!, service));
  const placed = bars.filter((id) => wallOf(scene, id) !== null);
  return placed.reduce<string | null>((best, id) => (best === null || farM(id) < farM(best) ? id : best), null);
}

/** Middle to middle of two plates side by side, and what a strap between them takes beside, metres: ours. */
const sideBySideM = 0.5;
const strapSlackM = 0.2;

/** null: there is no room on that wall. */
function besideOf(scene: Scene, panel: string, kept: string, building: string): Pick<Move, 'shift' | 'lead'> | null {
  const { units } = scene.study.site;
  const [from] = spotsOf(scene.part(panel));
  const [there] = spotsOf(scene.part(kept));
  const spots = alongWall(scene, building, there!, sideBySideM)
    .map((s) => placeM(typedPlace(s, units), units))
    .filter((s) => buildingAt(scene, s) === building);
  const [first] = spots;
  if (first === undefined) return null;
  const to = spots.reduce((best, s) => (apartM(s, from!) < apartM(best, from!) ? s : best), first);
  const { lengthM } = plannedLength(apartM(to, there!) + strapSlackM, units);
  const downM = comesDownM(scene, panel);
  return {
    shift: { panel, building, from: from!, to, downM, carried: carriedBy(scene, panel) },
    lead: { to: kept, lengthM },
  };
}
