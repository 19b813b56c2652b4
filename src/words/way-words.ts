/** What the commands `path` and `without` say. `[idea]` is a term of the region, `{name}` a value (see say.ts). */
export const pathWords = {
  title: '{site}: from {from} to {to} through permanent metal',
  unnamed: 'Unnamed site',
  inState: ', state {state}',
  same: '{from} and {to} are one piece of metal: nothing lies between them that could fail apart from it.',
  span: '{part}: {from} to {to}',
  spanOf: '{part}, {wire}: {from} to {to}',
  contact: '{part}: contact of {from} with {to}',
  joint: '{part}, {kind}, on {on}',
  kindUnknown: 'kind of joint unknown',
  undescribed: '{part}: {from} to {to}, by something that nobody described',
  length: '{lengthM}',
  lengthUnknown: 'length unknown',
  resistance: '{resistanceOhm}',
  resistanceUnknown: 'resistance unknown',
  inductance: '{inductanceH}',
  inductanceUnknown: 'inductance unknown',
  bends: 'bends {bendsDeg} in all',
  rows: {
    length: 'Length',
    bends: 'Bends',
    resistance: 'DC resistance',
    inductance: 'Inductance, run straight',
    weakest: 'Least section',
    separate: 'Separate ways',
  },
  noBends: 'none typed',
  atLeastLength: 'at least {lengthM}; unknown: {list}',
  atLeastOhm: 'at least {resistanceOhm}; unknown: {list}',
  atLeastHenry: 'at least {inductanceH}; unknown: {list}',
  allUnknown: 'unknown',
  weakest: '{part}, {areaM2}',
  weakestWire: '{part}, {wire}, {areaM2}',
  weakestUnknown: 'no section of it is known',
  oneWay: 'one: somewhere on it there is no second way round',
  manyWays: '{count} that share no conductor and no joint; {strict} that share no part but the ends',
  byFeeder: 'It goes by the [protective conductor] of a feeder: a bond by the code, and no way for a strike.',
  noWay: 'No permanent metal joins {from} and {to}.',
  noWayKnown: 'No permanent metal is known to join {from} and {to}. Whether any does cannot be told; these decide:',
  untraced: '{part} goes on to where nobody has looked, so it may lead there: trace it',
  settle: 'Look {what}, and type it at `{path}`',
  with: 'Joined with {end}: {list}.',
  alone: 'Nothing else is joined with {end}.',
  noBonds: 'Cable shields, cords, the cases of radios, [guy]s, gaps and the soil are no bonds and do not count here.',
  caution:
    'Worked out from what somebody typed, the parts in soil and walls unseen; no inspection. A strike sees the inductance more than the resistance. Local code and the [authority] decide.',
  next: 'Next: evenground without {file} {part}',
  nextCheck: 'Next: evenground check {file}',
} as const;

/** What an instrument would read between two points; the lines and cords are lifted. */
export const dcWords = {
  rows: { between: 'All ways together, DC', earth: '{point} to [remote ground]' },
  range: '{resistanceOhm}, from all resistances at their least to all at their greatest',
  atLeast: 'at least {resistanceOhm}; nothing bounds it from above',
  likely: 'about {resistanceOhm}',
  shares: 'Of a direct current put in at {from}, by the likely figures: {list}.',
  sharesBetween: 'Of a direct current put in at {from} and taken out at {to}, by the likely figures: {list}.',
  sharesUnknown: 'Where a current put in at {from} goes depends on resistances that are not known.',
} as const;

/** Why a point that was asked about cannot be answered. */
export const pointTroubleWords = {
  unreadable:
    '{point}: this is no point of a site. Type a part, a joint, or a height with its unit: main-panel, c1:E1, tower@48 ft, tower@base, rods.2.',
  'no such': '{point}: nothing in {file} has this name.',
  near: 'Did you mean {near}?',
  names: 'Names are those of the parts in the file, and of joints such as c1:E1.',
  absent: '{point}: it is not there (present: no, or lost in this state), so no way leads to it.',
  'no metal': '{point}: nothing of it is permanent metal. Name what it ends on or stands on.',
  'above top': '{point}: this is above the top of {part}, which is {heightM} high.',
} as const;

/** What the command `without` says. */
export const withoutWords = {
  title: '{site}: without {list}',
  headings: {
    lost: 'LOST',
    groups: 'GROUPS',
    lines: 'LINES',
    notMet: 'NOT MET THEN',
    cannotTell: 'CANNOT TELL THEN',
  },
  losesService: 'Cut off from the [service]: {list}.',
  losesEarth: 'Cut off from every [electrode]: {list}.',
  electrodesLost: '[Electrode]s lost to the [service]: {list}.',
  perhapsHeld: 'Of these a tie that nobody is sure of perhaps still holds: {list}.',
  nothing: 'No other part loses the [service] or its last [electrode].',
  nothingEarth: 'No other part loses its last [electrode].',
  serviceUnknown: 'Where the [service] is was not said, so what is cut off from it cannot be told.',
  serviceNone: 'The station has no power service.',
  noticed: 'Would anybody notice that {at} is gone: {how}.',
  noticedHow: {
    visible: 'it can be seen',
    buried: 'no, it is in soil',
    'in a wall': 'no, it is in a wall',
    unknown: 'unknown',
  },
  count: '{before} before, {after} after.',
  split: 'The group of {group} falls into {count}:',
  piece: '{list}',
  resistance: '[Ground resistance] at the [service]: {beforeOhm} before, {afterOhm} after.',
  resistanceNone: '[Ground resistance] at the [service]: {beforeOhm} before; after it no [electrode] is left.',
  line: '{line}, {which}: {losses}',
  which: { shield: 'shield', core: 'core', protective: '[protective conductor]' },
  bondedAt: 'not bonded at {list} any more',
  protectedBy: 'not protected by {list} any more',
  drainedBy: 'not drained by {list} any more',
  unprotected: '{before} without a protector before, {after} after',
  unknownCount: 'unknown',
  serviceLost: 'The [service] itself is among what is lost, so conditions that ask for it cannot be told.',
  noneFails: 'No listed condition that was met fails by it.',
  caution:
    'Worked out from what somebody typed; no inspection, and no promise that damage cannot happen. Never take a part of this off to see: the open ends can be at a deadly voltage. Local code, the [authority] and a [electrician] decide.',
  next: 'Next: evenground check {file}',
} as const;

/** Why something that was said to fail cannot be answered. */
export const failTroubleWords = {
  'no such': '{part}: nothing in {file} has this name.',
  absent: '{part}: it is not there already (present: no, or lost in this state).',
  'not whole': '{part}: this is a place on a part or one of a group. Name the whole part, a joint or a conductor.',
} as const;
