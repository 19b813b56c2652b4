import type { Run } from './body.ts';
import type { Figures } from './closed-form.ts';

/** Strips that a plate is cut into. */
const plateStrips = 8;

/**
 * Radius of the wire for a strip, in widths of the strip. A strip that leaks evenly is on average 0.223 of its width
 * (exp(-3/2)) from itself, a sheet of wires does what a plate does at 0.159 (1 / (2 pi)); between them, 0.2 gives the
 * capacitance of a square plate (4 pi eps 0.36679 side) and of a disc (8 eps radius) within 0.8 %.
 */
const wireShare = 0.2;

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

/** Strips of equal width side by side over a breadth, each as long as the plate is at its middle. */
export function stripsOf(breadthM: number, lengthAt: (offsetM: number) => number): readonly Strip[] {
  const stripM = breadthM / plateStrips;
  return Array.from({ length: plateStrips }, (_, k) => {
    const offsetM = (k + 0.5) * stripM - breadthM / 2;
    return { offsetM, lengthM: lengthAt(offsetM), radiusM: wireShare * stripM };
  });
}
