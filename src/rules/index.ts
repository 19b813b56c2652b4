import { aluminium18Inch } from './conductor-runs/aluminium-18-inch.ts';
import { buriedTieBare } from './conductor-runs/buried-tie-bare.ts';
import { conductorGuarded } from './conductor-runs/conductor-guarded.ts';
import { ferrousSleeveBonded } from './conductor-runs/ferrous-sleeve-bonded.ts';
import { groundConductorStraight } from './conductor-runs/ground-conductor-straight.ts';
import { loopOpening } from './conductor-runs/loop-opening.ts';
import { noUpwardRun } from './conductor-runs/no-upward-run.ts';
import { notInDownspout } from './conductor-runs/not-in-downspout.ts';
import { protectorLead20Ft } from './conductor-runs/protector-lead-20-ft.ts';
import { smallConductorInConduit } from './conductor-runs/small-conductor-in-conduit.ts';
import { supportSpacing } from './conductor-runs/support-spacing.ts';
import { twoPathsFromStrikePoint } from './conductor-runs/two-paths-from-strike-point.ts';
import { antennaBondingSizeIec } from './conductor-sizes/antenna-bonding-size-iec.ts';
import { auDownConductor } from './conductor-sizes/au-down-conductor.ts';
import { barSectionIec } from './conductor-sizes/bar-section-iec.ts';
import { barToBarBondIec } from './conductor-sizes/bar-to-bar-bond-iec.ts';
import { bodyToBarBondIec } from './conductor-sizes/body-to-bar-bond-iec.ts';
import { bondingConductorSizeUs } from './conductor-sizes/bonding-conductor-size-us.ts';
import { commonBondMainSize } from './conductor-sizes/common-bond-main-size.ts';
import { commsElectrodeBondSize } from './conductor-sizes/comms-electrode-bond-size.ts';
import { communicationsConductorSize } from './conductor-sizes/communications-conductor-size.ts';
import { concreteOnlyConductorSize } from './conductor-sizes/concrete-only-conductor-size.ts';
import { downConductorSizeIec } from './conductor-sizes/down-conductor-size-iec.ts';
import { downConductorSizeUs } from './conductor-sizes/down-conductor-size-us.ts';
import { earthingConductorSizeIec } from './conductor-sizes/earthing-conductor-size-iec.ts';
import { facilityRingSize } from './conductor-sizes/facility-ring-size.ts';
import { panelToRodConductor } from './conductor-sizes/panel-to-rod-conductor.ts';
import { ringConductorSize } from './conductor-sizes/ring-conductor-size.ts';
import { rodOnlyConductorSize } from './conductor-sizes/rod-only-conductor-size.ts';
import { serviceConductorSize } from './conductor-sizes/service-conductor-size.ts';
import { sizeByLength } from './conductor-sizes/size-by-length.ts';
import { surgeDeviceConductor } from './conductor-sizes/surge-device-conductor.ts';
import { tacticalConductorSize } from './conductor-sizes/tactical-conductor-size.ts';
import { towerLeadSize } from './conductor-sizes/tower-lead-size.ts';
import { transmitOperatingGroundSize } from './conductor-sizes/transmit-operating-ground-size.ts';
import { transmitProtectiveGroundSize } from './conductor-sizes/transmit-protective-ground-size.ts';
import { antennaEarthingSizeIec } from './conductors/antenna-earthing-size-iec.ts';
import { antennaElectrodeBondSize } from './conductors/antenna-electrode-bond-size.ts';
import { bendAngle } from './conductors/bend-angle.ts';
import { bendRadius } from './conductors/bend-radius.ts';
import { bondBetweenGroupsLong } from './conductors/bond-between-groups-long.ts';
import { bondRunShort } from './conductors/bond-run-short.ts';
import { deadEndLength } from './conductors/dead-end-length.ts';
import { mainBondingSizeIec } from './conductors/main-bonding-size-iec.ts';
import { mastGroundSize } from './conductors/mast-ground-size.ts';
import { noLightningPathThroughBuilding } from './conductors/no-lightning-path-through-building.ts';
import { galvanisedAndCopperInSoil } from './electrodes/galvanised-and-copper-in-soil.ts';
import { gasPipeNeverElectrode } from './electrodes/gas-pipe-never-electrode.ts';
import { ringIsClosed } from './electrodes/ring-is-closed.ts';
import { rodLengthUs } from './electrodes/rod-length-us.ts';
import { rodSpacingEffective } from './electrodes/rod-spacing-effective.ts';
import { rodSpacingMinimum } from './electrodes/rod-spacing-minimum.ts';
import { singleRod25Ohm } from './electrodes/single-rod-25-ohm.ts';
import { buriedServicesBonded } from './equipment/buried-services-bonded.ts';
import { cableTrayBonded } from './equipment/cable-tray-bonded.ts';
import { conduitBonded } from './equipment/conduit-bonded.ts';
import { equipmentOnStationBar } from './equipment/equipment-on-station-bar.ts';
import { metalworkBonded } from './equipment/metalwork-bonded.ts';
import { noOrphanEquipment } from './equipment/no-orphan-equipment.ts';
import { racksBonded } from './equipment/racks-bonded.ts';
import { fieldMastRod } from './field/field-mast-rod.ts';
import { fieldStormRule } from './field/field-storm-rule.ts';
import { groundPointAllowed } from './ground-points/ground-point-allowed.ts';
import { groundPointNoService } from './ground-points/ground-point-no-service.ts';
import { groundToIntersystemBarFirst } from './ground-points/ground-to-intersystem-bar-first.ts';
import { intersystemBarPresent } from './ground-points/intersystem-bar-present.ts';
import { notOnCoverOrDoor } from './ground-points/not-on-cover-or-door.ts';
import { ukServicePipeBond } from './ground-points/uk-service-pipe-bond.ts';
import { waterPipe5Ft } from './ground-points/water-pipe-5-ft.ts';
import { bondResistance } from './joints/bond-resistance.ts';
import { clampAccessible } from './joints/clamp-accessible.ts';
import { clampListedForBurial } from './joints/clamp-listed-for-burial.ts';
import { clampMetalMatch } from './joints/clamp-metal-match.ts';
import { concealedJointWelded } from './joints/concealed-joint-welded.ts';
import { conditionSound } from './joints/condition-sound.ts';
import { contactArea } from './joints/contact-area.ts';
import { electrodeConductorContinuous } from './joints/electrode-conductor-continuous.ts';
import { galvanicPair } from './joints/galvanic-pair.ts';
import { jointMethodAllowed } from './joints/joint-method-allowed.ts';
import { jointSealedDissimilar } from './joints/joint-sealed-dissimilar.ts';
import { noCopperAluminiumContact } from './joints/no-copper-aluminium-contact.ts';
import { noSheetMetalScrew } from './joints/no-sheet-metal-screw.ts';
import { noSolderInPath } from './joints/no-solder-in-path.ts';
import { noTwistJoint } from './joints/no-twist-joint.ts';
import { oneConductorPerClamp } from './joints/one-conductor-per-clamp.ts';
import { rebarContinuity } from './joints/rebar-continuity.ts';
import { singlePointOfFailureJoint } from './joints/single-point-of-failure-joint.ts';
import { surfaceCleaned } from './joints/surface-cleaned.ts';
import { testJointPresent } from './joints/test-joint-present.ts';
import { twoBoltLugOnSteel } from './joints/two-bolt-lug-on-steel.ts';
import { antennaInProtectedZone } from './lightning/antenna-in-protected-zone.ts';
import { claimedStandardNamed } from './lightning/claimed-standard-named.ts';
import { downConductorCount } from './lightning/down-conductor-count.ts';
import { downConductorSpacingIec } from './lightning/down-conductor-spacing-iec.ts';
import { leadInClearOfLightningConductor } from './lightning/lead-in-clear-of-lightning-conductor.ts';
import { mastAsStrikeTermination } from './lightning/mast-as-strike-termination.ts';
import { roofMastBondedToLightningSystem } from './lightning/roof-mast-bonded-to-lightning-system.ts';
import { separationDistanceIec } from './lightning/separation-distance-iec.ts';
import { sideFlashDistanceUs } from './lightning/side-flash-distance-us.ts';
import { arresterBonded } from './lines/arrester-bonded.ts';
import { arresterLeadShort } from './lines/arrester-lead-short.ts';
import { arresterListed } from './lines/arrester-listed.ts';
import { arresterOnEveryControlLine } from './lines/arrester-on-every-control-line.ts';
import { arresterOnEveryFeedLine } from './lines/arrester-on-every-feed-line.ts';
import { canadaCoaxShieldGrounded } from './lines/canada-coax-shield-grounded.ts';
import { coreStaticDrain } from './lines/core-static-drain.ts';
import { dischargeUnitAwayFromFuel } from './lines/discharge-unit-away-from-fuel.ts';
import { dischargeUnitPlace } from './lines/discharge-unit-place.ts';
import { dischargeUnitPresent } from './lines/discharge-unit-present.ts';
import { dripLoop } from './lines/drip-loop.ts';
import { indoorLeadInSeparation } from './lines/indoor-lead-in-separation.ts';
import { lineGoesDownBeforeIn } from './lines/line-goes-down-before-in.ts';
import { mainsProtectorAtPanel } from './lines/mains-protector-at-panel.ts';
import { panelTiedToService } from './lines/panel-tied-to-service.ts';
import { serviceSurgeProtector } from './lines/service-surge-protector.ts';
import { shieldBondedAtEntry } from './lines/shield-bonded-at-entry.ts';
import { singleEntryPanel } from './lines/single-entry-panel.ts';
import { spareAndDisconnectedLines } from './lines/spare-and-disconnected-lines.ts';
import { surgeDeviceLead } from './lines/surge-device-lead.ts';
import { transmitLeadInStandoff } from './lines/transmit-lead-in-standoff.ts';
import { transmitWireSize } from './lines/transmit-wire-size.ts';
import { transmitterContactGuard } from './lines/transmitter-contact-guard.ts';
import { waveguidesBondedTogether } from './lines/waveguides-bonded-together.ts';
import { guyAnchorGrounded } from './masts/guy-anchor-grounded.ts';
import { iecMastEarthed } from './masts/iec-mast-earthed.ts';
import { mastGrounded } from './masts/mast-grounded.ts';
import { mastSectionJointsBonded } from './masts/mast-section-joints-bonded.ts';
import { shieldBondedMidway } from './masts/shield-bonded-midway.ts';
import { shieldBondedTopAndBase } from './masts/shield-bonded-top-and-base.ts';
import { towerLegConnections } from './masts/tower-leg-connections.ts';
import { towerNotThroughConcreteAlone } from './masts/tower-not-through-concrete-alone.ts';
import { allElectrodesOneSystem } from './one-earth/all-electrodes-one-system.ts';
import { antennaRodIsNotASubstitute } from './one-earth/antenna-rod-is-not-a-substitute.ts';
import { earthIsNotAFaultPath } from './one-earth/earth-is-not-a-fault-path.ts';
import { iecAntennaElectrodeToMainBar } from './one-earth/iec-antenna-electrode-to-main-bar.ts';
import { neutralBondedOnce } from './one-earth/neutral-bonded-once.ts';
import { outletGroundNotLightningGround } from './one-earth/outlet-ground-not-lightning-ground.ts';
import { screensNotSoleBond } from './one-earth/screens-not-sole-bond.ts';
import { separateBuildingElectrode } from './one-earth/separate-building-electrode.ts';
import { serviceElectrodeKnown } from './one-earth/service-electrode-known.ts';
import { sheltersWithinReachBonded } from './one-earth/shelters-within-reach-bonded.ts';
import { ukMultipleEarthRfRodBond } from './one-earth/uk-multiple-earth-rf-rod-bond.ts';
import type { Rule } from './rule.ts';
import { soilRules } from './soil-rules.ts';
import { arresterFitsPower } from './strike/arrester-fits-power.ts';
import { boxesHeldTogether } from './strike/boxes-held-together.ts';
import { buriedRunEffective } from './strike/buried-run-effective.ts';
import { entryLeadVolts } from './strike/entry-lead-volts.ts';
import { lineLoopVolts } from './strike/line-loop-volts.ts';
import { onlyBondStandsStrike } from './strike/only-bond-stands-strike.ts';
import { protectorLeadVolts } from './strike/protector-lead-volts.ts';
import { pulledGapHolds } from './strike/pulled-gap-holds.ts';
import { antennaClearOfOverheadLine } from './surroundings/antenna-clear-of-overhead-line.ts';
import { earthRodClearOfBuriedServices } from './surroundings/earth-rod-clear-of-buried-services.ts';
import { leadInClearOfPower } from './surroundings/lead-in-clear-of-power.ts';
import { notOnServiceMast } from './surroundings/not-on-service-mast.ts';
import { poolFixedMetalBonded } from './surroundings/pool-fixed-metal-bonded.ts';
import { poolZoneBondingIec } from './surroundings/pool-zone-bonding-iec.ts';
import { stepAndTouchZone } from './surroundings/step-and-touch-zone.ts';

