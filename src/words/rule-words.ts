/** What somebody brings who goes to look. */
export type Tool = 'eyes' | 'tape' | 'wire gauge' | 'ohmmeter' | 'earth tester' | 'spade' | 'papers' | 'electrician';

/**
 * What a rule says: its title when met and when not, why it matters, how to put it right, and a sentence for each reason
 * that its function may give. `[idea]` is a term of the region, `{name}` a value (see say.ts). One record a rule.
 */
export interface RuleWords {
  /** What is true when the condition is met. */
  readonly title: string;
  readonly failTitle: string;
  readonly why: string;
  /** What counts as met, exemptions. */
  readonly met: string;
  readonly remedy: string;
  /** The same outside the United States and Canada, where wire is sold by its section and the work is another's. */
  readonly remedyAbroad?: string;
  /** Where it is not asked, and what is easily taken for it. */
  readonly exempt?: string;
  /** Key of a way to settle → what to bring; left out: eyes are enough. */
  readonly tools?: Readonly<Record<string, Tool>>;
  /** Key of a reason → its sentence. */
  readonly because: Readonly<Record<string, string>>;
}
