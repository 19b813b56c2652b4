import type { ProblemWords } from './problem-words.ts';

/** A list, a group or a text where another is due. */
export const shapeWords: Readonly<Record<string, ProblemWords>> = {
  'not-parts': {
    wrong: 'here stands {found} where named parts are due',
    todo: 'Indent each part below `{section}:` with its name and a colon, or type `none` if you looked and there are none.',
  },
  'not-a-group': {
    wrong: 'here stands {found} where fields are due',
    todo: 'Type fields with their values, such as {keys}; each on its own indented line, or in braces with commas between.',
  },
  'not-text': {
    wrong: 'here stands {found}; expected is {expects}',
    todo: 'Type it as one value, or `unknown`.',
  },
  'not-a-list': {
    wrong: 'here stands {found}; expected is {expects}',
    todo: 'Put the values in square brackets with commas between, even where there is only one.',
  },
  'not-two': {
    wrong: 'two values are due here, and there are {count}',
    todo: 'Type both in square brackets: [this, that].',
  },
  'route-short': {
    wrong: 'a route has at least two points, and this one has {count}',
    todo: 'Give both ends, such as [[0, 4], [30, 4]]; where the run is not known, type its `length:` instead.',
  },
  'corners-few': {
    wrong: 'a building has at least three corners, and this one has {count}',
    todo: 'List its corners in order round the building, or leave `corners:` out.',
  },
  'lengths-count': {
    wrong: 'the number of lengths is {count}, and that of the pieces {pieces}',
    todo: 'Give one length for each piece from one named stop to the next, in order; type `unknown` for a piece that was not measured.',
  },
  'joints-count': {
    wrong: 'a conductor has a joint at each end, and this list has {count}',
    todo: 'List the joint at the first end, splices, and the joint at the last end; type `unknown` for one that nobody has looked at.',
  },
  'coordinates-count': {
    wrong: 'a position is two or three figures, and this one has {count}',
    todo: 'Type [east, north] or [east, north, up].',
  },
  'coordinate-open': {
    wrong: '`{text}` is no single figure',
    todo: 'Type one figure, your best estimate; or give the position as `{from: place, distance: over 30 ft}`.',
  },
  'from-missing': {
    wrong: 'a position by steps or distance does not say from where',
    todo: 'Add `from:` with a place, a part or the corner of a building, such as `from: house.ne`.',
  },
  'go-and-distance': {
    wrong: 'both `go` and `distance` are given for one position',
    todo: 'Keep one: `go: [10 ft north, 4 ft east]`, or `distance: 11 ft` with `side: N`.',
  },
  'opening-at-missing': {
    wrong: 'this opening does not say where',
    todo: 'Add `at:` with the name of a plug, or a line and its stop such as `"line1:radio"`.',
  },
  'pass-part-missing': {
    wrong: 'this does not say which part the wire passes',
    todo: 'Add `part:`, such as `{part: R2, joint: rod clamp}`.',
  },
  'stop-unreadable': {
    wrong: 'this stop of the line says neither `bond`, `plug` nor `bend`',
    todo: 'Type the name of a part, or `{bond: tower@48 ft}`, `{plug: j1}` or `{bend: [60, 30]}`.',
  },
  'place-circle': {
    wrong: 'this position leads back to itself: {circle}',
    todo: 'Give one of them coordinates or a position from something else.',
  },
  'place-chain': {
    wrong: 'this position depends on more than {limit} others, one from the other: {circle}',
    todo: 'Give one of them coordinates.',
  },
  'inside-which': {
    wrong: '`inside` fits several buildings',
    todo: 'Type which one: {buildings}.',
  },
};
