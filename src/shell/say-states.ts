import type { StateColumn, StateRow, StateTable } from '../compare/state-table.ts';
import { compareStateWords as words } from '../words/compare-state-words.ts';
import type { Speech } from '../words/say.ts';
import { type ComparePage, comparePage, ohmText, rangeOf } from './compare-page.ts';
import { bullet, headed, paragraph } from './page-blocks.ts';
import { severityMarks } from './severity-marks.ts';
import type { Terminal } from './terminal.ts';
import { type TextRow, textTable } from './text-table.ts';

/** The terminal's page of several states: what each says, one table of what differs, gaps, ways to boxes, conditions. */
export function sayStates(table: StateTable, file: string, speech: Speech, terminal: Terminal): string {
  const page = comparePage(speech, terminal);
  const { columns, rows } = table;
  const of = <W extends StateRow['what']>(what: W) =>
    rows.filter((row): row is Extract<StateRow, { what: W }> => row.what === what);
  const blocks = [
    titleOf(table, page),
    headed(
      page,
      words.headings.states,
      columns.map((c) => bullet(page, columnText(c, page))),
    ),
    headed(page, words.headings.table, tableLines(table, page)),
    headed(
      page,
      words.headings.gaps,
      of('gap').flatMap((row) => gapLines(row, columns, page)),
    ),
    headed(page, words.headings.reach, reachLines(of('reach'), columns, page)),
    headed(
      page,
      words.headings.findings,
      of('finding').flatMap((row) => findingLines(row, columns, page)),
    ),
    lastLine(table, file, page),
  ];
  return `${blocks.filter((text) => text !== '').join('\n\n')}\n`;
}

function titleOf({ site, columns }: StateTable, page: ComparePage): string {
  const values = { site: site.name ?? words.unnamed, count: columns.length, list: columns.map((c) => c.id) };
  return page.terminal.paint(paragraph(page, page.sentence(words.title, values)), 'bold');
}

function columnText({ id, says, ground, lost, set }: StateColumn, { sentence }: ComparePage): string {
  const grounds = (['frozen', 'dry', 'wet'] as const).filter((is) => ground?.[is] === 'yes').map((is) => words[is]);
  const fields = Object.entries(set).map(([field, value]) => sentence(words.set, { field, value }));
  const gone = lost.length === 0 ? [] : [sentence(words.lost, { list: lost })];
  const said = [...new Set([...(says === null ? [] : [says]), ...grounds, ...gone, ...fields])];
  return sentence(words.column, { id, what: said.length === 0 ? words.nothingSaid : said.join('; ') });
}

/** The answers of the whole in every state, then each electrode and weak point that is not alike in all. */
function tableLines({ columns, rows }: StateTable, page: ComparePage): readonly string[] {
  const head = columns.map((c) => c.id);
  const all = [...answerRows(columns, page), ...rows.flatMap((row) => placeRow(row, page))];
  return textTable({ corner: '', head, rows: all }, page.terminal.width - 2).map((line) => `  ${line}`);
}

function answerRows(columns: readonly StateColumn[], page: ComparePage): readonly TextRow[] {
  const row = (label: string, cell: (column: StateColumn) => string): TextRow => ({
    label: page.sentence(label),
    cells: columns.map(cell),
  });
  const { rows } = words;
  const counts = (['hazards', 'defects', 'advices', 'cannotTell', 'agreed'] as const).map((key) =>
    row(rows[key], (c) => String(c.counts[key])),
  );
  return [
    ...counts,
    row(rows.groups, (c) => String(c.groups)),
    row(rows.unbonded, (c) => (c.unbondedElectrodes === null ? words.electrode.perhaps : listed(c.unbondedElectrodes))),
    row(rows.earthOhm, (c) => ohmText(c.earthOhm)),
    row(rows.weakPoints, (c) => String(c.weakPoints.length)),
  ];
}

const listed = (ids: readonly string[]) => (ids.length === 0 ? words.none : ids.join(', '));

function placeRow(row: StateRow, { sentence }: ComparePage): readonly TextRow[] {
  if (row.what === 'electrode')
    return [
      {
        label: sentence(words.rows.electrode, { at: row.at }),
        cells: row.cells.map((is) => words.electrode[is ?? 'none']),
      },
    ];
  if (row.what !== 'weakPoint') return [];
  return [
    {
      label: sentence(words.rows.weakPoint, { at: row.at }),
      cells: row.cells.map((is) => (is ? words.yes : words.no)),
    },
  ];
}

function gapLines(
  { at, line, cells }: Extract<StateRow, { what: 'gap' }>,
  columns: readonly StateColumn[],
  page: ComparePage,
): readonly string[] {
  const { sentence } = page;
  return cells.flatMap((cell, i) => {
    if (cell === null) return [];
    const { gapM, end, withstandV, peakV } = cell;
    const withstands =
      withstandV === null ? words.withstandsUnknown : sentence(words.withstands, { withstandV: rangeOf(withstandV) });
    const stands = peakV === null ? words.noStand : sentence(words.stands, { peakV });
    const text = sentence(words.gap, {
      at,
      line,
      state: columns[i]!.id,
      gap: gapM === null ? words.gapUnknown : sentence(words.gapWide, { gapM: rangeOf(gapM) }),
      end: sentence(words.end[end]),
      holds: `${withstands}${stands}`,
    });
    return [bullet(page, text)];
  });
}

function reachLines(
  rows: readonly Extract<StateRow, { what: 'reach' }>[],
  columns: readonly StateColumn[],
  page: ComparePage,
): readonly string[] {
  const { sentence } = page;
  if (rows.length === 0) return [];
  const lines = rows.flatMap(({ at, cells }) =>
    cells.map((ways, i) => {
      const list = ways.map(({ line, from }) => sentence(words.way, { line, from }));
      const told = list.length === 0 ? words.reachNothing : list;
      return bullet(page, sentence(words.reach, { part: at, state: columns[i]!.id, list: told }));
    }),
  );
  return [...lines, paragraph(page, words.openOnly, 2)];
}

function findingLines(
  { severity, title, cells }: Extract<StateRow, { what: 'finding' }>,
  columns: readonly StateColumn[],
  page: ComparePage,
): readonly string[] {
  const { sentence } = page;
  const list = cells.map((outcome, i) =>
    sentence(words.cell, { state: columns[i]!.id, outcome: words.outcome[outcome ?? 'none'] }),
  );
  return [
    paragraph(page, sentence(words.finding, { mark: severityMarks[severity], title }), 2, 8),
    paragraph(page, sentence(words.cells, { list }), 10),
  ];
}

function lastLine({ columns, rows }: StateTable, file: string, page: ComparePage): string {
  const { sentence } = page;
  const worst = columns.reduce((a, b) => (b.counts.hazards > a.counts.hazards ? b : a));
  const verdict =
    rows.length === 0
      ? words.same
      : sentence(words.verdict, {
          rows: rows.length,
          count: columns.length,
          state: worst.id,
          hazards: worst.counts.hazards,
        });
  const two = columns.slice(0, 2).map((c) => (c.id === 'as typed' ? 'typed' : c.id));
  const next = two.length < 2 ? '' : sentence(words.next, { file, states: two.join(',') });
  return `${verdict} ${next}`.trim();
}
