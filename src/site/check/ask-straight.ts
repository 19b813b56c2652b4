import { add, exact, type Interval } from '../../units/interval.ts';
import { ask, below } from '../reading/report.ts';
import type { TypedPart } from '../reading/typed-site.ts';
import type { Line, PointRef, Stop } from '../site.ts';
import type { Checked } from './checked.ts';
import { leastApartM, type Point, pointFinder } from './point-of.ts';
import { sayLength } from './say-length.ts';

/**
 * A length is asked about when it falls short by more than both: a position is that of the middle of a part, and a wire
 * lands on its edge; tapes sag and figures are rounded.
 */
const shortByM = 0.5;
const shortByShare = 0.03;

type Find = (ref: PointRef) => Point | null;

/** Asks about a conductor or a line that is shorter than the straight distance between its ends. */
export function askStraight(checked: Checked): void {
  const { typed, site } = checked;
  const find = pointFinder(site);
  typed.parts.conductors.forEach((part, i) => {
    const { from, to, lengthM } = site.conductors[i]!;
    askBetween(checked, part, 'length', lengthM, [find(from), find(to)]);
  });
  typed.parts.lines.forEach((part, i) => {
    const { path, lengthM, lengthsM } = site.lines[i]!;
    const stops = path.filter((stop) => stop.is !== 'bend');
    if (lengthsM.length === stops.length - 1) askPieces(checked, part, stops, lengthsM, find);
    else askBetween(checked, part, 'length', lengthM, [firstOf(stops, find), firstOf([...stops].reverse(), find)]);
  });
}

/** Runs of pieces from one stop whose place is known to the next. */
function askPieces(
  checked: Checked,
  part: TypedPart<'lines'>,
  stops: readonly Stop[],
  lengthsM: Line['lengthsM'],
  find: Find,
): void {
  let last: Point | null = null;
  let run: Interval | null = exact(0);
  stops.forEach((stop, i) => {
    const piece = i === 0 ? exact(0) : lengthsM[i - 1]!;
    run = run === null || piece === null ? null : add(run, piece);
    const here = placeOfStop(stop, find);
    if (here === null) return;
    askBetween(checked, part, 'lengths', run, [last, here]);
    last = here;
    run = exact(0);
  });
}

function askBetween(
  { site }: Checked,
  { spot, fieldAt, typed }: TypedPart<'lines'> | TypedPart<'conductors'>,
  field: 'length' | 'lengths',
  lengthM: Interval | null,
  [a, b]: readonly [Point | null, Point | null],
): void {
  const at = fieldAt.get(field);
  if (a === null || b === null || lengthM === null || at === undefined) return;
  const straightM = leastApartM(a, b);
  if (lengthM.high >= straightM - Math.max(shortByM, straightM * shortByShare)) return;
  const text = field === 'length' ? (typed.length ?? '') : sayLength(lengthM, site);
  ask(below(spot, field), at, 'length-below-straight', { text, straight: sayLength(straightM, site) });
}

function firstOf(stops: readonly Stop[], find: Find): Point | null {
  const [first] = stops;
  return first === undefined ? null : placeOfStop(first, find);
}

function placeOfStop(stop: Stop, find: Find): Point | null {
  return stop.is === 'part' || stop.is === 'bond' ? find(stop.at) : null;
}
