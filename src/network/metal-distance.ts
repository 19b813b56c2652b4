/** Shortest way through metal from one node to every other, metres; Infinity: there is none. */
export function metalDistance(
  nodeCount: number,
  branches: readonly { readonly from: number; readonly to: number; readonly lengthM: number }[],
  start: number,
): Float64Array {
  const meeting: { readonly to: number; readonly lengthM: number }[][] = Array.from({ length: nodeCount }, () => []);
  for (const { from, to, lengthM } of branches) {
    meeting[from]!.push({ to, lengthM });
    meeting[to]!.push({ to: from, lengthM });
  }
  const distanceM = new Float64Array(nodeCount).fill(Number.POSITIVE_INFINITY);
  const isDone = new Uint8Array(nodeCount);
  distanceM[start] = 0;
  for (;;) {
    let at = -1;
    for (let n = 0; n < nodeCount; n++) {
      if (isDone[n] === 0 && distanceM[n]! < (at < 0 ? Number.POSITIVE_INFINITY : distanceM[at]!)) at = n;
    }
    if (at < 0) return distanceM;
    isDone[at] = 1;
    for (const { to, lengthM } of meeting[at]!) distanceM[to] = Math.min(distanceM[to]!, distanceM[at]! + lengthM);
  }
}
