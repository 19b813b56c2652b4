import type { StudySurface } from '../study/study-earth.ts';

/** Levels that a reader expects, in per cent of the rise. */
const usual = [95, 90, 80, 70, 60, 50, 40, 30, 20, 15, 10, 7, 5, 3, 2, 1];
/** Fewer lines than this say little about a surface that hardly changes. */
const fewest = 3;

/** Levels of the lines of a map, in per cent, falling: the usual ones that the surface reaches, else even ones between. */
export function contourLevels({ share }: StudySurface['grid']): readonly number[] {
  const figures = share.filter(Number.isFinite).map((s) => s * 100);
  const least = figures.reduce((a, b) => Math.min(a, b), Infinity);
  const greatest = figures.reduce((a, b) => Math.max(a, b), -Infinity);
  const found = usual.filter((level) => level > least && level < greatest);
  if (found.length >= fewest || !(greatest > least)) return found;
  const step = 10 ** Math.floor(Math.log10((greatest - least) / fewest));
  const first = Math.ceil(least / step + 1e-9);
  const all = Array.from({ length: 100 }, (_, i) => Number(((first + i) * step).toPrecision(6)));
  return all
    .filter((level) => level < greatest)
    .filter((_, i, kept) => i % Math.ceil(kept.length / 6) === 0)
    .reverse();
}
