import type { Study } from '../study/study.ts';

/** Sections in the order in which parts are numbered. */
const sectionOrder = [
  'electrodes',
  'supports',
  'antennas',
  'guys',
  'bars',
  'arresters',
  'equipment',
  'lines',
  'conductors',
  'joints',
  'metalwork',
];

/**
 * One number for each part, the same on the plan, in the diagram and in every table: 1 upwards, section by section, in the
 * order of the study; guys, which are no parts, after what stands on supports. A joint that belongs to a wire's end (`c1:E1`) has the number of that wire and a letter: `31a`.
 */
export function itemNumbers(study: Study): ReadonlyMap<string, string> {
  const guys = study.guys.map(({ id }) => ({ id, section: 'guys' }));
  const sorted = [...study.parts, ...guys]
    .map((part, place) => ({ part, place }))
    .filter(({ part }) => !isOwnJoint(part.id))
    .sort((a, b) => rank(a.part.section) - rank(b.part.section) || a.place - b.place);
  const numbers = new Map(sorted.map(({ part }, i) => [part.id, String(i + 1)]));
  numberOwnJoints(study, numbers);
  return numbers;
}

function numberOwnJoints(study: Study, numbers: Map<string, string>): void {
  const seen = new Map<string, number>();
  for (const id of study.joints.map((j) => j.id)) {
    const holder = id.slice(0, id.indexOf(':'));
    const number = numbers.get(holder);
    if (!isOwnJoint(id) || number === undefined || numbers.has(id)) continue;
    const place = seen.get(holder) ?? 0;
    seen.set(holder, place + 1);
    numbers.set(id, number + letters(place));
  }
}

/** A section that nobody knows comes last. */
function rank(section: string): number {
  const place = sectionOrder.indexOf(section);
  return place === -1 ? sectionOrder.length : place;
}

function isOwnJoint(id: string): boolean {
  return id.includes(':');
}

/** a, b, … z, aa, ab, … */
function letters(place: number): string {
  const last = String.fromCharCode(97 + (place % 26));
  return place < 26 ? last : letters(Math.floor(place / 26) - 1) + last;
}

/** The part that a point of the site belongs to: `tower@45 ft`, `t1-rods.2`, `line1:radio` → the id before the mark. */
export function partOfPoint(point: string): string {
  return point.split(/[@.:]/, 1)[0]!;
}
