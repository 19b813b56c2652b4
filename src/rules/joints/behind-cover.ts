import type { JointFacts } from '../../facts/facts.ts';
import { partIndex } from '../../facts/part-index.ts';
import type { Site } from '../../site/site.ts';

/** What has live parts behind a cover that nobody but an electrician takes off. */
const covered: ReadonlySet<string> = new Set(['service panel', 'meter box', 'sub-panel', 'mains protector']);

/** Whether whoever looks at a joint has to open something live. What lands on a bar beside such a box is on the bar. */
export function isBehindCover({ on }: Pick<JointFacts, 'on'>, site: Site): boolean {
  const part = partIndex(site).get(on ?? '');
  return covered.has(part?.kind ?? '') || (part?.section === 'equipment' && part.id === site.header.service);
}

/** How a doubt about a joint is settled: by a look, or by an electrician where a cover has to come off. */
export function lookAtJoint(joint: JointFacts, site: Site): 'look' | 'look inside' {
  return isBehindCover(joint, site) ? 'look inside' : 'look';
}
