import { type BondingRun, bondingOf } from '../bonding/bonding-of.ts';
import { reachInStates } from '../bonding/reach-in-states.ts';
import { type DcRun, dcOf, groundOfRun } from '../network/dc-of.ts';
import { earthConditions } from '../network/earth-conditions.ts';
import { measuredSoil } from '../network/measured-soil.ts';
import { siteSounding } from '../network/site-sounding.ts';
import { transferredShares } from '../network/transferred-shares.ts';
import type { Site } from '../site/site.ts';
import { conductorFacts } from './conductor-facts.ts';
import { electrodeFacts } from './electrode-facts.ts';
import type { Facts } from './facts.ts';
import { jointFacts } from './joint-facts.ts';
import { arresterFacts, boxFacts, mastFacts } from './part-facts.ts';

/**
 * The facts of a site in one state (null: as typed). Each is worked out when it is first asked for, and once. `seasons`: the
 * earth is also worked out wet, dry, in summer and in winter.
 */
export function factsOf(typed: Site, state: string | null, seasons = false): Facts {
  const bonded = once((): BondingRun => bondingOf(typed, state));
  const site = () => bonded().site;
  const soil = once(() => groundOfRun(bonded()));
  const dc = once((): DcRun => dcOf(bonded(), soil()));
  const ground = once(() => ({
    conditions: earthConditions(bonded(), { ground: soil(), dc: dc() }, seasons),
    transferred: transferredShares(bonding().groups, soil()),
    measured: measuredSoil(site(), soil()),
    sounding: seasons || soil().soil?.from !== 'typed' ? siteSounding(site()) : null,
  }));
  const bonding = () => bonded().bonding;
  const joints = once(() => jointFacts(site(), (id) => dc().jointOhm.get(id) ?? null));
  const conductors = once(() => conductorFacts(site(), bonding()));
  const electrodes = once(() => electrodeFacts(site(), bonding(), dc()));
  const masts = once(() => mastFacts(site()));
  const arresters = once(() => arresterFacts(site(), bonding()));
  const boxes = once(() => boxFacts(site()));
  const reach = once(() => reachInStates(typed));
  return {
    get site() {
      return site();
    },
    get header() {
      return site().header;
    },
    get sections() {
      return site().sections;
    },
    get bonding() {
      return bonding();
    },
    get electrodes() {
      return electrodes();
    },
    get masts() {
      return masts();
    },
    get conductors() {
      return conductors();
    },
    get joints() {
      return joints();
    },
    get arresters() {
      return arresters();
    },
    get boxes() {
      return boxes();
    },
    get earth() {
      return dc().earth;
    },
    get ground() {
      return ground();
    },
    get reachInStates() {
      return reach();
    },
  };
}

function once<T>(work: () => T): () => T {
  let done: { readonly value: T } | null = null;
  return () => {
    done ??= { value: work() };
    return done.value;
  };
}
