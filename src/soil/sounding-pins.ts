/** Four pins in a line: where the current goes in and out and where the voltage is read, metres along the line. */
export interface SoundingPins {
  readonly currentM: readonly [number, number];
  readonly potentialM: readonly [number, number];
  /** How deep they are driven; 0 where nobody says: points at the surface. */
  readonly pinDepthM: number;
}

/** Four pins evenly spaced, the outer two for the current (Wenner). */
export function wennerPins(spacingM: number, pinDepthM = 0): SoundingPins {
  return { currentM: [0, 3 * spacingM], potentialM: [spacingM, 2 * spacingM], pinDepthM };
}

/** Half the distance of the outer pins (AB/2) and of the inner ones (MN/2) round one middle (Schlumberger). */
export function schlumbergerPins(halfOuterM: number, halfInnerM: number, pinDepthM = 0): SoundingPins {
  return { currentM: [-halfOuterM, halfOuterM], potentialM: [-halfInnerM, halfInnerM], pinDepthM };
}

/** Four places along a line in any order; the outer two carry the current. */
export function pinsInLine(placesM: readonly [number, number, number, number], pinDepthM = 0): SoundingPins {
  const [first, second, third, last] = [...placesM].sort((a, b) => a - b) as [number, number, number, number];
  return { currentM: [first, last], potentialM: [second, third], pinDepthM };
}

/** Distance from a current pin to a potential pin; sign 1 where it raises the reading, -1 where it lowers it. */
export interface PinDistance {
  readonly sign: 1 | -1;
  readonly distanceM: number;
}

export function pinDistances({ currentM: [a, b], potentialM: [m, n] }: SoundingPins): readonly PinDistance[] {
  return [
    { sign: 1, distanceM: Math.abs(a - m) },
    { sign: -1, distanceM: Math.abs(b - m) },
    { sign: -1, distanceM: Math.abs(a - n) },
    { sign: 1, distanceM: Math.abs(b - n) },
  ];
}

/**
 * Reading (ohm) times 2 pi over this (1/m) is the resistivity of uniform soil; in layers it is called apparent. Pins count as
 * points at their depth b; for four even spaces a the resistivity is
 * 4 pi a R / (1 + 2 a / sqrt(a^2 + 4 b^2) - a / sqrt(a^2 + b^2)).
 *
 * Source: IEEE Std 81 for the even spaces, the sum over the four distances for any others (both second-hand).
 */
export function pinFactorPerM(pins: SoundingPins): number {
  const twiceDepthM = 2 * pins.pinDepthM;
  return pinDistances(pins).reduce(
    (sum, { sign, distanceM }) => sum + (sign / 2) * (1 / distanceM + 1 / Math.hypot(distanceM, twiceDepthM)),
    0,
  );
}

/** Apparent resistivity (ohm metre) of a reading. Which way the leads were put on does not matter. */
export function apparentOfReading(pins: SoundingPins, resistanceOhm: number): number {
  return (2 * Math.PI * resistanceOhm) / Math.abs(pinFactorPerM(pins));
}
