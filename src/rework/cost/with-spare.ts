import { exact, type Interval, scale } from '../../units/interval.ts';
import type { Material } from '../work.ts';
import { materialKind } from './material-kind.ts';

/** Of conductor and of joints: our own allowance, no source. */
export const spareShare = 0.1;

/** How much to bring: a tenth more conductor, a joint in ten more (at least one), of anything else what is needed. */
export function withSpare(material: Material): Interval {
  const kind = materialKind(material);
  if (kind === 'conductor') return scale(material.count, 1 + spareShare);
  const most = Math.ceil(material.count.high);
  return kind === 'joint' && most > 0 ? exact(most + Math.ceil(most * spareShare)) : material.count;
}
