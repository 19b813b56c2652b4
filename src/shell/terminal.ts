/** Widths and colour of a terminal; plain text anywhere else and with NO_COLOR. */
export interface Terminal {
  readonly width: number;
  readonly paint: (text: string, colour: Colour) => string;
}

export type Colour = 'red' | 'yellow' | 'cyan' | 'bold' | 'dim';

const codes: Readonly<Record<Colour, number>> = { red: 31, yellow: 33, cyan: 36, bold: 1, dim: 2 };

export function terminalOf(stream: NodeJS.WriteStream, noColor: string | undefined): Terminal {
  const coloured = stream.isTTY === true && (noColor === undefined || noColor === '');
  const width = Math.min(Math.max(stream.columns ?? 100, 40), 120);
  return { width, paint: (text, colour) => (coloured ? `\u001b[${codes[colour]}m${text}\u001b[0m` : text) };
}

/** Breaks a paragraph at spaces; each line begins with the indent, all but the first with `hang` more spaces. */
export function wrap(text: string, width: number, indent = 0, hang = 0): string {
  const lines: string[] = [];
  let line = ' '.repeat(indent);
  let empty = true;
  for (const word of text.split(/\s+/).filter(Boolean)) {
    if (!empty && line.length + 1 + word.length > width) {
      lines.push(line);
      line = ' '.repeat(indent + hang);
      empty = true;
    }
    line += empty ? word : ` ${word}`;
    empty = false;
  }
  return [...lines, line].join('\n');
}

/** Control characters and bidi marks of an owner's text must not steer the terminal. */
export function plain(text: string): string {
  // biome-ignore lint/suspicious/noControlCharactersInRegex: they are what is taken out
  return text.replace(/[\u0000-\u0008\u000b-\u001f\u007f-\u009f\u202a-\u202e\u2066-\u2069\u200e\u200f]/g, '\ufffd');
}
