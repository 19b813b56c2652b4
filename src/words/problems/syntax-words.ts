import type { ProblemWords } from './problem-words.ts';

/** What cannot be read at all, and limits of the whole file. */
export const syntaxWords: Readonly<Record<string, ProblemWords>> = {
  'file-too-large': {
    wrong: 'the file has {bytes} bytes; at most {limitMiB} MiB are read',
    todo: 'Is this the right file? A site of ten thousand parts is about 1 MiB.',
  },
  'too-many-values': {
    wrong: 'the file holds more than {limit} values',
    todo: 'Is this the right file? Split a site that is really so large into several files.',
  },
  'too-many-parts': {
    wrong: 'the file holds {count} parts; at most {limit} are read',
    todo: 'Type parts that are all alike once, with `count:`, or split the site into several files.',
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
    todo: 'The sections are: {sections}. A part of one is indented below it.',
  },
  'yaml-ends-early': {
    wrong: 'the file ends in the middle of something',
    todo: 'Look for a bracket `[`, a brace `{` or a quote that is opened and never closed.',
  },
  'yaml-escape': {
    wrong: 'a backslash in double quotes starts something unreadable: `{text}`',
    todo: 'Put the text in single quotes, where a backslash is only a backslash.',
  },
  'yaml-indent': {
    wrong: 'the indent of this line fits nothing above it: `{text}`',
    todo: 'Sections start at the left margin, the parts of one in the same column below it, and the fields of a part in one column further in.',
  },
  'yaml-key-long': {
    wrong: 'a name here is longer than 1024 characters',
    todo: 'Look for a colon in the middle of a long text; put the whole text in quotes.',
  },
  'yaml-missing': {
    wrong: 'a closing bracket, brace, quote, comma or colon is missing at or before this place: `{text}`',
    todo: 'Check that everything opened on this line and on the line above is closed, and that every name has its colon and a space.',
  },
  'yaml-reserved': {
    wrong: 'a mark that means something else starts this text: `{text}`',
    todo: 'Put a value in quotes; the name of a part or field has no such mark.',
  },
  'yaml-tag': {
    wrong: 'a word with `!` starts a value here: `{text}`',
    todo: 'Take the word with the `!` away, or put the value in quotes.',
  },
  'yaml-two-documents': {
    wrong: 'a second file begins here, after a line of `---` or `...`',
    todo: 'Delete that line, or keep the second site in a file of its own.',
  },
  'yaml-unreadable': {
    wrong: 'this place cannot be read: `{text}`',
    todo: 'Look for a bracket, brace, quote or comma too many or too few on this line; put odd text in quotes.',
  },
  'key-twice': {
    wrong: '`{key}` stands twice here, first on line {firstLine}',
    todo: 'Keep one of the two; where both are parts, give one another name.',
  },
  'section-twice': {
    wrong: '`{key}` stands twice here, first on line {firstLine}',
    todo: 'Move what stands below this line to the end of what stands below the first, and delete this line.',
  },
  'key-not-text': {
    wrong: 'a plain name is due before this colon',
    todo: 'Type a name, a colon, a space and the value; a list or a group cannot be a name.',
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
