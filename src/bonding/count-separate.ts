import { knownBonds } from './bond-choice.ts';
import type { Way } from './bonding.ts';
import type { ContractedMetal } from './contracted-metal.ts';
import { csr } from './csr.ts';
import { disjointWaysIn } from './disjoint-ways.ts';
import { separateClasses } from './separate-classes.ts';

export type Separate = Pick<Way, 'separatePaths' | 'separatePathsStrict'>;

/**
 * Counts, for two members between which there is a way, the ways that share no conductor and no joint, and those that share no part
 * but the ends. Between most parts there is one: only pairs that no single failure parts are counted out.
 */
export function separateCounter(metal: ContractedMetal): (from: string, to: string) => Separate {
  const choice = knownBonds(metal.graph);
  const net = csr(metal.graph, choice);
  const isJoint = (node: string) => metal.graph.getNodeAttribute(node, 'kind') === 'joint';
  const classes = separateClasses(net, (n) => isJoint(net.ids[n]!));
  let ways: ReturnType<typeof disjointWaysIn> | null = null;
  return (from, to) => {
    const sure: Separate = { separatePaths: 1, separatePathsStrict: 1 };
    return pairs(metal, from, to).reduce<Separate>((best, [a, b]) => {
      if (classes[net.numberOf.get(a)!] !== classes[net.numberOf.get(b)!]) return best;
      ways ??= disjointWaysIn(metal.graph, { ...choice, breakableNode: isJoint });
      const { separate, strict } = ways(a, b);
      return separate > best.separatePaths ? { separatePaths: separate, separatePathsStrict: strict } : best;
    }, sure);
  };
}

/** Every landing of the one with every node of the other. */
function pairs(metal: ContractedMetal, from: string, to: string): readonly (readonly [string, string])[] {
  const ends = metal.members.get(to) ?? [];
  const all = (metal.members.get(from) ?? []).flatMap((a) => ends.map((b) => [a, b] as const));
  return all.filter(([a, b]) => a !== b);
}
