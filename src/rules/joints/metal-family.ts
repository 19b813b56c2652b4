import type { JointFacts } from '../../facts/facts.ts';
import type { Metal } from '../../materials/metals.ts';
import { onceFor } from '../../units/once-for.ts';
import { onceForText } from '../../units/once-for-text.ts';

/** What a surface is to its neighbour in the wet: tinned copper is neither. */
export type MetalFamily = 'copper' | 'aluminium' | 'zinc' | 'other';

export function metalFamily({ name }: Metal): MetalFamily {
  return familyOf(name);
}

const familyOf = onceForText((name): MetalFamily => {
  if (/aluminium/.test(name) && name !== 'copper-clad aluminium') return 'aluminium';
  if (/zinc|galvanised/.test(name)) return 'zinc';
  if (name === 'tinned copper') return 'other';
  return /copper|bronze|brass/.test(name) ? 'copper' : 'other';
});

interface JointFamilies {
  readonly joined: ReadonlySet<MetalFamily>;
  readonly clamp: MetalFamily | null;
}

/** Families of what a joint joins (wires and the part), and of the clamp itself; unknown ones are left out. */
export const familiesAt: (j: JointFacts) => JointFamilies = onceFor((j) => {
  const joined = [...j.wireMetals, j.onMetal].flatMap((m) => (m === null ? [] : [metalFamily(m)]));
  return { joined: new Set(joined), clamp: j.metal === null ? null : metalFamily(j.metal) };
});
