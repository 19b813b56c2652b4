import { describe, expect, it } from 'vitest';
import { greatest, heidlerA, heidlerSlope, rungeKutta, subsequent } from './heidler.ts';
import { ampereOf, peakBetween, peakOfPart, strikeIn } from './strike-in.ts';

const near = (value: number, hand: number, share: number) => expect(Math.abs(value / hand - 1)).toBeLessThan(share);

/** 2e-7 l [asinh(l/r) - sqrt(1 + (r/l)^2) + r/l]: E. B. Rosa, Bull. Bur. Stand. 4 (1908), current in the skin alone. */
function straightH(lengthM: number, radiusM: number): number {
  const q = radiusM / lengthM;
  return 2e-7 * lengthM * (Math.asinh(1 / q) - Math.hypot(1, q) + q);
}

/** Two filaments end to end in one line: F. W. Grover, Inductance Calculations (1946), chapter 6 (from memory). */
function endToEndH(l: number, m: number): number {
  return 1e-7 * ((l + m) * Math.log(l + m) - l * Math.log(l) - m * Math.log(m));
}

const head = `site: {name: By hand, region: iec, units: m, service: none}
soil: {layers: [{resistivity: 100 ohm m}]}
`;
const wave = subsequent(12e3);
const stroke = { wave: '0.25/100', currentA: 12e3 };

describe('one wire down to one rod', () => {
  const site = `${head}
electrodes:
  R: {kind: rod, at: [0, 0], length: 3 m, diameter: 20 mm, resistance: 10 ohm}
antennas:
  A: {kind: free, at: [0, 0, 10]}
conductors:
  down: {from: A, to: R, wire: round 8 mm copper, resistance: 20 mohm, joints: none}
`;

  it('has R i + (L + M) di/dt at its top, with the channel of 300 m end to end above it', () => {
    const strike = strikeIn(site, { at: 'A', ...stroke });
    const henry = straightH(10, 4e-3) + endToEndH(300, 10);
    const hand = greatest((t) => 10.02 * heidlerA(wave, t) + henry * heidlerSlope(wave, t));
    near(peakOfPart(strike, 'A'), hand, 1e-3);
    near(peakOfPart(strike, 'R'), 10 * greatest((t) => heidlerA(wave, t)), 1e-3);
    near(ampereOf(strike, 'down'), 12e3, 1e-3);
  });

  it('puts the whole action integral of the stroke through it', () => {
    const strike = strikeIn(site, { at: 'A', ...stroke });
    // I^2 tau2 / 2 of the tail, less what the front lacks: to 2 %
    near(strike.conductors[0]!.actionA2s, ((12e3 / 0.993) ** 2 * 143e-6) / 2, 0.02);
  });
});

/** Every figure stated, no place: a plain network of resistances and inductances. */
const plain = (bond: string) => `${head}
electrodes:
  B1: {kind: rod, resistance: 25 ohm}
  B2: {kind: rod, resistance: 10 ohm}
antennas:
  T: {kind: free}
conductors:
  b1: {from: T, to: B1, inductance: 9 uH, resistance: 5 mohm, joints: none}
  ${bond}
`;

describe('a mast with its own rod, bonded to a second one', () => {
  const asked = { at: 'T', wave: '0.25/100', currentA: 25e3, between: [['B1', 'B2']] as const };

  // ngspice, the same network with 25 kA 0.25/100: 1530.24, 469.651, 176.037 and 427.957 kV, 17.6037 kA.
  it('has the figures of a circuit solver, every inductance stated', () => {
    const bond = 'b2: {from: B1, to: B2, inductance: 15 uH, resistance: 20 mohm, joints: none}';
    const strike = strikeIn(plain(bond), asked);
    near(peakOfPart(strike, 'T'), 1530.24e3, 1e-3);
    near(peakOfPart(strike, 'B1'), 469.651e3, 1e-3);
    near(peakOfPart(strike, 'B2'), 176.037e3, 1e-3);
    near(peakBetween(strike, 'B1', 'B2').volt, 427.957e3, 1e-3);
    near(ampereOf(strike, 'b2'), 17.6037e3, 1e-3);
    expect(peakBetween(strike, 'B1', 'B2').route).toBeNull();
    expect(strike.taken!.lengths).toEqual([]);
    expect(strike.taken!.lengthOnly).toEqual([]);
  });

  // 25 ohm times the peak of the wave: 624.9 kV by the same solver.
  it('stands apart by the whole R i without the bond', () => {
    const strike = strikeIn(plain('{}').replace('\n  {}', ''), asked);
    near(peakOfPart(strike, 'B1'), 624.9e3, 1e-3);
    expect(peakOfPart(strike, 'B2')).toBe(0);
  });

  it('has the inductance of its length where only that is known', () => {
    const bond = 'b2: {from: B1, to: B2, wire: round 4 mm copper, length: 15 m, resistance: 20 mohm, joints: none}';
    const strike = strikeIn(plain(bond), asked);
    const henry = straightH(15, 2e-3);
    const [current, apart] = [[0], [0]];
    const own = subsequent(25e3);
    const rate = (t: number, i: number) => (25 * (heidlerA(own, t) - i) - 10.02 * i) / henry;
    rungeKutta(
      1,
      (t, [i]) => [rate(t, i!)],
      (t, [i]) => {
        current.push(i!);
        apart.push(25 * (heidlerA(own, t) - i!) - 10 * i!);
      },
    );
    near(ampereOf(strike, 'b2'), Math.max(...current), 1e-3);
    near(peakBetween(strike, 'B1', 'B2').volt, Math.max(...apart), 1e-3);
    expect(strike.taken!.lengthOnly).toEqual(['b2']);
  });
});

