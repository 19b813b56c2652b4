import type { Sentence } from './say-path.ts';
import { plain, type Terminal, wrap } from './terminal.ts';

/** What the blocks of a page of the terminal are written with. */
export interface TerminalPage {
  readonly terminal: Terminal;
  readonly sentence: Sentence;
}

/** A heading over its lines; '' where there is nothing to say. */
export function headed({ terminal, sentence }: TerminalPage, heading: string, lines: readonly string[]): string {
  if (lines.length === 0) return '';
  return [terminal.paint(sentence(heading).toUpperCase(), 'bold'), ...lines].join('\n');
}

export function bullet(page: TerminalPage, text: string): string {
  return paragraph(page, `- ${text}`, 2, 2);
}

/** Lines no wider than the terminal; a figure and its unit stay together. */
export function paragraph({ terminal }: TerminalPage, text: string, indent = 0, hang = 0): string {
  return wrap(tied(plain(text)), terminal.width, indent, hang).replaceAll(tie, ' ');
}

function tied(text: string): string {
  return text.replace(
    /(\d) (%|(?:ohm|ft|in|mm|m|km|[kM]?V|[kM]?A|kA\/µs|[nµm]?s|[kM]?J|kJ\/ohm|MJ\/ohm|C|K|°F)(?![\p{L}\d]))/gu,
    `$1${tie}$2`,
  );
}
/** Stands for a space that is no place to break; no text has it, see `plain`. */
const tie = '\u0001';
