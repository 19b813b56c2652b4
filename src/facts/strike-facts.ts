import { applyState } from '../bonding/apply-state.ts';
import { type BondingRun, bondingIn } from '../bonding/bonding-of.ts';
import { buildGraph } from '../bonding/build-graph.ts';
import { siteIndex } from '../bonding/site-index.ts';
import { groundOfRun } from '../network/dc-of.ts';
import type { Ground } from '../network/ground.ts';
import { mostWires, type StrikeAsk, type StrikeFigures, strikeFigures } from '../network/strike-figures.ts';
import type { Site } from '../site/site.ts';

export { type BuriedArm, buriedArms, usefulLength } from '../network/buried-arms.ts';
export { unknownLevelV } from '../network/protector-device.ts';
export { heatAtLevels } from '../network/strike-heat.ts';
export { outsideOhm } from '../network/strike-live.ts';
export { type NearbySide, nearbySides } from '../network/strike-nearby.ts';

/** One stroke of a site, as the network gives it; see `StrikeFigures`. */
export type StrikeFacts = StrikeFigures;

/** What is asked of the default strike: the median first negative stroke at the top of the highest support. */
export function defaultStrike(run: BondingRun, ground: Ground, detail: boolean): StrikeFacts {
  return strikeFigures(run, ground, {
    at: null,
    wave: null,
    currentA: null,
    between: [],
    named: [],
    mostWires,
    detail,
  });
}

/** A strike that somebody asks for, in one state of a site (null: as typed). The point of a support becomes a node of its own. */
export function strikeFacts(typed: Site, state: string | null, ask: StrikeAsk): StrikeFacts {
  const applied = applyState(typed, state);
  const run = bondingIn(applied, state ?? 'as typed');
  const points = [...(ask.at === null ? [] : [ask.at]), ...ask.named];
  const metal = points.length === 0 ? run.metal : buildGraph(siteIndex(applied.site), applied.openings, points);
  const asked: BondingRun = { ...run, metal, graph: metal.graph };
  return strikeFigures(asked, groundOfRun(run), ask);
}
