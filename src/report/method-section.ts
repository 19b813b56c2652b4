import type { StudySource } from '../study/study.ts';
import { methodWords } from '../words/caution-words.ts';
import { type Block, cell, paragraph, row, type Section, tableIfAny } from './block.ts';
import { stateName } from './cover.ts';
import { hasDocument, type PageContext, partName, provenanceName, sayIn } from './page-context.ts';
import { soilMethod } from './soil-method.ts';

/** How the figures were come by, how well the network was solved, and every document behind them. */
export function methodSection(page: PageContext): Section {
  const blocks: readonly Block[] = [
    { is: 'list', ordered: false, items: [...methodWords.method.map((m) => sayIn(page, m)), ...soilMethod(page)] },
    paragraph(residualText(page)),
    ...otherStates(page),
    ...sources(page),
  ];
  return { id: 'method', heading: methodWords.heading, blocks };
}

function residualText(page: PageContext): string {
  const { residual, worstAt } = page.study.earth;
  if (residual === 0) return methodWords.noResidual;
  const worst = worstAt === null ? '' : sayIn(page, methodWords.worst, { at: partName(page, worstAt) });
  return sayIn(page, methodWords.residual, { residual: scientific(residual), worst });
}

/** `3 × 10⁻¹⁴`. */
function scientific(value: number): string {
  const [figure, power] = value.toExponential(0).split('e');
  const raised = [...power!.replace('+', '')].map((c) => (c === '-' ? '⁻' : '⁰¹²³⁴⁵⁶⁷⁸⁹'[Number(c)]!)).join('');
  return `${figure} × 10${raised}`;
}

function otherStates(page: PageContext): readonly Block[] {
  const { state, states } = page.study;
  const others = states.filter((s) => s.id !== state.id).map(stateName);
  if (others.length === 0) return [];
  return [paragraph(sayIn(page, methodWords.state, { state: stateName(state), others: others.join('; ') }))];
}

/** A row for each document and edition, its clauses in one cell. */
function sources(page: PageContext): readonly Block[] {
  const byDocument = new Map<string, StudySource[]>();
  for (const s of page.study.sources.filter(hasDocument)) {
    const key = JSON.stringify([s.document, s.edition, s.provenance]);
    byDocument.set(key, [...(byDocument.get(key) ?? []), s]);
  }
  const rows = [...byDocument.values()].map((same) => {
    const clauses = same.flatMap((s) => s.clause ?? []).join('; ');
    const { document, edition } = same[0]!;
    const name = cell(document, edition === null ? null : sayIn(page, methodWords.edition, { edition }));
    return row(name, cell(clauses === '' ? '–' : clauses), cell(provenanceName(same[0]!)));
  });
  const head = [methodWords.document, methodWords.clause, methodWords.provenance];
  return tableIfAny({ id: 'sources-table', caption: methodWords.sourcesCaption, head, rows });
}
