import { buildSite } from './build/build-site.ts';
import { checkMentions } from './check/check-mentions.ts';
import { checkSite } from './check/check-site.ts';
import { collectIds } from './check/ids.ts';
import type { Problem } from './problem.ts';
import { withinLimits, withinParts } from './reading/limits.ts';
import { type ParsedText, readYaml } from './reading/read-yaml.ts';
import { newReport, type Report, refuse, type Spot } from './reading/report.ts';
import { findSlips } from './reading/slips/find-slips.ts';
import type { Slip } from './reading/slips/slip.ts';
import { type SourceText, sourceText } from './reading/source-text.ts';
import { type MapNode, pathAt, type TreeNode } from './reading/tree.ts';
import { readTypedSite } from './reading/typed-site.ts';
import type { Question, Site } from './site.ts';

export interface SiteRead {
  /** null when the file cannot be used. */
  readonly site: Site | null;
  /** Everything that makes it unusable, in the order of the file. */
  readonly problems: readonly Problem[];
}

/**
 * Reads the text of a site file. Never throws: whatever the text is, the result is a site or at least one problem, each
 * with its line and column, and all problems at once. `fileName` is what the site calls its file; `document` is what the text
 * was parsed into already.
 */
export function readSite(text: string, fileName: string, document?: ParsedText): SiteRead {
  const source = sourceText(text);
  const report = newReport(source);
  if (!withinLimits(text, { path: '', report })) return { site: null, problems: inOrder(report.problems) };
  const asTyped = readText(text, (offset) => offset, [], source, fileName, document);
  if (asTyped.site !== null && !asTyped.lone && !mayHide(text)) return asTyped;
  const { slips, corrected } = findSlips(text);
  return slips.length === 0 ? asTyped : readText(corrected.text, corrected.originalOf, slips, source, fileName);
}

/** Text that may hide a value in a comment or a label; a file without it need not be looked through. */
function mayHide(text: string): boolean {
  return /:[ \t]+[#&!]|[ \t,[{-]#\d|[,[{-][ \t]*[&!]/.test(text);
}

/** Slips after which nobody knows yet where the value ends. */
const cutShort: readonly string[] = ['value-cut-by-comment', 'comma-in-braces', 'colon-in-value'];

/**
 * Reads a text that is the owner's, or the owner's with slips mended, which are noted first. Of a value that was
 * perhaps cut short nothing else is said, nor of a line that could not be taken apart.
 */
function readText(
  text: string,
  originalOf: (offset: number) => number,
  slips: readonly Slip[],
  source: SourceText,
  fileName: string,
  document?: ParsedText,
): SiteRead & { readonly lone: boolean } {
  const report = newReport(source);
  const { tree, lone } = readYaml(text, { path: '', report }, originalOf, document);
  const garbled = new Set(report.problems.map((p) => p.source.line));
  noteSlips(slips, text, tree, report);
  const cut = new Set(report.problems.filter((p) => cutShort.includes(p.key)).map((p) => p.path));
  const noted = report.problems.length;
  const site = siteOf(tree, report, fileName);
  const isOwn = (p: Problem, i: number) => i < noted || !(cut.has(p.path) || garbled.has(p.source.line));
  const problems = inOrder(report.problems.filter(isOwn));
  return { site: problems.length > 0 ? null : site, problems, lone };
}

function noteSlips(slips: readonly Slip[], corrected: string, tree: TreeNode, report: Report): void {
  const { lineText } = sourceText(corrected);
  for (const { key, at, values } of slips) {
    const { line } = report.source.placeOf(at.start);
    refuse({ path: pathAt(tree, at.start), report }, at, key, { ...values, corrected: lineText(line).trim() });
  }
}

function siteOf(tree: TreeNode, report: Report, fileName: string): Site | null {
  const root = rootOf(tree, { path: '', report });
  if (root === null || !withinParts(root, { path: '', report })) return null;
  const typed = readTypedSite(root, report);
  checkMentions(typed, collectIds(typed, report), report);
  const site = buildSite(typed, report, fileName);
  checkSite({ typed, site, report });
  return { ...site, questions: inOrder(report.questions), defaults: report.defaults };
}

function rootOf(tree: TreeNode, spot: Spot): MapNode | null {
  if (tree.is === 'map') return tree;
  return refuse(spot, { start: 0, end: 0 }, tree.is === 'blank' ? 'file-empty' : 'file-not-sections', {});
}

/** In the order of the file, each once. */
function inOrder<N extends Problem | Question>(notes: readonly N[]): readonly N[] {
  const texts = new Set<string>();
  return [...notes]
    .sort((a, b) => a.source.line - b.source.line || a.source.column - b.source.column || (a.key < b.key ? -1 : 1))
    .filter((note) => {
      const text = JSON.stringify(note);
      const isNew = !texts.has(text);
      texts.add(text);
      return isNew;
    });
}
