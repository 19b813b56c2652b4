import type { SolvedBodies } from '../electrodes/solve-bodies.ts';

/**
 * What was solved for some of `count` bodies, as if for all of them: the others have Infinity, are felt by nothing and give
 * off nothing. `there` says which of all each solved one is.
 */
export function amongAll(solved: SolvedBodies, there: readonly number[], count: number): SolvedBodies {
  const size = there.length;
  if (size === count) return solved;
  const resistanceOhm = new Float64Array(count * count);
  const aloneOhm = new Float64Array(count).fill(Number.POSITIVE_INFINITY);
  const errorShare = new Float64Array(count);
  const leakage = new Float64Array(solved.segments.count * count);
  for (let index = 0; index < count; index++) resistanceOhm[index * (count + 1)] = Number.POSITIVE_INFINITY;
  for (const [row, to] of there.entries()) {
    aloneOhm[to] = solved.aloneOhm[row]!;
    errorShare[to] = solved.errorShare[row]!;
    for (const [column, at] of there.entries())
      resistanceOhm[to * count + at] = solved.resistanceOhm[row * size + column]!;
    for (let i = 0; i < solved.segments.count; i++) leakage[i * count + to] = solved.leakage[i * size + row]!;
  }
  const segments = { ...solved.segments, body: solved.segments.body.map((row) => there[row]!) };
  return { ...solved, resistanceOhm, aloneOhm, errorShare, leakage, segments };
}
