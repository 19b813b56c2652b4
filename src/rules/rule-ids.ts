/** The rules of the pack, in reading order: hazard to people first, then the service, then what undoes everything else. */
export const ruleIds = [
  // one earth
  'service-electrode-known',
  'all-electrodes-one-system',
  'antenna-rod-is-not-a-substitute',
  'screens-not-sole-bond',
  'outlet-ground-not-lightning-ground',
  'iec-antenna-electrode-to-main-bar',
  'uk-multiple-earth-rf-rod-bond',
  'neutral-bonded-once',
  'shelters-within-reach-bonded',
  'separate-building-electrode',
  // field stations
  'field-storm-rule',
  // what stands round the station
  'antenna-clear-of-overhead-line',
  'not-on-service-mast',
  'pool-fixed-metal-bonded',
  'pool-zone-bonding-iec',
  'step-and-touch-zone',
  'earth-rod-clear-of-buried-services',
  'lead-in-clear-of-power',
  // masts
  'mast-grounded',
  'iec-mast-earthed',
  'mast-section-joints-bonded',
  'guy-anchor-grounded',
  // feed lines, arresters, entry
  'shield-bonded-at-entry',
  'canada-coax-shield-grounded',
  'panel-tied-to-service',
  'arrester-bonded',
  'discharge-unit-present',
  'arrester-on-every-feed-line',
  'arrester-on-every-control-line',
  'discharge-unit-place',
  'arrester-lead-short',
  'core-static-drain',
  'transmit-lead-in-standoff',
  'transmitter-contact-guard',
  'spare-and-disconnected-lines',
  'line-goes-down-before-in',
  'service-surge-protector',
  // equipment and metalwork
  'no-orphan-equipment',
  'metalwork-bonded',
  // electrodes
  'gas-pipe-never-electrode',
  'rod-length-us',
  'rod-spacing-minimum',
  'rod-spacing-effective',
  'single-rod-25-ohm',
  'ring-is-closed',
  'galvanised-and-copper-in-soil',
  // conductors
  'antenna-electrode-bond-size',
  'mast-ground-size',
  'antenna-earthing-size-iec',
  'main-bonding-size-iec',
  'bend-radius',
  'bend-angle',
  'dead-end-length',
  'bond-run-short',
  'bond-between-groups-long',
  'no-lightning-path-through-building',
  // joints
  'no-solder-in-path',
  'joint-method-allowed',
  'clamp-listed-for-burial',
  'one-conductor-per-clamp',
  'galvanic-pair',
  'condition-sound',
  'single-point-of-failure-joint',
  // what a strike does
  // what a strike does
  // what a strike does
  'arrester-fits-power',
  'only-bond-stands-strike',
  'protector-lead-volts',
  'boxes-held-together',
] as const;

export type RuleId = (typeof ruleIds)[number];
