import type { Chance } from './chance.ts';

const pieces = [
  '\t',
  '\r',
  '\n',
  '\u0000',
  '\uFEFF',
  '\u0085',
  '\u2028',
  ' ',
  '  ',
  ':',
  ': ',
  '- ',
  ',',
  '{',
  '}',
  '[',
  ']',
  '"',
  "'",
  '#',
  ' # ',
  '&a ',
  '*a',
  '!x ',
  '|\n',
  '>-\n',
  '%YAML 1.1\n',
  '---\n',
  '...\n',
  '? ',
  '<<: *a',
  '@',
  '`',
  '\\',
  '~',
  '1e999',
  'unknown',
  '🗼',
  'é',
];

type TextMutation = (text: string, by: Chance) => string;

const lineWise =
  (change: (lines: string[], at: number, by: Chance) => void): TextMutation =>
  (text, by) => {
    const lines = text.split('\n');
    change(lines, by.below(lines.length), by);
    return lines.join('\n');
  };

const mutations: readonly TextMutation[] = [
  lineWise((lines, at) => lines.splice(at, 1)),
  lineWise((lines, at) => lines.splice(at, 0, lines[at]!)),
  lineWise((lines, at, by) => lines.splice(by.below(lines.length), 0, ...lines.splice(at, 1))),
  lineWise((lines, at, by) =>
    lines.splice(at, 1, `${by.pick(['', ' ', '   ', '\t', '        '])}${lines[at]!.trimStart()}`),
  ),
  lineWise((lines, at) => lines.splice(at, 1, `${lines[at]}${lines.splice(at + 1, 1)[0] ?? ''}`)),
  (text, by) => {
    const at = by.below(text.length + 1);
    return text.slice(0, at) + by.pick(pieces) + text.slice(at);
  },
  (text, by) => {
    const at = by.below(text.length + 1);
    return text.slice(0, at) + text.slice(at + 1 + by.below(12));
  },
  (text, by) => text.slice(0, by.below(text.length + 1)),
  (text, by) => {
    const marks = [...text.matchAll(/[:,{}[\]'"#-]/g)];
    const { index = 0 } = marks.length === 0 ? {} : by.pick(marks);
    return text.slice(0, index) + by.pick(pieces) + text.slice(index + 1);
  },
  (text, by) => text.replaceAll('\n', by.pick(['\r\n', '\r', '\n\n'])),
];

/** The bytes of a text with a few slips, at times with a byte changed to any other. */
export function mutateText(text: string, by: Chance): Uint8Array {
  let mutated = text;
  for (let i = 1 + by.below(3); i > 0; i--) mutated = by.pick(mutations)(mutated, by);
  const bytes = new TextEncoder().encode(mutated);
  if (by.often(0.1) && bytes.length > 0) bytes[by.below(bytes.length)] = by.below(256);
  return bytes;
}
