import { type HeatedMetal, leastArea, temperatureRise } from './temperature-rise.ts';

/** A metal that can melt. */
export interface MeltingMetal extends HeatedMetal {
  readonly meltingCelsius: number;
}

/** What a surge does to a conductor. */
export interface Heating {
  /** Rise, kelvin; null where it melts: the formula ends there. */
  readonly riseK: number | null;
  /** Whether it reaches its melting point. */
  readonly melts: boolean;
}

/** The temperature that the constants of a metal are taken at. */
const startOfConstantsC = 20;

/**
 * What an action integral, joule per ohm, does to a conductor that starts at 20 °C. A conductor that just reaches its melting
 * point counts as melting: it has no strength left. Bounds as for `temperatureRise`.
 */
export function heatingBy(metal: MeltingMetal, areaM2: number, specificEnergyJPerOhm: number): Heating {
  const riseK = temperatureRise(metal, areaM2, specificEnergyJPerOhm);
  const melts = riseK >= riseToMelting(metal);
  return { riseK: melts ? null : riseK, melts };
}

/** The least section, square metres, that does not reach its melting point from 20 °C. */
export function leastUnmeltedArea(metal: MeltingMetal, specificEnergyJPerOhm: number): number {
  return leastArea(metal, specificEnergyJPerOhm, riseToMelting(metal));
}

function riseToMelting({ meltingCelsius }: MeltingMetal): number {
  if (!(meltingCelsius > startOfConstantsC && meltingCelsius < Infinity)) {
    throw new RangeError(`a metal that melts at ${meltingCelsius} C is no conductor`);
  }
  return meltingCelsius - startOfConstantsC;
}
