/**
 * Which of several vectors do not follow from the others: taken longest rest first, each kept while more than `leastShare` of its
 * own length is left when what it has of those before is taken off (Gram-Schmidt, twice). In rising order.
 */
export function independentRows(rows: readonly Float64Array[], leastShare: number): readonly number[] {
  const rests = rows.map((row) => Float64Array.from(row));
  const lengths = rests.map(lengthOf);
  const kept: number[] = [];
  const left = new Set(rows.keys());
  while (left.size > 0) {
    const shareOf = (at: number) => (lengths[at] === 0 ? 0 : lengthOf(rests[at]!) / lengths[at]!);
    const best = [...left].reduce((a, b) => (shareOf(b) > shareOf(a) ? b : a));
    if (!(shareOf(best) > leastShare)) break;
    left.delete(best);
    kept.push(best);
    const length = lengthOf(rests[best]!);
    const unit = rests[best]!.map((value) => value / length);
    for (const at of left) for (let turn = 0; turn < 2; turn++) takeOff(rests[at]!, unit);
  }
  return kept.sort((a, b) => a - b);
}

function lengthOf(row: Float64Array): number {
  return Math.sqrt(row.reduce((sum, value) => sum + value * value, 0));
}

function takeOff(row: Float64Array, unit: Float64Array): void {
  const part = row.reduce((sum, value, k) => sum + value * unit[k]!, 0);
  for (let k = 0; k < row.length; k++) row[k] = row[k]! - part * unit[k]!;
}
