import type { Facts } from '../../../src/facts/facts.ts';
import { readSite } from '../../../src/site/read-site.ts';

/** A mast with its rod, a house with its own, a bond of 20 m between the two, an entry panel and two boxes on the house. */
export function strikeSite({
  more = '',
  lead = '',
  soil = 'soil: {layers: [{resistivity: 100 ohm m}]}',
  bond = '',
} = {}): string {
  return `
site: {name: Lines, region: us, units: m, service: main}
${soil}
places: {desk: [22, 4, 1], wall: [20, 0, 0]}
electrodes: {R1: {kind: rod, at: [0, 0], length: 8 ft, diameter: 16 mm}, R2: {kind: rod, at: [20, 0], length: 8 ft, diameter: 16 mm}}
supports: {mast: {kind: mast, at: [0, 0], height: 9 m, metal: galvanised steel, sections: one piece}}
bars: {entry: {kind: entry panel, at: wall}}
equipment:
  main: {kind: service panel, at: [20, 4, 1]}
  radio: {kind: transceiver, at: desk}
conductors:
  down: {from: mast@base, to: R1, wire: 16 mm2 copper, length: 1 m}
  bond: {from: R1, to: R2, wire: 16 mm2 copper, buried: no${bond}}
  lead: {from: entry, to: R2, wire: 16 mm2 copper${lead || ', length: 0.5 m'}}
  c4: {from: main, to: R2, wire: 16 mm2 copper, length: 5 m}
  c5: {from: radio, to: entry, wire: 16 mm2 copper, length: 5 m}
${more}`;
}

/** Facts of a typed site with figures of a strike handed in as the network would give them. */
export function factsWith(text: string, strike: Partial<Facts['strike']>): Facts {
  const { site, problems } = readSite(text, 'strike');
  if (site === null) throw new Error(JSON.stringify(problems));
  const figures = { refused: null, taken: null, leads: [], gaps: [], differences: [], coupling: () => null, ...strike };
  return { site, sections: site.sections, strike: figures } as unknown as Facts;
}
