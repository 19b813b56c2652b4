import type { Site } from '../site/site.ts';

/**
 * Supports on the face of a building: IEC 60728-11 asks no earthing conductor of an antenna there when it is at least 2 m
 * below the edge of the roof and at most 1.5 m out from the wall (second-hand). A file does not say the second.
 */
export function onFacade(site: Site): ReadonlySet<string> {
  return new Set(site.supports.filter((s) => s.kind === 'building face').map((s) => s.id));
}
