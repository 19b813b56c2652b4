import { weights } from '../rework/plan/burden-of.ts';
import { worksCommandWords } from '../words/works-command-words.ts';
import { sayIn } from './page-context.ts';
import type { WorksContext } from './works-context.ts';

const words = worksCommandWords.order;

/** How the order was found, in the words of the command. */
export function orderText(page: WorksContext): string {
  const { weighedBy, searched } = page.plan;
  const { hazard, defect, advice, rodM, jointM } = weights;
  const parts = [
    sayIn(page, words[weighedBy]),
    ...(weighedBy === 'material' ? [sayIn(page, words.material_why, { rodM, jointM })] : []),
    sayIn(page, words.weights, { hazard, defect, advice }),
    words.tried,
    searched === 'every set' ? words.every : words.steps,
  ];
  return parts.join(' ');
}
