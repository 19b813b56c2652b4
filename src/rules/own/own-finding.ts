import type { Finding } from '../run-rules.ts';
import type { OwnPlace } from './own-places.ts';

/** What all findings of one limit of the owner's share. */
export type OwnShared = Pick<Finding, 'rule' | 'family' | 'codeSet' | 'severity' | 'source' | 'basis'>;

type Said = Pick<Finding, 'title' | 'because' | 'measured' | 'remedy'>;

const none: readonly never[] = [];

/**
 * A place at a limit of the owner's. It makes its sentences when somebody reads them: most places meet the limit, and a check
 * says nothing of any that does. In JSON it is as any other finding; it is spread by way of `toJSON`.
 */
export class OwnFinding implements Finding {
  readonly #shared: OwnShared;
  readonly #place: OwnPlace;
  readonly #say: (outcome: Finding['outcome']) => Said;
  #said: Said | null = null;
  readonly id: string;
  readonly outcome: Finding['outcome'];
  readonly agreed: Finding['agreed'];

  constructor(
    shared: OwnShared,
    place: OwnPlace,
    { outcome, agreed }: Pick<Finding, 'outcome' | 'agreed'>,
    sayIt: (outcome: Finding['outcome']) => Said,
  ) {
    this.#shared = shared;
    this.#place = place;
    this.#say = sayIt;
    this.id = `own/${shared.rule}:${place.at.join('+')}`;
    this.outcome = outcome;
    this.agreed = agreed;
  }

  get rule(): string {
    return this.#shared.rule;
  }

  get family(): Finding['family'] {
    return this.#shared.family;
  }

  get codeSet(): Finding['codeSet'] {
    return this.#shared.codeSet;
  }

  get severity(): Finding['severity'] {
    return this.#shared.severity;
  }

  get at(): readonly string[] {
    return this.#place.at;
  }

  get under(): null {
    return null;
  }

  get title(): string {
    return this.#told.title;
  }

  get because(): Finding['because'] {
    return this.#told.because;
  }

  get measured(): Finding['measured'] {
    return this.#told.measured;
  }

  get source(): Finding['source'] {
    return this.#shared.source;
  }

  get basis(): string {
    return this.#shared.basis;
  }

  get remedy(): string {
    return this.#told.remedy;
  }

  get tool(): Finding['tool'] {
    if (this.outcome !== 'cannot tell') return null;
    return this.#place.of === undefined ? 'eyes' : 'earth tester';
  }

  get change(): null {
    return null;
  }

  get untied(): readonly string[] {
    return none;
  }

  get #told(): Said {
    this.#said ??= this.#say(this.outcome);
    return this.#said;
  }

  toJSON(): Finding {
    const { id, rule, family, codeSet, severity, outcome, at, under, title, because, measured, source, basis } = this;
    const { remedy, tool, change, untied, agreed } = this;
    const head = { id, rule, family, codeSet, severity, outcome, at, under, title, because, measured, source, basis };
    return { ...head, remedy, tool, change, untied, agreed };
  }
}
