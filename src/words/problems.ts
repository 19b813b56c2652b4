/** What is wrong with a site file, and what to do. */
export interface ProblemWords {
  /** A sentence without its full stop; it stands behind the path of the field. */
  readonly wrong: string;
  /** A whole sentence or two. */
  readonly todo: string;
}

const wholeFile: Readonly<Record<string, ProblemWords>> = {
  'file-too-large': {
    wrong: 'the file has {bytes} bytes; at most {limitMiB} MiB are read',
    todo: 'Is this the right file? A site of ten thousand parts is about 1 MiB.',
  },
  'too-many-values': {
    wrong: 'the file holds more than {limit} values',
    todo: 'Is this the right file? Split a site that is really so large into several files.',
  },
  'too-deep': {
    wrong: 'lists and groups lie more than {limit} levels inside one another',
    todo: 'Look for a bracket or brace that is opened again and again, or a line that is indented far too much.',
  },
  'file-utf-16': {
    wrong: 'the file is stored as UTF-16 text',
    todo: 'Save it again as UTF-8: editors offer the encoding in the dialogue for saving.',
  },
  'file-not-utf-8': {
    wrong: 'there is a character here that is not stored as UTF-8',
    todo: 'Save the file again as UTF-8, or type this character again.',
  },
  'control-character': {
    wrong: 'there is an invisible control character here ({code})',
    todo: 'Delete it and type this piece of the line again.',
  },
  'file-empty': {
    wrong: 'nothing is typed in this file',
    todo: 'Start from the output of `evenground new FILE`, or with a section such as `electrodes:`.',
  },
  'file-not-sections': {
    wrong: 'the file is not a list of sections',
    todo: 'It starts with sections such as `site:` and `electrodes:`, each at the left margin with its parts indented below it.',
  },
  'section-unknown': {
    wrong: 'no section is called `{key}`',
    todo: 'The sections are: {sections}.',
  },
};

const syntax: Readonly<Record<string, ProblemWords>> = {
  'tab-indentation': {
    wrong: 'this line is indented with a tab',
    todo: 'Use spaces: two for each level.',
  },
  'yaml-ends-early': {
    wrong: 'the file ends in the middle of something',
    todo: 'Look for a bracket `[`, a brace `{` or a quote that is opened and never closed.',
  },
  'yaml-escape': {
    wrong: 'a backslash in double quotes starts something unreadable: {text}',
    todo: 'Put the text in single quotes, where a backslash is only a backslash.',
  },
  'yaml-indent': {
    wrong: 'the indent of this line fits nothing above it: {text}',
    todo: 'Fields of one part start in the same column, below each other, and further in than the part.',
  },
  'yaml-key-long': {
    wrong: 'a name here is longer than 1024 characters',
    todo: 'Look for a colon in the middle of a long text; put the whole text in quotes.',
  },
  'yaml-missing': {
    wrong: 'a closing bracket, brace, quote, comma or colon is missing at or before this place: {text}',
    todo: 'Check that everything opened on this line and on the line above is closed, and that every name has its colon and a space.',
  },
  'yaml-reserved': {
    wrong: 'a mark that means something else starts a value here: {text}',
    todo: 'Put the value in quotes.',
  },
  'yaml-tag': {
    wrong: 'a word with `!` starts a value here: {text}',
    todo: 'Take the word with the `!` away, or put the value in quotes.',
  },
  'yaml-two-colons': {
    wrong: 'there are two colons on one line: {text}',
    todo: 'Put a text that holds a colon in quotes; start each field on a line of its own.',
  },
  'yaml-two-documents': {
    wrong: 'a second file begins here, after a line of `---` or `...`',
    todo: 'Delete that line, or keep the second site in a file of its own.',
  },
  'yaml-unreadable': {
    wrong: 'this place cannot be read: {text}',
    todo: 'Look for a bracket, brace, quote or comma too many or too few on this line; put odd text in quotes.',
  },
  'key-twice': {
    wrong: '`{key}` stands twice here, first on line {firstLine}',
    todo: 'Keep one of the two.',
  },
  'key-not-text': {
    wrong: 'a name is due before this colon, not a list or a group',
    todo: 'Type a plain name, a colon, a space and the value.',
  },
  'alias-unknown': {
    wrong: '`*{name}` repeats something marked `&{name}`, and nothing before it is',
    todo: 'Type what is meant in full, or put the text in quotes if the star belongs to it.',
  },
  'alias-expansion': {
    wrong: 'repeats with `*` add more than {limit} values to the file',
    todo: 'Type the parts out, or use `count:` for parts that are all alike.',
  },
};

const names: Readonly<Record<string, ProblemWords>> = {
  'id-letters': {
    wrong: '`{id}` cannot be the name of a part',
    todo: 'A name has letters, digits, `-` and `_`; put a `-` where the space or mark is.',
  },
  'id-reserved': {
    wrong: '`{id}` has a meaning of its own and cannot be the name of a part',
    todo: 'Choose another name; these are taken: {reserved}.',
  },
  'id-twice': {
    wrong: '`{id}` is already the name of something in `{section}`, on line {firstLine}',
    todo: 'Give one of the two another name: every name stands once in the file.',
  },
  'id-unknown': {
    wrong: '`{id}`: no part has this name',
    todo: 'Use the name of a part in this file, or add the part to its section.',
  },
  'id-wrong-section': {
    wrong: '`{id}` stands in `{section}`, which does not fit here',
    todo: 'Name something from: {sections}.',
  },
  'id-with-more': {
    wrong: '`{text}` is more than a name',
    todo: 'Only the name of a part may stand here, without `@`, `.` or `:` behind it.',
  },
  'kind-unknown': {
    wrong: 'no kind here is called `{kind}`',
    todo: 'The kinds are: {kinds}. Where none fits, type `other` or `unknown`.',
  },
  'key-unknown': {
    wrong: 'there is no field `{key}` here',
    todo: 'The fields are: {keys}. What fits none of them goes into `note:` of the part.',
  },
  'key-of-other-kind': {
    wrong: '`{key}` does not belong to the kind `{kind}`',
    todo: 'It belongs to: {kinds}. Is the kind right? Else put it into `note:`.',
  },
  'setting-unknown': {
    wrong: '`{key}` does not name a field that a state can set',
    todo: 'Type the part, a dot and one of its fields. The fields are: {keys}.',
  },
};

