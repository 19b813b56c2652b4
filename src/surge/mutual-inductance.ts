import { farMutual, farPoints } from './far-mutual.ts';
import { nearParallelMutual } from './near-parallel-mutual.ts';
import { parallelMutual } from './parallel-mutual.ts';
import { pieceGap } from './piece-gap.ts';
import { skewMutual } from './skew-mutual.ts';
import { type PackedPieces, packPieces, type StraightPiece } from './straight-piece.ts';

/** mu0 / 4 pi, henry per metre. */
const mu0Over4Pi = 1e-7;

/**
 * Mutual partial inductance of two straight pieces in any position, henry; negative where their currents run against each
 * other. A piece with itself: its own partial inductance without what lies inside the metal (current in the skin alone). For
 * pieces in free air; the return, the earth and the channel are pieces of their own or are not there.
 *
 *     M = mu0 / (4 pi) cos(angle) double integral of 1 / sqrt(R^2 + g^2)        F. E. Neumann (1845)
 *
 * with one kernel for all terms: g^2 = max(0, larger radius^2 - gap^2), the gap being the distance of parallel lines or the
 * shortest between pieces that are not parallel. So a piece with itself or with the next of one straight wire has its radius
 * as distance (splitting a wire changes nothing); a core in its shield, or a wire against the inside of a tower, has the
 * outer radius; pieces that do not touch count as filaments, which for round metal is exact along parallel lines
 * (geometric mean distance of circles outside one another, J. C. Maxwell, as in E. B. Rosa, Bull. Bur. Stand. 4, 1908).
 * Good to 1e-9 for parallel pieces, joined ones and near ones, 1e-8 for far ones at an angle (of the figure at cos = 1).
 */
export function mutualInductance(a: StraightPiece, b: StraightPiece): number {
  return packedMutual(packPieces([a, b]), 0, 1);
}

/** The same for two of the packed pieces. */
export function packedMutual(p: PackedPieces, i: number, j: number): number {
  const cosine = p.ux[i]! * p.ux[j]! + p.uy[i]! * p.uy[j]! + p.uz[i]! * p.uz[j]!;
  return cosine === 0 ? 0 : mu0Over4Pi * cosine * inverseDistances(p, i, j, cosine);
}

/** The double integral of 1 / distance along two of the packed pieces, metres, whatever their angle. */
export function packedInverse(p: PackedPieces, i: number, j: number): number {
  return inverseDistances(p, i, j, p.ux[i]! * p.ux[j]! + p.uy[i]! * p.uy[j]! + p.uz[i]! * p.uz[j]!);
}

/** The double integral without its factor, metres. */
function inverseDistances(p: PackedPieces, i: number, j: number, cosine: number): number {
  const dx = p.x[i]! - p.x[j]!;
  const dy = p.y[i]! - p.y[j]!;
  const dz = p.z[i]! - p.z[j]!;
  const halfA = p.halfM[i]!;
  const halfB = p.halfM[j]!;
  const radius = Math.max(p.radiusM[i]!, p.radiusM[j]!);
  const distance = Math.sqrt(dx * dx + dy * dy + dz * dz);
  const pointsA = farPoints((distance - halfB) / halfA);
  const pointsB = farPoints((distance - halfA) / halfB);
  const apart = parallelLines(p, i, j, radius, distance + halfA + halfB);
  if (apart >= 0) {
    if (distance > parallelFar * (halfA + halfB)) return farMutual(p, i, j, 2, 2, thicknessSquared(radius, apart));
    const along = dx * p.ux[i]! + dy * p.uy[i]! + dz * p.uz[i]!;
    return parallelMutual(along, Math.max(apart, radius), 2 * halfA, 2 * halfB);
  }
  if (pointsA > 0 && pointsB > 0) return farMutual(p, i, j, pointsA, pointsB, 0);
  return nearSkew(p, i, j, cosine, thicknessSquared(radius, gap(p, i, j, radius, distance)));
}

/** In half lengths of both: from here two points along each err by less than 2e-10, and the closed form has lost 1e-11. */
const parallelFar = 150;

