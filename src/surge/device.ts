import { type SteepnessPoint, sparkOverAt } from './spark-over.ts';

/** Something between two nodes of a network that does nothing below its level. */
export type SurgeDevice = SparkGap | Varistor;

interface Between {
  readonly from: number;
  /** null: remote earth. */
  readonly to: number | null;
}

/**
 * A gas tube, or any gap: fires at a voltage that grows with the steepness of the rise (one point: always the same), then holds
 * its arc voltage plus a small resistance, as long as its current does not go through zero.
 */
export interface SparkGap extends Between {
  readonly kind: 'gap';
  readonly sparkOver: readonly SteepnessPoint[];
  /** Which end of its spark-over's spread it fires at. */
  readonly side: 'low' | 'high';
  readonly arcV: number;
  readonly slopeOhm: number;
}

/** A varistor: its voltage and current by points that rise, straight lines between their logarithms; below the first nothing flows. */
export interface Varistor extends Between {
  readonly kind: 'varistor';
  readonly points: readonly { readonly currentA: number; readonly volts: number }[];
}

/** Volts over a device that carries a current, and their slope by it, ohm. `sign`: which way a gap fired. */
export interface DeviceVolts {
  readonly volts: number;
  readonly slopeOhm: number;
}

export function deviceVolts(device: SurgeDevice, sign: number, currentA: number): DeviceVolts {
  if (device.kind === 'gap') {
    return { volts: sign * device.arcV + device.slopeOhm * currentA, slopeOhm: device.slopeOhm };
  }
  const { points } = device;
  const size = Math.abs(currentA);
  const [first] = points as readonly [Varistor['points'][number]];
  if (size <= first.currentA) {
    const ohm = first.volts / first.currentA;
    return { volts: ohm * currentA, slopeOhm: ohm };
  }
  let next = 1;
  while (next < points.length - 1 && points[next]!.currentA < size) next++;
  const [a, b] = [points[next - 1]!, points[next]!];
  const power = Math.log(b.volts / a.volts) / Math.log(b.currentA / a.currentA);
  const volts = a.volts * (size / a.currentA) ** power;
  return { volts: Math.sign(currentA) * volts, slopeOhm: (power * volts) / size };
}

/** Volts at which it begins to conduct when they have risen at a mean steepness, volts per second. */
export function deviceLevel(device: SurgeDevice, slopeVPerS: number): number {
  if (device.kind === 'varistor') return device.points[0]!.volts;
  return sparkOverAt(device.sparkOver, Math.max(slopeVPerS, Number.MIN_VALUE))[device.side];
}

/** RangeError for a device that cannot be. */
export function checkDevice(device: SurgeDevice, nodeCount: number): void {
  const isNode = (node: number | null) => node === null || (Number.isInteger(node) && node >= 0 && node < nodeCount);
  if (!isNode(device.from) || !isNode(device.to) || device.from === device.to)
    throw new RangeError(`no device from node ${device.from} to ${device.to}`);
  if (device.kind === 'varistor') {
    checkCurve(device.points);
    return;
  }
  if (!(device.arcV >= 0 && device.slopeOhm > 0)) throw new RangeError('an arc has volts and a resistance above zero');
  const levels = device.sparkOver.map(({ sparkOverV }) => sparkOverV[device.side]);
  if (levels.length === 0 || levels.some((volts) => !(volts > device.arcV)))
    throw new RangeError('a gap fires above its arc voltage');
}

function checkCurve(points: Varistor['points']): void {
  if (points.length < 2) throw new RangeError('a curve has two points at least');
  points.forEach(({ currentA, volts }, i) => {
    const before = points[i - 1] ?? { currentA: 0, volts: 0 };
    if (!(currentA > before.currentA && volts > before.volts && Number.isFinite(currentA + volts)))
      throw new RangeError('points of a curve rise in current and volts');
  });
}
