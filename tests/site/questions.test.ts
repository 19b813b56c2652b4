import { describe, expect, it } from 'vitest';
import { questionsOf, siteOf } from './read-text.ts';

describe('a height in inches', () => {
  const heightOf = (section: string, kind: string, height: string) =>
    questionsOf(`site: {units: ft}\n${section}:\n  s: {kind: ${kind}, height: ${height}}\n`);

  it.each(['43 in', '43 inches', "'43\"'", '40 to 43 in', '43in'])('is asked about: %s', (height) => {
    expect(heightOf('supports', 'lattice tower', height)).toEqual([['height-in-inches', 'supports.s.height']]);
    expect(heightOf('antennas', 'vertical', height)).toEqual([['height-in-inches', 'antennas.s.height']]);
  });

  it.each(['43 ft', '3 ft 7 in', "'3'' 7\"'", '43', '13 m', 'unknown'])('is not: %s', (height) => {
    expect(heightOf('supports', 'lattice tower', height)).toEqual([]);
  });

  it('is usual for a whip on a magnet', () => {
    expect(heightOf('antennas', 'magnetic foot', '19 in')).toEqual([]);
  });
});

describe('a gauge typed as square millimetres', () => {
  const wireIn = (header: string, wire: string) =>
    questionsOf(`site: {${header}}\nconductors:\n  c1: {wire: ${wire}}\n`).map(([key]) => key);

  it('is asked about where wire is sold by gauge: every gauge in use', () => {
    for (const gauge of [1, 2, 3, 4, 6, 8, 10, 12, 14]) {
      expect(wireIn('region: us', `${gauge} mm2 copper`)).toEqual(['gauge-as-mm2']);
      expect(wireIn('region: ca', `${gauge} mm2`)).toEqual(['gauge-as-mm2']);
      expect(wireIn('units: ft', `${gauge} mm² copper`)).toEqual(['gauge-as-mm2']);
    }
    for (const size of ['16 mm2 copper', '2.5 mm2 copper', '13.3 mm2 copper', '6 AWG copper', '25 mm2']) {
      expect(wireIn('region: us', size)).toEqual([]);
    }
  });

  it('is asked about elsewhere only where no metric wire has that size', () => {
    for (const size of ['1 mm2 copper', '4 mm2 copper', '6 mm2 copper', '10 mm2 copper', '16 mm2 copper']) {
      expect(wireIn('region: iec', size)).toEqual([]);
      expect(wireIn('region: unknown, units: m', size)).toEqual([]);
    }
    for (const size of ['2 mm2 copper', '8 mm2 copper', '12 mm2 copper', '14 mm2 copper']) {
      expect(wireIn('region: uk', size)).toEqual(['gauge-as-mm2']);
    }
  });

  it('is looked for in every field that is a wire', () => {
    const text = [
      'site: {region: us}',
      'electrodes:',
      '  ring: {kind: buried wire, wire: 2 mm2 copper}',
      'equipment:',
      '  panel: {kind: service panel, service_wire: 4 mm2 copper, electrode_wire: 6 mm2 copper}',
    ];
    expect(questionsOf(`${text.join('\n')}\n`).map(([, path]) => path)).toEqual([
      'electrodes.ring.wire',
      'equipment.panel.service_wire',
      'equipment.panel.electrode_wire',
    ]);
  });
});

describe('a rod over 100 ft', () => {
  const rodOf = (kind: string, length: string) =>
    questionsOf(`electrodes:\n  r: {kind: ${kind}, length: ${length}}\n`).map(([key]) => key);

  it('is asked about from just above', () => {
    expect(rodOf('rod', '100 ft')).toEqual([]);
    expect(rodOf('rod', '101 ft')).toEqual(['rod-over-100-ft']);
    expect(rodOf('rods', '2.4 km')).toEqual(['rod-over-100-ft']);
    expect(rodOf('rod', 'over 100 ft')).toEqual(['rod-over-100-ft']);
    expect(rodOf('rod', 'over 60 ft')).toEqual([]);
    expect(rodOf('rod', '90 to 110 ft')).toEqual([]);
  });

  it('is only about driven rods', () => {
    expect(rodOf('buried wire', '300 ft')).toEqual([]);
    expect(rodOf('well casing', '300 ft')).toEqual([]);
  });
});

