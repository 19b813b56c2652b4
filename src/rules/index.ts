import { allElectrodesOneSystem } from './one-earth/all-electrodes-one-system.ts';
import { antennaRodIsNotASubstitute } from './one-earth/antenna-rod-is-not-a-substitute.ts';
import { outletGroundNotLightningGround } from './one-earth/outlet-ground-not-lightning-ground.ts';
import { screensNotSoleBond } from './one-earth/screens-not-sole-bond.ts';
import { serviceElectrodeKnown } from './one-earth/service-electrode-known.ts';
import type { Rule } from './rule.ts';

/** The pack, in reading order. */
export const rules = [
  serviceElectrodeKnown,
  allElectrodesOneSystem,
  antennaRodIsNotASubstitute,
  screensNotSoleBond,
  outletGroundNotLightningGround,
] as readonly unknown[] as readonly Rule[];
