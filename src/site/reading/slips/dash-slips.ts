import {
  beforeOnLine,
  type Edit,
  endsAfter,
  lineEnd,
  lineStart,
  type Slip,
  type Source,
  slip,
  slipsAt,
  withoutComment,
} from './slip.ts';

/** `path: - street`: a list with dashes starts on the line below its name. */
export function dashSlips(source: Source): readonly Slip[] {
  return slipsAt(source, ({ kind, inside, start }, i) => {
    const previous = beforeOnLine(source, i);
    const isInLine = previous !== null && source.lexemes[previous]!.kind === 'colon';
    if (kind !== 'dash' || inside !== null || !isInLine || endsAfter(source, i)) return [];
    return [dashSlip(source.text, start)];
  });
}

/** The dashes become brackets and commas, so that every line keeps its place. */
function dashSlip(text: string, start: number): Slip {
  const dashes = [start, ...dashesBelow(text, start)];
  const items = dashes.map((dash) => withoutComment(text.slice(dash + 1, lineEnd(text, dash))));
  const edits = dashes.map(
    (dash, j): Edit => ({ start: dash, end: itemStart(text, dash), text: j === 0 ? '[' : ', ' }),
  );
  const end = dashes[dashes.length - 1]! + 1 + items[items.length - 1]!.length;
  const list = `[${items.map((item) => item.trim()).join(', ')}]`;
  return slip('dash-on-line', { start, end: start + 1 }, { list }, [...edits, { start: end, end, text: ']' }]);
}

function itemStart(text: string, dash: number): number {
  return dash + 1 + /^ */.exec(text.slice(dash + 1, lineEnd(text, dash)))![0].length;
}

/** The dashes of the lines that follow, as long as each has one in the same column. */
function dashesBelow(text: string, start: number): readonly number[] {
  const column = start - lineStart(text, start);
  const found: number[] = [];
  let line = text.indexOf('\n', start) + 1;
  while (line > 0 && text.startsWith(`${' '.repeat(column)}- `, line)) {
    found.push(line + column);
    line = text.indexOf('\n', line) + 1;
  }
  return found;
}