describe('a radio that hangs on its cord alone', () => {
  const station = (bond: string) => `
site: {name: Cord, region: iec, units: m, service: panel}
soil: {layers: [{resistivity: 100 ohm m}]}
electrodes:
  R1: {kind: rod, resistance: 25 ohm}
  R2: {kind: rod, resistance: 10 ohm}
antennas:
  A: {kind: free}
equipment:
  panel: {kind: service panel}
  radio: {kind: transceiver}
lines:
  feed: {kind: coax, path: [A, radio], length: 20 m}
  outlet: {kind: mains, path: [panel, radio], length: 15 m, protective_conductor: yes}
conductors:
  down: {from: A, to: R1, inductance: 10 uH, resistance: 20 mohm, joints: none}
  main: {from: panel, to: R2, inductance: 1 uH, resistance: 10 mohm, joints: none}
${bond}`;
  const bond = '  bond: {from: R1, to: R2, inductance: 15 uH, resistance: 20 mohm, joints: none}\n';
  // what nobody typed: a shield 8 mm thick of 10 mohm per metre, a cord 2 mm thick of 5.2 mohm per metre
  const feedH = straightH(20, 4e-3) + straightH(15, 1e-3) + 1e-6;
  const feedOhm = 20 * 10e-3 + 15 * 5.2e-3 + 0.01;

  /** Way 1: down to R1; way 2: shield, cord, panel, R2; way 3, where there is a bond: R1 to R2. Largest current of way 2. */
  function byHand(bondH: number | null): number {
    let most = 0;
    // the downlead's 10 uH carries what the feed line does not: its slope, unknown, is taken to the left side
    const rates = (t: number, [feed, tie]: readonly number[]): readonly number[] => {
      const [i, slope] = [heidlerA(wave, t), heidlerSlope(wave, t)];
      const [r1, r2] = [25 * (i - feed! - tie!), 10 * (feed! + tie!)];
      const right = 10e-6 * slope + 0.02 * (i - feed!) + r1 - r2 - feedOhm * feed!;
      return [right / (10e-6 + feedH), bondH === null ? 0 : (r1 - r2 - 0.02 * tie!) / bondH];
    };
    rungeKutta(2, rates, (_t, [feed]) => {
      most = Math.max(most, Math.abs(feed!));
    });
    return most;
  }

  it('brings the stroke through the cord, and less of it with a bond', () => {
    const asked = { at: 'A', ...stroke };
    const [without, with_] = [strikeIn(station(''), asked), strikeIn(station(bond), asked)];
    near(ampereOf(without, 'outlet'), byHand(null), 2e-3);
    near(ampereOf(with_, 'outlet'), byHand(15e-6), 2e-3);
    expect(ampereOf(with_, 'outlet')).toBeLessThan(0.7 * ampereOf(without, 'outlet'));
  });

  it('carries nothing through a plug that is pulled', () => {
    const plugged = station('').replace(
      'path: [A, radio], length: 20 m',
      'path: [A, {plug: j1}, radio], lengths: [19, 1]',
    );
    const states = 'states:\n  storm: {open: [j1]}\n';
    const asked = { at: 'A', ...stroke };
    const [in_, out] = [strikeIn(plugged + states, asked), strikeIn(plugged + states, { ...asked, state: 'storm' })];
    expect(ampereOf(in_, 'outlet')).toBeGreaterThan(1e3);
    expect(ampereOf(out, 'outlet')).toBeLessThan(1e-6);
    near(peakOfPart(out, 'R1'), 25 * greatest((t) => heidlerA(wave, t)), 1e-3);
  });
});
