import { conditionName, percent } from '../drawing/chart-names.ts';
import { contourMap } from '../drawing/contour-map.ts';
import { contourProfile, told } from '../drawing/contour-profile.ts';
import type { StudySurface } from '../study/study-earth.ts';
import { soilWords } from '../words/soil-words.ts';
import { type Block, cell, paragraph, row, subheading, tableIfAny } from './block.ts';
import { figure, type PageContext, partName, sayIn } from './page-context.ts';

const words = soilWords.surface;
/** Nobody tells a step that begins so near to A from one at A. */
const nearM = 0.005;

/** Step and touch in per cent of the rise, the map of equal potential and the line across it, for each group drawn. */
export function surfaceBlocks(page: PageContext): readonly Block[] {
  const { surfaces } = page.study.earth;
  if (surfaces.length === 0) return [];
  return [
    subheading(words.heading),
    paragraph(sayIn(page, words.intro)),
    paragraph(sayIn(page, words.caution)),
    ...surfaces.flatMap((s, i) => surfaceOf(page, s, String(i + 1))),
  ];
}

function surfaceOf(page: PageContext, surface: StudySurface, mark: string): readonly Block[] {
  const group = partName(page, surface.group);
  const condition = conditionName(surface.condition);
  const { step, touch, line } = surface;
  const template = step.atM < nearM ? words.stepAtA : words.step;
  const stepSays = sayIn(page, template, { group, condition, share: percent(step.share), atM: step.atM });
  const map = { id: `soil-map-${mark}`, svg: contourMap(page.study, surface) };
  return [
    paragraph(touch === null ? stepSays : `${stepSays} ${touchSentence(page, touch)}`),
    { is: 'figure', ...map, caption: sayIn(page, words.figure, { group }) },
    ...(line.points.length < 2 ? [] : [profileFigure(page, surface, mark)]),
    ...tableIfAny({
      id: `soil-profile-${mark}`,
      caption: sayIn(page, words.caption, { group }),
      head: [words.distance, words.potential],
      rows: told(line.points).map((p) => row(cell(figure(page, p.distanceM, 'length')), cell(percent(p.share)))),
    }),
  ];
}

function profileFigure(page: PageContext, surface: StudySurface, mark: string): Block {
  const caption = sayIn(page, words.profile, { group: partName(page, surface.group) });
  return { is: 'figure', id: `soil-profile-figure-${mark}`, svg: contourProfile(page.study, surface), caption };
}

function touchSentence(page: PageContext, { part, share }: NonNullable<StudySurface['touch']>): string {
  return sayIn(page, words.touch, { part: partName(page, part), share: percent(share) });
}
