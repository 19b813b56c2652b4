/**
 * Stakeless (clamp-on) measurement: the instrument reads the loop of the clamped electrode and all others in parallel, with
 * the bonds between them. It is no resistance to earth by itself.
 *
 * Source: an earth-tester booklet, pages 49 to 52 (read); an instrument tutorial and electricians' practice for the traps
 * (read). Mutual resistance of the electrodes is left out.
 */
export interface ClampLoop {
  /** null: there is no other electrode, so no loop; the instrument is over its range. */
  readonly readsOhm: number | null;
  readonly traps: readonly ClampTrap[];
}

/**
 * Why a reading is not the resistance of the clamped electrode. no-loop: nothing else is in the circuit. sum-of-two: with one
 * other electrode the reading is the sum of both. metal-loop: below about 1 ohm it is likely a loop of metal, which proves
 * bonding and not earth. too-near: electrodes inside each other's reach read low.
 */
export const clampTraps = ['no-loop', 'sum-of-two', 'metal-loop', 'too-near'] as const;
export type ClampTrap = (typeof clampTraps)[number];

/** Below this a loop is suspected to be all metal. */
export const metalLoopOhm = 1;

/**
 * What the clamp reads round the lead of an electrode (ohm) whose other path is all the `otherOhm` in parallel. `nearest`:
 * distance to the nearest other electrode over the length of the longer of both; null: unknown (then nothing is said of it).
 */
export function clampLoop(
  clampedOhm: number,
  otherOhm: readonly number[],
  bondOhm = 0,
  nearest: number | null = null,
): ClampLoop {
  if (![clampedOhm, ...otherOhm].every((ohm) => ohm > 0) || !(bondOhm >= 0)) {
    throw new RangeError('a resistance to earth is above 0 ohm');
  }
  const readsOhm =
    otherOhm.length === 0 ? null : clampedOhm + 1 / otherOhm.reduce((sum, ohm) => sum + 1 / ohm, 0) + bondOhm;
  return { readsOhm, traps: trapsOfClamp(readsOhm, otherOhm.length, nearest) };
}

/** The same of a reading (ohm; null: over range) round the lead of an electrode with so many others on its group. */
export function trapsOfClamp(readsOhm: number | null, others: number, nearest: number | null): readonly ClampTrap[] {
  const isMetal = readsOhm !== null && looksLikeMetal(readsOhm);
  if (others === 0) return isMetal ? ['metal-loop'] : ['no-loop'];
  return [
    ...(others === 1 ? (['sum-of-two'] as const) : []),
    ...(isMetal ? (['metal-loop'] as const) : []),
    ...(nearest !== null && nearest < 1 ? (['too-near'] as const) : []),
  ];
}

/** Whether a reading is so low that the loop is likely metal alone: a ring, a tower leg, a cable trench. */
export function looksLikeMetal(readsOhm: number): boolean {
  return readsOhm < metalLoopOhm;
}
