import type { SiteHeader } from '../../site/site.ts';
import { adoptedYear } from '../code-sets/adopted-edition.ts';

/** Whether the site names an edition of IEC 62305-3 from before 2010, whose bonds are smaller. */
export function isBefore2010(header: Pick<SiteHeader, 'codes'>): boolean {
  const year = adoptedYear(header, 'IEC 62305-3');
  return year !== null && year < 2010;
}
