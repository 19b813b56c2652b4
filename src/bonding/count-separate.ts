import type { Way } from './bonding.ts';
import type { ContractedMetal } from './contracted-metal.ts';
import { disjointWaysOf } from './disjoint-ways.ts';
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
  const { net, isBreakable } = wires;
  const classes = separateClasses(net, isBreakable);
  // What may break is in a class of its own, so two ways to it would not show there.
  const mayBeTwo = (a: number, b: number) => isBreakable(a) || isBreakable(b) || classes[a] === classes[b];
  let ways: ReturnType<typeof disjointWaysOf> | null = null;
  return (from, to) =>
    pairs(metal, wires, from, to).reduce<Separate>((best, [a, b]) => {
      if (!mayBeTwo(a, b)) return best;
      ways ??= disjointWaysOf(net, isBreakable);
      const { separate, strict } = ways(a, b);
      const more = separate - best.separatePaths || strict - best.separatePathsStrict;
      return more > 0 ? { separatePaths: separate, separatePathsStrict: strict } : best;
    }, sure);
}

/** Every node of the one with every node of the other. */
function pairs(
  metal: ContractedMetal,
  { net, inside }: WholeWires,
  from: readonly string[],
  to: readonly string[],
): readonly (readonly [number, number])[] {
  const place = (node: string) => net.numberOf.get(inside(metal.inside(node)))!;
  const ends = [...new Set(to.map(place))];
  return [...new Set(from.map(place))].flatMap((a) => ends.filter((b) => a !== b).map((b) => [a, b] as const));
}
