import { type Speech, say } from '../words/say.ts';
import type { Asked } from './asked.ts';
import type { Heading } from './finding-of.ts';
import type { Verdict } from './rule.ts';
import { ruleSentence, wordsOf } from './rule-sentence.ts';
import type { Finding } from './run-rules.ts';
import { sayMeasured } from './say-measured.ts';

type Met = Extract<Verdict, { is: 'met' }>;

const none: readonly never[] = [];

/**
 * A place that meets a condition. There are thousands of them on a large site and a check says nothing of any, so that each
 * holds no more than what it is made of, and makes its sentences when somebody reads them. In JSON it is as any other
 * finding; it is spread by way of `toJSON`.
 */
export class MetFinding implements Finding {
  readonly #asked: Asked;
  readonly #verdict: Met;
  readonly #heading: Heading;
  readonly id: string;
  readonly agreed: Finding['agreed'];

  constructor(asked: Asked, verdict: Met, heading: Heading, id: string, agreed: Finding['agreed']) {
    this.#asked = asked;
    this.#verdict = verdict;
    this.#heading = heading;
    this.id = id;
    this.agreed = agreed;
  }

  get rule(): string {
    return this.#asked.rule.id;
  }

  get family(): Finding['family'] {
    return this.#asked.family;
  }

  get codeSet(): Finding['codeSet'] {
    return this.#asked.codeSet;
  }

  get severity(): Finding['severity'] {
    return this.#asked.rule.severity;
  }

  get outcome(): 'met' {
    return 'met';
  }

  get at(): readonly string[] {
    return this.#verdict.at;
  }

  get under(): null {
    return null;
  }

  get title(): string {
    const { at, because } = this.#verdict;
    return say(wordsOf(this.#asked.rule).title, { at, ...because.values }, this.#speech);
  }

  get because(): Finding['because'] {
    const { at, because } = this.#verdict;
    const text = ruleSentence(this.#asked.rule, because, this.#speech, at);
    return { key: because.key, values: because.values ?? {}, text };
  }

  get measured(): Finding['measured'] {
    const { measured } = this.#verdict;
    return measured === undefined ? null : sayMeasured(measured, this.#speech);
  }

  get source(): Finding['source'] {
    return this.#heading.source;
  }

  get basis(): string {
    return this.#heading.basis;
  }

  get remedy(): string {
    return '';
  }

  get tool(): null {
    return null;
  }

  get change(): null {
    return null;
  }

  get untied(): readonly string[] {
    return none;
  }

  get #speech(): Speech {
    return this.#heading.speech;
  }

  toJSON(): Finding {
    const { id, agreed, rule, family, codeSet, severity, outcome, at, under, source, basis, tool, change } = this;
    const { untied, title, because, measured, remedy } = this;
    const head = { id, agreed, rule, family, codeSet, severity, outcome, at, under, source, basis, tool, change };
    return { ...head, untied, title, because, measured, remedy };
  }
}
