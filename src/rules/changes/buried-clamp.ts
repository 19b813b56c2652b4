import type { SiteChange } from '../../site/change.ts';
import type { Site } from '../../site/site.ts';
import { setJoint } from './set-joint.ts';

/** A clamp of the `joints` section made one that is listed for rods in soil. Nothing for a joint without a name of its own. */
export function buriedClamp(site: Site, joint: string): { readonly change?: readonly SiteChange[] } {
  return setJoint(site, joint, { kind: 'rod clamp', listed: 'yes', for_burial: 'yes' });
}
