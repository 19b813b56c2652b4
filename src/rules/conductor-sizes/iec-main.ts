/** IEC 62305-3:2010 Table 6 (from memory): 50 mm² of each metal; aluminium as a tape 70 mm². */
export const iecMain = {
  copper: 50e-6,
  aluminium: 50e-6,
  steel: 50e-6,
  cladSteel: null,
  aluminiumStrap: 70e-6,
} as const;
