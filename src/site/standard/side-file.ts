import { refuseOtherKeys } from '../format/read-value.ts';
import type { Problem } from '../problem.ts';
import { withinLimits } from '../reading/limits.ts';
import { readYaml } from '../reading/read-yaml.ts';
import { newReport, refuse, type Spot } from '../reading/report.ts';
import { sourceText } from '../reading/source-text.ts';
import type { MapNode } from '../reading/tree.ts';

export interface Side {
  readonly root: MapNode;
  readonly spot: Spot;
}

/**
 * Reads a small file that stands beside a site file: a group of the keys given, turned into a value. All problems at once, in
 * the order of the file; with one of them there is no value. Never throws.
 */
export function sideFile<T>(
  content: string,
  keys: readonly string[],
  read: (side: Side) => T,
): { readonly value: T | null; readonly problems: readonly Problem[] } {
  const report = newReport(sourceText(content));
  const spot: Spot = { path: '', report };
  const value = withinLimits(content, spot) ? readRoot(content, keys, spot, read) : null;
  const problems = [...report.problems].sort(
    (a, b) => a.source.line - b.source.line || a.source.column - b.source.column || (a.key < b.key ? -1 : 1),
  );
  return { value: problems.length > 0 ? null : value, problems };
}

function readRoot<T>(content: string, keys: readonly string[], spot: Spot, read: (side: Side) => T): T | null {
  const { tree } = readYaml(content, spot);
  if (tree.is !== 'map') {
    return refuse(spot, { start: 0, end: 0 }, tree.is === 'blank' ? 'side-file-empty' : 'side-file-not-a-group', {
      keys: keys.join(', '),
    });
  }
  refuseOtherKeys(tree, keys, spot);
  return read({ root: tree, spot });
}
