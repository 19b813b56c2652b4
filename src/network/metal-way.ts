/** Branches of a way from one node to another, from its start on; sign 1: along the branch, -1: against it. */
export interface MetalWay {
  readonly branches: readonly number[];
  readonly signs: readonly number[];
  readonly lengthM: number;
}

/** Shortest way through metal between two nodes, of equally short ones that of the lowest numbers; null: there is none. */
export function metalWay(
  nodeCount: number,
  branches: readonly { readonly from: number; readonly to: number; readonly lengthM: number }[],
  start: number,
  end: number,
): MetalWay | null {
  const meeting: number[][] = Array.from({ length: nodeCount }, () => []);
  branches.forEach(({ from, to }, branch) => {
    meeting[from]!.push(branch);
    meeting[to]!.push(branch);
  });
  const distanceM = new Float64Array(nodeCount).fill(Number.POSITIVE_INFINITY);
  const cameBy = new Int32Array(nodeCount).fill(-1);
  const isDone = new Uint8Array(nodeCount);
  distanceM[start] = 0;
  for (let at = start; at >= 0; at = nearest(distanceM, isDone)) {
    isDone[at] = 1;
    if (at === end) return traced(branches, cameBy, end, distanceM[end]!);
    for (const branch of meeting[at]!) {
      const { from, to, lengthM } = branches[branch]!;
      const next = from === at ? to : from;
      if (distanceM[at]! + lengthM >= distanceM[next]!) continue;
      distanceM[next] = distanceM[at]! + lengthM;
      cameBy[next] = branch;
    }
  }
  return null;
}

function nearest(distanceM: Float64Array, isDone: Uint8Array): number {
  let best = -1;
  for (let n = 0; n < distanceM.length; n++) {
    const isNearer = distanceM[n]! < (best < 0 ? Number.POSITIVE_INFINITY : distanceM[best]!);
    if (isDone[n] === 0 && isNearer) best = n;
  }
  return best;
}

function traced(
  branches: readonly { readonly from: number; readonly to: number }[],
  cameBy: Int32Array,
  end: number,
  lengthM: number,
): MetalWay {
  const way: { readonly branch: number; readonly sign: number }[] = [];
  for (let at = end, branch = cameBy[at]!; branch >= 0; branch = cameBy[at]!) {
    const { from, to } = branches[branch]!;
    way.unshift({ branch, sign: to === at ? 1 : -1 });
    at = to === at ? from : to;
  }
  return { branches: way.map((w) => w.branch), signs: way.map((w) => w.sign), lengthM };
}
