import { add, type Interval, sum } from '../units/interval.ts';
import type { BestWay } from './best-way.ts';
import type { Way, WayPiece } from './bonding.ts';
import type { MetalGraph } from './build-graph.ts';
import type { NodeKind, Tie } from './tie.ts';

/** What a way is made of, between two members, with its sums. Where something in it has no known length, the length is null. */
export function wayOfEdges(
  metal: MetalGraph,
  from: string,
  to: string,
  best: BestWay,
  separate: Pick<Way, 'separatePaths' | 'separatePathsStrict'>,
): Way {
  const ties = best.edges.map((key) => metal.graph.getEdgeAttributes(key));
  const spans = ties.filter((tie) => tie.body !== 'contact');
  const lengthM = sum(ties.map((tie) => tie.lengthM));
  return {
    from,
    to,
    lengthM,
    lengthAtLeastM: ties.reduce((total, tie) => total + (tie.lengthM?.low ?? 0), 0),
    resistanceOhm: sum(ties.map((tie) => tie.resistanceOhm)),
    inductanceH: sum(spans.map((tie) => tie.inductanceH)),
    bendsDeg: ties.reduce((total, tie) => total + tie.bendsDeg, 0),
    through: throughOf(metal, from, to, best, ties),
    pieces: piecesOfWay(metal, best, ties),
    weakest: weakestOf(ties),
    ...separate,
    byFeeder: ties.some((tie) => tie.kind === 'feeder'),
  };
}

/** Parts and joints in the order in which they are passed, each once, ends left out; a guy's end is no part of the tower. */
function throughOf(metal: MetalGraph, from: string, to: string, best: BestWay, ties: readonly Tie[]): string[] {
  const passed = new Set<string>();
  best.nodes.forEach((node, i) => {
    const isEnd = i === 0 || i === best.nodes.length - 1;
    if (!isEnd) passed.add(metal.graph.getNodeAttribute(node, 'part'));
    const tie = ties[i];
    if (tie !== undefined) passed.add(tie.part);
  });
  return [...passed].filter((id) => id !== from && id !== to);
}

/** Edges of one part and body in a row are one piece. */
function piecesOfWay(metal: MetalGraph, best: BestWay, ties: readonly Tie[]): WayPiece[] {
  const pieces: WayPiece[] = [];
  ties.forEach((tie, i) => {
    const last = pieces.at(-1);
    const [from, to] = [nameOf(metal, best.nodes[i]!), nameOf(metal, best.nodes[i + 1]!)];
    if (last === undefined || last.part !== tie.part || last.body !== tie.body) {
      const { part, body, lengthM, resistanceOhm, inductanceH, areaM2, bendsDeg } = tie;
      pieces.push({ part, from, to, body, lengthM, resistanceOhm, inductanceH, areaM2, bendsDeg });
      return;
    }
    const { part, body, areaM2 } = last;
    pieces[pieces.length - 1] = { part, from: last.from, to, body, areaM2, ...addedUp(last, tie) };
  });
  return pieces;
}

function addedUp(piece: WayPiece, tie: Tie) {
  const both = (a: Interval | null, b: Interval | null) => (a === null || b === null ? null : add(a, b));
  return {
    lengthM: both(piece.lengthM, tie.lengthM),
    resistanceOhm: both(piece.resistanceOhm, tie.resistanceOhm),
    inductanceH: both(piece.inductanceH, tie.inductanceH),
    bendsDeg: piece.bendsDeg + tie.bendsDeg,
  };
}

/** Kinds of nodes whose ids the owner knows; the others are called by their part. */
const ownNamed: ReadonlySet<NodeKind> = new Set([
  ...(['electrode', 'joint', 'bar', 'support', 'antenna', 'arrester', 'case', 'guy', 'unknown'] as const),
]);

/** A node as the owner would name it. */
export function nameOf({ graph, typed }: MetalGraph, node: string): string {
  const name = typed.get(node);
  if (name !== undefined) return name;
  const { kind, part } = graph.getNodeAttributes(node);
  return ownNamed.has(kind) ? node : part;
}

/** The span of least section; of equals the first on the way. */
function weakestOf(ties: readonly Tie[]): Way['weakest'] {
  let weakest: Way['weakest'] = null;
  for (const { part, areaM2 } of ties) {
    if (areaM2 !== null && (weakest === null || areaM2.low < weakest.areaM2.low)) weakest = { part, areaM2 };
  }
  return weakest;
}
