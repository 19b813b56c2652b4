import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readSite } from '../../src/site/read-site.ts';
import { correctedText } from '../../src/site/reading/slips/corrected-text.ts';
import { findSlips } from '../../src/site/reading/slips/find-slips.ts';
import { lexemesOf } from '../../src/site/reading/slips/lexemes.ts';

const keysOf = (text: string) => findSlips(text).slips.map((s) => s.key);
const correctedOf = (text: string) => findSlips(text).corrected.text;
const siteFiles = ['tests/cases', 'examples', 'tests/sites'].flatMap((folder) =>
  readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.site.yaml') && !/^(?:wrong|asked)/.test(name))
    .map((name) => join(folder, name)),
);

/** One field of a conductor in block style, and the same in braces. */
const block = (line: string) => `conductors:\n  c1:\n    from: unknown\n    ${line}\n    runs: open\n`;
const braces = (field: string) => `conductors:\n  c1: {from: unknown, ${field}, runs: open}\n  c2: {from: unknown}\n`;

describe('a `#` behind a key', () => {
  it.each([
    ['wire: #6 copper', 'wire: "#6 copper"'],
    ['wire:   #6 copper', 'wire:   "#6 copper"'],
    ['wire: # 6 AWG copper', 'wire: "# 6 AWG copper"'],
    ['note: #tag', 'note: "#tag"'],
    ['wire: #6 copper   # seen in May', 'wire: "#6 copper"   # seen in May'],
    ['note: #6" pipe', `note: '#6" pipe'`],
  ])('is a lost value: %s', (line, corrected) => {
    expect(keysOf(block(line))).toEqual(['value-in-comment']);
    expect(correctedOf(block(line))).toBe(block(corrected));
  });

  it.each(['wire:   # nobody looked', 'wire: # told by owner', 'wire: ## 6', 'wire: #', 'wire: unknown #6'])(
    'is a comment, or comes after a value: %s',
    (line) => {
      expect(keysOf(block(line)).filter((key) => key === 'value-in-comment')).toEqual([]);
    },
  );

  it('is a comment where the value stands on the lines below', () => {
    expect(keysOf('electrodes: #1 and #2\n  r1: {kind: rod}\n')).toEqual([]);
    expect(keysOf('lines:\n  l1:\n    path: #3 stops\n    - street\n    - unknown\n')).toEqual([]);
    expect(keysOf('electrodes:\n  #1 is north\n  r1: {kind: rod}\n')).toEqual([]);
  });

  it('is a comment on a line of its own', () => {
    expect(keysOf('# all of it\nelectrodes:\n  # north\n  r1: {kind: rod}\n#6 of them\n')).toEqual([]);
  });
});

describe('a `#` behind a value', () => {
  it.each([
    ['note: tower #2', 'note: "tower #2"', 'value-cut-by-comment'],
    ['enclosure: pipe #4   # seen', 'enclosure: "pipe #4"   # seen', 'value-cut-by-comment'],
    ['wire: 2 #6 copper', 'wire: "#6 copper"', 'wires-cut-by-comment'],
    ['service_wire: 2 #6 copper', 'service_wire: "#6 copper"', 'wires-cut-by-comment'],
    ['note: 2 #6 copper', 'note: "2 #6 copper"', 'value-cut-by-comment'],
    ['note: no "one" #2', `note: 'no "one" #2'`, 'value-cut-by-comment'],
  ])('cuts it short: %s', (line, corrected, key) => {
    expect(keysOf(block(line))).toEqual([key]);
    expect(correctedOf(block(line))).toBe(block(corrected));
  });

  it.each([
    'length: 8 ft   # told by owner',
    'length: 8 ft # told by owner',
    'length: 8 ft #told by owner',
    'length: 8 ft  #2 of them',
    'wire: "#6 copper" #2 of them',
    'joints: [bolted lug, solder] #2 is loose',
    'note: tower#2',
    'note: "tower #2"',
    "note: 'tower #2'",
  ])('is a comment: %s', (line) => {
    expect(keysOf(block(line))).toEqual([]);
  });

  it('inside braces ends at the next comma or brace', () => {
    expect(correctedOf(braces('wire: #6 copper, length: 5 ft'))).toBe(braces('wire: "#6 copper", length: 5 ft'));
    expect(correctedOf(braces('note: wire #6, length: 5 ft'))).toBe(braces('note: "wire #6", length: 5 ft'));
    expect(correctedOf('a: [one, #2 rod, three]\nb: c\n')).toBe('a: [one, "#2 rod", three]\nb: c\n');
  });

  it('is no comment inside lines of text', () => {
    expect(keysOf('site:\n  note: |\n    tower #2\n    key: #6\n  name: x\n')).toEqual([]);
  });
});

