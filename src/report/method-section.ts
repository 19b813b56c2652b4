import { methodWords } from '../words/caution-words.ts';
import { type Block, cell, paragraph, row, type Section, tableIfAny } from './block.ts';
import { stateName } from './cover.ts';
import { type PageContext, partName, provenanceName, sayIn } from './page-context.ts';

/** How the figures were come by, how well the network was solved, and every document behind them. */
export function methodSection(page: PageContext): Section {
  const blocks: readonly Block[] = [
    { is: 'list', ordered: false, items: methodWords.method.map((m) => sayIn(page, m)) },
    paragraph(residualText(page)),
    ...otherStates(page),
    ...sources(page),
  ];
  return { id: 'method', heading: methodWords.heading, blocks };
}

function residualText(page: PageContext): string {
  const { residual, worstAt } = page.study.earth;
  const worst = worstAt === null ? '' : sayIn(page, methodWords.worst, { at: partName(page, worstAt) });
  return sayIn(page, methodWords.residual, { residual: residual.toExponential(1), worst });
}

function otherStates(page: PageContext): readonly Block[] {
  const { state, states } = page.study;
  const others = states.filter((s) => s.id !== state.id).map(stateName);
  if (others.length === 0) return [];
  return [paragraph(sayIn(page, methodWords.state, { state: stateName(state), others: others.join('; ') }))];
}

function sources(page: PageContext): readonly Block[] {
  const rows = page.study.sources.map((s) =>
    row(cell(s.document), cell(s.edition ?? methodWords.anyEdition), cell(s.clause ?? '–'), cell(provenanceName(s))),
  );
  const head = [methodWords.document, methodWords.edition, methodWords.clause, methodWords.provenance];
  return tableIfAny({ id: 'sources-table', caption: methodWords.sourcesCaption, head, rows });
}
