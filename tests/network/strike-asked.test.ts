import { describe, expect, it } from 'vitest';
import { bondingOf } from '../../src/bonding/bonding-of.ts';
import { nodePlaces } from '../../src/network/node-places.ts';
import { strikePairs } from '../../src/network/strike-pairs.ts';
import { readSite } from '../../src/site/read-site.ts';
import { notFinite } from '../not-finite.ts';
import { ampereOf, peakBetween, peakOfPart, strikeIn } from './strike-in.ts';

const soil = 'soil: {layers: [{resistivity: 50 to 400 ohm m}]}';
const station = (more = soil, height = '30 ft') => `
site: {name: Small, region: us, units: ft, service: panel}
${more}
electrodes:
  R1: {kind: rod, at: [0, 0], length: 8 ft, diameter: 5/8 in, top: 1 ft}
  R2: {kind: rod, at: [40, 0], length: 8 ft, diameter: 5/8 in}
supports:
  mast: {kind: mast, at: [0, 0], height: ${height}}
antennas:
  fan: {kind: half-wave dipole, on: mast@20 ft}
bars:
  entry: {kind: entry panel, at: [38, 2]}
arresters:
  a1: {kind: gas tube, on: entry}
equipment:
  panel: {kind: service panel, at: [40, 4]}
  radio: {kind: transceiver, at: [36, 6, 3]}
lines:
  feed: {kind: coax, path: [fan, {bond: mast@15 ft}, a1, radio]}
  outlet: {kind: mains, path: [panel, radio], length: 20 ft, protective_conductor: yes}
conductors:
  down: {from: mast@base, to: R1, wire: 4 AWG copper, length: 2 ft}
  lead: {from: entry, to: R2, wire: 4 AWG copper, length: 4 ft}
  main: {from: panel, to: R2, wire: 4 AWG copper, length: 6 ft}
  tie: {from: R1, to: R2, wire: 4 AWG copper, buried: no}
`;

function read(text: string) {
  const { site, problems } = readSite(text, 'test.site.yaml');
  if (site === null) throw new Error(JSON.stringify(problems));
  return site;
}

describe('what is struck', () => {
  it('is the top of the highest support where nobody says', () => {
    expect(strikeIn(station()).at).toBe('mast@top');
    expect(strikeIn(station(), { at: 'mast' }).peaks.at(-1)!.peak.value).toBe(
      strikeIn(station()).peaks.at(-1)!.peak.value,
    );
  });

  it('is the point that somebody names: lower on the mast, less of its metal is in the way', () => {
    const [top, half, foot] = ['mast@top', 'mast@15 ft', 'mast@base'].map((at) =>
      peakOfPart(strikeIn(station(), { at }), at),
    );
    expect(top!).toBeGreaterThan(half!);
    expect(half!).toBeGreaterThan(foot!);
  });

  it('is an antenna or a protector', () => {
    for (const at of ['fan', 'a1', 'R2']) {
      const strike = strikeIn(station(), { at });
      expect(strike.refused).toBeNull();
      expect(peakOfPart(strike, at)).toBeGreaterThan(1e3);
    }
    // what comes in at the bar does not go up the mast
    expect(ampereOf(strikeIn(station(), { at: 'a1' }), 'lead')).toBeGreaterThan(10e3);
  });
});

describe('what cannot be told', () => {
  it.each([
    ['no soil', station('')],
    [
      'no electrode',
      station()
        .replaceAll(/ {2}R[12]:.*\n/g, '')
        .replace('electrodes:\n', 'electrodes: none\n')
        .replaceAll(/ {2}(down|lead|main|tie):.*\n/g, '')
        .replace('conductors:\n', 'conductors: none\n'),
    ],
    [
      'hangs free',
      station()
        .replace(/ {2}down:.*\n/, '')
        .replace(/ {2}feed:.*\n/, ''),
    ],
  ])('is refused: %s', (reason, text) => {
    const strike = strikeIn(text);
    expect(strike.refused).toMatchObject({ reason });
    expect([strike.peaks, strike.differences, strike.conductors]).toEqual([[], [], []]);
  });

  it('is an antenna that nothing ties', () => {
    const strike = strikeIn(station().replace('[fan, {bond', '[mast@20 ft, {bond'), { at: 'fan' });
    expect(strike.refused).toMatchObject({ reason: 'hangs free', parts: ['fan'] });
  });
});

