import type { Way } from './bonding.ts';
import type { ContractedMetal } from './contracted-metal.ts';
import { csr } from './csr.ts';
import { disjointWaysIn } from './disjoint-ways.ts';
import { separateClasses } from './separate-classes.ts';
import { type WholeWires, wholeWires } from './whole-wires.ts';

export type Separate = Pick<Way, 'separatePaths' | 'separatePathsStrict'>;

const sure: Separate = { separatePaths: 1, separatePathsStrict: 1 };

/**
 * Counts, for two members between which there is a way, the ways that share no conductor and no joint, and those that share no part
 * but the ends. A conductor counts once, however many spans clamps and splices make of it. Between most parts there is
 * one way: only pairs that no single failure parts are counted out.
 */
export function separateCounter(metal: ContractedMetal): (from: string, to: string) => Separate {
  const count = nodeCounter(metal);
  return (from, to) => count(metal.members.get(from) ?? [], metal.members.get(to) ?? []);
}

/** The same for two ends that may have several nodes each, in this graph or in the whole one: the best of their pairs. */
export function nodeCounter(metal: ContractedMetal): (from: readonly string[], to: readonly string[]) => Separate {
  const wires = wholeWires(metal);
  const { graph, isBreakable } = wires;
  const net = csr(graph);
  const classes = separateClasses(net, (n) => isBreakable(net.ids[n]!));
  const classOf = (node: string) => classes[net.numberOf.get(node)!];
  // What may break is in a class of its own, so two ways to it would not show there.
  const mayBeTwo = (a: string, b: string) => isBreakable(a) || isBreakable(b) || classOf(a) === classOf(b);
  let ways: ReturnType<typeof disjointWaysIn> | null = null;
  return (from, to) =>
    pairs(metal, wires, from, to).reduce<Separate>((best, [a, b]) => {
      if (!mayBeTwo(a, b)) return best;
      ways ??= disjointWaysIn(graph, { breakableNode: isBreakable });
      const { separate, strict } = ways(a, b);
      const more = separate - best.separatePaths || strict - best.separatePathsStrict;
      return more > 0 ? { separatePaths: separate, separatePathsStrict: strict } : best;
    }, sure);
}

/** Every node of the one with every node of the other. */
function pairs(
  metal: ContractedMetal,
  wires: WholeWires,
  from: readonly string[],
  to: readonly string[],
): readonly (readonly [string, string])[] {
  const inside = (node: string) => wires.inside(metal.inside(node));
  const ends = [...new Set(to.map(inside))];
  return [...new Set(from.map(inside))].flatMap((a) => ends.filter((b) => a !== b).map((b) => [a, b] as const));
}
