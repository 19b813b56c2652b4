import { buildSite } from './build/build-site.ts';
import { checkMentions } from './check/check-mentions.ts';
import { checkSite } from './check/check-site.ts';
import { collectIds } from './check/ids.ts';
import type { Problem } from './problem.ts';
import { withinLimits } from './reading/limits.ts';
import { readYaml } from './reading/read-yaml.ts';
import { newReport, type Report, refuse, type Spot } from './reading/report.ts';
import { sourceText } from './reading/source-text.ts';
import type { MapNode, TreeNode } from './reading/tree.ts';
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
 * with its line and column, and all problems at once. `fileName` is what the site calls its file.
 */
export function readSite(text: string, fileName: string): SiteRead {
  const report = newReport(sourceText(text));
  const spot: Spot = { path: '', report };
  const site = withinLimits(text, spot) ? readText(text, fileName, report, spot) : null;
  const problems = inOrder(report.problems);
  if (site === null || problems.length > 0) return { site: null, problems };
  return { site, problems };
}

function readText(text: string, fileName: string, report: Report, spot: Spot): Site | null {
  const { tree } = readYaml(text, spot);
  const root = rootOf(tree, spot);
  if (root === null) return null;
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
