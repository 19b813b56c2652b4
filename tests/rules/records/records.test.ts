import { describe, expect, it } from 'vitest';
import { everyOutcome } from '../every-outcome.ts';
import { verdictsOf } from '../verdicts-of.ts';

/** `outcome place: reason` of a rule on a site with a rod that hangs on its panel. */
function ask(rule: string, rest: string, { region = 'us', more = '', rod = 'length: 2.4 m' } = {}) {
  return verdictsOf(
    rule,
    `site: {name: Records, region: ${region}, units: m, service: panel${more}}
electrodes: {E: {kind: rod, ${rod}}}
equipment: {panel: {kind: service panel}}
${rest}`,
  );
}

const reading = (rest: string) => `readings: {r: {kind: fall of potential, electrode: E, resistance: 20 ohm${rest}}}\n`;
const all = ', date: 2026-04-11, weather: dry, instrument: earth tester, by: the owner';

describe('resistance-has-provenance: method, date, weather, instrument and who; records, so no threshold', () => {
  it('a reading says all of it or does not; a bare figure may have a sheet', () => {
    expect(ask('resistance-has-provenance', reading(all))).toEqual(['met r: recorded']);
    expect(ask('resistance-has-provenance', reading(', date: 2026-04-11'))).toEqual(['not met r: gaps']);
    expect(ask('resistance-has-provenance', '', { rod: 'resistance: 20 ohm' })).toEqual(['cannot tell E: stated']);
    expect(ask('resistance-has-provenance', reading(all), { rod: 'resistance: 20 ohm' })).toEqual(['met r: recorded']);
    expect(ask('resistance-has-provenance', '')).toEqual([]);
  });
});

describe('electrode-tested-at-install: a dated reading; no threshold', () => {
  const rule = 'electrode-tested-at-install';

  it('is asked where readings were typed, or typed as none', () => {
    expect(ask(rule, reading(', date: 2026-04-11'))).toEqual(['met r: dated']);
    expect(ask(rule, reading(''))).toEqual(['cannot tell r: undated']);
    const without = reading(', date: 2026-04-11').replace('20 ohm', 'unknown');
    expect(ask(rule, without)).toEqual(['not met : never']);
    expect(ask(rule, 'readings: none\n')).toEqual(['not met : never']);
    expect(ask(rule, 'readings: none\n', { rod: 'resistance: 20 ohm' })).toEqual([]);
    expect(ask(rule, '')).toEqual([]);
  });
});

describe('probe-distance: IEEE 81 (from memory), five times the largest dimension, 62 % of the way', () => {
  const probes = (current: string, potential: string, rod = 'length: 2 m') =>
    ask('probe-distance', reading(`, current_probe: ${current}, potential_probe: ${potential}`), { rod });

  it('either side, in both systems', () => {
    expect(probes('10 m', '6.2 m')).toEqual(['met r: far enough']);
    expect(probes('9.9 m', '6.2 m')).toEqual(['not met r: too near']);
    expect(probes('40 ft', '25 ft', 'length: 8 ft')).toEqual(['met r: far enough']);
    expect(probes('39 ft', '25 ft', 'length: 8 ft')).toEqual(['not met r: too near']);
    expect(probes('100 m', '66 m')).toEqual(['met r: far enough']);
    expect(probes('100 m', '68 m')).toEqual(['not met r: potential probe']);
    expect(probes('100 m', '[52 m, 62 m, 72 m]')).toEqual(['met r: far enough']);
  });

  it('asks what is not known', () => {
    expect(probes('unknown', '6.2 m')).toEqual(['cannot tell r: probes unknown']);
    expect(probes('100 m', '62 m', 'length: unknown')).toEqual(['cannot tell r: probes unknown']);
    expect(ask('probe-distance', '')).toEqual([]);
    expect(ask('probe-distance', 'readings: none\n')).toEqual([]);
  });

  it('takes a system across all that it has in the soil', () => {
    const system = (current: string) =>
      verdictsOf(
        'probe-distance',
        `site: {name: Records, region: us, units: m, service: panel}
electrodes: {E: {kind: rod, length: 2.4 m, at: [0, 0]}, F: {kind: rod, length: 2.4 m, at: [30, 40]}}
equipment: {panel: {kind: service panel}}
conductors: {a: {from: panel, to: E}, b: {from: E, to: F}}
readings: {r: {kind: fall of potential, electrode: panel, resistance: 5 ohm, current_probe: ${current}, potential_probe: 155 m}}
`,
      );
    expect(system('250 m')).toEqual(['met r: far enough']);
    expect(system('249 m')).toEqual(['not met r: too near']);
  });
});

