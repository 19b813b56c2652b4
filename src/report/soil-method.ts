import { percent } from '../drawing/chart-names.ts';
import { soilWords } from '../words/soil-words.ts';
import { type PageContext, partName, sayIn } from './page-context.ts';

const words = soilWords.method;

/** How the electrodes were solved, and how far off the cutting into pieces leaves the figures; [] where nothing was. */
export function soilMethod(page: PageContext): readonly string[] {
  const { solve } = page.study.earth;
  if (solve === null || solve.segments === 0) return [];
  const worst = solve.worstAt === null ? '' : sayIn(page, words.worst, { at: partName(page, solve.worstAt) });
  const values = { segments: String(solve.segments), error: percent(solve.errorShare), worst };
  return [sayIn(page, words.solve, values), sayIn(page, words.bounds)];
}
