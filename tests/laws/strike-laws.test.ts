/** Laws of a strike, held on typed sites: metal with places, coupled, with the soil between its electrodes. */
import { describe, expect, it } from 'vitest';
import { bondingOf } from '../../src/bonding/bonding-of.ts';
import { groundOfRun } from '../../src/network/dc-of.ts';
import { type StrikeSite, strikeOf, strikeSite } from '../../src/network/strike-of.ts';
import { readSite } from '../../src/site/read-site.ts';
import { currentFigure, overTime } from '../../src/surge/surge-figure.ts';
import { surgeImpedance } from '../../src/surge/surge-impedance.ts';
import { wave0p25x100 } from '../../src/surge/wave-presets.ts';
import { exampleFiles, readExample } from '../examples/study-of-example.ts';

const station = (wires: string) => `
site: {name: Laws, region: iec, units: m, service: panel}
soil: {layers: [{resistivity: 120 ohm m}]}
electrodes:
  R1: {kind: rod, at: [0, 0], length: 2.4 m, diameter: 16 mm}
  R2: {kind: rod, at: [12, 0], length: 2.4 m, diameter: 16 mm}
  R3: {kind: rod, at: [6, 9], length: 2.4 m, diameter: 16 mm}
supports:
  mast: {kind: mast, at: [0, 0], height: 9 m, metal: galvanised steel, sections: one piece}
antennas:
  fan: {kind: yagi, on: mast@7 m, touches_support: yes}
bars:
  entry: {kind: entry panel, at: [11.5, 0.5, 0.5]}
equipment:
  panel: {kind: service panel, at: [12, 1.2, 1.5]}
  radio: {kind: transceiver, at: [11, 2, 1]}
lines:
  feed: {kind: coax, path: [fan, {bond: mast@4 m}, entry, radio], lengths: [3 m, 14 m, 2 m]}
  outlet: {kind: mains, path: [panel, radio], length: 6 m, protective_conductor: yes}
conductors:
  down: {from: mast@base, to: R1, wire: 16 mm2 copper, length: 0.6 m}
  lead: {from: entry, to: R2, wire: 16 mm2 copper, length: 1 m}
  main: {from: panel, to: R2, wire: 16 mm2 copper, length: 2 m}
${wires}`;

function solved(text: string): StrikeSite {
  const { site, problems } = readSite(text, 'laws');
  if (site === null) throw new Error(JSON.stringify(problems));
  const run = bondingOf(site, null);
  const found = strikeSite(run, groundOfRun(run), 'likely');
  if (!found.ok) throw new Error(found.reason);
  return found;
}

function impedance({ network, modes }: StrikeSite, node: string, ratePerS: number): number {
  return surgeImpedance(modes, network.at[network.nodes.indexOf(node)]!, ratePerS);
}

const ends = ['mast@base', 'mast@7 m', 'entry', 'panel', 'radio', 'R1', 'R2', 'R3'];
const pairs = ends.flatMap((a, i) => ends.slice(i + 1).map((b) => [a, b] as const));
const rates = [0, 1e3, 1e5, 1e6, 1e7, 1e9];

describe('a bond more', () => {
  const before = solved(station(''));

  it.each(pairs.filter(([a, b]) => !(a.startsWith('mast') && b.startsWith('mast'))))(
    'from %s to %s never raises the impedance at what is struck, nor its resistance, at any real rate',
    (from, to) => {
      const after = solved(station(`  zz: {from: ${from}, to: ${to}, wire: 16 mm2 copper, buried: no}\n`));
      for (const rate of rates) {
        const [less, more] = [impedance(before, 'mast@top', rate), impedance(after, 'mast@top', rate)];
        expect(more).toBeLessThanOrEqual(less * (1 + 1e-9));
      }
    },
  );

  it('lowers it where it joins one more electrode', () => {
    const after = solved(station('  zz: {from: R1, to: R3, wire: 16 mm2 copper, buried: no}\n'));
    expect(impedance(after, 'mast@top', 1e5)).toBeLessThan(0.95 * impedance(before, 'mast@top', 1e5));
  });
});

describe('currents', () => {
  const files = exampleFiles().filter((file) => /^(?:good-us|good-iec|marl-hill\/marl-hill\.|repeater)/.test(file));

  it.each(files)('balance at every node of %s at all times', (file) => {
    const run = bondingOf(readExample(file).site!, null);
    const found = strikeSite(run, groundOfRun(run), 'likely');
    if (!found.ok) throw new Error(found.reason);
    const top = found.network.nodes.find((node) => /(?:tower|mast)@top$/.test(node))!;
    const strike = strikeOf(found, { node: top, text: top }, wave0p25x100(1e3));
    if (!strike.ok) throw new Error(strike.reason);
    const { branches, earth, nodeCount } = found.network.surge;
    for (let node = 0; node < nodeCount; node++) {
      const leaving = new Float64Array(branches.length + earth.nodes.length);
      branches.forEach(({ from, to }, i) => {
        leaving[i] = Number(from === node) - Number(to === node);
      });
      earth.nodes.forEach((at, i) => {
        if (at === node) leaving[branches.length + i] = 1;
      });
      const sums = overTime(strike.run, currentFigure(strike.run, leaving));
      const isStruck = node === strike.run.source.node;
      const worst = sums.reduce(
        (most, sum, t) => Math.max(most, Math.abs(sum - (isStruck ? strike.run.wave.currentA[t]! : 0))),
        0,
      );
      expect(worst).toBeLessThan(1e-6 * 1e3);
    }
    expect(strike.run.energyShare).toBeLessThan(1e-3);
  });
});
