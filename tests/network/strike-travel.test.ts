import { describe, expect, it } from 'vitest';
import { bondingOf } from '../../src/bonding/bonding-of.ts';
import { groundOfRun } from '../../src/network/dc-of.ts';
import { strikeOf, strikeSite } from '../../src/network/strike-of.ts';
import { strikeBetween } from '../../src/network/strike-result.ts';
import { strikeSections } from '../../src/network/strike-sections.ts';
import { strikeTravel } from '../../src/network/strike-travel.ts';
import { readSite } from '../../src/site/read-site.ts';
import { surgeModes } from '../../src/surge/surge-modes.ts';
import type { Wave } from '../../src/surge/wave.ts';
import { wave1x200, wave10x350 } from '../../src/surge/wave-presets.ts';

/** A mast on one rod, a wire in the air from its foot to a box on another. */
const text = (wireM: number, place = true) => `
site: {name: Long, region: iec, units: m, service: none}
soil: {layers: [{resistivity: 100 ohm m}]}
electrodes:
  R1: {kind: rod, at: [0, 0], resistance: 20 ohm}
  R2: {kind: rod, at: [${wireM}, 0], resistance: 20 ohm}
supports:
  mast: {kind: mast, at: [0, 0], height: 12 m}
equipment:
  box: {kind: receiver${place ? `, at: [${wireM}, 0, 1]` : ''}}
conductors:
  down: {from: mast@base, to: R1, wire: round 8 mm copper, length: 0.5 m, joints: none}
  long: {from: mast@6 m, to: box, wire: round 8 mm copper, length: ${wireM + 2} m, joints: none}
  own: {from: box, to: R2, wire: round 8 mm copper, length: 1 m, joints: none}
`;

function struck(wireM: number, wave: Wave, place = true) {
  const { site } = readSite(text(wireM, place), 'test.site.yaml');
  const bonded = bondingOf(site!, null);
  const whole = strikeSite(bonded, groundOfRun(bonded), 'likely');
  if (!whole.ok) throw new Error(whole.reason);
  const run = strikeOf(whole, { node: 'mast@top', text: 'mast@top' }, wave);
  if (!run.ok) throw new Error(run.reason);
  return { whole, run };
}

const pair = { a: 'mast', b: 'box', why: 'asked', by: null } as const;
const lumped = ({ run }: ReturnType<typeof struck>) =>
  strikeBetween(pair, run.network, run.run, run.places)!.peak.value;
const withTravel = ({ whole, run }: ReturnType<typeof struck>, wave: Wave) => strikeTravel(whole, run, wave);

describe('a long wire in the air', () => {
  it('cut into sections is the same network: no figure changes', () => {
    const wave = wave1x200(30e3);
    const { whole, run } = struck(40, wave);
    const network = strikeSections(run.network, 3);
    expect(network.branches.length).toBeGreaterThan(run.network.branches.length + 12);
    const modes = surgeModes(network.surge);
    if (!modes.ok) throw new Error(modes.reason);
    const cut = strikeOf({ ...whole, network, modes }, run.at, wave);
    if (!cut.ok) throw new Error(cut.reason);
    const after = strikeBetween(pair, network, cut.run, cut.places)!.peak.value;
    expect(after / lumped({ whole, run })).toBeCloseTo(1, 5);
  });

  it('has more volts along it with travel time, the more the longer it is, by less than the 30 % of the mark', () => {
    const wave = wave1x200(30e3);
    const [near, far] = [40, 80].map((wireM) => {
      const all = struck(wireM, wave);
      return withTravel(all, wave)!(pair)!.value / lumped(all);
    });
    expect(near!).toBeGreaterThan(1.001);
    expect(far!).toBeGreaterThan(near!);
    expect(far!).toBeLessThan(1.3);
  });

  it('hardly any more where the front is slow', () => {
    const wave = wave10x350(30e3);
    const all = struck(40, wave);
    expect(withTravel(all, wave)!(pair)!.value / lumped(all)).toBeCloseTo(1, 2);
  });
});

describe('travel time', () => {
  it('is not worked out where the site is too wide for the front', () => {
    const wave: Wave = { kind: 'heidler', peakA: 12e3, k: 0.993, tau1S: 0.454e-6, tau2S: 143e-6, n: 10 };
    expect(withTravel(struck(40, wave), wave)).toBeNull();
  });

  it('is not worked out along a long wire of which nobody knows the place', () => {
    const wave = wave1x200(30e3);
    expect(withTravel(struck(60, wave, false), wave)!(pair)).toBeNull();
  });
});
