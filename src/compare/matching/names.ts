import { idPattern, type NamedThing } from './named-things.ts';
import { plainWords } from './plain-words.ts';

/** Reads ids and points of before as after calls them. */
export interface Names {
  /** `tower@45 ft`, `c1:E1`; what is gone keeps its id with a mark that no id of after has. */
  readonly toAfter: (text: string) => string;
  readonly isBefore: (id: string) => boolean;
  readonly isAfter: (id: string) => boolean;
  /** Whether an id of after is something that was there before, by whatever name. */
  readonly isKept: (id: string) => boolean;
  /** Whether two of the owner's texts say the same, names of things apart. */
  readonly saysSame: (before: string, after: string) => boolean;
}

/** Longer texts are cut in a study. */
const cutAt = 400;

/** What is known by which name on each side, and which is which. */
interface Known {
  readonly pairs: readonly { readonly before: string; readonly after: string }[];
  readonly before: ReadonlyMap<string, NamedThing>;
  readonly after: ReadonlyMap<string, NamedThing>;
}

/** `points`: what stands for a point that is called otherwise, such as the end of a wire that was cut. */
export function namesOf(things: Known, points: ReadonlyMap<string, string> = new Map()): Names {
  const renamed = new Map(things.pairs.map((p) => [p.before, p.after]));
  const kept = new Set(renamed.values());
  const word = (id: string): string => renamed.get(id) ?? (things.before.has(id) ? `${id}\u0000` : id);
  const toAfter = (text: string) =>
    points.get(text) ??
    text.replace(idPattern, (id, at: number) => (at > 0 && '@.'.includes(text[at - 1]!) ? id : word(id)));
  const isSameWord = (x: string, y: string) =>
    word(x) === y || (x === y && !(things.before.has(x) && things.after.has(y)));
  return {
    toAfter,
    isBefore: (id) => things.before.has(id),
    isAfter: (id) => things.after.has(id),
    isKept: (id) => kept.has(id),
    saysSame: (before, after) => saysSame(before, after, isSameWord),
  };
}

function saysSame(before: string, after: string, isSameWord: (x: string, y: string) => boolean): boolean {
  const [b, a] = [plainWords(before), plainWords(after)];
  const isCut = before.length === cutAt || after.length === cutAt;
  if (!isCut && b.length !== a.length) return false;
  const length = isCut ? Math.min(b.length, a.length) - 1 : b.length;
  return b.slice(0, length).every((piece, i) => isSameWord(piece, a[i]!));
}
