import type { ProblemWords } from './problem-words.ts';

/** Figures, wires, metals and words that cannot be read. */
export const valueWords: Readonly<Record<string, ProblemWords>> = {
  'unit-missing': {
    wrong: '`{text}` has no unit',
    todo: 'Type it behind the figure. Units here: {expected}.',
  },
  'units-not-said': {
    wrong: '`{text}` has no unit, and the file does not say which is meant',
    todo: 'Type it behind the figure, such as {example}, or type `units: ft` or `units: m` under `site:`.',
  },
  'unit-unknown': {
    wrong: '`{unit}` in `{text}` is no unit that is known here',
    todo: 'Units here: {expected}.',
  },
  'number-with-unit': {
    wrong: '`{text}` has a unit, and this field is a number without one',
    todo: 'Type the figure alone, or `unknown`.',
  },
  'unit-of-other-kind': {
    wrong: '`{text}` is for {kind}, and this field is for {wanted}',
    todo: 'Units here: {expected}.',
  },
  'unit-ambiguous': {
    wrong: '`{unit}` in `{text}` can mean milli or mega',
    todo: 'Type a small m for a thousandth or a capital M for a million, and the rest as usual: {expected}.',
  },
  'not-a-number': {
    wrong: '`{text}` cannot be read as a figure with a unit',
    todo: 'Type a figure, or `unknown`. Ranges read `90 to 100 ft`, `over 100 ft`, `about 30 ft`. Units: {expected}.',
  },
  'zero-or-negative': {
    wrong: '`{text}` cannot be right: it has to be more than zero',
    todo: 'Measure it, or type `unknown`.',
  },
  negative: {
    wrong: '`{text}` cannot be right: it is below zero',
    todo: 'Take the minus sign away, or type `unknown`.',
  },
  'range-reversed': {
    wrong: '`{text}` goes from more to less',
    todo: 'Type the smaller figure first.',
  },
  'decimal-comma': {
    wrong: '`{text}` holds a comma',
    todo: 'Type a point before the decimals: `{corrected}`.',
  },
  'over-range-not-here': {
    wrong: '`{text}` is what an instrument shows, and this is no reading',
    todo: 'Type a figure, or `unknown`. Units: {expected}.',
  },
  'wire-unreadable': {
    wrong: '`{text}` cannot be read as a wire',
    todo: 'Type a size and a metal, such as {example}; or `unknown`. A bare `6 mm` could be either: `6 mm2 copper` is a section, `round 6 mm copper` a diameter.',
  },
  'wire-metal-unknown': {
    wrong: '`{metal}` in `{text}` is no metal that is known here',
    todo: 'Metals are: {known} and others; leave the metal out if it is not known.',
  },
  'wire-gauge-unknown': {
    wrong: '{gauge} in `{text}` is no gauge of wire',
    todo: 'Gauges go from 40 AWG, the thinnest, to 4/0 AWG; larger wire is typed by its section, such as 250 kcmil or 120 mm2.',
  },
  'wire-size-zero': {
    wrong: 'the size in `{text}` is zero or less',
    todo: 'Measure the wire, or type `unknown`.',
  },
  'metal-unknown': {
    wrong: '`{text}` is no metal that is known here',
    todo: 'Metals are: {known} and others; or type `unknown`.',
  },
  'soil-unknown': {
    wrong: '`{text}` is no soil that is known here',
    todo: 'Soils are: {known} and others. A measured resistivity goes into `layers:`.',
  },
  'joint-kind-unknown': {
    wrong: '`{text}` is no kind of joint that is known here',
    todo: 'Kinds of joint are: {known}. Where none fits, type `other` or `unknown`.',
  },
  'word-unknown': {
    wrong: '`{text}` is none of the words that may stand here',
    todo: 'The words are: {words}; or `unknown`.',
  },
  'not-an-answer': {
    wrong: '`{text}` is not yes, no or unknown',
    todo: 'Type yes, no or unknown, and anything else into `note:`.',
  },
  'not-a-count': {
    wrong: '`{text}` is no whole number from {least} to {most}',
    todo: 'Type how many there are in digits, or `unknown`.',
  },
  'not-a-date': {
    wrong: '`{text}` is no date',
    todo: 'Type the year first, such as 2026-05-02; month and day may be left out.',
  },
  'not-expected': {
    wrong: '`{text}` cannot be read; expected here is {expects}',
    todo: 'Type it in that form, or `unknown`.',
  },
};
