import type { SourceText } from '../reading/source-text.ts';
import type { Places } from './places.ts';

/** What builders need beside the typed part. */
export interface Build {
  readonly places: Places;
  readonly source: SourceText;
}
