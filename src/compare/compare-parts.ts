import type { Study, StudyPart } from '../study/study.ts';
import { byCodeUnit } from '../units/by-code-unit.ts';
import { changedParts, comparedPart, type PartOfBoth } from './changed-parts.ts';
import type { ComparedParts, PartPair } from './comparison.ts';
import { type Conductor, type CutConductor, cutConductors } from './cut-conductors.ts';
import { type MatchedThings, matchThings, type ThingPair } from './matching/match-things.ts';
import { type Names, namesOf } from './matching/names.ts';

export interface MatchedParts {
  readonly parts: ComparedParts;
  /** Reads before as after calls things, pieces of cut wires included. */
  readonly names: Names;
}

/** Parts of both sides: the same ones, changed ones, those that came and went, wires that were cut or made one. */
export function compareParts(before: Study, after: Study): MatchedParts {
  const things = matchThings(before, after);
  const splits = cutsOf(before, after, things);
  const joined = cutsOf(after, before, mirrored(things));
  const cut = [...splits.map(pairOfSplit), ...joined.map((j) => mirroredPair(pairOfSplit(j)))];
  const all = withCuts(things.pairs, cut);
  const names = namesOf({ ...things, pairs: all }, pointsOf(splits, joined));
  return { parts: partsOf(before, after, all, splits, joined, names), names };
}

type AnyPair = Omit<ThingPair, 'by'> & Pick<PartPair, 'by'>;

function partsOf(
  before: Study,
  after: Study,
  pairs: readonly AnyPair[],
  splits: readonly CutConductor[],
  joined: readonly CutConductor[],
  names: Names,
): ComparedParts {
  const [was, is] = [byId(before), byId(after)];
  const ofParts = pairs.filter((p) => was.has(p.before) && is.has(p.after));
  const cut = new Set([...splits.map((s) => s.whole), ...joined.flatMap((j) => j.pieces)]);
  const whole = new Set(joined.map((j) => j.whole));
  const pieces = new Set(splits.flatMap((s) => s.pieces));
  const kept = ofParts.filter((p) => !cut.has(p.before) && !whole.has(p.after));
  const [pairedBefore, pairedAfter] = [new Set(ofParts.map((p) => p.before)), new Set(ofParts.map((p) => p.after))];
  const both = kept.map((p): PartOfBoth => ({ before: was.get(p.before)!, after: is.get(p.after)! }));
  return {
    pairs: ofParts,
    renamed: pairs
      .filter((p) => p.by !== 'cut' && p.before !== p.after)
      .map((p) => ({ before: p.before, after: p.after })),
    changed: changedParts(both, before, after, names),
    added: [...is.values()].filter((p) => !pairedAfter.has(p.id) && !pieces.has(p.id)).map(comparedPart),
    removed: [...was.values()].filter((p) => !pairedBefore.has(p.id) && !cut.has(p.id)).map(comparedPart),
    splits: splits.map((s) => ({ before: s.whole, after: s.pieces })),
    joined: joined.map((j) => ({ before: j.pieces, after: j.whole })),
  };
}

/** By id; the section stands in the part. */
function byId({ parts }: Study): ReadonlyMap<string, StudyPart> {
  return new Map([...parts].sort((a, b) => byCodeUnit(a.id, b.id)).map((p) => [p.id, p]));
}

function cutsOf(before: Study, after: Study, things: MatchedThings): readonly CutConductor[] {
  const names = namesOf(things);
  const partner = new Map(things.pairs.filter((p) => p.section === 'conductors').map((p) => [p.before, p.after]));
  const matched = new Set(partner.values());
  const byId = new Map(after.conductors.map((c) => [c.id, c]));
  const free = after.conductors.filter((c) => !matched.has(c.id));
  const isWhole = ({ from, to }: Conductor, own: Conductor | undefined) =>
    own !== undefined && names.toAfter(from) === own.from && names.toAfter(to) === own.to;
  return cutConductors(
    before.conductors,
    (whole) => {
      const own = byId.get(partner.get(whole.id) ?? '');
      if (isWhole(whole, own)) return { own: null, free: [] };
      return { own: own ?? null, free };
    },
    names,
  );
}

const mirrored = (things: MatchedThings): MatchedThings => ({
  pairs: things.pairs.map((p) => ({ ...p, before: p.after, after: p.before })),
  before: things.after,
  after: things.before,
});

/** With the piece that kept its name, else with the first. */
const pairOfSplit = ({ whole, pieces }: CutConductor): AnyPair => ({
  before: whole,
  after: pieces.includes(whole) ? whole : pieces[0]!,
  section: 'conductors',
  by: 'cut',
});

const mirroredPair = (p: AnyPair): AnyPair => ({ ...p, before: p.after, after: p.before });

function withCuts(pairs: readonly AnyPair[], cut: readonly AnyPair[]): readonly AnyPair[] {
  const of = new Set(cut.map((p) => p.before));
  return [...pairs.filter((p) => !of.has(p.before)), ...cut].sort((x, y) => byCodeUnit(x.before, y.before));
}

function pointsOf(splits: readonly CutConductor[], joined: readonly CutConductor[]): ReadonlyMap<string, string> {
  return new Map([
    ...splits.flatMap((s) => s.joints),
    ...joined.flatMap((j) => j.joints.map(([whole, piece]) => [piece, whole] as const)),
  ]);
}