describe('what else is recognised', () => {
  it.each([
    ['length: 2,5 m', 'length: 2.5 m', 'decimal-comma-in-braces'],
    ['resistance: 1,500 ohm', 'resistance: 1500 ohm', 'thousands-in-braces'],
    ['note: loose, seen in May', 'note: "loose, seen in May"', 'comma-in-braces'],
    ['note: loose, seen, in May', 'note: "loose, seen, in May"', 'comma-in-braces'],
    ['path: beam, a1, radio', 'path: [beam, a1, radio]', 'list-in-braces'],
    ['joints: bolted lug, rod clamp', 'joints: [bolted lug, rod clamp]', 'list-in-braces'],
    ['lengths: 2,5 m', 'lengths: 2.5 m', 'decimal-comma-in-braces'],
    ['note: loose, buried', 'note: loose, buried: unknown', 'field-without-value'],
    ['resistance: > 1000 ohm', 'resistance: "> 1000 ohm"', 'mark-starts-value'],
    ['resistance: >1000 ohm', 'resistance: ">1000 ohm"', 'mark-starts-value'],
    ['note: @home', 'note: "@home"', 'mark-starts-value'],
    ['length: ?', 'length: unknown', 'mark-for-unknown'],
    ['length: *', 'length: unknown', 'mark-for-unknown'],
    ['length: -', 'length: unknown', 'mark-for-unknown'],
    ['lengths: [5 ft, ?]', 'lengths: [5 ft, unknown]', 'mark-for-unknown'],
    ['note: seen: loose', 'note: "seen: loose"', 'colon-in-value'],
    ['length:8 ft', 'length: 8 ft', 'colon-without-space'],
    ['note: loose length: 8 ft', 'note: loose, length: 8 ft', 'comma-missing'],
    ['note: "12" pipe"', `note: '12" pipe'`, 'text-after-quote'],
  ])('in braces: %s', (field, corrected, key) => {
    expect(keysOf(braces(field))).toEqual([key]);
    expect(correctedOf(braces(field))).toBe(braces(corrected));
  });

  it.each([
    ['resistance: > 1000 ohm', 'resistance: "> 1000 ohm"', 'mark-starts-value'],
    ['resistance: >5', 'resistance: ">5"', 'mark-starts-value'],
    ['note: |here', 'note: "|here"', 'mark-starts-value'],
    ['length: ?', 'length: unknown', 'mark-for-unknown'],
    ['length: ??', 'length: unknown', 'mark-for-unknown'],
    ['length: *   # nobody', 'length: unknown   # nobody', 'mark-for-unknown'],
    ['length: -', 'length: unknown', 'mark-for-unknown'],
    ['note: seen: loose', 'note: "seen: loose"', 'colon-in-value'],
    ['note: seen: loose  # in May', 'note: "seen: loose"  # in May', 'colon-in-value'],
    ['length:8 ft', 'length: 8 ft', 'colon-without-space'],
    ['length 8 ft', 'length: 8 ft', 'colon-missing'],
    ['length = 8 ft', 'length: 8 ft', 'colon-missing'],
    ['note: "loose', 'note: "loose"', 'quote-not-closed'],
    ["note: 'it's loose'", 'note: "it\'s loose"', 'text-after-quote'],
    ['passes: - one', 'passes: [one]', 'dash-on-line'],
  ])('on a line of its own: %s', (line, corrected, key) => {
    expect(keysOf(block(line))).toEqual([key]);
    expect(correctedOf(block(line))).toBe(block(corrected));
  });

  it('leaves alone what YAML takes as it was meant', () => {
    const fine = [
      'length: 8 ft',
      'length: 8\' 6"',
      'wire: "#6 copper"',
      'open: ["line1:radio", line1:radio]',
      'at: [2,5]',
      'lengths: [2,5 m]',
      'note: see http://here, at 10:30, c1:E1',
      'note: a - b * c ? d > e',
      'note: >-',
      'bends: [{angle: 90 deg, radius: 3 in}, 45 deg]',
      'wire: ~',
    ];
    for (const line of fine) expect(keysOf(block(line)), line).toEqual([]);
  });

  it('keeps a label that is repeated, and takes one that is not for text', () => {
    expect(keysOf('a: {note: &x loose}\nb: {note: *x}\n')).toEqual([]);
    expect(correctedOf('a: {note: &co}\nb: {note: x}\n')).toBe('a: {note: "&co"}\nb: {note: x}\n');
  });

  it('finds one slip behind another', () => {
    const text = 'conductors:\n  c1: {wire: #6 copper, note: seen: loose, length:5 ft\n  c2: {from: unknown}\n';
    expect(correctedOf(text)).toBe(
      'conductors:\n  c1: {wire: "#6 copper", note: "seen: loose", length: 5 ft}\n  c2: {from: unknown}\n',
    );
  });

  it('turns tabs into spaces, all of them as one slip', () => {
    expect(keysOf('site:\n\tname: x\n\tregion: us\n')).toEqual(['tab-indentation']);
    expect(correctedOf('site:\n\tname: x\n\tregion: us\n')).toBe('site:\n  name: x\n  region: us\n');
    expect(keysOf('site:\n  name:\tx\n')).toEqual([]);
  });

  it('never takes a value that a comment swallowed for unknown', () => {
    for (const line of ['wire: #6 copper', 'wire: # 6 copper', 'wire: 2 #6 copper']) {
      expect(readSite(block(line), 'x').site, line).toBeNull();
    }
    expect(readSite(block('wire:   # nobody looked'), 'x').site?.conductors[0]?.wire).toBeNull();
  });
});

