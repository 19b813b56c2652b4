import type { Facts, GroundFacts } from '../facts/facts.ts';
import { middle } from '../units/interval.ts';
import { groundWords } from '../words/ground-words.ts';
import { type Speech, say } from '../words/say.ts';
import type { StudyEarthSolve } from './study-earth.ts';

type Asked = Pick<Facts, 'site' | 'earth' | 'ground'>;
type Ground = GroundFacts['conditions'][number]['ground'];
type WhyUnsolved = NonNullable<NonNullable<ReturnType<Ground['alone']['get']>>['unsolved']>;

/** How the metal in the soil was solved, and in sentences what could not be, or was left out. */
export function earthSolve({ site, ground, earth }: Asked, speech: Speech): StudyEarthSolve | null {
  const now = ground.conditions[0]!.ground;
  const solved = now.together.likely ?? now.together.high ?? now.together.low;
  const limits = limitsOf(now, earth, sayPerhaps(site, earth.perhaps, speech), speech);
  if (solved === null) {
    const isNothing = now.soil === null || limits.length === 0;
    return isNothing ? null : { segments: 0, errorShare: 0, worstAt: null, leaking: [], limits };
  }
  const isElectrode = (i: number): boolean => now.alone.has(now.partAt[i]!);
  const worst = solved.errorShare.reduce(
    (best, share, i) => (isElectrode(i) && share > (solved.errorShare[best] ?? 0) ? i : best),
    -1,
  );
  return {
    segments: solved.segments.count,
    errorShare: now.errorShare,
    worstAt: now.partAt[worst] ?? null,
    leaking: now.leaking.filter((c) => c.spans !== null).map((c) => c.id),
    limits,
  };
}

function sayRefused(refused: Ground['refused'], speech: Speech): readonly string[] {
  if (refused === null) return [];
  const { tooMany, refused: inOnePlace } = groundWords.limits;
  return [say(refused.reason === 'too many segments' ? tooMany : inOnePlace, { at: refused.at }, speech)];
}

/** Each reason once, with all that it holds for. */
function sayUnsolved({ alone }: Ground, speech: Speech): readonly string[] {
  const words: Readonly<Record<WhyUnsolved, string>> = groundWords.unsolved;
  const of = new Map<WhyUnsolved, string[]>();
  for (const [id, { unsolved }] of alone) if (unsolved !== null) of.set(unsolved, [...(of.get(unsolved) ?? []), id]);
  return [...of].map(([why, list]) => say(groundWords.limits.noFigure, { list, why: words[why] }, speech));
}

function sayNoLikely({ soil }: Ground, speech: Speech): readonly string[] {
  if (soil === null || soil.profile.likely !== null) return [];
  const { layers, profile } = soil;
  const words = groundWords.noLikely;
  const layer = layers.slice(0, -1).findIndex(({ thicknessM }) => thicknessM === null) + 1;
  if (layer > 0) return [say(words.thickness, { layer }, speech)];
  const figures = layers.flatMap((l) => (l.likely === undefined ? [l.resistivityOhmM, l.thicknessM] : []));
  if (figures.some((figure) => figure !== null && middle(figure) === null)) return [words.open];
  return [profile.low === null || profile.high === null ? words.outOfReach : words.contrast];
}

/** Footings and anchors that nobody typed, with the size that they are taken for; and metal that may not be there. */
function sayPerhaps({ supports }: Facts['site'], perhaps: readonly string[], speech: Speech): readonly string[] {
  const words = groundWords.limits;
  const footings = new Set(supports.map((s) => s.id));
  const anchors = new Set(supports.flatMap((s) => s.guys.map((g) => g.id)));
  const told = [
    [words.perhapsFooting, perhaps.filter((id) => footings.has(id))],
    [words.perhapsAnchor, perhaps.filter((id) => anchors.has(id))],
    [words.perhaps, perhaps.filter((id) => !footings.has(id) && !anchors.has(id))],
  ] as const;
  return told.flatMap(([template, list]) => (list.length === 0 ? [] : [say(template, { list }, speech)]));
}

function limitsOf(now: Ground, earth: Facts['earth'], perhaps: readonly string[], speech: Speech): readonly string[] {
  const words = groundWords.limits;
  const sentence = (template: string, list: readonly string[]) =>
    list.length === 0 ? [] : [say(template, { list }, speech)];
  const placed = new Set(now.partAt);
  const isSolved = (id: string) => (now.alone.get(id)?.unsolved ?? null) === null;
  const uncoupled = [...new Set(earth.couplingLeftOut.flat())].filter((id) => !placed.has(id) && isSolved(id)).sort();
  const { refused, soil } = now;
  return [
    ...sayRefused(refused, speech),
    ...sayUnsolved(now, speech),
    ...sayNoLikely(now, speech),
    ...sentence(words.noPlace, uncoupled),
    ...sentence(words.otherSoil, refused === null ? statedLow(now, earth) : []),
    ...sentence(
      words.leakNoPlace,
      now.leaking.filter((c) => c.spans === null).map((c) => c.id),
    ),
    ...sentence(
      words.leakPerhapsBare,
      now.leaking.filter((c) => c.spans !== null && c.certain === 'likely').map((c) => c.id),
    ),
    ...perhaps,
    ...sentence(words.perhapsTied, earth.perhapsTied),
    ...(soil !== null && soil.profile.merged > soil.profile.moved ? [words.merged] : []),
    ...(soil !== null && soil.profile.moved > 0 ? [words.moved] : []),
  ];
}

/** Placed, and yet not felt by others with a place: stated to have less than those bring over through the soil. */
function statedLow({ alone, partAt }: Ground, { couplingLeftOut }: Facts['earth']): readonly string[] {
  const pairs = couplingLeftOut.filter((pair) => pair.every((id) => partAt.includes(id)));
  return [...new Set(pairs.flat())].filter((id) => alone.get(id)?.how === 'stated').sort();
}
