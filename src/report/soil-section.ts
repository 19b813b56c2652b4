import type { Study } from '../study/study.ts';
import { soilWords } from '../words/soil-words.ts';
import { type Block, paragraph, type Section, subheading } from './block.ts';
import { type PageContext, partNames, sayIn } from './page-context.ts';
import { lineBlocks, moreBlocks } from './soil-answers.ts';
import { conditionBlocks, electrodeBlocks } from './soil-conditions.ts';
import { fitBlocks } from './soil-fit.ts';
import { surfaceBlocks } from './soil-surface.ts';
import { transferredBlocks } from './soil-transferred.ts';

/** Whether more is known of soil and electrodes than the table of resistances says. */
export function hasSoil({ earth }: Study): boolean {
  const lists = [
    earth.soilOfElectrodes,
    earth.contradictions,
    earth.readingTraps,
    earth.transferred,
    earth.depthCurves,
    earth.spacingGains,
    earth.rodLines,
    earth.surfaces,
    earth.solve?.limits ?? [],
  ];
  return earth.soilFit !== null || earth.conditions.length > 1 || lists.some((l) => l.length > 0);
}

/** The soil that was found, what each condition does, and the answers that hang on it; only what there is to say. */
export function soilSection(page: PageContext): Section {
  const blocks = [
    paragraph(sayIn(page, soilWords.intro)),
    ...fitBlocks(page),
    ...measuredBlocks(page),
    ...conditionBlocks(page),
    ...electrodeBlocks(page),
    ...transferredBlocks(page),
    ...moreBlocks(page),
    ...lineBlocks(page),
    ...surfaceBlocks(page),
    ...limitBlocks(page),
  ];
  return { id: 'soil', heading: sayIn(page, soilWords.heading), blocks };
}

function measuredBlocks(page: PageContext): readonly Block[] {
  const { soilOfElectrodes, readingTraps, contradictions } = page.study.earth;
  const words = soilWords.measured;
  return [
    ...listUnder(
      sayIn(page, words.heading),
      [...soilOfElectrodes, ...readingTraps].map((s) => s.text),
    ),
    ...listUnder(
      words.contradictions,
      contradictions.map((c) => c.text),
    ),
  ];
}

function limitBlocks(page: PageContext): readonly Block[] {
  const { solve } = page.study.earth;
  if (solve === null) return [];
  const { leaking, limits } = solve;
  const list = partNames(page, leaking);
  const leak = leaking.length === 0 ? [] : [sayIn(page, soilWords.limits.leaking, { list })];
  return listUnder(soilWords.limits.heading, [...limits, ...leak]);
}

function listUnder(heading: string, items: readonly string[]): readonly Block[] {
  return items.length === 0 ? [] : [subheading(heading), { is: 'list', ordered: false, items }];
}
