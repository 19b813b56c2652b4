import type { SectionName } from '../site.ts';
import type { ChangeValue } from './write-value.ts';

/** One change to a site. */
export type SiteChange =
  /** A field of a part, place, building, state or reading; with `id: null` of `site`, `soil` or `prices`. `value: null` takes the field out. */
  | {
      readonly is: 'set';
      readonly section: SectionName | 'site';
      readonly id: string | null;
      readonly field: string;
      readonly value: ChangeValue | null;
    }
  | {
      readonly is: 'add';
      readonly section: SectionName;
      readonly id: string;
      readonly fields: Readonly<Record<string, ChangeValue>>;
    }
  /** The last part of a section leaves `none` behind: somebody looked, and there are none. */
  | { readonly is: 'remove'; readonly section: SectionName; readonly id: string };
