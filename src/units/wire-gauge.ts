/**
 * Geometry of the American wire gauge (ASTM B258, from memory): 36 is 0.005 in, 4/0 is 0.46 in, 39 equal steps between.
 */
import { circularMilM2 } from './unit-table.ts';

const finest = 40;

/** Gauges from 24 to 4/0, thin to thick: `24`, …, `1`, `1/0`, `2/0`, `3/0`, `4/0`. */
export const gaugeNames: readonly string[] = [...Array.from({ length: 28 }, (_, i) => nameOfNumber(24 - i))];

/** Sizes above 4/0, in kcmil. */
export const kcmilSizes: readonly number[] = [250, 300, 350, 400, 500, 600, 700, 750, 800, 900, 1000];

/** Diameter of a solid wire of gauge n (0, -1, -2, -3 for 1/0 to 4/0), metres: 0.127 mm × 92^((36 − n)/39). */
export function gaugeDiameterM(gauge: number): number {
  return 0.127e-3 * 92 ** ((36 - gauge) / 39);
}

/** Metal area of gauge n, square metres; the same for solid and stranded wire. */
export function gaugeAreaM2(gauge: number): number {
  return (Math.PI / 4) * gaugeDiameterM(gauge) ** 2;
}

/**
 * The number of a gauge from `6`, `2/0`, `00`; null for what is no gauge between 40 and 4/0. `0` is 1/0.
 */
export function gaugeNumber(text: string): number | null {
  const aught = /^([1-4])\/0$/.exec(text);
  if (aught !== null) return 1 - Number(aught[1]);
  if (/^0{1,4}$/.test(text)) return 1 - text.length;
  if (!/^[1-9]\d?$/.test(text)) return null;
  return Number(text) <= finest ? Number(text) : null;
}

/** `6`, `2/0` for a gauge number. */
export function nameOfNumber(gauge: number): string {
  return gauge > 0 ? String(gauge) : `${1 - gauge}/0`;
}

/**
 * The trade name of an area that is a gauge or a kcmil size to within 1 % (neighbours lie 26 % or, above 4/0, 7 % apart,
 * metric sizes 1.3 % or more away): `6 AWG`, `2/0 AWG`, `250 kcmil`; null for any other area.
 */
export function awgNameOfArea(areaM2: number): string | null {
  const near = (size: number): boolean => Math.abs(areaM2 / size - 1) <= 0.01;
  const gauge = gaugeNames.find((name) => near(gaugeAreaM2(gaugeNumber(name)!)));
  if (gauge !== undefined) return `${gauge} AWG`;
  const kcmil = kcmilSizes.find((size) => near(size * 1000 * circularMilM2));
  return kcmil === undefined ? null : `${kcmil} kcmil`;
}
