import type { PartSection } from '../site.ts';
import type { Fields } from './field.ts';

/** How a section of parts is written. */
export interface PartFormat<F extends Fields> {
  readonly section: PartSection;
  readonly says: string;
  /** Kind → what it is. */
  readonly kinds: Readonly<Record<string, string>>;
  /** closed: an unlisted kind is refused; free: any words, a near miss is asked about; joint: read as a joint's kind. */
  readonly kindsAre: 'closed' | 'free' | 'joint';
  readonly fields: F;
}

/** Kinds that every section takes. */
export const everyKind: Readonly<Record<string, string>> = {
  other: 'Something else; a note says what.',
  unknown: 'Nobody knows what kind it is.',
};

export function partFormat<F extends Fields>(format: PartFormat<F>): PartFormat<F> {
  return format;
}
