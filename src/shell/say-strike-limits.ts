import { strikeCommandWords as words } from '../words/strike-command-words.ts';
import { bullet, headed } from './page-blocks.ts';
import { figureIn, percentOf, type StrikePage } from './strike-page.ts';

const { exact: said, headings } = words;
/** More than this is a wall of text. */
const mostTold = 20;

/** What was taken because nobody typed it, and what was left out. */
export function assumedBlock(page: StrikePage): string {
  const { assumptions } = page.strike;
  const rest = assumptions.length - mostTold;
  return headed(page, headings.assumed, [
    ...assumptions.slice(0, mostTold).map((text) => bullet(page, text)),
    ...(rest > 0 ? [bullet(page, page.sentence(said.moreAssumed, { count: rest }))] : []),
  ]);
}

/** How well it was solved, and what kind of solution it is. */
export function exactBlock(page: StrikePage): string {
  const { solve } = page.strike;
  if (solve === null) return headed(page, headings.exact, [bullet(page, said.quasiShort)]);
  const { branches, loops, steps, errorShare, energyShare, longestWayM, mostWayM } = solve;
  return headed(page, headings.exact, [
    bullet(
      page,
      page.sentence(said.quasi, {
        most: figureIn(page, mostWayM, 'length'),
        longest: figureIn(page, longestWayM, 'length'),
      }),
    ),
    bullet(
      page,
      page.sentence(said.solve, {
        branches,
        loops,
        steps,
        error: percentOf(errorShare),
        energy: percentOf(energyShare),
      }),
    ),
  ]);
}