describe('what hangs on nothing that reaches the soil', () => {
  const island = station()
    .replace('  radio:', '  x: {kind: computer}\n  y: {kind: computer}\n  radio:')
    .replace('conductors:\n', 'conductors:\n  xy: {from: x, to: y, wire: 6 AWG copper, length: 3 ft}\n');

  it('has no figure, in no list, and is named', () => {
    const strike = strikeIn(island, { between: [['x', 'panel']], detail: true });
    expect(strike.taken!.hangFree).toEqual(['x', 'y']);
    expect(strikeIn(station()).taken!.hangFree).toEqual([]);
    const { at, taken, ...said } = strike;
    expect(JSON.stringify(said)).not.toMatch(/"(?:x|y|xy)"/);
    expect(said.peaks.length).toBeGreaterThan(5);
  });

  it('cannot be struck', () => {
    expect(strikeIn(island, { at: 'y' }).refused).toMatchObject({ reason: 'hangs free', parts: ['y'] });
  });
});

describe('what is said of it', () => {
  it('has a range over the soil with its likely figure within', () => {
    const strike = strikeIn(station(), { detail: true });
    expect(strike.differences).toHaveLength(3);
    for (const { peak, low, high } of strike.differences) {
      expect(low!).toBeLessThanOrEqual(Math.abs(peak.value));
      expect(high!).toBeGreaterThanOrEqual(Math.abs(peak.value));
    }
    const earth = (of: typeof strike) => peakOfPart(of, 'R1');
    const [wet, dry] = ['50 ohm m', '400 ohm m'].map((r) => strikeIn(station(`soil: {layers: [{resistivity: ${r}}]}`)));
    expect(earth(wet!)).toBeLessThan(earth(strike));
    expect(earth(dry!)).toBeGreaterThan(earth(strike));
  });

  it('is the same every time, to the last byte, and does not hang on the order of the file', () => {
    const one = JSON.stringify(strikeIn(station(), { detail: true }));
    expect(JSON.stringify(strikeIn(station(), { detail: true }))).toBe(one);
    const [r1, r2] = [/ {2}R1:.*\n/.exec(station())![0], / {2}R2:.*\n/.exec(station())![0]];
    const turned = station().replace(r1 + r2, r2 + r1);
    expect(turned).not.toBe(station());
    expect(peakOfPart(strikeIn(turned), 'R1') / peakOfPart(strikeIn(station()), 'R1')).toBeCloseTo(1, 9);
  });

  it('names a line that runs down a support at its face', () => {
    expect(strikeIn(station()).taken!.onFace).toEqual(['feed']);
    // a jumper of two feet at the top is no run
    expect(strikeIn(station().replace('{bond: mast@15 ft}, ', '{bond: mast@18 ft}, ')).taken!.onFace).toEqual([]);
  });

  it('grows as the stroke does', () => {
    const [one, two] = [10e3, 20e3].map((currentA) => strikeIn(station(), { currentA }));
    for (const [i, { peak }] of two!.differences.entries())
      expect(peak.value).toBeCloseTo(2 * one!.differences[i]!.peak.value, 4);
  });

  it('names nothing that is not a number', () => {
    expect(notFinite(strikeIn(station(), { detail: true }))).toEqual([]);
  });
});

