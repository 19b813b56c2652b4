import type { ElectrodePurpose } from '../../site/site.ts';

/** It serves this and nothing else. */
export function onlyFor(purposes: ReadonlySet<ElectrodePurpose>, purpose: ElectrodePurpose): boolean {
  return purposes.size === 1 && purposes.has(purpose);
}
