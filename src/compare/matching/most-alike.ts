import { type Matches, match } from './matches.ts';
import type { NamedThing } from './named-things.ts';
import type { ThingGraph } from './thing-graph.ts';

interface Candidate {
  readonly before: number;
  readonly after: number;
  readonly score: number;
  /** Both ids in order: decides between equals, whichever side is called before. */
  readonly key: string;
}

/** Closer than this is the same place, and this far away is somewhere near it, in metres: a tape and a sketch. */
const samePlaceM = 0.05;
const nearM = 1;
/** What is about as much alike as the best is matched in one go; after that all is looked at anew. */
const sameScore = 0.1;
/** Share of fields that say the same from which two near each other are one. */
const sameSaid = 0.5;
/** Share of ties in common from which things hang on the same. */
const sameTies = 0.5;

/**
 * Matches what was changed as well as renamed: of one section and kind, at the same place or tied to the same things; the
 * most alike first, and again while a match makes others plain. A conductor and a line keep both their ends, else they are
 * others; of one kind on one line there is one.
 */
export function matchMostAlike(before: ThingGraph, after: ThingGraph, matches: Matches): void {
  for (;;) {
    const [best, ...others] = candidates(before, after, matches);
    if (best === undefined) return;
    for (const c of [best, ...others]) {
      if (c.score < best.score - sameScore) break;
      if (!matches.toAfter.has(c.before) && !matches.toBefore.has(c.after)) match(matches, c.before, c.after);
    }
  }
}

function candidates(before: ThingGraph, after: ThingGraph, matches: Matches): readonly Candidate[] {
  const free = after.things.flatMap((_, a) => (matches.toBefore.has(a) ? [] : [a]));
  const found = before.things.flatMap((one, b) => {
    if (matches.toAfter.has(b)) return [];
    return free.flatMap((a) => {
      const other = after.things[a]!;
      if (one.section !== other.section || one.kind !== other.kind) return [];
      const score = likeness(before, b, after, a, matches);
      return score === null ? [] : [{ before: b, after: a, score, key: JSON.stringify([one.id, other.id].sort()) }];
    });
  });
  return found.sort((x, y) => y.score - x.score || (x.key < y.key ? -1 : 1));
}

/** How much alike two things are; null: nothing says that they are one. */
function likeness(before: ThingGraph, b: number, after: ThingGraph, a: number, matches: Matches): number | null {
  const [one, other] = [before.things[b]!, after.things[a]!];
  const ties = tiesShared(before, b, after, a, matches);
  const said = saidAlike(one.says, other.says);
  if (one.ends.length > 0) return haveSameEnds(before, one, after, other, matches) ? 3 + ties.share + said : null;
  const place = placeScore(one.placesM, other.placesM);
  const isThere = place >= 2 || (place > 0 && said >= sameSaid);
  if (!isThere && ties.share < sameTies && !ties.onOneLine) return null;
  return place + 2 * ties.share + said;
}

function placeScore(one: NamedThing['placesM'], other: NamedThing['placesM']): number {
  if (one.length === 0 || other.length === 0) return 0;
  if (one.length !== other.length) return -2;
  const apartM = Math.max(...one.map((p, i) => Math.hypot(...p.map((x, k) => x - other[i]![k]!))));
  if (apartM <= samePlaceM) return 2;
  return apartM <= nearM ? 0.5 : -2;
}

/** Share of the things tied to either that are tied to both in the same way, and whether one line passes both. */
function tiesShared(before: ThingGraph, b: number, after: ThingGraph, a: number, { toAfter }: Matches) {
  const mine = before.ties[b]!.map(({ role, to }) => ({ role: roleOf(role), to: toAfter.get(to) ?? -1 - to }));
  const left = after.ties[a]!.map(({ role, to }) => ({ role: roleOf(role), to }));
  const all = mine.length + left.length;
  const common = mine.filter((tie) => {
    const at = left.findIndex((other) => other.role === tie.role && other.to === tie.to);
    if (at >= 0) left.splice(at, 1);
    return at >= 0;
  });
  const count = all - common.length;
  return {
    share: count === 0 ? 0 : common.length / count,
    onOneLine: common.some(({ role }) => role === 'by path'),
  };
}

/** A wire read from its other end is the same wire. */
const roleOf = (role: string) => role.replace(/^(by )?(?:from|to)\b/, '$1end');

/** Whichever of its ends is told first. */
function haveSameEnds(
  before: ThingGraph,
  one: NamedThing,
  after: ThingGraph,
  other: NamedThing,
  { toAfter }: Matches,
): boolean {
  const mine = one.ends.map((end) => {
    const at = before.numberOf.get(end);
    const then = at === undefined ? undefined : toAfter.get(at);
    if (at === undefined) return end;
    return then === undefined ? `gone ${end}` : after.things[then]!.id;
  });
  return JSON.stringify([...mine].sort()) === JSON.stringify([...other.ends].sort());
}

/** Share of the fields of either that say the same in both. */
function saidAlike(one: Readonly<Record<string, string>>, other: Readonly<Record<string, string>>): number {
  const fields = new Set([...Object.keys(one), ...Object.keys(other)]);
  if (fields.size === 0) return 0;
  return [...fields].filter((f) => one[f] === other[f]).length / fields.size;
}
