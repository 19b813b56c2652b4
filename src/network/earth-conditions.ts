import type { BondingRun } from '../bonding/bonding-of.ts';
import { conditionNames, type NamedCondition, namedCondition } from '../materials/soil-conditions.ts';
import type { Site } from '../site/site.ts';
import { type DcRun, dcOf } from './dc-of.ts';
import { type Ground, groundOf } from './ground.ts';
import { conditionOfState, groundSoil } from './ground-soil.ts';

/** The earth of a site in one condition of the ground, all else as it is. */
export interface EarthCondition {
  /** 'as typed', the id of a state, or the name of a season. */
  readonly id: string;
  readonly condition: NamedCondition | null;
  readonly ground: Ground;
  readonly dc: DcRun;
}

type Now = Pick<EarthCondition, 'ground' | 'dc'>;

/**
 * The earth in every condition: as it is in the state of the run first, then in the ground of each state of the file that
 * says something of the ground, by id; with `seasons` also wet, dry, summer and winter, where no state has them.
 */
export function earthConditions(run: BondingRun, now: Now, seasons: boolean) {
  const { site } = run;
  const all: EarthCondition[] = [conditionAsIs(run, now)];
  if (now.ground.soil === null) return all;
  const inState = now.ground.soil.condition?.name;
  const wanted = [...statesOf(site), ...(seasons ? seasonsOf(site) : [])];
  const taken = new Set(inState === undefined ? [] : [inState]);
  for (const { id, condition } of wanted) {
    if (taken.has(condition.name)) continue;
    taken.add(condition.name);
    const ground = groundOf(site, groundSoil(site, condition));
    all.push({ id, condition, ground, dc: dcOf(run, ground) });
  }
  return all;
}

/** The ground as it is in the state of a run. */
export function conditionAsIs({ bonding }: BondingRun, now: Now): EarthCondition {
  return { id: bonding.state, condition: now.ground.soil?.condition ?? null, ...now };
}

interface Wanted {
  readonly id: string;
  readonly condition: NamedCondition;
}

function statesOf(site: Site): readonly Wanted[] {
  return site.states
    .flatMap((state) => {
      const condition = conditionOfState(site, state);
      return condition === null ? [] : [{ id: state.id, condition }];
    })
    .sort((a, b) => (a.id < b.id ? -1 : 1));
}

/** Winter without a frost depth would say nothing that wet does not. */
function seasonsOf(site: Site): readonly Wanted[] {
  const frostM = site.soil?.frostM ?? null;
  return conditionNames
    .filter((name) => name !== 'winter' || frostM !== null)
    .map((name) => ({ id: name, condition: namedCondition(name, frostM) }));
}