const shapes: Readonly<Record<string, ProblemWords>> = {
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
    wrong: 'a building has at least three corners, and here are {count}',
    todo: 'List its corners in order round the building, or leave `corners:` out.',
  },
  'lengths-count': {
    wrong: 'there are {count} lengths for {pieces} pieces',
    todo: 'Give one length for each piece from one named stop to the next, in order; type `unknown` for a piece that was not measured.',
  },
  'joints-count': {
    wrong: 'a conductor has a joint at each end, and this list has {count}',
    todo: 'List the joint at the first end, splices, and the joint at the last end; type `unknown` for one that nobody has looked at.',
  },
  'coordinates-count': {
    wrong: 'a position is two or three figures, and here are {count}',
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
    wrong: 'this position hangs on more than {limit} others, one from the other: {circle}',
    todo: 'Give one of them coordinates.',
  },
  'inside-which': {
    wrong: '`inside` fits several buildings',
    todo: 'Type which one: {buildings}.',
  },
};

const points: Readonly<Record<string, ProblemWords>> = {
  'point-unreadable': {
    wrong: '`{text}` does not name a point',
    todo: 'Type a part, or a part and a place on it, such as `tower@45 ft`, `tower@base` or `rods.2`.',
  },
  'height-unknown': {
    wrong: 'after `@` a height is due',
    todo: 'Where the height is not known, leave the `@` and what follows it away.',
  },
  'mark-unknown': {
    wrong: '`@{text}` is no place on a part',
    todo: 'After `@` stands a height such as 45 ft, or one of: {marks}.',
  },
  'mark-not-here': {
    wrong: '`{id}` stands in `{section}` and has no `@{place}`',
    todo: 'Heights belong to supports, a distance along it to a wire, and `@tower` and `@anchor` to guys; else leave the `@` away.',
  },
  'corner-missing': {
    wrong: '`{id}` is a building, and one of its corners is due',
    todo: 'Add the corner, such as `{id}.ne` or `{id}.sw`.',
  },
  'member-none': {
    wrong: '`{id}` has no piece called `{member}`',
    todo: 'Type `{id}` alone.',
  },
  'member-unknown': {
    wrong: '`{id}` has no piece called `{member}`',
    todo: 'It has: {members}.',
  },
};

const figures: Readonly<Record<string, ProblemWords>> = {
  'unit-missing': {
    wrong: '`{text}` has no unit',
    todo: 'Add the unit, such as {example}. Units: {expected}.',
  },
  'units-not-said': {
    wrong: '`{text}` has no unit, and the file does not say which is meant',
    todo: 'Add the unit here, such as {example}, or type `units: ft` or `units: m` under `site:`.',
  },
  'unit-unknown': {
    wrong: '`{unit}` in `{text}` is no unit that is known here',
    todo: 'Units here: {expected}.',
  },
  'unit-of-other-kind': {
    wrong: '`{text}` is a figure of {kind}; here a figure of {wanted} is due',
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
    wrong: '`{text}` cannot be: this figure is more than zero',
    todo: 'Measure it, or type `unknown`.',
  },
  negative: {
    wrong: '`{text}` is below zero, which cannot be here',
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
};

const materials: Readonly<Record<string, ProblemWords>> = {
  'wire-unreadable': {
    wrong: '`{text}` cannot be read as a wire',
    todo: 'Type a size and a metal, such as {example}; or `unknown`.',
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
    todo: 'Soils are: {known}. A measured resistivity goes into `layers:`.',
  },
  'joint-kind-unknown': {
    wrong: '`{text}` is no kind of joint that is known here',
    todo: 'Kinds of joint are: {known}. Where none fits, type `other` or `unknown`.',
  },
};

const words: Readonly<Record<string, ProblemWords>> = {
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
    wrong: '`{text}` cannot be read here; expected is {expects}',
    todo: 'Type it in that form, or `unknown`.',
  },
};

const changes: Readonly<Record<string, ProblemWords>> = {
  'change-id-there': {
    wrong: '`{id}` is in the file already and was not added again',
    todo: 'Give the new part another name, or change the one that is there.',
  },
  'change-not-there': {
    wrong: '`{id}` has nothing here that could be changed or taken out',
    todo: 'Name a part and a field that the file has.',
  },
  'change-layout': {
    wrong: '`{id}` is laid out so that it cannot be edited without rewriting what stands beside it',
    todo: 'Type the change by hand, or put each part on a line of its own first.',
  },
  'change-reaches-further': {
    wrong:
      'changing `{id}` would change something else too, because its text is used in several places with `*`, or is read with what follows it',
    todo: 'Type the change by hand.',
  },
};

/** Key of a problem → its words. `{name}` is filled with a value of the problem. */
export const problemWords: Readonly<Record<string, ProblemWords>> = {
  ...wholeFile,
  ...syntax,
  ...names,
  ...shapes,
  ...points,
  ...figures,
  ...materials,
  ...words,
  ...changes,
};
