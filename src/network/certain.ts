/** How sure it is that something leaks into the soil: known to, taken to, or it may. */
export type Certain = 'there' | 'likely' | 'perhaps';

/** Which figure is worked out. */
export type Side = 'low' | 'likely' | 'high';

/** In for the low figure, whatever it is; in for the likely one where it is taken to be there; in for the high one where it is known. */
export function isThere(certain: Certain, side: Side): boolean {
  if (side === 'low') return true;
  return side === 'high' ? certain === 'there' : certain !== 'perhaps';
}

/** From what is known to be there to what may be. */
export const byCertainty: readonly Certain[] = ['there', 'likely', 'perhaps'];
