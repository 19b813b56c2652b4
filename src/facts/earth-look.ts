import { bondingOf } from '../bonding/bonding-of.ts';
import { groundOfRun } from '../network/dc-of.ts';
import { earthOhmWithWires } from '../network/earth-with-wires.ts';
import type { Site } from '../site/site.ts';
import { once } from '../units/once.ts';

/**
 * Likely resistance to earth at the service of a site with wires added, by an update of the solved network of the site as it
 * is; that one is solved once, when it is first asked for. See `earthOhmWithWires` for what cannot be had so (null).
 */
export function earthLook(typed: Site, state: string | null): (more: Site) => number | null {
  const base = once(() => {
    const run = bondingOf(typed, state);
    return { run, ground: groundOfRun(run) };
  });
  return (more) => earthOhmWithWires(base().run, base().ground, more);
}
