import type { Part } from '../site/site.ts';
import type { PartTie } from './bonding.ts';
import type { MetalGraph } from './build-graph.ts';
import type { MetalNet } from './metal-net.ts';
import { type Cells, nearestCells, wayBack } from './nearest-cells.ts';
import { ownerOf } from './owner-of.ts';
import type { NodeKind, Tie, TieKind } from './tie.ts';
import { weaker, weaknessOf } from './tie-strength.ts';

/**
 * Who is tied to whom, part by part: joints, wire and strands are drawn together into the part that they meet, so that a
 * conductor with its joints is one tie, and one that passes clamps a tie from each part to the next. Where several wires meet in the air, each is
 * tied to the nearest part. A tie is as good as the weakest piece of it, and that piece makes it. A core lands on the
 * box that it enters; an arrester takes it by its gap. Each pair, kind and maker once; by a, b, part, kind.
 */
export function partTies(metal: MetalGraph, net: MetalNet): readonly PartTie[] {
  const parts = [...metal.index.parts.keys()].sort();
  const cells = nearestCells({
    net,
    given: landed(metal, net, parts),
    startOf: () => 0,
    costOf: (e) => costOf(net.ties[e]!),
  });
  const ties = new Map<string, PartTie>();
  for (let e = 0; e < net.ties.length; e++) {
    for (const tie of tiesOver(metal, net, cells, parts, e)) {
      const key = `${tie.a} ${tie.b} ${tie.part} ${tie.kind}`;
      if (ties.get(key)?.is !== 'there') ties.set(key, tie);
    }
  }
  return [...ties].sort(([a], [b]) => (a < b ? -1 : 1)).map(([, tie]) => tie);
}

const between: ReadonlySet<NodeKind> = new Set<NodeKind>([
  'joint',
  'wire',
  'guy',
  'shield',
  'core',
  'protective',
  'street',
  'unknown',
]);

/** Place of the part, among all in order, at each node that belongs to one; -1 at what lies between parts. */
function landed({ graph, index }: MetalGraph, net: MetalNet, parts: readonly string[]): Int32Array {
  const place = new Map(parts.map((id, i) => [id, i] as const));
  const given = Int32Array.from(net.ids, (id) => {
    const { kind, part } = graph.getNodeAttributes(id);
    return between.has(kind) ? -1 : (place.get(part) ?? -1);
  });
  for (const line of index.site.lines) {
    line.path.forEach((stop, i) => {
      const node = net.numberOf.get(`${line.id}.core.${i + 1}`);
      const part = stop.is === 'part' ? index.parts.get(stop.at.part ?? '') : undefined;
      if (node !== undefined && part !== undefined && takesCores(part)) given[node] = place.get(part.id)!;
    });
  }
  return given;
}

/** At an antenna and an arrester the graph says how a core meets them; bars it passes. */
function takesCores({ section, present }: Part): boolean {
  return present !== 'no' && (section === 'equipment' || section === 'supports' || section === 'metalwork');
}

/** Contacts before spans, what is there before what may be, what conducts before what only a surge or static passes. */
function costOf({ body, is, kind }: Tie): number {
  const weak = weaknessOf(kind) >= weaknessOf('drain');
  return (body === 'span' ? 1000 : 1) + (is === 'there' ? 0 : 10) + (weak ? 100 : 0);
}

function tiesOver(
  metal: MetalGraph,
  net: MetalNet,
  cells: Cells,
  parts: readonly string[],
  edge: number,
): readonly PartTie[] {
  const [u, v] = [net.ends[2 * edge]!, net.ends[2 * edge + 1]!];
  const [one, other] = [cells.of[u]!, cells.of[v]!];
  if (one === other || one === -1 || other === -1) return [];
  const pieces = [edge, ...[u, v].flatMap((n) => wayBack(net, cells, n).map((step) => step.edge))].map(
    (e) => net.ties[e]!,
  );
  const kind = pieces.reduce<TieKind>((worst, tie) => weaker(worst, tie.kind), 'metal');
  const is = pieces.some((tie) => tie.is === 'unknown') ? 'unknown' : 'there';
  const [a, b] = [parts[Math.min(one, other)]!, parts[Math.max(one, other)]!];
  return makersOf(metal, pieces, kind).map((part) => ({ a, b, kind, is, part }));
}

/** Owners of the weakest pieces; a clamp makes a tie only where no wire does. */
function makersOf({ index }: MetalGraph, pieces: readonly Tie[], kind: TieKind): readonly string[] {
  const owners = [...new Set(pieces.filter((tie) => tie.kind === kind).map((tie) => ownerOf(tie.part)))];
  const wires = owners.filter((id) => index.parts.get(id)?.section !== 'joints');
  return wires.length > 0 ? wires : owners;
}
