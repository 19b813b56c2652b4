import type { Line } from '../site/site.ts';
import { addNode, addTie, type GraphBuilder, tieOf } from './graph-builder.ts';
import { landLine } from './land-line.ts';
import { type Course, type CourseStop, courseOf } from './line-course.ts';
import { lineMakeUp } from './line-make-up.ts';
import type { Opening } from './opening.ts';
import type { Tie, TieKind } from './tie.ts';

export type Strand = 'shield' | 'core' | 'protective';

/** Every line: shield, cores (as one strand) and protective conductor, each on its own. */
export function tieLines(builder: GraphBuilder, openings: readonly Opening[]): void {
  for (const line of builder.index.site.lines) {
    if (line.present === 'no') continue;
    const course = courseOf(line, openings);
    for (const strand of strandsOf(builder, line)) tieStrand(builder, line, course, strand);
  }
}

export interface StrandUse {
  readonly which: Strand;
  readonly kind: TieKind;
  /** For a strand of which nobody says whether the line has it: the field that decides. */
  readonly unknown: Pick<Tie, 'is' | 'decidedBy'> | null;
}

function strandsOf({ index }: GraphBuilder, line: Line): readonly StrandUse[] {
  const make = lineMakeUp(index, line);
  const unknown = (field: string) => ({ is: 'unknown' as const, decidedBy: `lines.${line.id}.${field}` });
  return [
    ...(make.shield ? [{ which: 'shield' as const, kind: 'shield' as const, unknown: null }] : []),
    ...(make.cores === 'no'
      ? []
      : [
          {
            which: 'core' as const,
            kind: 'core' as const,
            unknown: make.cores === 'yes' ? null : unknown('metal_inside'),
          },
        ]),
    ...(make.protective === 'no'
      ? []
      : [
          {
            which: 'protective' as const,
            kind: make.feeder ? ('feeder' as const) : ('cord' as const),
            unknown: make.protective === 'yes' ? null : unknown('protective_conductor'),
          },
        ]),
  ];
}

/** One strand from stop to stop. Where the line is taken off, its end hangs before or after the stop, over a gap. */
function tieStrand(builder: GraphBuilder, line: Line, { stops, lengthsM }: Course, strand: StrandUse): void {
  const ends = stops.map((stop) => endsAt(builder, line, stop, strand));
  stops.forEach((stop, i) => {
    const { arrive, at, leave } = ends[i]!;
    landLine(builder, line, stop, strand, at);
    const hangs = [i > 0 ? arrive : at, i < stops.length - 1 ? leave : at] as const;
    tieGaps(builder, line, stop, strand, hangs, at);
    if (i === 0) return;
    const more: Partial<Tie> = { body: 'span', lengthM: lengthsM[i - 1] ?? null, ...strand.unknown };
    addTie(builder, ends[i - 1]!.leave, arrive, tieOf(strand.kind, line.id, more));
  });
}

/** Where a strand comes to a stop, what lands on it there, and where it goes on; one node unless the line is parted there. */
interface Ends {
  readonly arrive: string;
  readonly at: string;
  readonly leave: string;
}

function endsAt(builder: GraphBuilder, line: Line, stop: CourseStop, strand: StrandUse): Ends {
  const at = nodeAt(builder, line, stop, strand);
  const end = (side: '-' | '+') => addNode(builder, `${at}${side}`, strand.which, line.id);
  const blocked = blockedSide(builder, line, stop, strand);
  return {
    arrive: stop.openBefore !== null || blocked === 'before' ? end('-') : at,
    at,
    leave: stop.openAfter !== null || blocked === 'after' ? end('+') : at,
  };
}

function nodeAt(builder: GraphBuilder, line: Line, { index, stop }: CourseStop, { which }: StrandUse): string {
  const id = `${line.id}.${which}.${index + 1}`;
  if (stop.is === 'street') return addNode(builder, id, 'street', 'street');
  if (stop.is === 'unknown') return addNode(builder, id, 'unknown', `unknown:${line.id}.${index + 1}`);
  return addNode(builder, id, which, line.id);
}

/** A DC-blocked arrester has its gap on the side of the antenna or the street; no direct current goes on to the other. */
function blockedSide(
  builder: GraphBuilder,
  line: Line,
  { stop }: CourseStop,
  { which }: StrandUse,
): 'before' | 'after' | null {
  if (which !== 'core' || stop.is !== 'part' || stop.at.part === null) return null;
  if (builder.index.parts.get(stop.at.part)?.kind !== 'dc-blocked') return null;
  const isOuter = (end: Line['path'][number] | undefined) =>
    end?.is === 'street' || (end?.is === 'part' && builder.index.parts.get(end.at.part ?? '')?.section === 'antennas');
  return isOuter(line.path.at(-1)) && !isOuter(line.path[0]) ? 'before' : 'after';
}

/** A pulled plug's two sides face each other; at any other stop the pulled end faces what it was on. */
function tieGaps(
  builder: GraphBuilder,
  line: Line,
  stop: CourseStop,
  strand: StrandUse,
  [arrive, leave]: readonly [string, string],
  at: string,
): void {
  const gap = (opening: Opening) => tieOf('gap', line.id, { body: 'span', lengthM: opening.gapM, ...strand.unknown });
  const { openBefore, openAfter } = stop;
  if (stop.stop.is === 'plug') {
    if (openBefore !== null) addTie(builder, arrive, leave, gap(openBefore));
    return;
  }
  if (openBefore !== null) addTie(builder, arrive, at, gap(openBefore));
  if (openAfter !== null) addTie(builder, leave, at, gap(openAfter));
}
