/**
 * Formulas in print that the program has no use for: each reads too far off, or in fewer cases, for what it works out. They
 * stand here so that rows in print can be checked, and so that it is on record how far they are from the truth. All lengths in
 * metres, resistivities in ohm metres, results in ohm. Only the sources named were seen where they say so.
 */
const { PI, log, sqrt, hypot, atanh } = Math;

/** Hemisphere at grade: exact. */
export const hemisphere = (ohmM: number, radiusM: number): number => ohmM / (2 * PI * radiusM);

/** Rod by its tip: EN 50522 annex J (from memory); in use in eastern Europe (read). 4.9 to 7 % high. */
export const tipRod = (ohmM: number, lengthM: number, radiusM: number): number =>
  (ohmM / (2 * PI * lengthM)) * log((2 * lengthM) / radiusM);

/** Half of a prolate spheroid: exact for it (classical, from memory). */
export function spheroidRod(ohmM: number, lengthM: number, radiusM: number): number {
  const focus = sqrt(lengthM ** 2 - radiusM ** 2);
  return (ohmM / (2 * PI * focus)) * atanh(focus / lengthM);
}

/** Two rods more than a length apart: H. B. Dwight (1936), as in IEEE Std 142 (second-hand). `terms`: 2 or 3 of the series. */
export function farPair(ohmM: number, lengthM: number, radiusM: number, spacingM: number, terms: 2 | 3 = 3): number {
  const series = 1 - lengthM ** 2 / (3 * spacingM ** 2) + (terms === 3 ? (2 * lengthM ** 4) / (5 * spacingM ** 4) : 0);
  return (ohmM * (log((4 * lengthM) / radiusM) - 1)) / (4 * PI * lengthM) + (ohmM * series) / (4 * PI * spacingM);
}

/** What Dwight's series have in common: with s / (2 L), the tail of a straight wire or of two rods. */
function dwightTail(lengthM: number, s: number): number {
  return s / (2 * lengthM) - s ** 2 / (16 * lengthM ** 2) + s ** 4 / (512 * lengthM ** 4);
}

/** Two rods less than a length apart: Dwight (from memory). */
export const closePair = (ohmM: number, lengthM: number, radiusM: number, spacingM: number): number =>
  (ohmM / (4 * PI * lengthM)) *
  (log((4 * lengthM) / radiusM) + log((4 * lengthM) / spacingM) - 2 + dwightTail(lengthM, spacingM));

/** Rods in line: E. D. Sunde (1949); c = 2 / pi in MIL-HDBK-419A volume I, 2-25 (read in part), 0.656 in corrosion manuals. */
export const sundeLine = (
  ohmM: number,
  lengthM: number,
  radiusM: number,
  spacingM: number,
  count: number,
  c: number = 2 / PI,
): number =>
  (ohmM / (2 * PI * lengthM * count)) *
  (log((4 * lengthM) / radiusM) - 1 + ((2 * lengthM) / spacingM) * log(c * count));

/** Rods in parallel: BS 7430:2011, 9.5.4 (from memory), with its lambda. Rods as points. */
export function britishGroup(aloneOhm: number, ohmM: number, spacingM: number, count: number, lambda: number): number {
  const alpha = ohmM / (2 * PI * aloneOhm * spacingM);
  return (aloneOhm * (1 + lambda * alpha)) / count;
}

/** Lambda of rods in line by what it stands for: points, one spacing apart. */
export function lineLambda(count: number): number {
  let sum = 0;
  for (let apart = 1; apart < count; apart++) sum += (count - apart) / apart;
  return (2 / count) * sum;
}

/** Lambda of points anywhere, in spacings: the mean over all of the sum of 1 / distance to the others. */
export function pointLambda(positions: readonly (readonly [number, number])[]): number {
  let sum = 0;
  for (const [i, [x, y]] of positions.entries()) {
    for (const [j, [u, v]] of positions.entries()) if (i !== j) sum += 1 / hypot(x - u, y - v);
  }
  return sum / positions.length;
}

