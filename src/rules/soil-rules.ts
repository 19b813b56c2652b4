import { pathMinimumArea } from './conductors/path-minimum-area.ts';
import { electrode10nOhm } from './earth-resistance/electrode-10n-ohm.ts';
import { loop50OhmTrigger } from './earth-resistance/loop-50-ohm-trigger.ts';
import { site3OhmWet } from './earth-resistance/site-3-ohm-wet.ts';
import { site10Ohm } from './earth-resistance/site-10-ohm.ts';
import { typeALength } from './earth-resistance/type-a-length.ts';
import { typeBRadius } from './earth-resistance/type-b-radius.ts';
import { unitSanity } from './earth-resistance/unit-sanity.ts';
import { belowMoistureAndFrost } from './electrode-places/below-moisture-and-frost.ts';
import { electrodeCountPerTowerLeg } from './electrode-places/electrode-count-per-tower-leg.ts';
import { electrodeFromFoundationIec } from './electrode-places/electrode-from-foundation-iec.ts';
import { electrodeFromFoundationUs } from './electrode-places/electrode-from-foundation-us.ts';
import { radialLength } from './electrode-places/radial-length.ts';
import { ringDepthUs } from './electrode-places/ring-depth-us.ts';
import { ringNotUnderRoofOrPaving } from './electrode-places/ring-not-under-roof-or-paving.ts';
import { ringSoilContact } from './electrode-places/ring-soil-contact.ts';
import { rodSpacingBetweenSystems } from './electrode-places/rod-spacing-between-systems.ts';
import { rodTopDepthMilitary } from './electrode-places/rod-top-depth-military.ts';
import { rodTopProtected } from './electrode-places/rod-top-protected.ts';
import { rodVerticalOr45 } from './electrode-places/rod-vertical-or-45.ts';
import { rodsInUndisturbedSoil } from './electrode-places/rods-in-undisturbed-soil.ts';
import { secondRingDistance } from './electrode-places/second-ring-distance.ts';
import { towerRodsCount } from './electrode-places/tower-rods-count.ts';
import { auRodDimensions } from './electrode-sizes/au-rod-dimensions.ts';
import { commsRodSizeUs } from './electrode-sizes/comms-rod-size-us.ts';
import { concreteEncasedUs } from './electrode-sizes/concrete-encased-us.ts';
import { iecAntennaElectrodeMinimum } from './electrode-sizes/iec-antenna-electrode-minimum.ts';
import { iecBuriedConductorDimensions } from './electrode-sizes/iec-buried-conductor-dimensions.ts';
import { iecPlateDimensions } from './electrode-sizes/iec-plate-dimensions.ts';
import { iecPowerElectrodeDimensions } from './electrode-sizes/iec-power-electrode-dimensions.ts';
import { iecRodDimensions } from './electrode-sizes/iec-rod-dimensions.ts';
import { lightningRodSizeUs } from './electrode-sizes/lightning-rod-size-us.ts';
import { militaryRodSize } from './electrode-sizes/military-rod-size.ts';
import { plateUs } from './electrode-sizes/plate-us.ts';
import { ringUs } from './electrode-sizes/ring-us.ts';
import { rodDiameterUs } from './electrode-sizes/rod-diameter-us.ts';
import { towerRodSize } from './electrode-sizes/tower-rod-size.ts';
import { waterPipeElectrode } from './electrode-sizes/water-pipe-electrode.ts';
import { waterPipeSupplemented } from './electrode-sizes/water-pipe-supplemented.ts';
import { aluminiumNeverElectrode } from './electrodes/aluminium-never-electrode.ts';
import { electrodeBareClean } from './electrodes/electrode-bare-clean.ts';
import { poolShellNeverElectrode } from './electrodes/pool-shell-never-electrode.ts';
import { lightningRodsNotServiceElectrode } from './one-earth/lightning-rods-not-service-electrode.ts';
import { connectionLabelled } from './records/connection-labelled.ts';
import { electrodeTestedAtInstall } from './records/electrode-tested-at-install.ts';
import { photoBeforeBackfill } from './records/photo-before-backfill.ts';
import { probeDistance } from './records/probe-distance.ts';
import { resistanceHasProvenance } from './records/resistance-has-provenance.ts';
import { seasonalTest } from './records/seasonal-test.ts';

/** What lies in the soil, what it measures and what was written down of it; in reading order. */
export const soilRules = [
  aluminiumNeverElectrode,
  poolShellNeverElectrode,
  electrodeBareClean,
  rodDiameterUs,
  commsRodSizeUs,
  lightningRodSizeUs,
  towerRodSize,
  militaryRodSize,
  ringUs,
  concreteEncasedUs,
  waterPipeElectrode,
  waterPipeSupplemented,
  plateUs,
  iecRodDimensions,
  iecBuriedConductorDimensions,
  iecPlateDimensions,
  iecPowerElectrodeDimensions,
  iecAntennaElectrodeMinimum,
  auRodDimensions,
  rodSpacingBetweenSystems,
  rodVerticalOr45,
  rodTopProtected,
  rodTopDepthMilitary,
  electrodeFromFoundationUs,
  electrodeFromFoundationIec,
  ringDepthUs,
  radialLength,
  secondRingDistance,
  rodsInUndisturbedSoil,
  ringNotUnderRoofOrPaving,
  belowMoistureAndFrost,
  ringSoilContact,
  electrodeCountPerTowerLeg,
  towerRodsCount,
  lightningRodsNotServiceElectrode,
  site10Ohm,
  site3OhmWet,
  electrode10nOhm,
  loop50OhmTrigger,
  typeALength,
  typeBRadius,
  unitSanity,
  pathMinimumArea,
  resistanceHasProvenance,
  electrodeTestedAtInstall,
  seasonalTest,
  probeDistance,
  photoBeforeBackfill,
  connectionLabelled,
] as const;
