/**
 * The one name of a list that was most likely meant by a word that is not in it, or null when none is close: at most one
 * slip (a letter wrong, missing, too many, or two swapped) per three letters, and at least one for words of two letters
 * or more. Case, spaces, hyphens and underscores count for nothing. Of equally near names the first in the list wins.
 *
 * The distance is the optimal string alignment form of the Damerau-Levenshtein distance (F. J. Damerau, Communications of
 * the ACM 7(3), 1964; from memory).
 */
export function nearName(word: string, candidates: readonly string[]): string | null {
  const typed = plain(word);
  let best: string | null = null;
  let fewest = Infinity;
  for (const candidate of candidates) {
    const name = plain(candidate);
    const allowed = slipsAllowed(typed, name);
    // A letter more or less is a slip each, so most names need no closer look.
    if (Math.abs(typed.length - name.length) > allowed) continue;
    const slips = distance(typed, name);
    if (slips >= fewest || slips > allowed) continue;
    best = candidate;
    fewest = slips;
  }
  return best;
}

/** The letters that count. */
function plain(text: string): readonly string[] {
  return [...text.toLowerCase().replace(/[\s_-]+/g, '')];
}

function slipsAllowed(a: readonly string[], b: readonly string[]): number {
  const letters = Math.min(a.length, b.length);
  return letters < 2 ? 0 : Math.max(1, Math.floor(letters / 3));
}

function distance(from: readonly string[], to: readonly string[]): number {
  let twoBack: number[] = [];
  let above = to.map((_, j) => j).concat(to.length);
  for (let i = 1; i <= from.length; i++) {
    const row = [i];
    for (let j = 1; j <= to.length; j++) {
      const wrong = from[i - 1] === to[j - 1] ? 0 : 1;
      let slips = Math.min(above[j]! + 1, row[j - 1]! + 1, above[j - 1]! + wrong);
      const swapped = i > 1 && j > 1 && from[i - 1] === to[j - 2] && from[i - 2] === to[j - 1];
      if (swapped) slips = Math.min(slips, twoBack[j - 2]! + 1);
      row.push(slips);
    }
    twoBack = above;
    above = row;
  }
  return above[to.length]!;
}
