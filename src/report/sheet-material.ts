import { addMaterials } from '../rework/cost/counts-of.ts';
import { withSpare } from '../rework/cost/with-spare.ts';
import type { Material } from '../rework/work.ts';
import { sheetWords } from '../words/sheet-words.ts';
import { cell, paragraph, row, type Section, tableIfAny } from './block.ts';
import { kindName, sayIn } from './page-context.ts';
import { tape, type WorksContext } from './works-context.ts';

const words = sheetWords.materials;

/** What of each, as one counts or measures it. */
export function amountText(page: WorksContext, { unit, count }: Pick<Material, 'unit' | 'count'>): string {
  if (unit === 'm' && count.low <= 0 && count.high === Number.POSITIVE_INFINITY) return sheetWords.material.measure;
  if (unit === 'm') return tape(page, count);
  const [low, high] = [Math.floor(count.low), Math.ceil(count.high)];
  return low === high ? String(high) : `${low} to ${high}`;
}

export function materialLines(page: WorksContext, materials: readonly Material[]): readonly string[] {
  return materials.map((m) =>
    sayIn(page, sheetWords.material.one, { count: amountText(page, m), name: kindName(page, m.name) }),
  );
}

/** Everything to bring for all works, with spare, and which works it is for. */
export function sheetMaterialSection(page: WorksContext): Section {
  const { steps } = page.plan;
  const rows = addMaterials(steps.map((s) => s.work)).map((m) => {
    const numbers = steps.flatMap(({ work }, i) =>
      work.materials.some((own) => own.name === m.name && own.unit === m.unit) ? [String(i + 1)] : [],
    );
    return row(
      cell(kindName(page, m.name)),
      cell(amountText(page, m)),
      cell(amountText(page, { unit: m.unit, count: withSpare(m) })),
      cell(numbers.join(', ')),
    );
  });
  const head = [words.name, words.needed, words.spare, words.for];
  const table = tableIfAny({ id: 'sheet-material', caption: words.caption, head, rows });
  const blocks = rows.length === 0 ? [paragraph(words.none)] : [...table, paragraph(sayIn(page, words.note))];
  return { id: 'material', heading: words.heading, blocks };
}
