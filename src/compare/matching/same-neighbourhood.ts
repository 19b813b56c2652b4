import { type Matches, match } from './matches.ts';
import type { ThingGraph } from './thing-graph.ts';

/** How far round a thing its neighbourhood is looked at. */
const mostRounds = 8;

interface Alike {
  readonly before: readonly number[];
  readonly after: readonly number[];
}

/**
 * Matches what looks the same with all that hangs on it, farther and farther round: colours of things are refined by the
 * colours of what they name and what names them (what is matched already has a colour of its own). Those alone in their
 * colour on both sides are the same. Where several are alike to the last, the first of both are taken as one and the rest
 * is looked at anew, so that twins keep what belongs to them. `noted`: what was noted about them has to be the same too.
 */
export function matchSameNeighbourhood(before: ThingGraph, after: ThingGraph, matches: Matches, noted: boolean): void {
  for (;;) {
    if (isAllMatched(before, matches.toAfter) || isAllMatched(after, matches.toBefore)) return;
    const farthestFirst = colourRounds(before, after, matches, noted).reverse();
    if (farthestFirst.some((classes) => matchAlone(classes, matches))) continue;
    const twins = firstTwins(farthestFirst[0] ?? [], before, after);
    if (twins === null) return;
    match(matches, twins.before, twins.after);
  }
}

const isAllMatched = (graph: ThingGraph, matched: ReadonlyMap<number, number>) => matched.size === graph.things.length;

function matchAlone(classes: readonly Alike[], matches: Matches): boolean {
  const alone = classes.filter((c) => c.before.length === 1 && c.after.length === 1);
  for (const { before, after } of alone) match(matches, before[0]!, after[0]!);
  return alone.length > 0;
}

/** Of classes with as many on both sides the one whose first ids come first; the same when the sides change places. */
function firstTwins(classes: readonly Alike[], before: ThingGraph, after: ThingGraph) {
  const least = (graph: ThingGraph, all: readonly number[]) =>
    all.reduce((a, b) => (graph.things[b]!.id < graph.things[a]!.id ? b : a));
  const candidates = classes
    .filter((c) => c.before.length > 1 && c.before.length === c.after.length)
    .map((c) => {
      const [b, a] = [least(before, c.before), least(after, c.after)];
      const key = JSON.stringify([before.things[b]!.id, after.things[a]!.id].sort());
      return { before: b, after: a, key };
    });
  return candidates.length === 0 ? null : candidates.reduce((x, y) => (y.key < x.key ? y : x));
}

/** Classes of what is not matched, after each round of looking farther; the last round tells most apart. */
function colourRounds(before: ThingGraph, after: ThingGraph, matches: Matches, noted: boolean): Alike[][] {
  let [b, a] = firstColours(before, after, matches, noted);
  const rounds: Alike[][] = [];
  for (let count = 0, round = 0; round < mostRounds; round += 1) {
    const names = new Map<string, number>();
    [b, a] = [refined(before, b, names), refined(after, a, names)];
    rounds.push(classesOf(b, a, matches));
    if (names.size === count) break;
    count = names.size;
  }
  return rounds;
}

/** By what is said of each; what is matched has a colour that only its match has. */
function firstColours(
  before: ThingGraph,
  after: ThingGraph,
  { toAfter, toBefore }: Matches,
  noted: boolean,
): [number[], number[]] {
  const names = new Map<string, number>();
  const own = ({ things }: ThingGraph, i: number) => {
    const { section, kind, placesM, says, note } = things[i]!;
    const place = placesM.map((p) => p.map((x) => Math.round(x * 100)));
    return JSON.stringify([
      section,
      kind,
      place,
      noted ? note : '',
      Object.entries(says).sort(([x], [y]) => (x < y ? -1 : 1)),
    ]);
  };
  return [
    before.things.map((_, i) => numbered(names, toAfter.has(i) ? `pair ${i}` : own(before, i))),
    after.things.map((_, i) => numbered(names, toBefore.has(i) ? `pair ${toBefore.get(i)}` : own(after, i))),
  ];
}

function refined({ ties }: ThingGraph, colours: readonly number[], names: Map<string, number>): number[] {
  return colours.map((colour, i) => {
    const around = ties[i]!.map(({ role, to }) => `${role} ${colours[to]}`).sort();
    return numbered(names, `${colour}|${around.join('|')}`);
  });
}

function numbered(names: Map<string, number>, name: string): number {
  const known = names.get(name);
  if (known !== undefined) return known;
  names.set(name, names.size);
  return names.size - 1;
}

function classesOf(b: readonly number[], a: readonly number[], { toAfter, toBefore }: Matches): Alike[] {
  const classes = new Map<number, { before: number[]; after: number[] }>();
  const classOf = (colour: number) => {
    const known = classes.get(colour) ?? { before: [], after: [] };
    classes.set(colour, known);
    return known;
  };
  b.forEach((colour, i) => {
    if (!toAfter.has(i)) classOf(colour).before.push(i);
  });
  a.forEach((colour, i) => {
    if (!toBefore.has(i)) classOf(colour).after.push(i);
  });
  return [...classes.values()].filter((c) => c.before.length > 0 && c.after.length > 0);
}