/** Straight wire of length 2 L at a depth: Dwight's series (from memory). */
export const dwightWire = (ohmM: number, wholeM: number, radiusM: number, depthM: number): number =>
  closePair(ohmM, wholeM / 2, radiusM, 2 * depthM);

/** The same: Sunde. */
export const sundeWire = (ohmM: number, wholeM: number, radiusM: number, depthM: number): number =>
  (ohmM / (PI * wholeM)) * (log((2 * wholeM) / sqrt(2 * radiusM * depthM)) - 1);

/** The same: BS 7430, 9.5.5 (read as quoted). */
export const britishWire = (ohmM: number, wholeM: number, diameterM: number, depthM: number): number =>
  (ohmM / (2 * PI * wholeM)) * log(wholeM ** 2 / (1.85 * depthM * diameterM));

/** Wire at grade: EN 50522 annex J (from memory). */
export const surfaceWire = (ohmM: number, wholeM: number, diameterM: number): number =>
  (ohmM / (PI * wholeM)) * log((2 * wholeM) / diameterM);

/** Ring at grade: EN 50522 annex J (from memory). */
export const surfaceRing = (ohmM: number, acrossM: number, diameterM: number): number =>
  (ohmM / (PI * PI * acrossM)) * log((2 * PI * acrossM) / diameterM);

/** Dwight's stars (from memory): arms, and the coefficients of 1, s/L, (s/L)^2, (s/L)^4. Two: a right angle. */
export const starCoefficients = {
  2: [-0.2373, 0.2146, 0.1035, -0.0424],
  3: [1.071, -0.209, 0.238, -0.054],
  4: [2.912, -1.071, 0.645, -0.145],
  6: [6.851, -3.128, 1.758, -0.49],
  8: [10.98, -5.51, 3.26, -1.17],
} as const;

export function dwightStar(
  arms: keyof typeof starCoefficients,
  ohmM: number,
  armM: number,
  radiusM: number,
  depthM: number,
): number {
  const [c0, c1, c2, c4] = starCoefficients[arms];
  const s = (2 * depthM) / armM;
  const logs = log((2 * armM) / radiusM) + log((2 * armM) / (2 * depthM));
  return (ohmM / (2 * arms * PI * armM)) * (logs + c0 + c1 * s + c2 * s ** 2 + c4 * s ** 4);
}

/** Buried strip: Dwight (from memory), thickness below an eighth of the width. */
export function dwightStrip(ohmM: number, wholeM: number, widthM: number, thickM: number, depthM: number): number {
  const [lengthM, s] = [wholeM / 2, 2 * depthM];
  const shape = (widthM ** 2 - PI * widthM * thickM) / (2 * (widthM + thickM) ** 2);
  const logs = log((4 * lengthM) / widthM) + shape + log((4 * lengthM) / s) - 1;
  return (ohmM / (4 * PI * lengthM)) * (logs + dwightTail(lengthM, s));
}

/** Grid: P. Laurent, J. Niemann, IEEE Std 80, 14.2 (from memory). */
export const laurentGrid = (ohmM: number, areaM2: number, lengthM: number): number =>
  (ohmM / 4) * sqrt(PI / areaM2) + ohmM / lengthM;

/** Grid: J. G. Sverak (1984), IEEE Std 80-2000, 14.2 (from memory). */
export const sverakGrid = (ohmM: number, areaM2: number, lengthM: number, depthM: number): number =>
  ohmM * (1 / lengthM + (1 / sqrt(20 * areaM2)) * (1 + 1 / (1 + depthM * sqrt(20 / areaM2))));

/** A grid with rods: S. J. Schwarz (1954), IEEE Std 80, 14.3 (read in part). */
export interface SchwarzGrid {
  readonly gridOhmM: number;
  readonly rodOhmM: number;
  readonly areaM2: number;
  readonly gridLengthM: number;
  readonly wireRadiusM: number;
  readonly depthM: number;
  readonly rods: number;
  readonly rodLengthM: number;
  readonly rodRadiusM: number;
  readonly k: readonly [k1: number, k2: number];
}

