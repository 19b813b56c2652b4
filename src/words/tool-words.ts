import type { RuleWords, Tool } from './rule-words.ts';

/** What to bring, as a line of the list of things to look at says it; eyes are not said. */
export const toolWords: Readonly<Record<Tool, string>> = {
  eyes: '',
  tape: 'a tape measure',
  'wire gauge': 'a wire gauge or caliper',
  ohmmeter: 'a low-resistance ohmmeter',
  'earth tester': 'a tester of [ground resistance]',
  spade: 'a spade',
  papers: 'the papers of the station',
  electrician: 'a [electrician]',
};

/** Field that is typed after the look → what the figure is found with. */
const byField: Readonly<Record<string, Tool>> = {
  length: 'tape',
  lengths: 'tape',
  height: 'tape',
  spacing: 'tape',
  distance: 'tape',
  lead: 'tape',
  top: 'tape',
  bends: 'tape',
  at: 'tape',
  near: 'tape',
  clearance: 'tape',
  standoff: 'tape',
  diameter: 'wire gauge',
  wire: 'wire gauge',
  area: 'wire gauge',
  thickness: 'wire gauge',
  depth: 'spade',
  resistance: 'earth tester',
  readings: 'earth tester',
  code: 'papers',
  claims: 'papers',
  certificate: 'papers',
  supply: 'electrician',
  'site.supply': 'electrician',
};

/**
 * What somebody brings who settles a doubt: what the rule says, else what the first field is found with that its sentence
 * asks to be typed (`length:`), else eyes.
 */
export function toolFor(words: Pick<RuleWords, 'tools' | 'because'>, settleKey: string): Tool {
  const said = words.tools?.[settleKey];
  if (said !== undefined) return said;
  const field = /`([\w.]+):?`/.exec(words.because[settleKey] ?? '')?.[1] ?? '';
  return byField[field] ?? 'eyes';
}
