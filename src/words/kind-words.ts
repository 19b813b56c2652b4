/** Kinds and roles of the file format whose word on a page is the region's; every other kind stands as typed. */
export const kindWords: Readonly<Record<string, string>> = {
  // electrodes
  rod: '[rod]',
  rods: '[rod]s',
  'drilled rod': 'drilled [rod]',
  'concrete-encased': '[concrete-encased electrode]',
  // bars
  'entry panel': '[entry panel]',
  'station ground bar': '[ground] bar of the station',
  'intersystem bonding termination': '[intersystem bar]',
  'main earthing bar': '[main bar]',
  // equipment
  'service panel': '[service panel]',
  // material
  'grounded receptacle': '[grounded] receptacle',
  'shield grounding kit': 'shield [grounding] kit',
  // arresters
  'mains protector': '[surge protector] of the mains',
  'telephone protector': 'telephone protector',
  // roles of conductors
  'service electrode wire': '[electrode conductor]',
  'electrode tie': 'tie between [electrode]s',
  'mast lead': 'lead of a mast',
  'down conductor': '[down conductor]',
  protective: '[protective conductor]',
  // regions and supplies
  us: 'United States',
  ca: 'Canada',
  iec: 'IEC',
  uk: 'United Kingdom',
  au: 'Australia',
  'us-grounded': 'neutral tied at the [service]',
  'tn-s': 'TN-S',
  'tn-c-s': 'TN-C-S',
  tt: 'TT',
  none: 'none',
  unknown: 'unknown',
};

/** Kinds of ties, as the diagram and its tables name them. */
export const tieWords: Readonly<Record<string, string>> = {
  metal: 'bond',
  feeder: 'bond by the [protective conductor] of a feeder',
  shield: 'cable shield',
  cord: '[protective conductor] of a cord or outlet',
  case: 'case that passes nothing on',
  'loose-metal': 'metal not known to be continuous',
  guy: '[guy]',
  core: 'core of a line',
  gap: 'gap that only a surge closes',
  drain: 'drain for static',
};
