import type { Meeting } from './joint-id.ts';
import type { SiteIndex } from './site-index.ts';

/** Whether a wire's meeting with something is known not to conduct: its joint is open, or the named clamp is gone. */
export function isJointOpen({ parts }: SiteIndex, { joint, use }: Meeting): boolean {
  const named = joint === null ? undefined : parts.get(joint);
  return use.condition === 'open' || named?.condition === 'open' || named?.present === 'no';
}
