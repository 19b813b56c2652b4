import type { Choice } from './csr.ts';
import type { Tie } from './tie.ts';

/** Whether a tie is a bond: permanent metal, or the protective conductor of a fixed feeder. */
export function isBond({ kind }: Tie): boolean {
  return kind === 'metal' || kind === 'feeder';
}

/** Bonds that are known to be there. */
export const knownBonds: Choice<Tie> = { edge: (_key, tie) => tie.is === 'there' && isBond(tie) };

/** Bonds that are there or may be. */
export const possibleBonds: Choice<Tie> = { edge: (_key, tie) => isBond(tie) };
