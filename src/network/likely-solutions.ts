import { type RangedNetwork, type SolvedRange, solveLikely } from '../currents/bounds.ts';
import type { SolvedNetwork } from '../currents/solve-network.ts';

/** How far apart the figures with unknown ties at nothing and with them gone may lie for one figure to stand for both. */
export const agreeShare = 0.01;

/**
 * The network at its likely figures: once where all are known; else twice, with the ties of unknown resistance at 0 and
 * gone. Where the two agree, what is not known does not matter. Empty where no resistance to earth is known.
 */
export function likelySolutions(ranged: RangedNetwork, solved: SolvedRange): readonly SolvedNetwork[] {
  if (solved.value !== null) return [solved.value];
  return [0, Number.POSITIVE_INFINITY].flatMap((ohm) => {
    const again = solveLikely(ranged, ohm);
    return again?.ok ? [again] : [];
  });
}

/** The one figure that several solutions agree on to a hundredth (of itself, or of 1 for shares); null where they do not. */
export function agreed(figures: readonly (number | null)[], scale: 'own' | 'one' = 'own'): number | null {
  const known = figures.filter((figure) => figure !== null);
  if (known.length === 0 || known.length < figures.length) return null;
  const [least, most] = [Math.min(...known), Math.max(...known)];
  const margin = agreeShare * (scale === 'one' ? 1 : Math.abs(least));
  return most - least <= margin ? known[0]! : null;
}
