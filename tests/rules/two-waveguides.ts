/** Two rigid lines at a typed distance, with what ties them. */
export function twoWaveguides(distance: string, tie = ''): string {
  return `
site: {name: Rigid, region: us, units: ft, service: unknown}
antennas: {a: {kind: dish}, b: {kind: dish}}
bars: {one: {kind: entry panel, where: outside}, other: {kind: entry panel, where: outside}}
equipment: {radio: {kind: transceiver, where: inside}}
lines:
  w1: {kind: coax, cable: rigid line, path: [a, one, radio], near: [{part: w2, distance: ${distance}}]}
  w2: {kind: coax, cable: waveguide, path: [b, other, radio]}
conductors: ${tie === '' ? 'none' : `{${tie}}`}
`;
}
