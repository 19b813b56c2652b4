import type { ChangeValue, SiteChange } from '../../site/change.ts';
import type { Site } from '../../site/site.ts';
import { setFields } from './set-field.ts';

/** Fields of a joint of the `joints` section; nothing for one without a name of its own, which stands within its wire. */
export function setJoint(
  site: Site,
  joint: string,
  fields: Readonly<Record<string, ChangeValue>>,
): { readonly change?: readonly SiteChange[] } {
  return site.joints.some((j) => j.id === joint) ? setFields('joints', joint, fields) : {};
}
