import type { Study } from '../../study/study.ts';
import { byCodeUnit } from '../../units/by-code-unit.ts';
import { type Matches, match, noMatches } from './matches.ts';
import { matchMostAlike } from './most-alike.ts';
import { type NamedThing, namedThings } from './named-things.ts';
import { matchSameNeighbourhood } from './same-neighbourhood.ts';
import { type ThingGraph, thingGraph } from './thing-graph.ts';

export interface ThingPair {
  readonly before: string;
  readonly after: string;
  readonly section: string;
  readonly by: 'id' | 'likeness';
}

export interface MatchedThings {
  /** By id before. */
  readonly pairs: readonly ThingPair[];
  readonly before: ReadonlyMap<string, NamedThing>;
  readonly after: ReadonlyMap<string, NamedThing>;
}

/**
 * Which part, place, building, guy, plug and state before is which after: what has the same id in the same section; of the
 * rest what looks the same with all round it; then what is most alike by place, kind and ties. The other way round gives
 * the same pairs.
 */
export function matchThings(before: Study, after: Study): MatchedThings {
  const [b, a] = [thingGraph(namedThings(before)), thingGraph(namedThings(after))];
  const matches = noMatches();
  matchIds(b, a, matches);
  const byId = new Set(matches.toAfter.keys());
  matchSameNeighbourhood(b, a, matches, true);
  matchSameNeighbourhood(b, a, matches, false);
  matchMostAlike(b, a, matches);
  const pairs = [...matches.toAfter].map(([i, j]): ThingPair => {
    const { id, section } = b.things[i]!;
    return { before: id, after: a.things[j]!.id, section, by: byId.has(i) ? 'id' : 'likeness' };
  });
  return { pairs: pairs.sort((x, y) => byCodeUnit(x.before, y.before)), before: byIds(b), after: byIds(a) };
}

function matchIds(b: ThingGraph, a: ThingGraph, matches: Matches): void {
  b.things.forEach(({ id, section }, i) => {
    const j = a.numberOf.get(id);
    if (j !== undefined && a.things[j]!.section === section) match(matches, i, j);
  });
}

const byIds = ({ things }: ThingGraph): ReadonlyMap<string, NamedThing> => new Map(things.map((t) => [t.id, t]));
