import type { SurgeLoops } from './surge-loops.ts';
import type { RefusedSurge, SurgeNetwork } from './surge-network.ts';
import { tightestPair } from './tightest-pair.ts';

/** Why a network cannot be solved; null: it can. Nodes that hang free come first, then the soil, then the metal. */
export function surgeRefusal(network: SurgeNetwork, { toEarth }: SurgeLoops): RefusedSurge | null {
  const stranded = toEarth.flatMap((way, node) => (way === null ? [node] : []));
  if (stranded.length > 0) return { ok: false, reason: 'no way to earth', nodes: stranded, branches: [] };
  return ofEarth(network) ?? ofInductance(network);
}

function ofEarth({ earth }: SurgeNetwork): RefusedSurge | null {
  const reason = 'earth not positive definite';
  const { resistanceOhm, nodes } = earth;
  const count = nodes.length;
  const own = resistanceOhm.map((row, i) => (typeof row === 'number' ? row : row[i]!));
  const none = own.findIndex((ohm) => !(ohm > 0));
  if (none >= 0) return { ok: false, reason, nodes: [nodes[none]!], branches: [] };
  if (resistanceOhm.every((row) => typeof row === 'number')) return null;
  const matrix = new Float64Array(count * count);
  resistanceOhm.forEach((row, i) => {
    if (typeof row === 'number') matrix[i * (count + 1)] = row;
    else matrix.set(row, i * count);
  });
  const pair = tightestPair(matrix, count);
  return pair === null ? null : { ok: false, reason, nodes: [nodes[pair.first]!, nodes[pair.second]!], branches: [] };
}

/** Branches without inductance (joints) are left out, unless they are coupled to something: that is none of metal. */
function ofInductance({ branches, mutualH }: SurgeNetwork): RefusedSurge | null {
  if (mutualH === null) return null;
  const reason = 'inductance not positive definite';
  const size = branches.length;
  const inductive: number[] = [];
  for (let i = 0; i < size; i++) {
    if (mutualH[i * (size + 1)]! > 0) {
      inductive.push(i);
      continue;
    }
    const coupled = mutualH.subarray(i * size, (i + 1) * size).findIndex((henry, j) => j !== i && henry !== 0);
    if (coupled >= 0) return { ok: false, reason, nodes: [], branches: [Math.min(i, coupled), Math.max(i, coupled)] };
  }
  const count = inductive.length;
  const matrix = Float64Array.from({ length: count * count }, (_, at) => {
    const [row, column] = [inductive[Math.floor(at / count)]!, inductive[at % count]!];
    return mutualH[row * size + column]!;
  });
  const pair = tightestPair(matrix, count);
  if (pair === null) return null;
  return { ok: false, reason, nodes: [], branches: [inductive[pair.first]!, inductive[pair.second]!] };
}