describe('a support of unknown height', () => {
  const text = station(soil, 'unknown').replaceAll('mast@15 ft', 'mast@base').replace('mast@20 ft', 'mast@top');

  it('has no length of metal: its top is as its foot, and it is said', () => {
    const strike = strikeIn(text);
    expect(strike.taken!.heights).toEqual(['mast']);
    expect(strike.taken!.lengths.flatMap((l) => l.parts)).not.toContain('mast');
    expect(peakOfPart(strike, 'mast@top')).toBe(peakOfPart(strike, 'mast'));
  });

  it('is not said of a point that only guys meet', () => {
    const guyed = station().replace(
      'height: 30 ft}',
      'height: 30 ft, guys: {g1: {anchor: [20, 20], metal: galvanised steel}}}',
    );
    expect(strikeIn(guyed).taken!.heights).toEqual([]);
    expect(strikeIn(guyed).taken!.guys).toEqual(['g1']);
    expect(strikeIn(guyed).taken!.lengths).toEqual(strikeIn(station()).taken!.lengths);
  });

  it('is in its place where the height is a range', () => {
    const { taken } = strikeIn(station(soil, '28 to 32 ft'));
    expect(taken!.heights).toEqual([]);
    expect(taken!.lengthOnly).not.toContain('mast');
  });
});

describe('places of nodes', () => {
  const places = nodePlaces(bondingOf(read(station()), null));
  const foot = 0.3048;
  const at = (node: string) => [...places.get(node)!].map((m) => Number((m / foot).toFixed(6)));

  it('are those of the parts, upright on a support, a rod at its top', () => {
    expect(at('mast@base')).toEqual([0, 0, 0]);
    expect(at('mast@top')).toEqual([0, 0, 30]);
    expect(at('mast@4.572 m')).toEqual([0, 0, 15]);
    expect(at('R1')).toEqual([0, 0, -1]);
    expect(at('entry')).toEqual([38, 2, 0]);
    expect(at('radio')).toEqual([36, 6, 3]);
  });

  it('go on to what touches them: a protector on its bar, a joint, the end of a shield', () => {
    expect(at('a1')).toEqual([38, 2, 0]);
    expect(at('lead:entry')).toEqual([38, 2, 0]);
    expect(at('down:R1')).toEqual([0, 0, -1]);
    expect(at('fan')).toEqual([0, 0, 20]);
  });

  it('are not made up', () => {
    const some = nodePlaces(bondingOf(read(station().replace('panel, at: [40, 4]', 'panel')), null));
    expect(some.has('panel')).toBe(false);
    expect(nodePlaces(bondingOf(read(station(soil, 'unknown')), null)).has('mast@top')).toBe(false);
  });
});

describe('pairs', () => {
  const pairsOf = (text: string) => {
    const run = bondingOf(read(text), null);
    return strikePairs(run.site, (id) => run.metal.index.parts.get(id)).map(({ a, b, why }) => `${why}: ${a} ${b}`);
  };

  it('lead from the foot of the mast to the bar that carries the protector, and from it to the radio', () => {
    expect(pairsOf(station())).toEqual(['line: entry radio', 'line: panel radio', 'base: mast entry']);
  });

  it('lead straight to the radio where the protector hangs on no bar', () => {
    expect(pairsOf(station().replace('gas tube, on: entry', 'gas tube, on: R2'))).toContain('base: mast radio');
    expect(pairsOf(station().replace('gas tube, on: entry', 'gas tube'))).toContain('base: mast radio');
  });

  it('are of the signal line where a mains line joins the two as well', () => {
    const text = station().replace(
      'lines:\n',
      'lines:\n  alarm: {kind: control, path: [panel, radio], length: 9 ft}\n',
    );
    const turned = text
      .replace(/ {2}alarm:.*\n/, '')
      .replace(/( {2}outlet:.*\n)/, '$1  alarm: {kind: control, path: [panel, radio], length: 9 ft}\n');
    for (const file of [text, turned]) {
      const run = bondingOf(read(file), null);
      const pairs = strikePairs(run.site, (id) => run.metal.index.parts.get(id));
      expect(pairs.find(({ a, b }) => a === 'panel' && b === 'radio')!.by).toBe('alarm');
    }
  });

  it('name the line, and the straight way between the two as the route', () => {
    const { pair, route, volt } = peakBetween(strikeIn(station()), 'mast', 'entry');
    expect([pair.by, route]).toEqual(['feed', 'straight']);
    expect(volt).toBeGreaterThan(1e3);
  });
});
