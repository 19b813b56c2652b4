import { bondingDiagram } from '../drawing/bonding-diagram.ts';
import { schematic } from '../drawing/schematic.ts';
import { hasPlan, notOnPlan, sitePlan } from '../drawing/site-plan.ts';
import { tieWords } from '../words/kind-words.ts';
import { pageWords } from '../words/page.ts';
import { cell, listCell, paragraph, row, type Section, tableIfAny } from './block.ts';
import { type PageContext, partName, partNames, sayIn } from './page-context.ts';

/** The plan to scale with what it leaves out, or a schematic that says that it is no plan. */
export function planSection(page: PageContext): Section {
  const words = pageWords.plan;
  const toScale = hasPlan(page.study);
  const section = page.sectionNumber('schedules');
  const caption = sayIn(page, toScale ? words.caption : words.schematicCaption, { section });
  const svg = toScale ? sitePlan(page.study) : schematic(page.study);
  const missing = toScale ? notOnPlan(page.study) : [];
  const note = missing.length === 0 ? [] : [paragraph(sayIn(page, words.missing, { list: partNames(page, missing) }))];
  return { id: 'plan', heading: words.heading, blocks: [{ is: 'figure', id: 'plan-figure', svg, caption }, ...note] };
}

/** What hangs together and what does not, drawn, and the ties between groups in words for those who cannot see it. */
export function diagramSection(page: PageContext): Section {
  const words = pageWords.diagram;
  const caption = sayIn(page, words.caption, { section: page.sectionNumber('weak') });
  const rows = page.study.bonding.bridges.map((b) =>
    row(
      listCell(b.groups.map((g) => partName(page, g))),
      cell(tieName(page, b.tie), b.certain ? null : words.perhaps),
      cell(partNames(page, b.parts)),
    ),
  );
  const head = [words.between, words.tie, words.parts];
  const table = tableIfAny({ id: 'bridges-table', caption: words.bridgesCaption, head, rows });
  const figure = { is: 'figure', id: 'diagram-figure', svg: bondingDiagram(page.study), caption } as const;
  return { id: 'diagram', heading: words.heading, blocks: [paragraph(words.intro), figure, ...table] };
}

function tieName(page: PageContext, kind: string): string {
  return Object.hasOwn(tieWords, kind) ? sayIn(page, tieWords[kind]!) : kind;
}
