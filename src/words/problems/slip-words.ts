import type { ProblemWords } from './problem-words.ts';

/** Values that YAML takes in another way than they were meant. */
export const slipWords: Readonly<Record<string, ProblemWords>> = {
  'tab-indentation': {
    wrong: 'lines are indented with tabs, this one first ({lines} in all)',
    todo: 'Use spaces: two for each level.',
  },
  'value-in-comment': {
    wrong: '`#` starts a comment, so `{lost}` is not read and the value is gone',
    todo: 'Put it in quotes: `{corrected}`. If it is a comment, leave a space after the `#`, and type `unknown` as the value.',
  },
  'value-cut-by-comment': {
    wrong: '`#` starts a comment, so the value ends after `{kept}` and `{lost}` is not read',
    todo: 'Put the whole in quotes: `{corrected}`. If it is a comment, leave two spaces before the `#`.',
  },
  'wires-cut-by-comment': {
    wrong: '`#` starts a comment, so only `{count}` is read',
    todo: 'Type how many wires there are as a field of its own, and the wire in quotes: `count: {count}` and `wire: {wire}`.',
  },
  'comma-in-braces': {
    wrong: 'a comma ends a value inside braces, so `{rest}` is cut off',
    todo: 'Put a text in quotes: `{corrected}`. The items of a list go into square brackets.',
  },
  'list-in-braces': {
    wrong: 'a comma ends a value inside braces, so `{rest}` is cut off',
    todo: 'The items of a list go into square brackets: `{corrected}`.',
  },
  'decimal-comma-in-braces': {
    wrong: 'a comma ends a value inside braces',
    todo: 'Type a point before the decimals: `{corrected}`.',
  },
  'thousands-in-braces': {
    wrong: 'a comma ends a value inside braces',
    todo: 'Type thousands without a comma: `{corrected}`. If decimals were meant, type a point.',
  },
  'field-without-value': {
    wrong: '`{field}` has no value',
    todo: 'Type a colon, a space and the value; if it is not known: `{corrected}`.',
  },
  'comma-missing': {
    wrong: 'a comma is missing before `{field}`',
    todo: 'Type `{corrected}`.',
  },
  'colon-in-value': {
    wrong: 'there is a colon inside the value `{text}`',
    todo: 'Put the value in quotes: `{corrected}`.',
  },
  'colon-without-space': {
    wrong: 'there is no space after the colon of `{name}:`',
    todo: 'Type `{corrected}`.',
  },
  'line-too-far-in': {
    wrong: 'this line starts further in than the field above it, so it would belong to the value there',
    todo: 'Start it in the same column as the other fields: `{corrected}`.',
  },
  'mark-for-unknown': {
    wrong: '`{mark}` alone means something else in this kind of file',
    todo: 'If nobody knows, type `unknown`: `{corrected}`.',
  },
  'mark-starts-value': {
    wrong: 'a value cannot start with `{mark}`, so `{text}` is not read',
    todo: 'Put it in quotes: `{corrected}`.',
  },
  'dash-on-line': {
    wrong: 'a dash in the middle of a line starts no list',
    todo: 'Put the items in square brackets: `{list}`; or type each with its dash on a line of its own below the name.',
  },
  'braces-missing': {
    wrong: 'fields stand on the line of their part, without braces round them',
    todo: 'Put them in braces with commas between: `{corrected}`; or each on a line of its own, further in.',
  },
  'mark-too-many': {
    wrong: '`{mark}` is too many here',
    todo: 'Take it away: `{corrected}`.',
  },
  'bracket-in-comment': {
    wrong: '`#` starts a comment, so `{lost}` is not read, and with it what closes the line',
    todo: 'Move the comment to the end: `{corrected}`, two spaces, and then the comment.',
  },
  'quote-not-closed': {
    wrong: 'the quote that is opened here is not closed on its line, so the lines below would belong to it',
    todo: 'Close it: `{corrected}`.',
  },
  'text-after-quote': {
    wrong: 'the quote ends before `{rest}`, and nothing may follow it',
    todo: 'Type it so: `{corrected}`.',
  },
  'colon-missing': {
    wrong: 'there is no colon after `{name}`',
    todo: 'Type `{corrected}`.',
  },
  'bracket-not-closed': {
    wrong: '`{mark}` is opened here and never closed',
    todo: 'Add the `{close}`, perhaps so: `{corrected}`.',
  },
};
