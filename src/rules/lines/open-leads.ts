import type { Line, Site } from '../../site/site.ts';
import { isSending, outdoorLeads } from './outdoor-leads.ts';

/** Lead-ins of open wire from outdoors to what sends. */
export function openSendingLeads(site: Site): readonly Line[] {
  return outdoorLeads(site).filter((l) => l.kind !== 'coax' && isSending(l, site));
}
