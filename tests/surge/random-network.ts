import type { SurgeNetwork } from '../../src/surge/surge-network.ts';

export interface RandomNetworkOptions {
  readonly nodes: number;
  readonly more: number;
  readonly electrodes: number;
  readonly coupled: boolean;
  readonly soil: boolean;
}

/**
 * A random tree of branches and as many more as asked: 1 to 100 milliohm, 0.5 to 20 uH, electrodes of 5 to 100 ohm. Coupled:
 * inductances have the correlations of random vectors that lean one way. Soil: electrodes feel each other.
 */
export function randomNetwork(
  next: () => number,
  { nodes, more, electrodes, coupled, soil }: RandomNetworkOptions,
): SurgeNetwork {
  const between = (low: number, high: number) => low * (high / low) ** next();
  const node = () => Math.floor(next() * nodes);
  const ends = Array.from({ length: nodes - 1 }, (_, i): [number, number] => [Math.floor(next() * (i + 1)), i + 1]);
  for (let i = 0; i < more; i++) {
    const from = node();
    ends.push([from, (from + 1 + Math.floor(next() * (nodes - 1))) % nodes]);
  }
  const branches = ends.map(([from, to]) => ({
    from,
    to,
    resistanceOhm: between(1e-3, 0.1),
    inductanceH: between(0.5e-6, 20e-6),
  }));
  const at = Array.from({ length: electrodes }, node);
  const own = at.map(() => between(5, 100));
  const felt = own.map((a, i) => own.map((b, j) => (i === j ? a : 0.24 * Math.sqrt(a * b))));
  return {
    nodeCount: nodes,
    branches,
    mutualH: coupled
      ? coupledH(
          next,
          branches.map((b) => b.inductanceH),
        )
      : null,
    earth: { nodes: at, resistanceOhm: soil ? felt : own },
  };
}

/** Each branch is a unit vector of its own with a random one of four numbers: no two are coupled by more than 0.9. */
function coupledH(next: () => number, ownH: readonly number[]): Float64Array {
  const vectors = ownH.map(() => {
    const parts = Array.from({ length: 4 }, () => next() - 0.3);
    const length = Math.hypot(...parts);
    return parts.map((part) => (0.9 * part) / length);
  });
  const count = ownH.length;
  return Float64Array.from({ length: count * count }, (_, at) => {
    const [i, j] = [Math.floor(at / count), at % count];
    if (i === j) return ownH[i]!;
    const share = vectors[i]!.reduce((sum, part, k) => sum + part * vectors[j]![k]!, 0);
    return share * Math.sqrt(ownH[i]! * ownH[j]!);
  });
}
