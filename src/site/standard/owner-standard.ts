import type { Agreement } from '../site.ts';

export type OwnSeverity = 'hazard' | 'defect' | 'advice';

/** What an owner's limit can be of. */
export const ownSubjects = [
  'conductors',
  'conductors between bars',
  'conductors to electrodes',
  'mast leads',
  'joints',
  'joints on bars',
  'joints on electrodes',
  'electrodes',
  'rods',
  'arresters',
  'site',
] as const;
export type OwnSubject = (typeof ownSubjects)[number];

/** A figure against a limit of the owner's; `key` carries the base unit, such as `areaM2`. */
export interface OwnFigure {
  readonly is: 'figure';
  /** The field as typed: wire, length, bolts. */
  readonly field: string;
  readonly key: string;
  readonly sense: 'least' | 'most';
  readonly value: number;
}

export type OwnCondition =
  | OwnFigure
  /** A kind, metal or answer that has to be one of a few words. */
  | { readonly is: 'word'; readonly field: string; readonly words: readonly string[] };

/** A condition of the owner's own. */
export interface OwnLimit {
  readonly id: string;
  readonly of: OwnSubject;
  readonly conditions: readonly OwnCondition[];
  readonly severity: OwnSeverity;
  readonly because: string | null;
  readonly remedy: string | null;
}

/** A rule of the pack as the owner asks it. */
export interface OwnRule {
  readonly rule: string;
  readonly severity: OwnSeverity | null;
  readonly limit: Omit<OwnFigure, 'is' | 'field'> | null;
  readonly because: string | null;
}

/** What a landlord or club asks beside the code, in words and figures of their own. */
export interface OwnerStandard {
  readonly file: string;
  readonly name: string;
  readonly edition: string | null;
  readonly limits: readonly OwnLimit[];
  readonly rules: readonly OwnRule[];
}

/** What a file of agreements holds. */
export interface AgreementFile {
  readonly file: string;
  readonly agreed: readonly Agreement[];
}
