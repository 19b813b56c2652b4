import type { Sides } from '../comparison.ts';
import type { FindingUnit } from './finding-units.ts';

export type UnitPair = Sides<FindingUnit | null>;

/** Places in common out of all, from which two findings of one condition are about the same. */
const sameShare = 0.5;

/**
 * Units of one condition side by side: at the same places; then what was not met as a whole and cannot be told at these
 * places, or the other way round; then at mostly the same places; then those whose places nobody knows by name. Rounds go
 * from the surest to the least sure, each the same whichever side is called before.
 */
export function pairUnits(before: readonly FindingUnit[], after: readonly FindingUnit[]): readonly UnitPair[] {
  const left = { before: [...before], after: [...after] };
  const pairs: UnitPair[] = [];
  const pairAll = (isOne: (b: FindingUnit, a: FindingUnit) => boolean) => {
    for (const b of [...left.before]) {
      const a = left.after.find((unit) => isOne(b, unit));
      if (a !== undefined) pairs.push(taken(left, b, a));
    }
  };
  pairAll((b, a) => hasSamePlaces(b, a) && isSameTrouble(b, a) && isSameReason(b, a));
  pairAll((b, a) => hasSamePlaces(b, a) && isSameTrouble(b, a));
  pairAll(hasSamePlaces);
  pairs.push(...doubtsOfWhole(left, 'before'), ...doubtsOfWhole(left, 'after'));
  for (const [b, a] of mostlySame(left)) pairs.push(taken(left, b, a));
  pairAll((b, a) => b.isNameless && a.isNameless && isSameTrouble(b, a) && isSameReason(b, a) && saysSame(b, a));
  pairAll((b, a) => b.isNameless && a.isNameless && isSameTrouble(b, a) && isSameReason(b, a));
  return [
    ...pairs,
    ...left.before.map((unit): UnitPair => ({ before: unit, after: null })),
    ...left.after.map((unit): UnitPair => ({ before: null, after: unit })),
  ];
}

interface Left {
  readonly before: FindingUnit[];
  readonly after: FindingUnit[];
}

function taken(left: Left, before: FindingUnit, after: FindingUnit): UnitPair {
  if (left.before.includes(before)) left.before.splice(left.before.indexOf(before), 1);
  if (left.after.includes(after)) left.after.splice(left.after.indexOf(after), 1);
  return { before, after };
}

const hasSamePlaces = (b: FindingUnit, a: FindingUnit) =>
  b.key.length === a.key.length && b.key.every((place, i) => place === a.key[i]);
const isSameTrouble = (b: FindingUnit, a: FindingUnit) => b.finding.outcome === a.finding.outcome;
const isSameReason = (b: FindingUnit, a: FindingUnit) => b.finding.because.key === a.finding.because.key;
const saysSame = (b: FindingUnit, a: FindingUnit) => b.finding.measured?.text === a.finding.measured?.text;

/** What is one finding on one side, and a doubt at each of its places on the other. */
function doubtsOfWhole(left: Left, whole: 'before' | 'after'): readonly UnitPair[] {
  const other = whole === 'before' ? 'after' : 'before';
  return left[whole]
    .filter((unit) => unit.key.length > 1)
    .flatMap((unit) => {
      const doubts = left[other].filter((d) => d.key.length === 1 && unit.key.includes(d.key[0]!));
      if (doubts.length < unit.key.length) return [];
      return doubts.map((d) => (whole === 'before' ? taken(left, unit, d) : taken(left, d, unit)));
    });
}

/** Of what is left those that share most places, the most first. */
function mostlySame(left: Left): readonly (readonly [FindingUnit, FindingUnit])[] {
  const all = left.before.flatMap((b) =>
    left.after.map((a) => ({ b, a, share: shareOf(b.key, a.key), key: JSON.stringify([b.key, a.key].sort()) })),
  );
  const used = new Set<FindingUnit>();
  return all
    .filter(({ share }) => share >= sameShare)
    .sort((x, y) => y.share - x.share || (x.key < y.key ? -1 : 1))
    .flatMap(({ b, a }) => {
      if (used.has(b) || used.has(a)) return [];
      used.add(b).add(a);
      return [[b, a] as const];
    });
}

function shareOf(one: readonly string[], other: readonly string[]): number {
  const common = one.filter((place) => other.includes(place)).length;
  const all = one.length + other.length - common;
  return all === 0 ? 0 : common / all;
}
