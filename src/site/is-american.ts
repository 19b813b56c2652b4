import type { Region } from './site.ts';

/** Where wires are sold by gauge and rods by the foot, and the American codes are asked; a region that nobody gave counts as the commonest. */
export function isAmerican(region: Region): boolean {
  return region === 'us' || region === 'ca' || region === 'unknown';
}
