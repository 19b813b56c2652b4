/** What a study says of the soil where nothing was worked out. */
export const noSoil = {
  conditions: [],
  soilFit: null,
  soilOfElectrodes: [],
  contradictions: [],
  readingTraps: [],
  transferred: [],
  depthCurves: [],
  spacingGains: [],
  rodLines: [],
  surfaces: [],
  solve: null,
};
