/** Site files for the command `soil`, each the least that shows what it is for. */
const head = 'site: {name: Hill, region: us, units: ft, service: unknown}\n';
const metric = 'site: {name: Hang, region: iec, units: m, service: unknown}\n';
const rods = `electrodes:
  R1: {kind: rod, at: [0, 0], length: 8 ft, diameter: 5/8 in}
  R2: {kind: rod, at: [40, 0], length: 8 ft, diameter: 5/8 in}
`;

export const soilSites = {
  /** Uniform soil of 100 ohm m, typed without a range. */
  plain: `${head}soil: {layers: [{resistivity: 100 ohm m}], frost: 3 ft}\n${rods}`,
  metric: `${metric}soil: {layers: [{resistivity: 100 ohm m}]}\nelectrodes:\n  R1: {kind: rod, length: 3 m, diameter: 16 mm}\n`,
  withoutSoil: `${head}electrodes:\n  R1: {kind: rod, length: 8 ft, diameter: 5/8 in}\n  R2: {kind: rod, length: unknown}\n`,
  withoutElectrodes: `${head}soil: {layers: [{resistivity: 100 ohm m}]}\nelectrodes: none\n`,
  named: `${head}soil: {type: sand}\n${rods}`,
  /** What 750 ohm mean, and nothing else. */
  lone: `${head}electrodes:\n  R1: {kind: rod, length: 8 ft, diameter: 5/8 in, resistance: 750 ohm}\n`,
  /** By hand: readings of uniform soil of 200 ohm m, rho = 2 pi a R, spacing a in metres, rounded to three digits. */
  fitted: `${metric}electrodes:\n  R1: {kind: rod, length: 3 m, diameter: 16 mm}
readings:
  r1: {kind: four-pin, spacing: [1 m, 2 m, 4 m, 8 m], resistance: [31.8 ohm, 15.9 ohm, 7.96 ohm, 3.98 ohm]}
`,
  oneSpacing: `${metric}electrodes:\n  R1: {kind: rod, length: 3 m, diameter: 16 mm}
readings:
  r1: {kind: four-pin, spacing: [2 m, 2 m, 2 m], resistance: [31.8 ohm, 31.8 ohm, 31.8 ohm]}
`,
  /** As told by practitioners: 750 ohm at 10 ft, 5 ohm at 55 ft, the drop at 45 ft (public list, 1997). */
  deep: `${head}electrodes:\n  rod: {kind: rod, length: 55 ft, diameter: 5/8 in}
readings:
  first: {kind: fall of potential, electrode: rod, driven: 10 ft, resistance: [750 ohm]}
  last: {kind: fall of potential, electrode: rod, drops_at: 45 ft, resistance: [5 ohm]}
`,
  states: `${head}soil: {layers: [{resistivity: 100 ohm m}], frost: 3 ft}\n${rods}states:
  winter: {says: ground frozen, frozen: yes}
`,
} as const;
