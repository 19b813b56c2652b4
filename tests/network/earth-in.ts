import { bondingOf } from '../../src/bonding/bonding-of.ts';
import { dcOf, groundOfRun } from '../../src/network/dc-of.ts';
import { readSite } from '../../src/site/read-site.ts';

/** The direct-current earth of a site typed as text. */
export function earthIn(text: string, state: string | null = null) {
  const { site, problems } = readSite(text, 'test.site.yaml');
  if (site === null) throw new Error(JSON.stringify(problems));
  const run = bondingOf(site, state);
  const ground = groundOfRun(run);
  return { site, run, ground, dc: dcOf(run, ground) };
}
