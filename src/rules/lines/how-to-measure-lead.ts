import type { Arrester } from '../../site/site.ts';

/** The leads of a mains protector are behind the cover of a panel: every rule on them asks with the same care. */
export function howToMeasureLead({ kind }: Arrester): 'measure it' | 'measure mains' {
  return kind === 'mains protector' ? 'measure mains' : 'measure it';
}
