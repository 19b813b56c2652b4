import type { ProblemWords } from './problem-words.ts';

/** Of the small files beside a site file: an owner's standard, findings agreed to stand. */
export const standardWords: Readonly<Record<string, ProblemWords>> = {
  'side-file-empty': { wrong: 'nothing stands in this file', todo: 'Type at least one of: {keys}.' },
  'side-file-not-a-group': { wrong: 'this file does not begin with a field', todo: 'Its fields are: {keys}.' },
  'limit-side': {
    wrong: '`{text}` does not say which side of the figure is asked',
    todo: 'Begin with `at least` or `at most`, such as `at least 2 AWG`.',
  },
  'limit-other-side': {
    wrong: '`{rule}` asks its figure to be `{sense}` something, and `{typed}` would turn it round',
    todo: 'Begin with `{sense}`; what you ask the other way goes under `limits:`, with a name of your own.',
  },
  'limit-one-figure': {
    wrong: '`{text}` is a range, and a limit is one figure',
    todo: 'Type one figure behind `at least` or `at most`.',
  },
  'limit-of-what': {
    wrong: 'it does not say what it is a limit of',
    todo: 'Type `of:` and one of: {subjects}.',
  },
  'limit-asks-nothing': {
    wrong: 'nothing is asked here',
    todo: 'Add at least one of: {keys}.',
  },
  'rule-unknown': {
    wrong: '`{rule}`: no rule has this id',
    todo: 'All of them: evenground rules.',
  },
  'rule-without-limit': {
    wrong: '`{rule}` asks yes or no and has no figure that could be set',
    todo: 'Take the `limit:` away; a `severity:` may stand.',
  },
  'agreed-without-rule': {
    wrong: 'an agreement does not say which rule it is about',
    todo: 'Type `rule:` and the id that stands behind the finding.',
  },
};
