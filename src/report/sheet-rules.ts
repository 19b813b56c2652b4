import { isAmericanCode, limitM, type SheetLimit, sheetLimits } from '../rework/sheet/sheet-limits.ts';
import type { StudySource } from '../study/study.ts';
import { sheetWords } from '../words/sheet-words.ts';
import { type Block, cell, paragraph, row, type Section, subheading, tableIfAny } from './block.ts';
import { clauseName, provenanceName, sayIn } from './page-context.ts';
import { tape, type WorksContext } from './works-context.ts';

const words = sheetWords.rules;

/** What holds for every work, what nobody does, and where the figures come from. */
export function sheetRulesSection(page: WorksContext): Section {
  const { region } = page.study.site;
  const figureOf = (key: SheetLimit['key']) => tape(page, limitM(region, key));
  const items = [
    sayIn(page, words.depth[page.speech.terms], depthValues(page)),
    sayIn(page, words.rock),
    sayIn(page, words.radius, { radius: figureOf('radius') }),
    sayIn(page, words.joints),
    sayIn(page, words.metals),
    sayIn(page, words.exposed, { guard: figureOf('guard') }),
    ...(uses(page, /exothermic/) ? [sayIn(page, words.weld)] : []),
    ...(uses(page, /\brod\b(?! clamp)/) ? [sayIn(page, words.drive)] : []),
  ];
  const never: Block = { is: 'list', ordered: false, items: words.never.map((n) => sayIn(page, n)) };
  const readings: Block = { is: 'list', ordered: false, items: [sayIn(page, words.over), sayIn(page, words.earthHow)] };
  return {
    id: 'rules',
    heading: words.heading,
    blocks: [
      { is: 'list', ordered: false, items },
      subheading(words.readings),
      readings,
      subheading(words.doNot),
      never,
      ...sources(page),
    ],
  };
}

function depthValues(page: WorksContext): Readonly<Record<string, string>> {
  const limits = sheetLimits(page.study.site.region).filter((l) => l.lengthM !== null);
  return Object.fromEntries(limits.map((l) => [l.key, tape(page, l.lengthM)]));
}

function uses(page: WorksContext, material: RegExp): boolean {
  return page.plan.steps.some((s) => s.work.materials.some((m) => material.test(m.name)));
}

function sources(page: WorksContext): readonly Block[] {
  const rows = sheetLimits(page.study.site.region).flatMap((l) => {
    const figure = sayIn(page, words.figures[l.key], { figure: l.lengthM === null ? '' : tape(page, l.lengthM) });
    return l.sources.map((s) => row(cell(figure), cell(clauseName(page, s)), cell(knownBy(page, s))));
  });
  const head = [words.figure, words.source, words.known];
  return [
    paragraph(sayIn(page, words.buy)),
    ...tableIfAny({ id: 'sheet-sources', caption: words.sourcesCaption, head, rows }),
  ];
}

/** How a document is known; in Canada an American code is no more than a place to look for. */
function knownBy(page: WorksContext, source: StudySource): string {
  const known = source.provenance === 'ours' ? words.practice : provenanceName(source);
  const isForeign = page.study.site.region === 'ca' && isAmericanCode(source);
  return isForeign ? sayIn(page, words.american, { known }) : known;
}