describe('a length below the straight distance', () => {
  const wire = (from: string, to: string, length: string) =>
    questionsOf(
      [
        'site: {units: ft}',
        'supports:',
        '  tower: {kind: tower, at: [30, 40], height: 50 ft}',
        'equipment:',
        '  panel: {kind: service panel, at: [0, 0]}',
        'electrodes:',
        '  rod: {kind: rod, at: [30, 40]}',
        '  set: {kind: rods, count: 3, at: [30, 40]}',
        'bars:',
        '  bar: {kind: tower bar, on: tower@40 ft}',
        'conductors:',
        `  c1: {from: ${from}, to: ${to}, length: ${length}}`,
        '',
      ].join('\n'),
    ).map(([key]) => key);
  const asked = ['length-below-straight'];

  it('is asked about: 50 ft between the ends (3-4-5)', () => {
    expect(wire('panel', 'rod', '45 ft')).toEqual(asked);
    expect(wire('panel', 'rod', '50 ft')).toEqual([]);
    expect(wire('panel', 'rod', '40 to 60 ft')).toEqual([]);
    expect(wire('panel', 'rod', 'over 40 ft')).toEqual([]);
    expect(wire('panel', 'rod', 'unknown')).toEqual([]);
  });

  it('lets tapes sag: 3 % or half a metre', () => {
    expect(wire('panel', 'rod', '48.5 ft')).toEqual([]);
    expect(wire('panel', 'rod', '48 ft')).toEqual(asked);
  });

  it('counts height where both ends have one', () => {
    expect(wire('tower@50 ft', 'tower@base', '45 ft')).toEqual(asked);
    expect(wire('tower@top', 'tower@10 ft', '30 ft')).toEqual(asked);
    expect(wire('tower@top', 'tower@10 ft', '40 ft')).toEqual([]);
    expect(wire('bar', 'tower@base', '30 ft')).toEqual(asked);
    expect(wire('tower@50 ft', 'panel', '50 ft')).toEqual([]);
    expect(wire('tower', 'tower@base', '1 ft')).toEqual([]);
  });

  it('does not guess where a wire lands on a group, or on what is not in the file', () => {
    expect(wire('panel', 'set', '5 ft')).toEqual([]);
    expect(wire('panel', 'unknown', '5 ft')).toEqual([]);
  });

  it('is looked for from stop to stop of a line', () => {
    const line = (rest: string) =>
      questionsOf(
        [
          'site: {units: ft}',
          'supports:',
          '  tower: {kind: tower, at: [30, 40]}',
          'equipment:',
          '  radio: {kind: transceiver, at: [0, 0]}',
          'lines:',
          `  coax: {kind: coax, ${rest}}`,
          '',
        ].join('\n'),
      );
    expect(line('path: [tower@20 ft, {plug: j1}, radio], lengths: [20 ft, 20 ft]')).toEqual([
      ['length-below-straight', 'lines.coax.lengths'],
    ]);
    expect(line('path: [tower@20 ft, {plug: j1}, radio], lengths: [20 ft, 40 ft]')).toEqual([]);
    expect(line('path: [tower@20 ft, {plug: j1}, radio], lengths: [20 ft, unknown]')).toEqual([]);
    expect(line('path: [tower@20 ft, {bend: [9, 9]}, radio], lengths: [20 ft]')).toEqual([
      ['length-below-straight', 'lines.coax.lengths'],
    ]);
    expect(line('path: [tower@20 ft, radio], length: 20 ft')).toEqual([['length-below-straight', 'lines.coax.length']]);
  });
});

