import type { ChangeValue, SiteChange } from '../../site/change.ts';
import type { SectionName } from '../../site/site.ts';

/** Fields of one part, set to what the rule asks. */
export function setFields(
  section: SectionName,
  id: string,
  fields: Readonly<Record<string, ChangeValue>>,
): { readonly change: readonly SiteChange[] } {
  const change = Object.entries(fields).map(([field, value]): SiteChange => ({ is: 'set', section, id, field, value }));
  return { change };
}
