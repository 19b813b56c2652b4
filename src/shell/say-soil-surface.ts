import { conditionName, percent } from '../drawing/chart-names.ts';
import type { Bounded } from '../study/study-earth.ts';
import { soilCommandWords } from '../words/soil-command-words.ts';
import { bullet, figureOf, headed, paragraph, type SoilPage } from './soil-page.ts';

const { outside, surface, headings } = soilCommandWords;
/** More than this is a wall of figures. */
const mostTold = 8;
/** Shares below this are not worth a line. */
const leastShare = 0.005;

/** What reaches electrodes outside a group through the soil, the largest share first. */
export function outsideBlock(page: SoilPage): string {
  const { sentence, study } = page;
  const likely = (share: Bounded) => share.value ?? share.low;
  const all = study.earth.transferred
    .filter((t) => likely(t.share) >= leastShare)
    .sort((a, b) => likely(b.share) - likely(a.share) || (a.electrode < b.electrode ? -1 : 1));
  if (all.length === 0) return '';
  const told = all.slice(0, mostTold);
  const items = told.map(({ electrode, group, share }) =>
    bullet(page, sentence(outside.item, { electrode, group, share: shareText(page, share) })),
  );
  const rest = all.length - told.length;
  return headed(page, headings.outside, [
    paragraph(page, sentence(outside.intro)),
    ...items,
    ...(rest > 0 ? [bullet(page, sentence(outside.more, { count: rest }))] : []),
  ]);
}

/** Nothing takes on more than the whole. */
function shareText({ sentence }: SoilPage, { low, high }: Bounded): string {
  const [from, to] = [percent(low), percent(Math.min(high ?? 1, 1))];
  return from === to ? from : sentence(outside.range, { from: from.replace(/ %$/, ''), to });
}

/** Step and touch of each group in per cent of its rise, with what that does not say. */
export function surfaceBlock(page: SoilPage): string {
  const { sentence, study, terminal } = page;
  const items = study.earth.surfaces.flatMap(({ group, condition, step, touch }) => {
    const at =
      step.atM < 0.05 ? surface.atMetal : sentence(surface.from, { at: figureOf(page, step.atM, 'length', 2) });
    const values = { group, condition: conditionName(condition), share: percent(step.share), at };
    return [
      sentence(surface.step, values),
      ...(touch === null ? [] : [sentence(surface.touch, { part: touch.part, share: percent(touch.share) })]),
    ];
  });
  if (items.length === 0) return '';
  return headed(page, headings.surface, [
    ...items.map((text) => bullet(page, text)),
    terminal.paint(paragraph(page, sentence(surface.caution)), 'dim'),
  ]);
}