describe('two wires on one line', () => {
  const routes = (...wires: readonly (readonly [route: string, more?: string])[]) =>
    questionsOf(
      `site: {units: m}\nconductors:\n${wires
        .map(([route, more = ''], i) => `  c${i + 1}: {wire: 16 mm2 copper${more}, route: ${route}}\n`)
        .join('')}`,
    ).map(([, path]) => path);

  it('are asked about where they overlap, whichever way they run', () => {
    expect(routes(['[[0, 0], [10, 0]]'], ['[[4, 0], [14, 0]]'])).toEqual(['conductors.c2.route']);
    expect(routes(['[[0, 0], [10, 0]]'], ['[[9, 0], [-4, 0]]'])).toEqual(['conductors.c2.route']);
    expect(routes(['[[1, 2, 3], [7, 5, 9]]'], ['[[3, 3, 5], [5, 4, 7]]'])).toEqual(['conductors.c2.route']);
  });

  it('are not where they only meet, cross, run beside each other or are insulated', () => {
    expect(routes(['[[0, 0], [10, 0]]'], ['[[10, 0], [14, 0]]'])).toEqual([]);
    expect(routes(['[[0, 0], [10, 0]]'], ['[[5, -5], [5, 5]]'])).toEqual([]);
    expect(routes(['[[0, 0], [10, 0]]'], ['[[0, 0.1], [10, 0.1]]'])).toEqual([]);
    expect(routes(['[[0, 0], [10, 0]]'], ['[[0, 0], [10, 0]]', ' insulated'])).toEqual([]);
    expect(routes(['[[0, 0], [10, 0]]'], ['[[0, 0], [10, 0]], along: {part: c1, spacing: 50 mm}'])).toEqual([]);
  });

  it('are asked about once for each pair that lies side by side', () => {
    expect(routes(['[[0, 0], [5, 0], [10, 0]]'], ['[[0, 0], [5, 0], [10, 0]]'])).toEqual(['conductors.c2.route']);
  });
});

describe('a state like the site', () => {
  const stateOf = (fields: string) =>
    questionsOf(
      `arresters:\n  a1: {kind: gas tube}\nlines:\n  l: {kind: coax, path: [street, {plug: j1}, unknown]}\nstates:\n  s: {${fields}}\n`,
    ).map(([key]) => key);

  it.each(['says: as usual', 'open: none, lost: []', 'frozen: no', 'wet: unknown', 'gap: 2 in'])('%s', (fields) => {
    expect(stateOf(fields)).toEqual(['state-changes-nothing']);
  });

  it.each(['open: [j1]', 'lost: [a1]', 'set: {a1.present: no}', 'frozen: yes', 'dry: yes'])('not: %s', (fields) => {
    expect(stateOf(fields)).toEqual([]);
  });
});

describe('lengths beside a length', () => {
  const lineOf = (fields: string) =>
    questionsOf(`lines:\n  l: {kind: coax, path: [street, {plug: j1}, unknown], ${fields}}\n`).map(([key]) => key);

  it('are asked about where they do not agree', () => {
    expect(lineOf('lengths: [92 ft, 3 ft], length: 59 ft')).toEqual(['lengths-and-length']);
    expect(lineOf('lengths: [92 ft, 3 ft], length: 95 ft')).toEqual([]);
    expect(lineOf('lengths: [92 ft, 3 ft], length: 29 m')).toEqual([]);
    expect(lineOf('lengths: [92 ft, unknown], length: 59 ft')).toEqual([]);
    expect(lineOf('lengths: [90 to 100 ft, 3 ft], length: about 95 ft')).toEqual([]);
  });
});

describe('a kind nearly listed', () => {
  const kindOf = (kind: string) => questionsOf(`equipment:\n  e: {kind: ${kind}}\n`).map(([key]) => key);

  it('is asked about where a letter or two are wrong, not where a word is another', () => {
    expect(kindOf('transciever')).toEqual(['kind-near']);
    expect(kindOf('service pannel')).toEqual(['kind-near']);
    expect(kindOf('Service-Panel')).toEqual([]);
    expect(kindOf('service radio')).toEqual([]);
    expect(kindOf('weather station')).toEqual([]);
  });
});

describe('questions', () => {
  it('stand in the order of the file, with where they are and what was typed', () => {
    const text = 'equipment:\n  e: {kind: tunner}\nsupports:\n  s: {kind: tower, height: 43 in}\n';
    expect(siteOf(text).questions).toEqual([
      {
        path: 'equipment.e.kind',
        source: { line: 2, column: 13 },
        key: 'kind-near',
        values: { kind: 'tunner', near: 'tuner' },
      },
      {
        path: 'supports.s.height',
        source: { line: 4, column: 28 },
        key: 'height-in-inches',
        values: { text: '43 in', feet: 3.6 },
      },
    ]);
  });

  it('do not stand twice where a state sets another field of the part', () => {
    const text =
      'equipment:\n  e: {kind: tunner}\nsupports:\n  s: {kind: tower, height: 43 in}\nstates:\n  down: {set: {s.present: no, e.present: no}}\n';
    expect(questionsOf(text).map(([key]) => key)).toEqual(['kind-near', 'height-in-inches']);
  });
});
