import { askedNodes } from '../bonding/asked-nodes.ts';
import type { BondingRun } from '../bonding/bonding-of.ts';
import type { PointRef } from '../site/site.ts';
import type { Wave } from '../surge/wave.ts';
import type { Side } from './certain.ts';
import type { Ground } from './ground.ts';
import { soilAt } from './soil-at.ts';
import { coupledStrike } from './strike-coupled.ts';
import { type IonisedElectrode, ionisedStrike } from './strike-ionised.ts';
import { type RefusedStrike, type StrikeRun, type StrikeSite, strikeOf, strikeSite } from './strike-of.ts';
import type { StrikePoint } from './strike-point.ts';

/** One stroke on one side of the soil's range, with the site that it was worked out on. */
export interface KnownStrike extends StrikeRun {
  readonly site: StrikeSite;
  /** Electrodes about which the soil broke down; empty: it was taken to hold. */
  readonly ionised: readonly IonisedElectrode[];
  /** Field at which it was taken to break down, volts per metre; null: it was taken to hold. */
  readonly ionisationVPerM: number | null;
}

/** What a stroke is worked out with on every side. */
export interface SidesAsk extends Pick<StrikeSite, 'named'> {
  readonly point: StrikePoint;
  readonly wave: Wave;
  /** Field at which soil breaks down; null: it holds. */
  readonly ionisationVPerM: number | null;
}

/** One stroke in the soil at its least, its likely or its greatest resistivity. */
export function strikeOnSide(
  bonded: BondingRun,
  ground: Ground,
  side: Side,
  { point, wave, named, ionisationVPerM }: SidesAsk,
): KnownStrike | RefusedStrike {
  const site = strikeSite(bonded, ground, side, named);
  if (!site.ok) return site;
  const run = strikeOf(site, point, wave);
  if (!run.ok) return run;
  const soil = ground.soil?.profile[side] ?? null;
  if (ionisationVPerM === null || soil === null) {
    return { ...run, site, ionised: [], ionisationVPerM: null };
  }
  const soilOf = soilAt(bonded.site, soil);
  const broken = ionisedStrike(site, run, { wave, fieldVPerM: ionisationVPerM, soilOf });
  return { ...broken.run, site: broken.site, ionised: broken.electrodes, ionisationVPerM };
}

/**
 * The same with the wires whose way nobody knows coupled as closely as wires can be; [] where there are none. Of one that
 * cannot be worked out nothing is said.
 */
export function coupledSides(known: readonly KnownStrike[], wave: Wave): readonly StrikeRun[] {
  return known.flatMap((one) => coupledStrike(one.site, one, wave) ?? []);
}

/** Nodes of points that are asked for as they are typed. */
export function namedNodes({ metal }: BondingRun, points: readonly PointRef[]): StrikeSite['named'] {
  return new Map(
    points.flatMap((point) => {
      const found = askedNodes(metal, point);
      return found.is === 'found' && point.text !== point.part ? [[point.text, found.nodes] as const] : [];
    }),
  );
}
