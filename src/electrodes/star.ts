import { type GaussRule, gaussLegendre, integrate } from '../math/quadrature.ts';
import { selfPotential } from './level-wire.ts';

/**
 * Equal arms lying level from one point, equally spread, ohm per ohm metre. Even leakage, average potential, mirror image
 * for the air: Dwight's integrals themselves, which his series for 2, 3, 4, 6 and 8 arms approach to 0.02 %. Range: arms
 * above 4 radii, any depth. The true figure is 0.8 % (2 arms), 2.3 % (3), 4.2 % (4), 8.2 % (6), 11.7 % (8) lower, since
 * the tips carry more.
 *
 * Source: H. B. Dwight, Trans. AIEE 55 (1936) 1319-1328 (from memory).
 */
export function star(count: number, armLengthM: number, radiusM: number, depthM: number): number {
  const imageM = Math.max(2 * depthM, radiusM);
  let sum = selfPotential(armLengthM, radiusM) + selfPotential(armLengthM, imageM);
  for (let arm = 1; arm < count; arm++) {
    const angle = (2 * Math.PI * arm) / count;
    sum += armPotential(armLengthM, angle, radiusM) + armPotential(armLengthM, angle, imageM);
  }
  return sum / (4 * Math.PI * count);
}

/** Worked out when the first star is: most sites have none. */
let rule: GaussRule | null = null;

/** Potential of an evenly charged arm, averaged over another at an angle to it and `offsetM` above or below. */
function armPotential(lengthM: number, angle: number, offsetM: number): number {
  const at = (alongM: number): number => {
    const footM = alongM * Math.cos(angle);
    const awayM = Math.hypot(alongM * Math.sin(angle), offsetM);
    return Math.asinh((lengthM - footM) / awayM) + Math.asinh(footM / awayM);
  };
  rule ??= gaussLegendre(40);
  // the cube crowds the points where the arms meet
  return integrate(rule, (u) => at(lengthM * u ** 3) * 3 * u * u, 0, 1) / lengthM;
}