/** The pack, in reading order. */
export const rules = [
  serviceElectrodeKnown,
  allElectrodesOneSystem,
  antennaRodIsNotASubstitute,
  screensNotSoleBond,
  outletGroundNotLightningGround,
  iecAntennaElectrodeToMainBar,
  ukMultipleEarthRfRodBond,
  neutralBondedOnce,
  earthIsNotAFaultPath,
  sheltersWithinReachBonded,
  separateBuildingElectrode,
  fieldStormRule,
  fieldMastRod,
  antennaClearOfOverheadLine,
  notOnServiceMast,
  poolFixedMetalBonded,
  poolZoneBondingIec,
  stepAndTouchZone,
  earthRodClearOfBuriedServices,
  leadInClearOfPower,
  roofMastBondedToLightningSystem,
  sideFlashDistanceUs,
  separationDistanceIec,
  leadInClearOfLightningConductor,
  downConductorCount,
  downConductorSpacingIec,
  antennaInProtectedZone,
  mastAsStrikeTermination,
  claimedStandardNamed,
  mastGrounded,
  iecMastEarthed,
  mastSectionJointsBonded,
  towerLegConnections,
  towerNotThroughConcreteAlone,
  guyAnchorGrounded,
  shieldBondedTopAndBase,
  shieldBondedMidway,
  shieldBondedAtEntry,
  canadaCoaxShieldGrounded,
  panelTiedToService,
  arresterBonded,
  dischargeUnitPresent,
  arresterOnEveryFeedLine,
  arresterOnEveryControlLine,
  dischargeUnitPlace,
  dischargeUnitAwayFromFuel,
  arresterListed,
  arresterLeadShort,
  surgeDeviceLead,
  coreStaticDrain,
  transmitLeadInStandoff,
  transmitterContactGuard,
  indoorLeadInSeparation,
  transmitWireSize,
  spareAndDisconnectedLines,
  lineGoesDownBeforeIn,
  singleEntryPanel,
  waveguidesBondedTogether,
  dripLoop,
  serviceSurgeProtector,
  mainsProtectorAtPanel,
  groundPointAllowed,
  groundToIntersystemBarFirst,
  waterPipe5Ft,
  ukServicePipeBond,
  groundPointNoService,
  notOnCoverOrDoor,
  intersystemBarPresent,
  noOrphanEquipment,
  equipmentOnStationBar,
  racksBonded,
  metalworkBonded,
  cableTrayBonded,
  conduitBonded,
  buriedServicesBonded,
  gasPipeNeverElectrode,
  rodLengthUs,
  rodSpacingMinimum,
  rodSpacingEffective,
  singleRod25Ohm,
  ringIsClosed,
  galvanisedAndCopperInSoil,
  ...soilRules,
  antennaElectrodeBondSize,
  mastGroundSize,
  rodOnlyConductorSize,
  concreteOnlyConductorSize,
  ringConductorSize,
  serviceConductorSize,
  commsElectrodeBondSize,
  transmitProtectiveGroundSize,
  transmitOperatingGroundSize,
  panelToRodConductor,
  downConductorSizeUs,
  commonBondMainSize,
  bondingConductorSizeUs,
  sizeByLength,
  facilityRingSize,
  towerLeadSize,
  tacticalConductorSize,
  communicationsConductorSize,
  antennaEarthingSizeIec,
  mainBondingSizeIec,
  earthingConductorSizeIec,
  antennaBondingSizeIec,
  surgeDeviceConductor,
  downConductorSizeIec,
  barToBarBondIec,
  bodyToBarBondIec,
  barSectionIec,
  auDownConductor,
  bendRadius,
  bendAngle,
  deadEndLength,
  bondRunShort,
  bondBetweenGroupsLong,
  noLightningPathThroughBuilding,
  twoPathsFromStrikePoint,
  noUpwardRun,
  loopOpening,
  protectorLead20Ft,
  groundConductorStraight,
  aluminium18Inch,
  conductorGuarded,
  ferrousSleeveBonded,
  notInDownspout,
  smallConductorInConduit,
  supportSpacing,
  buriedTieBare,
  noSolderInPath,
  jointMethodAllowed,
  clampListedForBurial,
  oneConductorPerClamp,
  noSheetMetalScrew,
  noTwistJoint,
  noCopperAluminiumContact,
  clampMetalMatch,
  electrodeConductorContinuous,
  clampAccessible,
  surfaceCleaned,
  concealedJointWelded,
  contactArea,
  jointSealedDissimilar,
  twoBoltLugOnSteel,
  bondResistance,
  testJointPresent,
  rebarContinuity,
  galvanicPair,
  conditionSound,
  singlePointOfFailureJoint,
  arresterFitsPower,
  onlyBondStandsStrike,
  protectorLeadVolts,
  boxesHeldTogether,
  lineLoopVolts,
  entryLeadVolts,
  pulledGapHolds,
  buriedRunEffective,
] as readonly unknown[] as readonly Rule[];
