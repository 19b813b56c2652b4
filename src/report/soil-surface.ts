import { conditionName, percent } from '../drawing/chart-names.ts';
import { contourMap } from '../drawing/contour-map.ts';
import type { StudySurface } from '../study/study-earth.ts';
import { soilWords } from '../words/soil-words.ts';
import { type Block, paragraph, subheading } from './block.ts';
import { type PageContext, partName, partNames, sayIn } from './page-context.ts';

const words = soilWords.surface;
/** Nobody tells a step that begins so near to A from one at A. */
const nearM = 0.005;

/** Step and touch in per cent of the rise, and the map of equal potential with a curve, for each group drawn. */
export function surfaceBlocks(page: PageContext): readonly Block[] {
  const { surfaces } = page.study.earth;
  if (surfaces.length === 0) return [];
  return [
    subheading(words.heading),
    paragraph(sayIn(page, words.intro)),
    paragraph(sayIn(page, words.caution)),
    ...alikeOnes(surfaces).flatMap((all, i) => surfaceOf(page, all, String(i + 1))),
  ];
}

/** Surfaces that differ by their place alone stand together. */
function alikeOnes(surfaces: readonly StudySurface[]): readonly (readonly StudySurface[])[] {
  const alike = new Map<string, StudySurface[]>();
  for (const s of surfaces) {
    const key = JSON.stringify([s.condition, { ...s.grid, westM: 0, southM: 0 }, s.line.points, s.step]);
    const found = alike.get(key);
    if (found === undefined) alike.set(key, [s]);
    else found.push(s);
  }
  return [...alike.values()];
}

function surfaceOf(page: PageContext, all: readonly StudySurface[], mark: string): readonly Block[] {
  const [surface, ...others] = all as readonly [StudySurface, ...StudySurface[]];
  const group = partName(page, surface.group);
  const { step } = surface;
  const template = step.atM < nearM ? words.stepAtA : words.step;
  const values = { group, condition: conditionName(surface.condition), share: percent(step.share), atM: step.atM };
  const list = partNames(
    page,
    others.map((s) => s.group),
  );
  const sentences = [
    sayIn(page, template, values),
    ...(others.length === 0 ? [] : [sayIn(page, words.alike, { list, count: others.length })]),
    ...all.flatMap(({ touch }) => (touch === null ? [] : [touchSentence(page, touch)])),
  ];
  const caption = sayIn(page, words.figure, { group, stepM: Number(surface.grid.stepM.toPrecision(2)) });
  return [
    paragraph(sentences.join(' ')),
    { is: 'figure', id: `soil-map-${mark}`, svg: contourMap(page.study, surface), caption },
  ];
}

function touchSentence(page: PageContext, { part, share }: NonNullable<StudySurface['touch']>): string {
  return sayIn(page, words.touch, { part: partName(page, part), share: percent(share) });
}
