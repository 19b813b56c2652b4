import type { Electrode } from '../../site/site.ts';
import type { Figure } from './size-row.ts';

/** What is typed to say a figure of an electrode: `width:`, each once. A strap is a wire, and says its thickness itself. */
export function sizeFields(figures: readonly Figure[], { kind }: Electrode): readonly string[] {
  const fields = figures.flatMap((figure): readonly string[] => {
    if (figure === 'area') return ['width', 'height'];
    if (figure === 'wire diameter' || (figure === 'thickness' && kind !== 'plate')) return ['wire'];
    return [figure];
  });
  return [...new Set(fields)].map((field) => `\`${field}:\``);
}

/** How these are found: on a rod they are stamped, in concrete nobody sees them, what lies in the soil somebody laid. */
export function howToSize(
  fields: readonly string[],
  { kind }: Electrode,
): 'measure it' | 'ask for plan' | 'measure wire' | 'ask who laid it' {
  if (kind === 'rod' || kind === 'rods') return 'measure it';
  if (kind === 'concrete-encased') return 'ask for plan';
  return fields.includes('`wire:`') ? 'measure wire' : 'ask who laid it';
}
