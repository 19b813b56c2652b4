import type { SiteChange } from '../../study/try-change.ts';
import type { Scene } from './scene.ts';

/** What was measured on an electrode holds no more once it is driven deeper or anew. */
export function forgetReading(scene: Scene, id: string): readonly SiteChange[] {
  const typed = scene.part(id)?.typed.resistance;
  if (typed === undefined || typed.trim() === 'unknown') return [];
  return [{ is: 'set', section: 'electrodes', id, field: 'resistance', value: 'unknown' }];
}
