import { describe, expect, it } from 'vitest';
import { strikeFacts } from '../../src/facts/strike-facts.ts';
import type { StrikeAsk } from '../../src/network/strike-figures.ts';
import { pointOfText } from '../../src/site/point-text.ts';
import { readSite } from '../../src/site/read-site.ts';
import { ampereOf, peakBetween, peakOfPart, strikeIn } from './strike-in.ts';

const near = (value: number | null | undefined, hand: number, share: number) =>
  expect(Math.abs((value ?? Number.NaN) / hand - 1), `${value} by hand ${hand}`).toBeLessThan(share);

function asked(text: string, ask: Partial<StrikeAsk>) {
  const { site, problems } = readSite(text, 'test.site.yaml');
  if (site === null) throw new Error(JSON.stringify(problems));
  return strikeFacts(site, null, {
    at: null,
    wave: null,
    currentA: null,
    between: [],
    named: [],
    mostWires: null,
    detail: false,
    ...ask,
  });
}

const head = `site: {name: Entered, region: iec, units: m, service: none}
soil: {layers: [{resistivity: 100 ohm m}]}
`;

describe('a strike near by', () => {
  // Two bars 10 m apart in the line of sight, tied by a wire that goes down 4 m, along and up again: with the straight way from
  // bar to bar a loop of 10 by 4 m in one plane with the channel, which stands 50 m from its middle.
  const loop = `${head}
electrodes: {R: {kind: rod, at: [0, 200], length: 3 m, diameter: 20 mm, resistance: 10 ohm}}
bars:
  a: {kind: station ground bar, at: [-5, 0, 5]}
  b: {kind: station ground bar, at: [5, 0, 5]}
lines: {link: {kind: network, path: [a, b]}}
conductors:
  tie: {from: a, to: b, wire: round 8 mm copper, route: [[-5, 0, 5], [-5, 0, 1], [5, 0, 1], [5, 0, 5]], joints: none}
  earth: {from: a, to: R, wire: round 8 mm copper, length: 3 m, joints: none}
`;
  const nearby = { distanceM: 50, side: 'east', text: '50 m' } as const;

  it('induces its flux through the loop of a line and the bond, times the slope', () => {
    // The field of a straight filament from the ground to 300 m at distance r and height z:
    // mu0 / (4 pi r) ((300 - z) / sqrt(r^2 + (300 - z)^2) + z / sqrt(r^2 + z^2)), integrated over the loop by hand (midpoints)
    let flux = 0;
    for (let i = 0; i < 200; i++) {
      for (let j = 0; j < 80; j++) {
        const [r, z] = [50 - 5 + (10 * (i + 0.5)) / 200, 1 + (4 * (j + 0.5)) / 80];
        const field = (1e-7 / r) * ((300 - z) / Math.hypot(r, 300 - z) + z / Math.hypot(r, z));
        flux += field * (10 / 200) * (4 / 80);
      }
    }
    const strike = asked(loop, { nearby, wave: '0.25/100', currentA: 12e3 });
    expect(strike.refused).toBeNull();
    // no current flows in an open loop: the figure is M di/dt at its steepest
    near(peakBetween(strike, 'a', 'b').volt, flux * strike.stroke.figures.steepestAPerS, 0.01);
    expect(strike.solve!.energyShare).toBeLessThan(1e-3);
  });

  it('drives a closed loop with L dy/dt + R y = -M di/dt', () => {
    // two rods, a wire between them: the loop closes through the soil. A ring of metal alone has no soil in it and, nearly
    // without resistance, the current M i / L: here the line's shield closes it over the same straight way
    const closed = loop
      .replace('lines:', 'equipment: {}\nlines:')
      .replace(
        'earth:',
        'back: {from: a, to: b, wire: round 8 mm copper, route: [[-5, 0, 5], [5, 0, 5]], joints: none}\n  earth:',
      );
    const strike = asked(closed, { nearby, wave: '10/350', currentA: 100e3 });
    const open = asked(loop, { nearby, wave: '10/350', currentA: 100e3 });
    const mutualH = peakBetween(open, 'a', 'b').volt / open.stroke.figures.steepestAPerS;
    // by hand: rectangle of sides 10 and 4 m of round wire, current in the skin (F. W. Grover, Inductance Calculations, 1946,
    // from memory): 4e-7 [a ln(2a/r) + b ln(2b/r) + 2 d - a asinh(a/b) - b asinh(b/a) - 2 (a + b)]
    const [a, b, r] = [10, 4, 4e-3];
    const d = Math.hypot(a, b);
    const henry =
      4e-7 *
      (a * Math.log((2 * a) / r) +
        b * Math.log((2 * b) / r) +
        2 * d -
        a * Math.asinh(a / b) -
        b * Math.asinh(b / a) -
        2 * (a + b));
    near(ampereOf(strike, 'back'), (mutualH * 100e3) / henry, 0.02);
  });

  it('takes the worst of eight sides where none is asked for', () => {
    const worst = asked(loop, { nearby: { ...nearby, side: null }, wave: '0.25/100' });
    // the loop lies in the plane of east and west: from there all of the flux goes through it
    expect(['50 m east', '50 m west']).toContain(worst.at);
    const north = asked(loop, { nearby: { ...nearby, side: 'north' }, wave: '0.25/100' });
    expect(peakBetween(north, 'a', 'b').volt).toBeLessThan(0.5 * peakBetween(worst, 'a', 'b').volt);
  });

  it('is refused within the site, and where nothing has a place', () => {
    expect(asked(loop, { nearby: { ...nearby, distanceM: 3 } }).refused?.reason).toBe('not near');
    const bare = `${head}
electrodes: {R: {kind: rod, resistance: 10 ohm}}
antennas: {A: {kind: free}}
conductors: {down: {from: A, to: R, wire: round 8 mm copper, length: 5 m, joints: none}}`;
    expect(asked(bare, { nearby }).refused?.reason).toBe('not near');
  });
});

