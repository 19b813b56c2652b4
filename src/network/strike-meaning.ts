import type { BondingRun } from '../bonding/bonding-of.ts';
import { type Peak, peakOf } from '../surge/peak-of.ts';
import { currentFigure, overTime } from '../surge/surge-figure.ts';
import { type ArresterMargin, arresterMargins } from './arrester-margins.ts';
import type { Ground } from './ground.ts';
import { type SideFlash, sideFlashes } from './side-flashes.ts';
import { type StrikeEarth, strikeEarths } from './strike-earths.ts';
import { type StrikeForce, strikeForces } from './strike-forces.ts';
import type { IonisedElectrode } from './strike-ionised.ts';
import { strikeIntoSoil } from './strike-result.ts';
import type { KnownStrike } from './strike-sides.ts';
import type { StrikeStroke } from './strike-wave.ts';

/** What a stroke's figures mean for things that stand beside it or were chosen for it. */
export interface StrikeMeaning {
  readonly forces: readonly StrikeForce[];
  readonly sideFlashes: readonly SideFlash[];
  readonly margins: readonly ArresterMargin[];
  readonly earths: readonly StrikeEarth[];
  /** Whether the lightning enters where it strikes, comes in along a line, or strikes near by. */
  readonly how: 'struck' | 'line' | 'nearby';
  /** Field at which soil was taken to break down, volts per metre; null: it was taken to hold. */
  readonly ionisationVPerM: number | null;
  /** Electrodes about which the soil broke down; empty: it was taken to hold. */
  readonly ionised: readonly IonisedElectrode[];
}

export const noMeaning: StrikeMeaning = {
  forces: [],
  sideFlashes: [],
  margins: [],
  earths: [],
  how: 'struck',
  ionisationVPerM: null,
  ionised: [],
};

/** Each is worked out when it is asked for. */
export function strikeMeaning(
  bonded: BondingRun,
  ground: Ground,
  { network, run, at, ionised, ionisationVPerM }: KnownStrike,
  { figures }: StrikeStroke,
): { readonly [Name in keyof StrikeMeaning]: () => StrikeMeaning[Name] } {
  const { branches, points } = network;
  const branchPeak = (branch: number): Peak => {
    const weights = new Float64Array(branches.length + points.length);
    weights[branch] = 1;
    return peakOf(run.wave.timesS, overTime(run, currentFigure(run, weights)));
  };
  return {
    forces: () => strikeForces(bonded.site, network, figures.peakA, (branch) => branchPeak(branch).value),
    sideFlashes: () => sideFlashes(bonded, branches),
    how: () => (at.channel === undefined ? 'struck' : at.channel === 'line' ? 'line' : 'nearby'),
    ionisationVPerM: () => ionisationVPerM,
    ionised: () => ionised,
    margins: () => arresterMargins(bonded.site),
    earths: () =>
      strikeEarths(bonded.site, network, ground, {
        frontS: figures.frontS,
        peakA: figures.peakA,
        intoSoil: strikeIntoSoil(network, run),
      }),
  };
}
