import type { ContractedMetal } from './contracted-metal.ts';
import { type MetalNet, netBuilder } from './metal-net.ts';
import type { SiteIndex } from './site-index.ts';
import type { Tie } from './tie.ts';

/** The bonds with each wire drawn into one node, so that what fails as one is one. */
export interface WholeWires {
  readonly net: MetalNet;
  /** The node of this net that a node of the contracted metal was drawn into. */
  readonly inside: (node: string) => string;
  /** Whether a node fails by itself and takes along all that goes through it: a wire or a joint. */
  readonly isBreakable: (node: number) => boolean;
}

/**
 * A conductor, or the protective conductor of a feeder, is one thing however many spans clamps and splices make of it: its spans,
 * the points at which it passes clamps and its own splices become one node, with an edge to each thing that it meets. Two wires that
 * share a splice become one, since losing it loses both. Only ties that are known to be there.
 */
export function wholeWires({ net: metal, index }: ContractedMetal): WholeWires {
  const drawn = drawnInto(metal, index);
  const inside = (node: string) => drawn.get(node) ?? node;
  const builder = netBuilder();
  const place = metal.ids.map((node, n) => builder.addNode(inside(node), metal.nodes[n]!));
  metal.ties.forEach((tie, e) => {
    if (tie.is !== 'there') return;
    const [a, b] = [place[metal.ends[2 * e]!]!, place[metal.ends[2 * e + 1]!]!];
    const wire = wireOf(index, tie);
    if (wire === null) builder.addTie(metal.keys[e]!, a, b, tie);
    else {
      const facts = { kind: 'wire', part: tie.part, heightM: null, noticed: tie.noticed } as const;
      const node = builder.addNode(inside(wire), facts);
      for (const end of [a, b]) builder.addTie(`${inside(wire)}|${end}`, node, end, tie);
    }
  });
  const net = builder.net();
  const isBreakable = (n: number) => net.ids[n]!.startsWith(prefix) || net.nodes[n]!.kind === 'joint';
  return { net, inside, isBreakable };
}

const prefix = 'wire ';

/** The wire that a tie is a piece of, as a node; null for any other tie. */
function wireOf({ parts }: SiteIndex, { part, kind }: Tie): string | null {
  const isWire = kind === 'feeder' || parts.get(part)?.section === 'conductors';
  return isWire ? `${prefix}${part}` : null;
}

/** Which wire each point in a wire and each splice is drawn into; where wires share a splice, the first of them. */
function drawnInto(net: MetalNet, index: SiteIndex): ReadonlyMap<string, string> {
  const into = new Map<string, string>();
  net.nodes.forEach(({ kind, part }, n) => {
    const isPoint = kind === 'wire' && index.parts.get(part)?.section === 'conductors';
    if (isPoint || kind === 'protective') into.set(net.ids[n]!, `${prefix}${part}`);
  });
  const first = (wire: string): string => {
    let at = wire;
    for (let next = into.get(at); next !== undefined; next = into.get(at)) at = next;
    return at;
  };
  net.ties.forEach((tie, e) => {
    const splice = spliceOf(net, tie, net.ends[2 * e]!, net.ends[2 * e + 1]!);
    if (splice === null) return;
    const [held, wire] = [first(splice.joint), first(splice.point)];
    if (held !== wire) into.set(held, wire);
  });
  return new Map([...into.keys()].map((node) => [node, first(node)] as const));
}

/** The joint of a splice with the point at which the wire goes on from it. */
function spliceOf({ ids, nodes }: MetalNet, { part, body }: Tie, a: number, b: number) {
  if (body !== 'contact' || (ids[a] !== part && ids[b] !== part)) return null;
  const [joint, point] = ids[a] === part ? [a, b] : [b, a];
  const isSplice = nodes[joint]!.kind === 'joint' && nodes[point]!.kind === 'wire';
  return isSplice ? { joint: ids[joint]!, point: ids[point]! } : null;
}
