import type { ValuesOf } from '../format/field.ts';
import type { HowKnown, SourcePlace } from '../site.ts';
import type { Spot } from './report.ts';
import type { MapNode, Span } from './tree.ts';

/** A member of a section as typed: its fields read, what they name not yet looked up. */
export interface TypedMember<F> {
  readonly id: string;
  readonly kind: string;
  readonly values: ValuesOf<F>;
  readonly fieldKnown: Readonly<Record<string, HowKnown>>;
  /** Field → its text in the file, one line. */
  readonly typed: Readonly<Record<string, string>>;
  /** Field → where its value stands. */
  readonly fieldAt: ReadonlyMap<string, Span>;
  readonly source: SourcePlace;
  readonly spot: Spot;
  readonly at: Span;
  readonly node: MapNode | null;
}
