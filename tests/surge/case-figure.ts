import type { SurgeCourse } from '../../src/surge/surge-course.ts';
import { currentFigure, figureDifference, potentialFigure, type SurgeFigure } from '../../src/surge/surge-figure.ts';
import type { CaseNetwork } from './case-network.ts';

/** What a case asks for: v(node), v(node,node) or i(branch). */
export function caseFigure(run: SurgeCourse, { nodes, names }: CaseNetwork, what: string): SurgeFigure {
  const inside = what.slice(2, -1);
  if (what.startsWith('v')) {
    const [a, b] = inside.split(',').map((node) => potentialFigure(run, nodes.indexOf(node)));
    return b === undefined ? a! : figureDifference(a!, b);
  }
  const at = names.indexOf(inside);
  return currentFigure(run, new Float64Array(run.drive.way.length).fill(1, at, at + 1));
}
