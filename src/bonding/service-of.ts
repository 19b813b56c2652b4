import type { Bonding } from './bonding.ts';
import type { Members } from './members.ts';
import type { SiteIndex } from './site-index.ts';

/** What the site says of its service; a service that is not there counts as not known. */
export function serviceOf({ site, parts }: SiteIndex): Bonding['service'] {
  const { service } = site.header;
  if (service === 'none' || service === 'unknown') return { part: null, is: service };
  const part = parts.get(service);
  return part === undefined || part.present === 'no' ? { part: null, is: 'unknown' } : { part: service, is: 'known' };
}

/** Members that are this part: itself, or each of its rods or points. */
export function membersOfId(members: Members, part: string | null): readonly string[] {
  if (part === null) return [];
  return [...members.keys()].filter((id) => id === part || id.startsWith(`${part}.`) || id.startsWith(`${part}@`));
}
