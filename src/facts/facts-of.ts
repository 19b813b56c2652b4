import { type BondingRun, bondingOf } from '../bonding/bonding-of.ts';
import { reachInStates } from '../bonding/reach-in-states.ts';
import { type DcRun, dcOf, groundOfRun } from '../network/dc-of.ts';
import { conditionAsIs, earthConditions } from '../network/earth-conditions.ts';
import type { Ground } from '../network/ground.ts';
import { jointOhm } from '../network/joint-ohm.ts';
import { measuredSoil } from '../network/measured-soil.ts';
import { readingTraps } from '../network/reading-traps.ts';
import { siteSounding } from '../network/site-sounding.ts';
import { noAnswers, soilAnswers } from '../network/soil-answers.ts';
import { transferredShares } from '../network/transferred-shares.ts';
import { isAmerican } from '../site/is-american.ts';
import type { Site } from '../site/site.ts';
import { lazily } from '../units/lazily.ts';
import { once } from '../units/once.ts';
import { conductorFacts } from './conductor-facts.ts';
import { electrodeFacts } from './electrode-facts.ts';
import type { Facts, GroundFacts } from './facts.ts';
import { jointFacts } from './joint-facts.ts';
import { arresterFacts, boxFacts, mastFacts } from './part-facts.ts';
import { defaultStrike } from './strike-facts.ts';

/**
 * The facts of a site in one state (null: as typed). Each is worked out when it is first asked for, and once. `seasons`: the
 * earth also in the ground of every state, wet, dry, in summer and in winter, and what else only a page shows.
 */
export function factsOf(typed: Site, state: string | null, seasons = false): Facts {
  const bonded = once((): BondingRun => bondingOf(typed, state));
  const soil = once(() => groundOfRun(bonded()));
  const dc = once((): DcRun => dcOf(bonded(), soil()));
  const site = () => bonded().site;
  const bonding = () => bonded().bonding;
  return lazily<Facts>({
    site,
    header: () => site().header,
    isAmerican: () => isAmerican(site().header.region),
    sections: () => site().sections,
    bonding,
    electrodes: () => electrodeFacts(site(), bonding(), (id) => soil().aloneOf(id)),
    masts: () => mastFacts(site()),
    conductors: () => conductorFacts(site(), bonding()),
    joints: () => jointFacts(site(), jointOhm(bonded())),
    arresters: () => arresterFacts(site(), bonding()),
    boxes: () => boxFacts(site()),
    earth: () => dc().earth,
    ground: () => groundFacts(bonded(), soil(), dc(), seasons),
    reachInStates: () => reachInStates(typed),
    strike: () => defaultStrike(bonded(), soil(), seasons),
  });
}

function groundFacts(run: BondingRun, ground: Ground, dc: DcRun, seasons: boolean): GroundFacts {
  const { site, bonding } = run;
  const now = { ground, dc };
  const conditions = seasons ? earthConditions(run, now, true) : [conditionAsIs(run, now)];
  return {
    conditions,
    transferred: transferredShares(bonding.groups, ground),
    measured: measuredSoil(site, ground),
    traps: readingTraps(run),
    sounding: seasons || ground.soil?.from !== 'typed' ? siteSounding(site) : null,
    answers: seasons ? soilAnswers(run, conditions) : noAnswers,
  };
}
