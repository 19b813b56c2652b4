import { surgeDrive } from './surge-drive.ts';
import { along, inductanceTimes, resistanceTimes, type SurgeModes } from './surge-modes.ts';

/**
 * Impedance of a node to remote earth at a real rate s of growth (the current grows as exp(s t)), ohm:
 *
 *     Z(s) = R + s L - sum (a_k + s b_k)^2 / (lost_k + s stored_k),
 *
 * R and L of the way by the tree, a and b what a current by it does to each mode. At s = 0 the resistance to direct current; for
 * large s it is s times the inductance that a steep front meets. By Rayleigh's law no added metal makes it greater. RangeError:
 * no such node, a rate below 0.
 */
export function surgeImpedance(modes: SurgeModes, node: number, ratePerS: number): number {
  if (!(ratePerS >= 0 && Number.isFinite(ratePerS))) throw new RangeError(`${ratePerS} is no rate per second`);
  const way = modes.loops.toEarth[node];
  if (way == null) throw new RangeError(`no node ${node}`);
  const { byCurrent, bySlope } = surgeDrive(modes, { node, channelH: null });
  const [ohm, henry] = [resistanceTimes(modes.network, way), inductanceTimes(modes.network, way)];
  let impedanceOhm = along(way, ohm) + ratePerS * along(way, henry);
  for (let k = 0; k < modes.count; k++) {
    const volt = byCurrent[k]! + ratePerS * bySlope[k]!;
    impedanceOhm -= volt ** 2 / (modes.lost[k]! + ratePerS * modes.stored[k]!);
  }
  return impedanceOhm;
}
