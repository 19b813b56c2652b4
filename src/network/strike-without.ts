import type { SurgeNetwork } from '../surge/surge-network.ts';
import type { StrikeNetwork } from './strike-network.ts';

/** The network without all branches of one part; what then hangs on nothing that reaches the soil is left out of it. */
export function strikeWithout(network: StrikeNetwork, part: string): StrikeNetwork {
  const { surge, branches, pieces, branchOfPiece, at } = network;
  const numberOf = reached(surge, (branch) => branches[branch]!.part !== part);
  const kept = branches.flatMap(({ part: own }, i) =>
    own !== part && numberOf[surge.branches[i]!.from]! >= 0 ? [i] : [],
  );
  const newBranch = new Map(kept.map((branch, i) => [branch, i]));
  const ofPieces = pieces.flatMap((piece, i) => {
    const branch = newBranch.get(branchOfPiece[i]!);
    return branch === undefined ? [] : [{ piece, branch }];
  });
  return {
    ...network,
    surge: {
      nodeCount: numberOf.reduce((most, n) => Math.max(most, n + 1), 0),
      branches: kept.map((i) => {
        const branch = surge.branches[i]!;
        return { ...branch, from: numberOf[branch.from]!, to: numberOf[branch.to]! };
      }),
      mutualH: surge.mutualH === null ? null : among(surge.mutualH, branches.length, kept),
      earth: { ...surge.earth, nodes: surge.earth.nodes.map((node) => numberOf[node]!) },
    },
    at: at.map((node) => (node < 0 ? -1 : numberOf[node]!)),
    branches: kept.map((i) => branches[i]!),
    pieces: ofPieces.map(({ piece }) => piece),
    branchOfPiece: Int32Array.from(ofPieces, ({ branch }) => branch),
  };
}

/** New number of each node that still has a way to an electrode, in the old order; -1: it has none. */
function reached({ nodeCount, branches, earth }: SurgeNetwork, isKept: (branch: number) => boolean): Int32Array {
  const meeting: number[][] = Array.from({ length: nodeCount }, () => []);
  branches.forEach(({ from, to }, branch) => {
    if (!isKept(branch)) return;
    meeting[from]!.push(to);
    meeting[to]!.push(from);
  });
  const isReached = new Uint8Array(nodeCount);
  const stack = [...earth.nodes];
  for (const node of stack) isReached[node] = 1;
  for (let node = stack.pop(); node !== undefined; node = stack.pop()) {
    for (const other of meeting[node]!) {
      if (isReached[other] === 1) continue;
      isReached[other] = 1;
      stack.push(other);
    }
  }
  let next = 0;
  return Int32Array.from(isReached, (is) => (is === 1 ? next++ : -1));
}

function among(matrix: Float64Array, size: number, kept: readonly number[]): Float64Array {
  const part = new Float64Array(kept.length ** 2);
  kept.forEach((row, i) => {
    kept.forEach((column, j) => {
      part[i * kept.length + j] = matrix[row * size + column]!;
    });
  });
  return part;
}
