import { sheetFacts } from '../rework/sheet/sheet-facts.ts';
import { sheetWords } from '../words/sheet-words.ts';
import { type Block, cell, linkCell, loudCell, paragraph, row, type Section, tableIfAny } from './block.ts';
import { partNames, sayIn } from './page-context.ts';
import { isToScale } from './sheet-plan.ts';
import { titleOf, type WorksContext } from './works-context.ts';

const words = sheetWords.first;

/** What somebody reads who comes to the site for the first time: what it is, and what is seen to before anybody starts. */
export function sheetFirstSection(page: WorksContext): Section {
  const points: Block = { is: 'list', ordered: false, items: words.points.map((p) => sayIn(page, p)) };
  const buried = buriedThings(page);
  const known = buried.length === 0 ? words.buriedUnknown : words.buriedKnown;
  const list = paragraph(sayIn(page, known, { list: partNames(page, buried) }));
  return { id: 'first', heading: words.heading, blocks: [paragraph(sayIn(page, words.intro)), points, list] };
}

/** The works in order, and which of them dig or have a panel opened. */
export function sheetListSection(page: WorksContext): Section {
  const numbers = isToScale(page) ? words.numbers.plan : words.numbers.schematic;
  const blocks = [...workList(page), paragraph(sayIn(page, numbers))];
  return { id: 'list', heading: sheetWords.list.heading, blocks };
}

function workList(page: WorksContext): readonly Block[] {
  const rows = page.plan.steps.map((step, i) => {
    const { inSoil, panels } = sheetFacts(step, page.plan);
    const answer = (ids: readonly string[]) => (ids.length === 0 ? words.no : words.yes);
    const panel = panels.length === 0 ? cell(words.no) : loudCell(sayIn(page, words.panelBy));
    return row(cell(String(i + 1)), linkCell(titleOf(page, step), `work-${i + 1}`), cell(answer(inSoil)), panel);
  });
  const head = [words.number, words.what, words.dig, words.panel];
  if (rows.length === 0) return [paragraph(words.none)];
  return tableIfAny({ id: 'sheet-works', caption: words.worksCaption, head, rows });
}

/** Lines, pipes and conductors that were in the soil before. */
function buriedThings({ plan }: WorksContext): readonly string[] {
  const conductors = new Set(plan.before.conductors.filter((c) => c.buried === 'yes').map((c) => c.id));
  return plan.before.parts
    .filter((p) => conductors.has(p.id) || (p.typed.buried !== undefined && !/^(?:no|false)$/.test(p.typed.buried)))
    .map((p) => p.id);
}
