import type { PackedPieces } from './straight-piece.ts';

/**
 * Shortest distance between two straight pieces that are not parallel, metres.
 *
 * The nearest points of the two lines, drawn back to the pieces where they lie beyond an end. Source: C. Ericson, Real-Time
 * Collision Detection (2005), section 5.1.9 (from memory).
 */
export function pieceGap(p: PackedPieces, i: number, j: number): number {
  const ax = p.ux[i]!;
  const ay = p.uy[i]!;
  const az = p.uz[i]!;
  const bx = p.ux[j]!;
  const by = p.uy[j]!;
  const bz = p.uz[j]!;
  const dx = p.x[i]! - p.x[j]!;
  const dy = p.y[i]! - p.y[j]!;
  const dz = p.z[i]! - p.z[j]!;
  const alongA = ax * dx + ay * dy + az * dz;
  const alongB = bx * dx + by * dy + bz * dz;
  const cosine = ax * bx + ay * by + az * bz;
  const first = clamp((cosine * alongB - alongA) / (1 - cosine * cosine), p.halfM[i]!);
  const onB = clamp(alongB + first * cosine, p.halfM[j]!);
  const onA = clamp(onB * cosine - alongA, p.halfM[i]!);
  const x = dx + onA * ax - onB * bx;
  const y = dy + onA * ay - onB * by;
  const z = dz + onA * az - onB * bz;
  return Math.sqrt(x * x + y * y + z * z);
}

function clamp(at: number, half: number): number {
  return Math.min(half, Math.max(-half, at));
}
