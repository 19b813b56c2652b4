import type { Report } from '../reading/report.ts';
import type { TypedSite } from '../reading/typed-site.ts';
import type { Site } from '../site.ts';

/** What a check of the whole file looks at: the file as typed, the site that it gives, and where to note what is odd. */
export interface Checked {
  readonly typed: TypedSite;
  readonly site: Site;
  readonly report: Report;
}
