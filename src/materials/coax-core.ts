import { type Citation, cite, commonPractice } from './source.ts';

/** What a shielded cable has between core and shield, for each metre, where its owner names only its class or nothing. */
export interface CoaxCore {
  /** Of the loop of core and shield: impedance over the speed of its wave. */
  readonly loopHPerM: number;
  readonly coreOhmPerM: number;
  /** What leaks through the holes of the braid: 0 for a tube. */
  readonly leakageHPerM: number;
  readonly source: Citation;
  readonly leakageSource: Citation;
}

const lightMPerS = 299_792_458;
/** Solid polyethylene; foam is faster, so that the loop has a little less. */
const speedShare = 0.66;
/** Copper of 2 mm2. */
const coreOhmPerM = 8.6e-3;
/** The high end of what braids leak, 0.3 to 1 nH for each metre. */
const braidHPerM = 1e-9;

const insulation = cite('MIL-C-17 cable sheets', null, 'solid polyethylene: two thirds of light', 'memory');
const braids = cite('E. F. Vance, Coupling to Shielded Cables', '1978', 'braided shields', 'memory');

/** By the class of a cable (`1/2 in hard line`; null: not known, taken as a braid) and its characteristic impedance, ohm. */
export function coaxCore(cable: string | null, impedanceOhm: number): CoaxCore {
  const isTube = cable?.endsWith('hard line') ?? false;
  return {
    loopHPerM: impedanceOhm / (speedShare * lightMPerS),
    coreOhmPerM,
    leakageHPerM: isTube ? 0 : braidHPerM,
    source: insulation,
    leakageSource: isTube ? commonPractice : braids,
  };
}