describe('any text', () => {
  it('is one of many', () => {
    expect(siteFiles.length).toBeGreaterThan(100);
    expect(siteFiles).toContain('tests/sites/longer.site.yaml');
  });

  it.each(siteFiles)('%s has no slip, and is read', (file) => {
    const text = readFileSync(file, 'utf8');
    expect(findSlips(text).slips).toEqual([]);
    expect(readSite(text, file).problems).toEqual([]);
  });

  const texts = siteFiles.map((file) => readFileSync(file, 'utf8'));
  const pieces = fc.constantFrom(
    '#',
    ' #2',
    ': ',
    ':',
    ',',
    '{',
    '}',
    '[',
    ']',
    '"',
    "'",
    '\n',
    '- ',
    '? ',
    '*',
    '\t',
    '>',
  );
  const spoilt = fc
    .tuple(fc.constantFrom(...texts), fc.array(fc.tuple(fc.nat(), pieces), { minLength: 1, maxLength: 4 }))
    .map(([text, marks]) => marks.reduce((t, [at, mark]) => insert(t, at % (t.length + 1), mark), text));

  it('is taken into pieces that together are the text', () => {
    fc.assert(
      fc.property(spoilt, (text) => {
        const lexemes = lexemesOf(text);
        const joined = lexemes.filter((l) => l.end > l.start).map((l) => l.text);
        expect(joined.join('')).toBe(text);
      }),
      { numRuns: 150 },
    );
  });

  it('keeps its lines when slips are mended, and every slip lies in it', () => {
    fc.assert(
      fc.property(spoilt, (text) => {
        const { slips, corrected } = findSlips(text);
        expect(corrected.text.split('\n').length).toBe(text.split('\n').length);
        for (const { at } of slips) expect(at.start >= 0 && at.end <= text.length && at.start <= at.end).toBe(true);
      }),
      { numRuns: 150 },
    );
  });
});

function insert(text: string, at: number, mark: string): string {
  return text.slice(0, at) + mark + text.slice(at);
}

describe('a corrected text', () => {
  const edits = [
    { start: 2, end: 2, text: '"' },
    { start: 5, end: 7, text: 'xyz' },
    { start: 8, end: 9, text: '' },
  ];
  const { text, originalOf } = correctedText('0123456789', edits);

  it('has the edits made', () => {
    expect(text).toBe('01"234xyz79');
  });

  it('leads back to the places before', () => {
    const offsets = Array.from({ length: text.length + 1 }, (_, i) => originalOf(i));
    expect(offsets).toEqual([0, 1, 2, 2, 3, 4, 5, 5, 5, 7, 9, 10]);
  });
});
