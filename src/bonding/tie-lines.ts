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
  stops.forEach((stop, i) => {
    if (!bothOpen(stop)) landLine(builder, line, stop, strand, nodeAt(builder, line, stop, strand));
    if (i === 0) return;
    const from = leaving(builder, line, stops[i - 1]!, strand);
    const to = arriving(builder, line, stop, strand);
    const more: Partial<Tie> = { body: 'span', lengthM: lengthsM[i - 1] ?? null, ...strand.unknown };
    addTie(builder, from, to, tieOf(strand.kind, line.id, more));
  });
  stops.forEach((stop, i) => {
    bridgeGaps(builder, line, stop, strand, i > 0, i < stops.length - 1);
  });
}

const bothOpen = (stop: CourseStop) => stop.openBefore !== null && stop.openAfter !== null;

function nodeAt(builder: GraphBuilder, line: Line, { index, stop }: CourseStop, { which }: StrandUse): string {
  const id = `${line.id}.${which}.${index + 1}`;
  if (stop.is === 'street') return addNode(builder, id, 'street', 'street');
  return stop.is === 'unknown'
    ? addNode(builder, id, 'unknown', `unknown:${line.id}.${index + 1}`)
    : addNode(builder, id, which, line.id);
}

function arriving(builder: GraphBuilder, line: Line, stop: CourseStop, strand: StrandUse): string {
  if (stop.openBefore === null) return nodeAt(builder, line, stop, strand);
  return addNode(builder, `${line.id}.${strand.which}.${stop.index + 1}-`, strand.which, line.id);
}

function leaving(builder: GraphBuilder, line: Line, stop: CourseStop, strand: StrandUse): string {
  if (stop.openAfter === null) return nodeAt(builder, line, stop, strand);
  return addNode(builder, `${line.id}.${strand.which}.${stop.index + 1}+`, strand.which, line.id);
}

/** A pulled plug's two sides face each other; at any other stop the pulled end faces what it was on. */
function bridgeGaps(
  builder: GraphBuilder,
  line: Line,
  stop: CourseStop,
  strand: StrandUse,
  hasBefore: boolean,
  hasAfter: boolean,
): void {
  const gap = (opening: Opening) => tieOf('gap', line.id, { body: 'span', lengthM: opening.gapM, ...strand.unknown });
  if (stop.stop.is === 'plug') {
    if (!hasBefore || !hasAfter || stop.openBefore === null || stop.openAfter === null) return;
    const ends = [arriving(builder, line, stop, strand), leaving(builder, line, stop, strand)] as const;
    return addTie(builder, ends[0], ends[1], gap(stop.openBefore));
  }
  const landed = nodeAt(builder, line, stop, strand);
  if (bothOpen(stop)) landLine(builder, line, stop, strand, landed);
  if (stop.openBefore !== null && hasBefore)
    addTie(builder, arriving(builder, line, stop, strand), landed, gap(stop.openBefore));
  if (stop.openAfter !== null && hasAfter)
    addTie(builder, leaving(builder, line, stop, strand), landed, gap(stop.openAfter));
}
