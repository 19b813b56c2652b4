import type { Study, StudyPart } from '../study/study.ts';
import { partOfPoint } from './item-numbers.ts';
import type { Ground } from './plan-scale.ts';
import type { Attributes } from './svg.ts';
import { ink, soft } from './symbols.ts';

export type RunLook = 'conductor' | 'line' | 'bare' | 'metal' | 'guy';

/** Something long on the plan: a conductor, a line, a buried wire, a pipe, a guy. */
export interface Run {
  readonly id: string;
  readonly look: RunLook;
  readonly buried: 'yes' | 'no' | 'unknown';
  /** Letter before the number of a line: what kind it is. */
  readonly letter: string;
  readonly points: readonly Ground[];
}

/** Runs in the order of the parts, guys after them; those of which no two different points are known are left out. */
export function runsOf(study: Study): readonly Run[] {
  const places = placesById(study);
  const conductors = new Map(study.conductors.map((c) => [c.id, c]));
  const runs = study.parts.flatMap((p): readonly Run[] => {
    const look = lookOf(p.section);
    const points = p.routeM.length > 1 ? placesOf(p) : straight(conductors.get(p.id), places);
    if (look === null || points.length < 2) return [];
    const buried = look === 'bare' ? 'yes' : look === 'conductor' ? conductors.get(p.id)?.buried : p.typed.buried;
    return [{ id: p.id, look, buried: answer(buried, look), letter: letterOf(p), points }];
  });
  return [...runs, ...guyRuns(study, places)];
}

/** From the support to the anchor. */
function guyRuns(study: Study, places: ReadonlyMap<string, readonly Ground[]>): readonly Run[] {
  return study.guys.flatMap(({ id, support }): readonly Run[] => {
    const points = [...(places.get(support) ?? []).slice(0, 1), ...(places.get(id) ?? [])];
    return points.length < 2 ? [] : [{ id, look: 'guy', buried: 'no', letter: '', points }];
  });
}

function lookOf(section: string): RunLook | null {
  if (section === 'conductors') return 'conductor';
  if (section === 'lines') return 'line';
  return section === 'electrodes' ? 'bare' : section === 'metalwork' ? 'metal' : null;
}

/** Where no route is known: from end to end; on a long thing it lands where that is nearest to its other end. */
function straight(
  c: Study['conductors'][number] | undefined,
  places: ReadonlyMap<string, readonly Ground[]>,
): readonly Ground[] {
  if (c === undefined) return [];
  const [from, to] = [c.from, c.to].map((point) => places.get(partOfPoint(point)) ?? []);
  const pairs = [
    ...from!.map((a) => [a, nearestOf(to!, a)] as const),
    ...to!.map((b) => [nearestOf(from!, b), b] as const),
  ];
  return pairs.reduce<readonly Ground[]>((best, [a, b]) => {
    if (a === null || b === null) return best;
    return best.length === 0 || distance(a, b) < distance(best[0]!, best[1]!) ? [a, b] : best;
  }, []);
}

/** Of a guy its anchor: conductors are clamped to it there. */
function placesById(study: Study): ReadonlyMap<string, readonly Ground[]> {
  const guys = study.guys.map(({ id, anchorM }) => ({ id, positionM: anchorM, routeM: [] }));
  return new Map([...study.parts, ...guys].map((p) => [p.id, placesOf(p)]));
}

/** Where a part is, or the corners of its route. */
function placesOf(part: Pick<StudyPart, 'positionM' | 'routeM'>): readonly Ground[] {
  const places = part.routeM.length > 1 ? part.routeM : part.positionM === null ? [] : [part.positionM];
  return places.map(([east, north]) => [east, north]);
}

/** The point nearest to another on a line through places; null where there are none. */
function nearestOf(places: readonly Ground[], to: Ground): Ground | null {
  const candidates = places.length < 2 ? places : places.slice(1).map((b, i) => nearestBetween(places[i]!, b, to));
  return candidates.reduce<Ground | null>(
    (best, p) => (best === null || distance(p, to) < distance(best, to) ? p : best),
    null,
  );
}

function nearestBetween([ax, ay]: Ground, [bx, by]: Ground, [x, y]: Ground): Ground {
  const [dx, dy] = [bx - ax, by - ay];
  const square = dx * dx + dy * dy;
  const share = square === 0 ? 0 : Math.max(0, Math.min(1, ((x - ax) * dx + (y - ay) * dy) / square));
  return [ax + dx * share, ay + dy * share];
}

function distance([ax, ay]: Ground, [bx, by]: Ground): number {
  return Math.hypot(ax - bx, ay - by);
}

/** A line or pipe of which nothing was said is drawn plain; of a conductor the study says that it is unknown. */
function answer(buried: string | undefined, look: RunLook): Run['buried'] {
  if (buried === 'yes' || buried === 'true') return 'yes';
  return buried === 'unknown' && look === 'conductor' ? 'unknown' : 'no';
}

const letters: Readonly<Record<string, string>> = {
  coax: 'F',
  'open-wire': 'F',
  'single wire': 'F',
  mains: 'P',
  'dc supply': 'P',
  telephone: 'T',
  network: 'D',
  usb: 'D',
  serial: 'D',
  control: 'C',
};

function letterOf(part: StudyPart): string {
  if (part.section !== 'lines') return '';
  return Object.hasOwn(letters, part.kind) ? letters[part.kind]! : 'L';
}

/** Stroke of a run: what is in the soil is dashed. */
export function runStroke(look: RunLook, buried: Run['buried']): Attributes {
  if (look === 'bare') return { stroke: ink, 'stroke-width': 0.75, 'stroke-dasharray': '3.2 0.9 0.8 0.9' };
  if (look === 'guy') return { stroke: soft, 'stroke-width': 0.15 };
  const width = { conductor: 0.55, line: 0.25, metal: 1.3 }[look];
  const dash: Attributes = buried === 'yes' ? { 'stroke-dasharray': look === 'line' ? '2 1' : '2.2 1.2' } : {};
  return { stroke: look === 'metal' ? '#a9b3bc' : ink, 'stroke-width': width, 'stroke-linejoin': 'round', ...dash };
}
