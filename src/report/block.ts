/** What a page is made of. Sections are built of these; a template prints each kind, and decides nothing. */
export type Block =
  | { readonly is: 'paragraph'; readonly text: string }
  | { readonly is: 'subheading'; readonly text: string }
  | { readonly is: 'minor'; readonly text: string }
  | { readonly is: 'list'; readonly ordered: boolean; readonly items: readonly string[] }
  | { readonly is: 'checklist'; readonly items: readonly CheckItem[] }
  | Table
  | Matrix
  | Figure
  | { readonly is: 'figures'; readonly figures: readonly Figure[] }
  | { readonly is: 'findings'; readonly groups: readonly FindingGroup[] }
  | { readonly is: 'definitions'; readonly items: readonly { readonly word: string; readonly meaning: string }[] }
  | { readonly is: 'photo'; readonly dataUri: string; readonly alt: string; readonly caption: string };

export interface Figure {
  readonly is: 'figure';
  readonly id: string;
  readonly svg: string;
  readonly caption: string;
}

/** The first cell of each row names the row. */
export interface Table {
  readonly is: 'table';
  readonly id: string;
  readonly caption: string;
  readonly head: readonly string[];
  readonly rows: readonly Row[];
  /** Look of the table: what its columns need. */
  readonly look: 'plain' | 'wide' | 'signatures';
}

export interface Row {
  readonly first: Cell;
  readonly cells: readonly Cell[];
}

export interface Cell {
  readonly text: string;
  /** Lines below the first. */
  readonly more: readonly string[];
  /**
   * Classes for the style sheet. long: holds a word so long that it has to be broken anywhere, lest the table grow wider
   * than the paper. even: its lines weigh the same; else the first says most. loud: nobody may miss it.
   */
  readonly look: '' | 'long' | 'even' | 'long even' | 'loud';
  /** Id of the section that its text leads to. */
  readonly link?: string;
}

/** Figures of pairs: the same names down and across, the size of each figure shaded as well as written. */
export interface Matrix {
  readonly is: 'matrix';
  readonly id: string;
  readonly caption: string;
  /** What the figures are in. */
  readonly unit: string;
  readonly head: readonly string[];
  readonly rows: readonly { readonly name: string; readonly cells: readonly ShadedCell[] }[];
  readonly legend: string;
  readonly shades: readonly ShadedCell[];
}

export interface ShadedCell {
  readonly text: string;
  /** 0, the palest, to 5; '': none. */
  readonly shade: string;
}

export interface CheckItem {
  readonly text: string;
  readonly at: string;
  readonly decides: string;
}

/** Findings of one rule, which share their source. */
export interface FindingGroup {
  /** hazard, defect or advice: for the style sheet; the word itself stands beside each title. */
  readonly mark: string;
  readonly findings: readonly FindingView[];
  readonly source: string;
}

export interface FindingView {
  readonly id: string;
  readonly severity: string;
  readonly title: string;
  /** Numbers and names of the parts it is about. */
  readonly place: string;
  /** Label and text, in order; only those that say something. */
  readonly lines: readonly { readonly label: string; readonly text: string }[];
  readonly foldedLabel: string;
  readonly folded: readonly { readonly id: string; readonly title: string; readonly text: string }[];
}

export interface Section {
  readonly id: string;
  readonly heading: string;
  readonly blocks: readonly Block[];
}

export function paragraph(text: string): Block {
  return { is: 'paragraph', text };
}

export function subheading(text: string): Block {
  return { is: 'subheading', text };
}

/** A heading below a subheading. */
export function minor(text: string): Block {
  return { is: 'minor', text };
}

/** A cell from text or several lines, of which the first says most; empty lines are left out. */
export function cell(...lines: readonly (string | null)[]): Cell {
  const said = lines.filter((l): l is string => l !== null && l !== '');
  return { text: said[0] ?? '', more: said.slice(1), look: isLong(said) ? 'long' : '' };
}

/** A cell that nobody may miss. */
export function loudCell(text: string, ...more: readonly string[]): Cell {
  return { text, more, look: 'loud' };
}

/** A cell that leads to a section of the page. */
export function linkCell(text: string, link: string): Cell {
  return { ...cell(text), link };
}

/** A cell with a list, an entry a line. */
export function listCell(lines: readonly string[]): Cell {
  return { text: lines[0] ?? '', more: lines.slice(1), look: isLong(lines) ? 'long even' : 'even' };
}

function isLong(lines: readonly string[]): boolean {
  return lines.some((l) => l.split(/[\s-]/).some((word) => word.length > longestWord));
}

/** Characters that fit in the narrowest column of the widest table. */
const longestWord = 16;

/** A table, or nothing where it has no rows. */
export function tableIfAny(table: Omit<Table, 'is' | 'look'> & { readonly look?: Table['look'] }): readonly Block[] {
  return table.rows.length === 0 ? [] : [{ is: 'table', look: 'plain', ...table }];
}

/** Small figures, two beside each other where the page is wide enough; nothing where there are none. */
export function figures(all: readonly Figure[]): readonly Block[] {
  return all.length === 0 ? [] : [{ is: 'figures', figures: all }];
}

export function row(first: Cell, ...cells: readonly Cell[]): Row {
  return { first, cells };
}
