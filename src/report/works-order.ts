import { weights } from '../rework/plan/burden-of.ts';
import type { WorksPlan } from '../rework/work.ts';
import { type Speech, say } from '../words/say.ts';
import { worksCommandWords } from '../words/works-command-words.ts';

const words = worksCommandWords.order;

/** How the order was found. */
export function orderText({ weighedBy, searched, inBatches }: WorksPlan, speech: Speech): string {
  const { hazard, defect, advice, rodM, jointM, unknownM } = weights;
  const parts = [
    say(words[weighedBy], {}, speech),
    ...(weighedBy === 'material' ? [say(words.material_why, { rodM, jointM, unknownM }, speech)] : []),
    say(words.renewed, {}, speech),
    say(words.weights, { hazard, defect, advice }, speech),
    inBatches === true ? words.batches : words.tried,
    searched === 'every set' ? words.every : words.steps,
  ];
  return parts.join(' ');
}
