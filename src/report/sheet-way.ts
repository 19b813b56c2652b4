import type { SheetFacts } from '../rework/sheet/sheet-facts.ts';
import type { WorkRun } from '../rework/work.ts';
import { sheetWords } from '../words/sheet-words.ts';
import { partName, partNames, sayIn } from './page-context.ts';
import { tape, type WorksContext } from './works-context.ts';

const words = sheetWords.way;

/** How each new conductor runs, leg by leg as one would pace it; those without places in one line, that nobody knows. */
export function wayLines(page: WorksContext, facts: SheetFacts): readonly string[] {
  const ways = facts.conductors.map((c) => ({ c, legs: legsOf(facts.runOf(c.id), page.study.site.northDeg) }));
  const placed = ways
    .filter((w) => w.legs.length > 0)
    .map(({ c, legs }) => {
      const said = legs.map((l) => sayIn(page, words.leg, { length: tape(page, l.lengthM), direction: l.direction }));
      const values = { conductor: partName(page, c.id), from: partName(page, c.from), to: partName(page, c.to) };
      return sayIn(page, words.legs, { ...values, legs: said.join(words.next) });
    });
  const others = ways.filter((w) => w.legs.length === 0).map((w) => w.c.id);
  return others.length === 0
    ? placed
    : [...placed, sayIn(page, words.straight, { conductor: partNames(page, others) })];
}

interface Leg {
  readonly lengthM: number;
  readonly direction: string;
}

/** Nobody paces less, m. */
const leastM = 0.15;

/** Legs of a route; the ones in one direction are one. */
function legsOf(run: WorkRun | null, northDeg: number): readonly Leg[] {
  const legs: Leg[] = [];
  const route = run?.routeM ?? [];
  for (const [i, [east, north]] of route.entries()) {
    const before = route[i - 1];
    if (before === undefined) continue;
    const [dx, dy] = [east - before[0], north - before[1]];
    const lengthM = Math.hypot(dx, dy);
    if (lengthM < leastM) continue;
    const direction = directionOf(dx, dy, northDeg);
    const last = legs.at(-1);
    if (last?.direction === direction) legs[legs.length - 1] = { direction, lengthM: last.lengthM + lengthM };
    else legs.push({ lengthM, direction });
  }
  return legs;
}

/** The nearest of eight points of the compass; `northDeg` is how far north lies from up, clockwise. */
function directionOf(dx: number, dy: number, northDeg: number): string {
  const bearingDeg = (Math.atan2(dx, dy) * 180) / Math.PI - northDeg;
  const eighth = ((Math.round(bearingDeg / 45) % 8) + 8) % 8;
  return words.directions[eighth]!;
}
