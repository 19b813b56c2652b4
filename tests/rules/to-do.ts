/** Rows of the table of conditions that are neither a rule nor listed as not stated yet. Ids are only ever taken out. */
export const toDo: readonly string[] = [
  'corrosive-soil-coating',
  'cable-tray-bonded',
  'conduit-bonded',
  'waveguides-bonded-together',
  'buried-services-bonded',
  'field-10-ohm-and-8-m',
];
