import type { Run } from './body.ts';
import type { Figures } from './closed-form.ts';

/** Strips that a plate is cut into. */
export const plateStrips = 10;

/**
 * A plate as strips side by side along its longer side, each a round wire. `stands` flat: level; on edge: its width level,
 * its height upright, the middle of it at `depthM`.
 */
export function plateRuns({ widthM, heightM, depthM }: Figures, stands: 'on edge' | 'flat'): readonly Run[] {
  const isAlongWidth = widthM! >= heightM!;
  const strips = isAlongWidth ? stripsOf(heightM!, () => widthM!) : stripsOf(widthM!, () => heightM!);
  return strips.map(({ offsetM, lengthM, radiusM }): Run => {
    const point = (alongM: number): readonly [number, number, number] => {
      const [acrossM, upM] = isAlongWidth ? [alongM, offsetM] : [offsetM, alongM];
      return stands === 'flat' ? [acrossM, upM, depthM!] : [acrossM, 0, depthM! + upM];
    };
    return { from: point(-lengthM / 2), to: point(lengthM / 2), radiusM, sheath: null };
  });
}

export interface Strip {
  readonly offsetM: number;
  readonly lengthM: number;
  readonly radiusM: number;
}

/**
 * Strips of equal width side by side over a breadth, each as long as the plate is at its middle. A strip that leaks evenly
 * across its width is on average as far from itself as a wire of radius exp(-3/2) of it is: its geometric mean distance.
 */
export function stripsOf(breadthM: number, lengthAt: (offsetM: number) => number): readonly Strip[] {
  const stripM = breadthM / plateStrips;
  return Array.from({ length: plateStrips }, (_, k) => {
    const offsetM = (k + 0.5) * stripM - breadthM / 2;
    return { offsetM, lengthM: lengthAt(offsetM), radiusM: stripM * Math.exp(-1.5) };
  });
}
