import type { ProblemWords } from './problem-words.ts';

/** Names of parts, kinds, fields and points, and changes that are asked for by name. */
export const nameWords: Readonly<Record<string, ProblemWords>> = {
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
  'joint-unknown': {
    wrong: '`{id}` is no kind of joint, and no part under `joints:` has this name',
    todo: 'Kinds of joint are: {known}. A clamp with a name of its own is a part under `joints:`; where the kind is not known, type `unknown`.',
  },
  'end-itself': {
    wrong: '`{id}` cannot end on itself',
    todo: 'Name the part that its wire lands on; where nobody knows, type `unknown`.',
  },
  'building-unknown': {
    wrong: '`{id}`: no building has this name',
    todo: 'Type `inside` or `outside`, or add the line `  {id}: {}` below a line `buildings:`.',
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
    todo: 'The fields are: {keys}. What fits none of them goes into a `note:`.',
  },
  'key-line-end': {
    wrong: 'a line has no `{key}`: it passes its stops in order',
    todo: 'Type them as `path:`, from the antenna or the street to the box, such as `path: [dipole, a1, radio]`.',
  },
  'key-of-other-kind': {
    wrong: '`{key}` does not belong to the kind `{kind}`',
    todo: 'It belongs to: {kinds}. Is the kind right? Else put it into `note:`.',
  },
  'setting-unknown': {
    wrong: '`{key}` does not name a field that a state can set',
    todo: 'Type the part, a dot and one of its fields. The fields are: {keys}.',
  },
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
    wrong: '`{id}` has nothing that is called `{member}`',
    todo: 'It has: {members}.',
  },
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
