/** The faults that are in Marl Hill as found: each a sentence of its story, with the rule and place it belongs to. */
export interface BuiltInFault {
  readonly says: string;
  readonly rule: string;
  readonly at: string;
}

const fault = (says: string, rule: string, at: string): BuiltInFault => ({ says, rule, at });

export const faults: readonly BuiltInFault[] = [
  fault('The shack rod is tied to nothing.', 'all-electrodes-one-system', 'E2'),
  fault('The rod at the anchor hangs on the guy wire alone.', 'all-electrodes-one-system', 'anchor-rod'),
  fault('Only the shield of the beam’s line joins the plate to the rest.', 'screens-not-sole-bond', 'entry'),
  fault('The plate is not tied to the service.', 'panel-tied-to-service', 'entry'),
  fault('The bonding screw in the shed is in.', 'neutral-bonded-once', 'shed-panel'),
  fault('The shed has no rod.', 'separate-building-electrode', 'shed-panel'),
  fault('Radio and rotator box stand side by side.', 'shelters-within-reach-bonded', 'rotator-box'),
  fault('The second anchor has no rod.', 'guy-anchor-grounded', 'guy-2'),
  fault('The third anchor has no rod.', 'guy-anchor-grounded', 'guy-3'),
  fault('A copper rod at a zinc-coated anchor.', 'galvanised-and-copper-in-soil', 'guy-1'),
  fault('The dipole’s line comes straight in.', 'shield-bonded-at-entry', 'line2'),
  fault('The whip’s line comes down inside the wall.', 'shield-bonded-at-entry', 'line4'),
  fault('The second arrester lies on the desk.', 'arrester-bonded', 'a2'),
  fault('… and that is indoors.', 'discharge-unit-place', 'a2'),
  fault('No arrester on the dipole’s line.', 'arrester-on-every-feed-line', 'line2'),
  fault('No arrester on the whip’s line.', 'arrester-on-every-feed-line', 'line4'),
  fault('Eight rotor wires without a protector.', 'arrester-on-every-control-line', 'rotor'),
  fault('The camera’s network cable without a protector.', 'arrester-on-every-control-line', 'lan-tower'),
  fault('Nothing drains the dipole.', 'core-static-drain', 'line2'),
  fault('Pulled lines hang loose an inch from the radio.', 'spare-and-disconnected-lines', 'line1'),
  fault('The dipole’s line too.', 'spare-and-disconnected-lines', 'line2'),
  fault('The rotor cable leaves the tower at 18 ft.', 'line-goes-down-before-in', 'rotor'),
  fault('No protector on the mains.', 'service-surge-protector', 'main-panel'),
  fault('Nothing but its coax is tied to the radio on the shelf.', 'no-orphan-equipment', 'vhf-radio'),
  fault('The rotator box has no earth pin.', 'no-orphan-equipment', 'rotator-box'),
  fault('The foil in the wall is not bonded.', 'metalwork-bonded', 'foil'),
  fault('The fence at the tower is not bonded.', 'metalwork-bonded', 'fence'),
  fault('The shack rod measured more than 25 ohm and stands alone.', 'single-rod-25-ohm', 'E2'),
  fault('The roof mast’s wire is 12 AWG.', 'mast-ground-size', 'c5'),
  fault('… and it runs inside the wall.', 'no-lightning-path-through-building', 'c5'),
  fault('… and its clamp is corroded.', 'condition-sound', 'c5:roof-mast'),
  fault('The tower’s lead is bent over three inches.', 'bend-radius', 'c3'),
  fault('… and soldered.', 'no-solder-in-path', 'c3:tower-rods'),
  fault('Solder is no method for an electrode.', 'joint-method-allowed', 'c3:tower-rods'),
  fault('Nor is a hose clamp.', 'joint-method-allowed', 'c2:E2'),
  fault('Copper on the zinc of the tower.', 'galvanic-pair', 'c3:tower'),
  fault('Two wires under one clamp at the service rod.', 'one-conductor-per-clamp', 'clamp1'),
  fault('118 ft of 6 AWG to the tower.', 'bond-between-groups-long', 'c4'),
];

/** Questions that the committee could not settle: a rule and a place that ends in cannot tell. */
export const openQuestions: readonly BuiltInFault[] = [
  fault('Nobody knows whether the telephone block is bonded.', 'arrester-bonded', 'phone-block'),
  fault('Nobody knows whether the gas pipe is bonded.', 'metalwork-bonded', 'gas'),
];