function thicknessSquared(radiusM: number, gapM: number): number {
  return Math.max(0, radiusM * radiusM - gapM * gapM);
}

/** Gap of two pieces; where it is surely wider than the radius, any wider figure. */
function gap(p: PackedPieces, i: number, j: number, radiusM: number, distanceM: number): number {
  const atLeast = distanceM - p.halfM[i]! - p.halfM[j]!;
  return atLeast > radiusM ? atLeast : pieceGap(p, i, j);
}

/**
 * Distance of the two lines where they may count as parallel, -1 where they may not: by their angle the distance would change
 * so little over the span of both that it shows in less than 1e-9 of the figure.
 */
function parallelLines(p: PackedPieces, i: number, j: number, radiusM: number, spanM: number): number {
  const ax = p.ux[i]!;
  const ay = p.uy[i]!;
  const az = p.uz[i]!;
  const nx = ay * p.uz[j]! - az * p.uy[j]!;
  const ny = az * p.ux[j]! - ax * p.uz[j]!;
  const nz = ax * p.uy[j]! - ay * p.ux[j]!;
  const sineSquared = nx * nx + ny * ny + nz * nz;
  if (sineSquared > surelySkew) return -1;
  const dx = p.x[i]! - p.x[j]!;
  const dy = p.y[i]! - p.y[j]!;
  const dz = p.z[i]! - p.z[j]!;
  const along = dx * ax + dy * ay + dz * az;
  const apart = Math.hypot(dx - along * ax, dy - along * ay, dz - along * az);
  const change = Math.sqrt(sineSquared) * spanM;
  const counted = Math.max(apart, radiusM);
  return change * (apart + change) < 1e-9 * counted * counted ? apart : -1;
}

/** An angle of 1e-4: no two pieces of any use count as parallel beyond. */
const surelySkew = 1e-8;

function nearSkew(p: PackedPieces, i: number, j: number, cosine: number, thicknessSquaredM2: number): number {
  const nx = p.uy[i]! * p.uz[j]! - p.uz[i]! * p.uy[j]!;
  const ny = p.uz[i]! * p.ux[j]! - p.ux[i]! * p.uz[j]!;
  const nz = p.ux[i]! * p.uy[j]! - p.uy[i]! * p.ux[j]!;
  const sineSquared = nx * nx + ny * ny + nz * nz;
  const dx = p.x[i]! - p.x[j]!;
  const dy = p.y[i]! - p.y[j]!;
  const dz = p.z[i]! - p.z[j]!;
  const alongA = dx * p.ux[i]! + dy * p.uy[i]! + dz * p.uz[i]!;
  const alongB = dx * p.ux[j]! + dy * p.uy[j]! + dz * p.uz[j]!;
  const halfAM = p.halfM[i]!;
  const halfBM = p.halfM[j]!;
  if (sineSquared < nearParallel) {
    const offX = dx - alongB * p.ux[j]!;
    const offY = dy - alongB * p.uy[j]!;
    const offZ = dz - alongB * p.uz[j]!;
    return nearParallelMutual({
      alongM: alongB,
      offSquaredM2: offX * offX + offY * offY + offZ * offZ + thicknessSquaredM2,
      offSlopeM: offX * p.ux[i]! + offY * p.uy[i]! + offZ * p.uz[i]!,
      cosine,
      sineSquared,
      halfAM,
      halfBM,
    });
  }
  const middleA = (alongA - cosine * alongB) / sineSquared;
  const middleB = (cosine * alongA - alongB) / sineSquared;
  const across = nx * dx + ny * dy + nz * dz;
  const apartSquared = (across * across) / sineSquared + thicknessSquaredM2;
  return skewMutual(
    middleA - halfAM,
    middleA + halfAM,
    middleB - halfBM,
    middleB + halfBM,
    cosine,
    sineSquared,
    apartSquared,
  );
}

/** Square of the sine below which the closed form has lost too many digits. */
const nearParallel = 1e-4;
