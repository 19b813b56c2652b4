import { below, refuse, type Spot } from './report.ts';
import type { MapNode } from './tree.ts';

/** Bytes of a site file. A site of ten thousand parts is about 1 MiB. */
export const siteFileLimit = 4 * 1024 * 1024;
export const partLimit = 10_000;
/** Levels of lists and groups inside one another; the format itself needs eight. */
export const depthLimit = 40;
/** Commas, colons, brackets, anchors and line ends: the values of ten thousand parts are about 200 000. */
export const markLimit = 400_000;
/** Values that aliases add by repeating what an anchor holds. */
export const aliasLimit = 10_000;

const indentLimit = 400;

/** Notes a limit that the text breaks before anything else looks at it; true where it may be read. */
export function withinLimits(text: string, spot: Spot): boolean {
  if (text.length > siteFileLimit) {
    refuse(spot, { start: 0, end: 0 }, 'file-too-large', { limitMiB: 4, bytes: text.length });
    return false;
  }
  const marks = countMarks(text);
  if (marks > markLimit) {
    refuse(spot, { start: 0, end: 0 }, 'too-many-values', { limit: markLimit });
    return false;
  }
  const deep = tooDeepAt(text);
  if (deep !== null) refuse(spot, { start: deep, end: deep }, 'too-deep', { limit: depthLimit });
  return deep === null;
}

/** Notes the part that is one too many; true where all may be read. Places, states and readings count too. */
export function withinParts(root: MapNode, spot: Spot): boolean {
  const held = root.entries.filter(({ key }) => key !== 'site' && key !== 'soil' && key !== 'prices');
  const parts = held.flatMap(({ key, value }) =>
    value.is === 'map' ? value.entries.map((part) => ({ part, path: below(spot, key) })) : [],
  );
  const extra = parts[partLimit];
  if (extra === undefined) return true;
  const values = { limit: partLimit, count: parts.length };
  refuse(below(extra.path, extra.part.key), extra.part.keyAt, 'too-many-parts', values);
  return false;
}

function countMarks(text: string): number {
  let marks = 0;
  for (let at = 0; at < text.length; at++) if (isMark(text.charCodeAt(at))) marks++;
  return marks;
}

const markCodes = new Set([...'\n\r,:[]{}&*!?%'].map((mark) => mark.charCodeAt(0)));

function isMark(code: number): boolean {
  return markCodes.has(code);
}

/**
 * Where brackets, or marks of list items on one line, or indents go deeper than any site file does; null: nowhere. A
 * bracket counts where it can open or close a list or group: not in the middle of a word, and not in quotes or comments.
 */
function tooDeepAt(text: string): number | null {
  const compact = new RegExp(`^[ \\t]*(?:[-?:][ \\t]+){${depthLimit},}`, 'm').exec(text);
  if (compact !== null) return compact.index;
  const indented = new RegExp(`^[ \\t]{${indentLimit},}[^ \\t\\r\\n#]`, 'm').exec(text);
  if (indented !== null) return indented.index;
  return bracketsTooDeepAt(text);
}

const opening = /(?:^|[\s[{,:-])(?=[[{])/y;

function bracketsTooDeepAt(text: string): number | null {
  let depth = 0;
  for (let at = 0; at < text.length; at++) {
    const mark = text[at];
    if (mark === ']' || mark === '}') depth = Math.max(0, depth - 1);
    if (mark !== '[' && mark !== '{') continue;
    opening.lastIndex = Math.max(0, at - 1);
    if (at > 0 && !opening.test(text)) continue;
    depth++;
    if (depth > depthLimit) return at;
  }
  return null;
}
