import type { Answer, Arrester, Line, Part, PointRef } from '../site/site.ts';
import { addNode, addTie, type GraphBuilder, tieOf } from './graph-builder.ts';
import type { CourseStop } from './line-course.ts';
import { bodyOf, nodeOfPoint } from './node-of-point.ts';
import { fieldPath } from './site-index.ts';
import type { StrandUse } from './tie-lines.ts';

/** Ties one strand of a line to what it meets at a stop. */
export function landLine(builder: GraphBuilder, line: Line, stop: CourseStop, strand: StrandUse, node: string): void {
  const typed = stop.stop;
  if (typed.is === 'bond' && strand.which === 'shield') landOn(builder, line, typed.at, strand, node);
  if (typed.is !== 'part' || typed.at.part === null) return;
  const part = builder.index.parts.get(typed.at.part);
  if (part === undefined || part.present === 'no') return;
  if (part.section === 'antennas') landOnAntenna(builder, line, part, strand, node);
  else if (part.section === 'arresters') landOnArrester(builder, line, part, strand, node);
  else if (strand.which !== 'core') landOn(builder, line, typed.at, atMachine(line, part, strand), node);
}

/** A machine at a point of a support, or on metalwork, has a case of its own: nobody says whether it meets the metal. */
function atMachine(line: Line, part: Part, strand: StrandUse): StrandUse {
  if (part.section !== 'supports' && part.section !== 'metalwork') return strand;
  return { ...strand, unknown: { is: 'unknown', decidedBy: `lines.${line.id}.path` } };
}

function landOn(builder: GraphBuilder, line: Line, at: PointRef, strand: StrandUse, node: string): void {
  const target = nodeOfPoint(builder, at, line.id);
  if (target !== null) addTie(builder, node, target, tieOf(strand.kind, line.id, { ...strand.unknown }));
}

/** The shield meets the grounded side; the cores reach it for static where the feed conductors are joined at DC. */
function landOnAntenna(
  builder: GraphBuilder,
  line: Line,
  antenna: Extract<Part, { readonly section: 'antennas' }>,
  strand: StrandUse,
  node: string,
): void {
  const body = bodyOf(builder, antenna);
  if (strand.which === 'shield') addTie(builder, node, body, tieOf('shield', line.id, { ...strand.unknown }));
  else if (strand.which === 'core')
    drain(builder, antenna.id, node, body, antenna.dcPath, fieldPath(antenna, 'dc_path'));
}

function drain(builder: GraphBuilder, part: string, a: string, b: string, is: Answer, decidedBy: string): void {
  if (is === 'no') return;
  const unknown = is === 'unknown' ? { is: 'unknown' as const, decidedBy } : {};
  addTie(builder, a, b, tieOf('drain', part, { ...unknown }));
}

/** Arresters whose core meets the body at DC: a shorted stub. */
const shorted: ReadonlySet<string> = new Set(['quarter-wave stub']);

/** An arrester ties the shield to its body; its cores reach the body over a gap, and for static by a stub, a bleed or a choke. */
function landOnArrester(builder: GraphBuilder, line: Line, arrester: Arrester, strand: StrandUse, node: string): void {
  const body = addNode(builder, arrester.id, 'arrester', arrester.id);
  if (strand.which === 'shield') addTie(builder, node, body, tieOf('shield', line.id, { ...strand.unknown }));
  if (strand.which !== 'core') return;
  const isShorted = shorted.has(arrester.kind);
  if (!isShorted) addTie(builder, node, body, tieOf('gap', arrester.id, { ...strand.unknown }));
  if (isShorted || arrester.bleed === 'yes') drain(builder, arrester.id, node, body, 'yes', '');
}