describe('probe-distance, further', () => {
  const rule = 'probe-distance';
  const of = (electrode: string, on: string, current: string, potential: string) =>
    verdictsOf(
      rule,
      `site: {name: Records, region: us, units: m, service: panel}
electrodes: {E: {${electrode}}}
equipment: {panel: {kind: service panel}}
conductors: {a: {from: panel, to: E}}
readings: {r: {kind: fall of potential, electrode: ${on}, resistance: 5 ohm, current_probe: ${current}, potential_probe: ${potential}}}
`,
    );

  it('a system of one rod is as large as the rod, not as its place', () => {
    const rod = 'kind: rod, length: 2.4 m, at: [0, 0]';
    expect(of(rod, 'panel', '3 m', '1.86 m')).toEqual(['not met r: too near']);
    expect(of(rod, 'panel', '12 m', '7.4 m')).toEqual(['met r: far enough']);
    expect(of(rod.replace('2.4 m', 'unknown'), 'panel', '3 m', '1.86 m')).toEqual(['cannot tell r: probes unknown']);
  });

  // across a square of 8 m: 11.31 m, five times 56.6 m; a ring of 32 m of unknown shape: 10.2 m to 16 m across
  it('a ring is as large as it is across, not as it is long', () => {
    const square = 'kind: buried wire, closed: yes, route: [[0, 0], [8, 0], [8, 8], [0, 8]]';
    expect(of(square, 'E', '57 m', '35 m')).toEqual(['met r: far enough']);
    expect(of(square, 'E', '56 m', '35 m')).toEqual(['not met r: too near']);
    const ring = 'kind: buried wire, closed: yes, length: 32 m';
    expect(of(ring, 'E', '80 m', '50 m')).toEqual(['met r: far enough']);
    expect(of(ring, 'E', '79 m', '50 m')).toEqual(['cannot tell r: probes unknown']);
    expect(of(ring, 'E', '50 m', '31 m')).toEqual(['not met r: too near']);
  });

  it('a range that holds the limit is no proof', () => {
    const rod = 'kind: rod, length: 2.4 m';
    expect(of(rod, 'E', '5 to 40 m', '14 m')).toEqual(['cannot tell r: probes unknown']);
    expect(of(rod, 'E', '40 m', '10 to 40 m')).toEqual(['cannot tell r: probes unknown']);
    expect(of(rod, 'E', '5 to 11 m', '14 m')).toEqual(['not met r: too near']);
  });
});

describe('photo-before-backfill: a photograph at each buried conductor; no threshold', () => {
  const wires = (a: string, b = '') =>
    ask(
      'photo-before-backfill',
      `conductors: {a: {from: panel, to: E, buried: 0.5 m${a}}, b: {from: panel, to: E, buried: 0.5 m${b}}}\n`,
    );

  it('is asked where the file keeps photographs of trenches', () => {
    expect(wires(', photo: trench.jpg', ', photo: [trench.jpg]')).toEqual(['met a: taken', 'met b: taken']);
    expect(wires(', photo: trench.jpg', ', photo: none')).toEqual(['not met b: not taken', 'met a: taken']);
    expect(wires(', photo: trench.jpg')).toEqual(['cannot tell b: not named', 'met a: taken']);
    expect(wires('')).toEqual([]);
    // what is still to be laid cannot have been photographed
    expect(wires(', photo: trench.jpg', ', known: planned')).toEqual(['met a: taken']);
  });
});

describe('seasonal-test: MIL-HDBK-1004/6; four within twelve months (ours)', () => {
  const tests = (dates: readonly string[], more = ', claims: MIL-HDBK-1004/6', soil = '') =>
    ask(
      'seasonal-test',
      `${soil}readings: {${dates.map((d, i) => `r${i}: {kind: fall of potential, electrode: E, date: ${d}, resistance: 9 ohm}`).join(', ')}}\n`,
      { more },
    );

  it('either side of twelve months', () => {
    expect(tests(['2025-04-01', '2025-07-01', '2025-10-01', '2026-04-01'])).toEqual(['met r0 r1 r2 r3: over a year']);
    expect(tests(['2025-04-01', '2025-07-01', '2025-10-01', '2026-05-01'])).toEqual(['not met r0 r1 r2 r3: too few']);
    expect(tests(['2025-04-01', '2025-07-01', '2025-10-01'])).toEqual(['not met r0 r1 r2: too few']);
    expect(tests(['2025-04-01', '2025-07-01', '2025-10-01', '2025'])).toEqual(['cannot tell r0 r1 r2 r3: undated']);
  });

  it('four readings of one day or one month are one test', () => {
    const day = '2026-04-11';
    expect(tests([day, day, day, day])).toEqual(['not met r0 r1 r2 r3: too few']);
    expect(tests(['2026-04-01', '2026-04-08', '2026-04-15', '2026-04-22'])).toEqual(['not met r0 r1 r2 r3: too few']);
    expect(tests(['2026-01-01', '2026-01-31', '2026-03-02', '2026-04-01'])).toEqual(['met r0 r1 r2 r3: over a year']);
    expect(tests(['2026-01-01', '2026-01-30', '2026-03-02', '2026-04-01'])).toEqual(['not met r0 r1 r2 r3: too few']);
  });

  it('is asked of a facility whose soil was not measured', () => {
    expect(tests(['2025-04-01'], '')).toEqual([]);
    expect(tests(['2025-04-01'], ', claims: army', 'soil: {type: clay, known: measured}\n')).toEqual([]);
  });
});

describe('connection-labelled: BS 7671 514.13; no threshold', () => {
  const wire = (rest: string, region = 'uk') =>
    ask('connection-labelled', `conductors: {main: {from: panel, to: E${rest}}}\n`, { region });

  it('asks the main connection', () => {
    expect(wire(', labelled: yes')).toEqual(['met main: labelled']);
    expect(wire(', labelled: no')).toEqual(['not met main: no label']);
    expect(wire('')).toEqual(['cannot tell main: not seen']);
    expect(wire('', 'us')).toEqual([]);
    expect(ask('connection-labelled', '', { region: 'uk' })).toEqual([]);
    expect(ask('connection-labelled', 'conductors: none\n', { region: 'uk' })).toEqual([]);
  });
});

everyOutcome('resistance-has-provenance');
everyOutcome('electrode-tested-at-install');
everyOutcome('photo-before-backfill');
everyOutcome('probe-distance');
everyOutcome('seasonal-test');
everyOutcome('connection-labelled');