export function schwarzGrid(g: SchwarzGrid): {
  readonly gridOhm: number;
  readonly rodsOhm: number;
  readonly mutualOhm: number;
  readonly joinedOhm: number;
} {
  const [k1, k2] = g.k;
  const [length, root] = [g.gridLengthM, sqrt(g.areaM2)];
  const wire = sqrt(g.wireRadiusM * 2 * g.depthM);
  const gridOhm = (g.gridOhmM / (PI * length)) * (log((2 * length) / wire) + (k1 * length) / root - k2);
  const crowd = ((2 * k1 * g.rodLengthM) / root) * (sqrt(g.rods) - 1) ** 2;
  const rodsOhm = (g.rodOhmM / (2 * PI * g.rods * g.rodLengthM)) * (log((4 * g.rodLengthM) / g.rodRadiusM) - 1 + crowd);
  const mutualOhm = (g.rodOhmM / (PI * length)) * (log((2 * length) / g.rodLengthM) + (k1 * length) / root - k2 + 1);
  const joinedOhm = (gridOhm * rodsOhm - mutualOhm ** 2) / (gridOhm + rodsOhm - 2 * mutualOhm);
  return { gridOhm, rodsOhm, mutualOhm, joinedOhm };
}

/** k1 and k2 of a square grid by depth over the root of its area, up to 0.1: IEEE Std 80, figure 25 (from memory). */
export function schwarzSquare(depthShare: number): readonly [number, number] {
  const way = depthShare / 0.1;
  return [1.37 + way * (1.15 - 1.37), 5.65 + way * (4.78 - 5.65)];
}

/** Apparent resistivity of two layers, pins in line and equally far apart: IEEE Std 81; Sunde. */
export function wennerOfTwo(upperOhmM: number, lowerOhmM: number, depthM: number, spacingM: number): number {
  const mirrored = (m: number): number => (2 * m * depthM) / spacingM;
  return ofTwo(upperOhmM, lowerOhmM, 4, (m) => 1 / sqrt(1 + mirrored(m) ** 2) - 1 / sqrt(4 + mirrored(m) ** 2));
}

/** The same for inner pins close together, the outer ones 2 `halfM` apart. */
export function schlumbergerOfTwo(upperOhmM: number, lowerOhmM: number, depthM: number, halfM: number): number {
  return ofTwo(upperOhmM, lowerOhmM, 2, (m) => (1 + ((2 * m * depthM) / halfM) ** 2) ** -1.5);
}

function ofTwo(upperOhmM: number, lowerOhmM: number, factor: number, term: (m: number) => number): number {
  const k = (lowerOhmM - upperOhmM) / (lowerOhmM + upperOhmM);
  let sum = 0;
  for (let m = 1; m <= 4000; m++) sum += k ** m * term(m);
  return upperOhmM * (1 + factor * sum);
}

/** Current (A) at which soil round an electrode begins to break down: CIGRE brochure 63, IEC 60071-2 (from memory). */
export const breakdownA = (fieldVPerM: number, ohmM: number, steadyOhm: number): number =>
  (fieldVPerM * ohmM) / (2 * PI * steadyOhm ** 2);

/** Resistance while soil breaks down. Source as above. */
export const impulseOhm = (steadyOhm: number, currentA: number, atA: number): number =>
  steadyOhm / sqrt(1 + currentA / atA);

/** Length beyond which more wire does nothing at the front: L. Grcev (2009), end fed, no breakdown (from memory). */
export function grcevLengthM(ohmM: number, frontUs: number): number {
  const alpha = 0.025 + Math.exp(-0.82 * (ohmM * frontUs) ** 0.257);
  const beta = 0.17 + Math.exp(-0.22 * (ohmM * frontUs) ** 0.555);
  return (1 - beta) / alpha;
}

/** The same word by J. He and others (2005), breakdown included (from memory). */
export const heLengthM = (ohmM: number, frontUs: number, currentKa: number): number =>
  (6.528 * (ohmM * frontUs) ** 0.379) / currentKa ** 0.097;
