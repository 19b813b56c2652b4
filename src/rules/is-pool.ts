import { onceForText } from '../units/once-for-text.ts';

/** What people bathe in, by the words that owners type: NFPA 70 680.42 asks of tubs and spas outdoors what it asks of pools (from memory). */
const pools = /\bpool\b|\bhot ?tub\b|\bspa\b|\bwhirlpool\b/i;

/** Whether metalwork of this kind is a pool, a hot tub or a spa. */
export const isPool: (kind: string) => boolean = onceForText((kind) => pools.test(kind));
