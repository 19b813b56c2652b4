import { isBond } from './bond-choice.ts';
import type { Bridge, Group } from './bonding.ts';
import type { MetalGraph } from './build-graph.ts';
import type { Grouping } from './groups.ts';
import type { MetalNet } from './metal-net.ts';
import { type Cells, nearestCells, wayBack } from './nearest-cells.ts';
import { ownerOf } from './owner-of.ts';
import { passesOn } from './passes-on.ts';
import type { Tie, TieKind } from './tie.ts';
import { weaker, weaknessOf } from './tie-strength.ts';

/**
 * What leads from one group to another without being a bond: shields, cords, cases, doubtful metalwork, guys, arresters
 * that fire; with everything that it goes through. A lone box is no end but a link, since what counts is what hangs on both its
 * sides. Where more than two groups meet on one thing it goes to the nearest, an earthed one before the others, and each
 * of the others has a chain to that group: as many chains as there are ties, never one for each pair. By groups, then parts.
 *
 * Left out: a tie that would be a bond if it were there (that is doubt about the groups themselves), and the air gap at a line
 * that somebody took off, which is what they took it off for.
 */
export function bridgesOf(metal: MetalGraph, net: MetalNet, grouping: Grouping): readonly Bridge[] {
  const ends = grouping.groups.filter((g) => !isLink(metal, g)).sort(byWeight);
  const given = endsOf(net, grouping, ends);
  const startOf = (cell: number) => (isEarthed(ends[cell]!) ? 0 : 1e9);
  const costOf = (e: number) => (leads(metal, net.ties[e]!) ? (net.ties[e]!.is === 'there' ? 1 : 1e5) : null);
  const cells = nearestCells({ net, given, startOf, costOf });
  const found: Bridge[] = [];
  for (let e = 0; e < net.ties.length; e++) {
    const bridge = leads(metal, net.ties[e]!) ? bridgeOver({ metal, net, cells, given }, ends, e) : null;
    if (bridge !== null) found.push(bridge);
  }
  return eachOnce(metal, found);
}

/** A single box whose case passes nothing on. */
function isLink({ index }: MetalGraph, { parts }: Group): boolean {
  const part = parts.length === 1 ? index.parts.get(parts[0]!) : undefined;
  return (part?.section === 'equipment' || part?.section === 'arresters') && !passesOn(part);
}

const isEarthed = (g: Group) => g.electrodes.length > 0 || g.hasService === true;

/** The group of the service, then those with an electrode, then the others; by id. */
function byWeight(a: Group, b: Group): number {
  const weight = (g: Group) => (g.hasService === true ? 0 : isEarthed(g) ? 1 : 2);
  return weight(a) - weight(b) || (a.id < b.id ? -1 : 1);
}

/** Place of its group at each node that lies in one; -1 at what lies between groups. */
function endsOf(net: MetalNet, { groupOfNode }: Grouping, ends: readonly Group[]): Int32Array {
  const place = new Map(ends.map((g, i) => [g.id, i] as const));
  return Int32Array.from(net.ids, (_id, n) => place.get(groupOfNode(n) ?? '') ?? -1);
}

function leads({ index }: MetalGraph, tie: Tie): boolean {
  if (isBond(tie)) return tie.is === 'there';
  return tie.kind !== 'gap' || index.parts.get(tie.part)?.section !== 'lines';
}

interface Search {
  readonly metal: MetalGraph;
  readonly net: MetalNet;
  readonly cells: Cells;
  readonly given: Int32Array;
}

/** The chain over an edge at which two groups' cells meet. */
function bridgeOver(search: Search, ends: readonly Group[], edge: number): Bridge | null {
  const { net, cells } = search;
  const [u, v] = [net.ends[2 * edge]!, net.ends[2 * edge + 1]!];
  const [one, other] = [cells.of[u]!, cells.of[v]!];
  if (one === other || one === -1 || other === -1) return null;
  const [a, b] = [ends[one]!.id, ends[other]!.id];
  const [first, last] = a < b ? [u, v] : [v, u];
  const [back, ahead] = [wayBack(net, cells, first), wayBack(net, cells, last)];
  const ties = [edge, ...[...back, ...ahead].map((step) => step.edge)].map((e) => net.ties[e]!);
  return {
    groups: a < b ? [a, b] : [b, a],
    tie: ties.filter((tie) => !isBond(tie)).reduce<TieKind>((worst, tie) => weaker(worst, tie.kind), 'metal'),
    parts: partsAlong(search, [
      ...back.flatMap(({ edge: e, to }) => [nodeName(search, to), net.ties[e]!.part].reverse()).reverse(),
      nodeName(search, first),
      net.ties[edge]!.part,
      nodeName(search, last),
      ...ahead.flatMap(({ edge: e, to }) => [net.ties[e]!.part, nodeName(search, to)]),
    ]),
    certain: ties.every((tie) => tie.is === 'there'),
  };
}

/** The part of a node between groups; nothing for one that lies in a group, which is where the chain ends. */
function nodeName({ metal, net, given }: Search, node: number): string {
  return given[node] === -1 ? metal.graph.getNodeAttribute(net.ids[node]!, 'part') : '';
}

/** Owners' names, each once where it stands several times in a row; what is no part of the site has none. */
function partsAlong({ metal: { index } }: Search, names: readonly string[]): readonly string[] {
  const parts = names.map(ownerOf).filter((id) => index.parts.has(id));
  return parts.filter((id, i) => id !== parts[i - 1]);
}

/**
 * One chain for each choice of lines: a line that leads from group to group by its shield leads there by its core too, which is
 * not told again. Chains without a line differ by what they go through.
 */
function eachOnce({ index }: MetalGraph, found: readonly Bridge[]): readonly Bridge[] {
  const best = new Map<string, Bridge>();
  for (const bridge of found) {
    const lines = bridge.parts.filter((id) => index.parts.get(id)?.section === 'lines');
    const key = `${bridge.groups.join(' ')}|${(lines.length > 0 ? lines : bridge.parts).join(' ')}`;
    const before = best.get(key);
    if (before === undefined || compare(bridge, before) < 0) best.set(key, bridge);
  }
  const order = (b: Bridge) => [...b.groups, ...b.parts].join(' ');
  return [...best.values()].sort((a, b) => (order(a) < order(b) ? -1 : 1));
}

/** The surest first, then the strongest, the shortest, the first by name. */
function compare(a: Bridge, b: Bridge): number {
  return (
    Number(b.certain) - Number(a.certain) ||
    weaknessOf(a.tie) - weaknessOf(b.tie) ||
    a.parts.length - b.parts.length ||
    (a.parts.join(' ') < b.parts.join(' ') ? -1 : 1)
  );
}
