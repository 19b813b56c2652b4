import type { Step } from '../rework/work.ts';
import { sheetWords } from '../words/sheet-words.ts';
import { cell, type Row, row } from './block.ts';
import { partName, sayIn } from './page-context.ts';
import type { WorksContext } from './works-context.ts';

/** Bars that receptacles for pulled lines are bolted to: joints that the site file has no names for. */
function panelsOf(page: WorksContext, { work }: Step): readonly string[] {
  if (work.values.words !== 'pulled-lines') return [];
  return work.at.filter((id) => page.parts.get(id)?.section === 'bars');
}

/** The joints of them, for the list of joints to make. */
export function receptacleJoints(page: WorksContext, step: Step): readonly string[] {
  return panelsOf(page, step).map((id) => sayIn(page, sheetWords.joints.receptacle, { panel: partName(page, id) }));
}

/** A reading from them to what they are bolted to. */
export function receptacleRows(page: WorksContext, step: Step): readonly Row[] {
  const { continuity, receptacle, unknown } = sheetWords.test;
  return panelsOf(page, step).map((id) => {
    const between = sayIn(page, receptacle, { panel: partName(page, id) });
    return row(cell(continuity), cell(between), cell(unknown), cell(), cell());
  });
}
