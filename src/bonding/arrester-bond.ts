import type { Arrester } from '../site/site.ts';

/** What an arrester bolts to; itself where it stands alone and a wire of its own bonds it. */
export function bondOfArrester(arrester: Arrester): readonly string[] {
  if (arrester.bonded === 'no' || arrester.bonded === 'unknown') return [];
  return [arrester.on?.text ?? arrester.id];
}