describe('a surge along a line', () => {
  const site = `${head}
electrodes: {R: {kind: rod, at: [0, 0], length: 3 m, diameter: 20 mm, resistance: 10 ohm}}
bars: {main: {kind: main earthing bar, at: [0, 0, 1]}}
arresters: {guard: {kind: telephone protector, on: main, joint: bolted lug}}
equipment: {modem: {kind: modem}}
lines: {phone: {kind: telephone, path: [street, guard, modem]}}
conductors: {lead: {from: main, to: R, wire: round 8 mm copper, length: 1 m, joints: none}}
`;

  it('comes in at the first thing that the line meets, as 8/20 where nothing else is asked for', () => {
    const strike = strikeIn(site, { at: 'phone', currentA: 5e3 });
    expect([strike.refused, strike.at, strike.stroke.waveName]).toEqual([null, 'phone', '8/20']);
    // by hand: all of it through the lead into 10 ohm
    near(ampereOf(strike, 'lead'), 5e3, 0.005);
    near(peakOfPart(strike, 'R'), 50e3, 0.005);
  });

  it('has the wave that is asked for', () => {
    expect(strikeIn(site, { at: 'phone', wave: '10/350', currentA: 5e3 }).stroke.waveName).toBe('10/350');
  });

  it('of a coax goes into the shield where it begins', () => {
    const coax = `${head}
electrodes: {R: {kind: rod, at: [0, 0], length: 3 m, diameter: 20 mm, resistance: 10 ohm}}
antennas: {A: {kind: free, at: [0, 0, 10]}}
bars: {entry: {kind: entry panel, at: [0, 0, 1]}}
equipment: {radio: {kind: transceiver}}
lines: {feed: {kind: coax, cable: RG-213, path: [A, entry, radio]}}
conductors: {lead: {from: entry, to: R, wire: round 8 mm copper, length: 1 m, joints: none}}`;
    const strike = strikeIn(coax, { at: 'feed', currentA: 20e3 });
    expect([strike.at, strike.stroke.waveName]).toEqual(['feed', '1/200']);
    near(ampereOf(strike, 'feed'), 20e3, 0.01);
  });
});

describe('soil that breaks down', () => {
  // CIGRE TB 63 (from memory) by hand: 50 ohm in 500 ohm m at 300 kV/m: Ig = 300e3 x 500 / (2 pi 50^2) = 9549 A, and at 30 kA
  // 50 / sqrt(1 + 30 / 9.549) = 24.57 ohm
  const site = `site: {name: Hill, region: iec, units: m, service: none}
soil: {layers: [{resistivity: 500 ohm m}]}
electrodes: {R: {kind: rod, at: [0, 0], length: 3 m, diameter: 20 mm, resistance: 50 ohm}}
antennas: {A: {kind: free, at: [0, 0, 10]}}
conductors: {down: {from: A, to: R, wire: round 8 mm copper, joints: none}}`;
  const ask = { at: pointOfText('A'), currentA: 30e3 };

  it('leaves what the whole current goes through a resistance of its peak', () => {
    const strike = asked(site, { ...ask, ionisationVPerM: 300e3 });
    const [electrode] = strike.ionised;
    near(electrode?.onsetA, 9549, 0.001);
    near(electrode?.ionisedOhm, 24.57, 0.01);
    near(peakOfPart(strike, 'R'), 24.57 * 30e3, 0.02);
  });

  it('holds by default', () => {
    const strike = asked(site, ask);
    expect(strike.ionised).toEqual([]);
    near(peakOfPart(strike, 'R'), 50 * 30e3, 0.02);
  });
});

describe('wires of which only the length is known', () => {
  // two wires of one length from the same bar to the same box: 1 / (2 / L) = L / 2 uncoupled, (L + M) / 2 coupled by k: 1.6 times
  const site = (joints: string) => `${head}
electrodes: {R: {kind: rod, resistance: 10 ohm}}
bars: {b: {kind: station ground bar}}
antennas: {A: {kind: free}}
equipment: {radio: {kind: rack, within_reach: [b]}}
conductors:
  top: {from: A, to: radio, inductance: 1 uH, resistance: 1 mohm, joints: none}
  one: {from: radio, to: b, wire: round 8 mm copper, length: 10 m, joints: ${joints}}
  two: {from: radio, to: b, wire: round 8 mm copper, length: 10 m, joints: none}
  down: {from: b, to: R, inductance: 1 uH, resistance: 1 mohm, joints: none}
`;
  it('have a range from uncoupled to coupled with 0.6', () => {
    const strike = strikeIn(site('none'), { at: 'A', wave: '0.25/100', detail: true });
    const pair = peakBetween(strike, 'radio', 'b');
    expect(pair.isBracketed).toBe(true);
    near(pair.low, pair.volt, 1e-6);
    near(pair.high, 1.6 * pair.volt, 0.01);
  });

  it('are not bracketed where a place or a figure of each is known', () => {
    const stated = site('none').replaceAll('length: 10 m', 'inductance: 10 uH, resistance: 1 mohm');
    expect(peakBetween(strikeIn(stated, { at: 'A', detail: true }), 'radio', 'b').isBracketed).toBe(false);
  });
});
