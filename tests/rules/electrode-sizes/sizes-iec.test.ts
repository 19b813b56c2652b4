import { describe, expect, it } from 'vitest';
import { eitherSide } from '../either-side.ts';
import { everyOutcome } from '../every-outcome.ts';
import { findingsOf, verdictsOf } from '../verdicts-of.ts';

/** `outcome place: reason` of a rule on these electrodes, each in the short form of the file. */
function ask(rule: string, electrodes: string, more = '', rest = ''): readonly string[] {
  const header = `site: {name: Sizes, region: iec, units: m, service: panel${more}}\n`;
  return verdictsOf(rule, `${header}electrodes: {${electrodes}}\nequipment: {panel: {kind: service panel}}\n${rest}`);
}

describe('iec-rod-dimensions: IEC 62305-3:2010 Table 7 (from memory)', () => {
  const rod = (rest: string) => ask('iec-rod-dimensions', `R: {kind: rod, serves: lightning${rest}}`);

  it('copper and stainless 15 mm, galvanised 14 mm, either side and in both systems', () => {
    expect(rod(', diameter: 15 mm, metal: copper')).toEqual(['met R: as asked']);
    expect(rod(', diameter: 0.6 in, metal: stainless steel')).toEqual(['met R: as asked']);
    expect(rod(', diameter: 14.8 mm, metal: stainless steel')).toEqual(['not met R: less']);
    expect(rod(', diameter: 14 mm, metal: galvanised steel')).toEqual(['met R: as asked']);
    expect(rod(', diameter: 1/2 in, metal: galvanised steel')).toEqual(['not met R: less']);
  });

  it('copper-clad 14 mm with 250 µm of copper', () => {
    expect(rod(', diameter: 14.2 mm, metal: copper-clad steel, coating: 0.25 mm')).toEqual(['met R: as asked']);
    expect(rod(', diameter: 14.2 mm, metal: copper-clad steel, coating: 10 mil')).toEqual(['met R: as asked']);
    expect(rod(', diameter: 14.2 mm, metal: copper-clad steel, coating: 0.1 mm')).toEqual(['not met R: less']);
    expect(rod(', diameter: 14.2 mm, metal: copper-clad steel')).toEqual(['cannot tell R: figure unknown']);
  });

  it('is asked of what serves lightning, or of all where a class is claimed', () => {
    expect(ask('iec-rod-dimensions', 'R: {kind: rod, diameter: 10 mm, metal: copper}')).toEqual([]);
    expect(ask('iec-rod-dimensions', 'R: {kind: rod, diameter: 10 mm, metal: copper}', ', claims: class III')).toEqual([
      'not met R: less',
    ]);
    expect(
      ask(
        'iec-rod-dimensions',
        'R: {kind: rod, diameter: 10 mm}',
        '',
        'conductors: {d: {from: panel, to: R, role: down conductor}}\n',
      ),
    ).toEqual(['not met R: less']);
  });
});

describe('iec-buried-conductor-dimensions: IEC 62305-3:2010 Table 7 (from memory)', () => {
  const wire = (text: string) =>
    ask('iec-buried-conductor-dimensions', `W: {kind: buried wire, serves: lightning, wire: ${text}}`);

  it('copper 50 mm², round steel 10 mm (78 mm²), either side and in both systems', () => {
    expect(wire('50 mm2 copper')).toEqual(['met W: as asked']);
    expect(wire('1/0 AWG copper')).toEqual(['met W: as asked']);
    expect(wire('1 AWG copper')).toEqual(['not met W: less']);
    expect(wire('round 10 mm galvanised steel')).toEqual(['met W: as asked']);
    expect(wire('round 8 mm stainless steel')).toEqual(['not met W: less']);
  });

  it('tape of copper 50 mm² by 2 mm, galvanised 90 mm² by 3 mm, stainless 100 mm²', () => {
    expect(wire('strap 25 mm x 2 mm copper')).toEqual(['met W: as asked']);
    expect(wire('strap 3 in x 0.022 in copper')).toEqual(['not met W: less']);
    expect(wire('strap 30 mm x 3 mm galvanised steel')).toEqual(['met W: as asked']);
    expect(wire('strap 30 mm x 3 mm stainless steel')).toEqual(['not met W: less']);
    expect(wire('strap 30 mm x 3.5 mm stainless steel')).toEqual(['met W: as asked']);
  });

  it('aluminium is not admitted in soil; what nobody knows is asked', () => {
    expect(wire('50 mm2 aluminium')).toEqual(['not met W: metal not listed']);
    expect(wire('unknown')).toEqual(['cannot tell W: figure unknown']);
    const unknown = `site: {name: Sizes, region: iec, units: m, service: unknown, claims: class III}
electrodes: {W: {kind: buried wire, metal: galvanised steel}}
`;
    const { remedy, tool } = findingsOf('iec-buried-conductor-dimensions', unknown).findings[0]!;
    expect([tool, remedy]).toEqual(['wire gauge', expect.stringContaining('`wire: round 10 mm galvanised steel`')]);
    expect(remedy).not.toContain('mark');
    expect(ask('iec-buried-conductor-dimensions', 'W: {kind: buried wire, wire: 10 mm2 copper}')).toEqual([]);
  });
});

describe('iec-plate-dimensions: IEC 62305-3:2010 Table 7 (from memory), 500 mm solid, 600 mm lattice', () => {
  const plate = (rest: string) =>
    ask('iec-plate-dimensions', `P: {kind: plate, serves: lightning, metal: copper${rest}}`);

  it('either side, in both systems', () => {
    expect(plate(', width: 0.5 m, height: 500 mm')).toEqual(['met P: as asked']);
    expect(plate(', width: 20 in, height: 20 in')).toEqual(['met P: as asked']);
    expect(plate(', width: 0.5 m, height: 0.49 m')).toEqual(['not met P: less']);
    expect(plate(', width: 0.5 m, height: 0.5 m, lattice: yes')).toEqual(['not met P: less']);
    expect(plate(', width: 0.5 m')).toEqual(['cannot tell P: figure unknown']);
    expect(ask('iec-plate-dimensions', 'P: {kind: plate, width: 0.3 m}')).toEqual([]);
  });
});

describe('iec-power-electrode-dimensions: IEC 60364-5-54:2011 Table 54.1 (from memory)', () => {
  const one = (text: string) => ask('iec-power-electrode-dimensions', `E: {${text}}`);

  it('is not asked of what nobody said to serve a supply that brings its own earth along', () => {
    const of = (supply: string, rest = '') =>
      ask('iec-power-electrode-dimensions', `E: {kind: rod, metal: copper-clad steel, diameter: 9 mm${rest}}`, supply);
    expect(of(', supply: tt')).toEqual(['not met E: less']);
    expect(of(', supply: tn-c-s')).toEqual([]);
    expect(of(', supply: tn-c-s', ', serves: service')).toEqual(['not met E: less']);
  });

  it('wire 25 mm², tape 50 mm² by 2 mm, either side and in both systems', () => {
    expect(one('kind: buried wire, wire: 25 mm2 copper')).toEqual(['met E: as asked']);
    expect(one('kind: buried wire, wire: 3 AWG copper')).toEqual(['met E: as asked']);
    expect(one('kind: buried wire, wire: 4 AWG copper')).toEqual(['not met E: less']);
    expect(one('kind: buried wire, wire: strap 25 mm x 3 mm copper')).toEqual(['met E: as asked']);
    expect(one('kind: buried wire, wire: strap 20 mm x 2 mm copper')).toEqual(['not met E: less']);
  });

  it('rod galvanised 16 mm, copper-clad 14 mm with 250 µm', () => {
    expect(one('kind: rod, metal: galvanised steel, diameter: 16 mm')).toEqual(['met E: as asked']);
    expect(one('kind: rod, metal: galvanised steel, diameter: 5/8 in')).toEqual(['not met E: less']);
    expect(one('kind: rod, metal: copper-clad steel, diameter: 14.2 mm, coating: 250 um')).toEqual(['met E: as asked']);
    expect(one('kind: rod, metal: copper-clad steel, diameter: 12 mm')).toEqual(['not met E: less']);
    expect(one('kind: rod, metal: copper-clad steel, diameter: 14.2 mm')).toEqual(['cannot tell E: figure unknown']);
  });

  it('is not asked of what serves an antenna alone', () => {
    expect(one('kind: rod, metal: galvanised steel, diameter: 10 mm, serves: antenna')).toEqual([]);
  });
});

describe('iec-antenna-electrode-minimum: IEC 60728-11, one rod 2.5 m, or two of 1.5 m spaced 3 m, or two runs of 2.5 m', () => {
  const mast = (electrodes: string, ties: string) =>
    ask(
      'iec-antenna-electrode-minimum',
      electrodes,
      '',
      `supports: {mast: {kind: mast, metal: steel, sections: one piece}}\nconductors: {${ties}}\n`,
    );
  const lead = 'lead: {from: mast@base, to: R}';

  it('one rod, either side and in both systems', () => {
    expect(mast('R: {kind: rod, length: 2.5 m}', lead)).toEqual(['met R: enough']);
    expect(mast('R: {kind: rod, length: 8.25 ft}', lead)).toEqual(['met R: enough']);
    expect(mast('R: {kind: rod, length: 8 ft}', lead)).toEqual(['not met R: too little']);
    expect(mast('R: {kind: rod}', lead)).toEqual(['cannot tell R: perhaps']);
  });

  it('is not asked of antennas indoors, nor of those close to a wall and well below the roof', () => {
    const of = (antenna: string, support: string) =>
      ask(
        'iec-antenna-electrode-minimum',
        'R: {kind: rod, length: 2 m}',
        '',
        `supports: {s: {${support}}}\nantennas: {dish: {kind: dish, on: s${antenna}}}\nconductors: {lead: {from: dish, to: R}}\n`,
      );
    expect(of('', 'kind: mast, metal: steel')).toEqual(['not met R: too little']);
    expect(of(', where: inside', 'kind: mast, metal: steel, where: inside')).toEqual([]);
    expect(of(', below_roof: 2 m, from_wall: 1.5 m', 'kind: building face')).toEqual([]);
    expect(of(', below_roof: 1.9 m, from_wall: 1.5 m', 'kind: building face')).toEqual(['not met R: too little']);
    expect(of('', 'kind: building face')).toEqual(['cannot tell R: on facade']);
  });

  it('two rods of 1.5 m, 3 m apart', () => {
    const two = (apart: string, length = '1.5 m') =>
      mast(
        `R: {kind: rod, length: ${length}, at: [0, 0]}, S: {kind: rod, length: ${length}, at: [${apart}, 0]}`,
        `${lead}, tie: {from: R, to: S}`,
      );
    expect(two('3')).toEqual(['met R S: enough']);
    expect(two('2.9')).toEqual(['not met R S: too little']);
    expect(two('3', '1.4 m')).toEqual(['not met R S: too little']);
    expect(mast('R: {kind: rods, count: 2, length: 5 ft, spacing: 10 ft}', lead)).toEqual(['met R: enough']);
  });

  it('a footing, or a ring; of two runs the angle is asked', () => {
    expect(mast('R: {kind: concrete-encased}', lead)).toEqual(['met R: enough']);
    expect(mast('R: {kind: buried wire, closed: yes, length: 5 m, wire: 50 mm2 copper}', lead)).toEqual([
      'met R: enough',
    ]);
    expect(mast('R: {kind: buried wire, closed: yes, length: 5 m, wire: 25 mm2 copper}', lead)).toEqual([
      'not met R: too little',
    ]);
    expect(mast('R: {kind: buried wire, closed: yes, length: 5 m}', lead)).toEqual(['cannot tell R: perhaps']);
    expect(mast('R: {kind: buried wire, closed: no, length: 2.5 m}', lead)).toEqual(['not met R: too little']);
    expect(mast('R: {kind: radial, count: 2, length: 2.5 m}', lead)).toEqual(['cannot tell R: perhaps']);
  });

  it('a footing that a sheet parts from the soil is none; one whose cage is not tied may be too little', () => {
    const footing = (says: string) => mast(`R: {kind: concrete-encased${says}}`, lead);
    expect(footing(', membrane: yes')).toEqual(['not met R: too little']);
    expect(footing(', painted: yes')).toEqual(['not met R: too little']);
    expect(footing(', cage: not tied')).toEqual(['cannot tell R: perhaps']);
    expect(footing(', membrane: no, cage: tied')).toEqual(['met R: enough']);
    expect(footing(', membrane: unknown')).toEqual(['met R: enough']);
    expect(
      mast('R: {kind: concrete-encased, membrane: yes}, S: {kind: rod, length: 2.5 m}', `${lead}, t: {from: R, to: S}`),
    ).toEqual(['met R S: enough']);
  });

  // 50 mm² of copper, 90 mm² of steel (80 in older texts), more than 60 degrees apart
  it('two runs by the plan, either side of 60 degrees, of the section and of the length', () => {
    const two = (to: string, wire = '50 mm2 copper') =>
      mast(
        `R: {kind: buried wire, closed: no, route: [[0, 0], [2.5, 0]], wire: ${wire}}, S: {kind: buried wire, closed: no, route: [[0, 0], ${to}], wire: ${wire}}`,
        `${lead}, t: {from: mast@base, to: S}`,
      );
    // 2.5 m at 61 and at 59 degrees: cos 0.4848 and 0.5150, sin 0.8746 and 0.8572
    expect(two('[1.212, 2.187]')).toEqual(['met R S: enough']);
    expect(two('[1.288, 2.143]')).toEqual(['not met R S: too little']);
    expect(two('[0, 2.4]')).toEqual(['not met R S: too little']);
    expect(two('[0, 2.5]', '49 mm2 copper')).toEqual(['not met R S: too little']);
    expect(two('[0, 2.5]', '90 mm2 galvanised steel')).toEqual(['met R S: enough']);
    expect(two('[0, 2.5]', '85 mm2 galvanised steel')).toEqual(['cannot tell R S: perhaps']);
    expect(two('[0, 2.5]', '79 mm2 galvanised steel')).toEqual(['not met R S: too little']);
    expect(two('[0, 2.5]', 'unknown')).toEqual(['cannot tell R S: perhaps']);
  });

  it('the electrode of the lightning protection of the building is enough', () => {
    expect(mast('R: {kind: other, serves: lightning}', lead)).toEqual(['met R: enough']);
    expect(mast('R: {kind: other}', lead)).toEqual(['cannot tell R: perhaps']);
  });

  it('is not asked where no antenna or mast is earthed', () => {
    expect(mast('R: {kind: rod, length: 1 m}', '')).toEqual([]);
  });
});

describe('au-rod-dimensions: AS/NZS 1768:2021 as a trade page sums it up, 2.4 m by 16 mm, ring 25 mm² at 0.6 m', () => {
  const au = (text: string, more = ', claims: AS/NZS 1768') =>
    verdictsOf(
      'au-rod-dimensions',
      `site: {name: Sizes, region: au, units: m, service: none${more}}\nelectrodes: {E: {${text}}}\n`,
    );

  it('either side, in both systems', () => {
    expect(au('kind: rod, length: 2.4 m, diameter: 16 mm')).toEqual(['met E: as asked']);
    expect(au('kind: rod, length: 8 ft, diameter: 0.63 in')).toEqual(['met E: as asked']);
    expect(au('kind: rod, length: 2.4 m, diameter: 5/8 in')).toEqual(['not met E: less']);
    expect(au('kind: buried wire, closed: yes, wire: 25 mm2 copper, depth: 0.6 m')).toEqual(['met E: as asked']);
    expect(au('kind: buried wire, closed: yes, wire: 25 mm2 copper, depth: 0.5 m')).toEqual(['not met E: less']);
    expect(au('kind: rod')).toEqual(['cannot tell E: figure unknown']);
    expect(au('kind: rod, length: 1 m', '')).toEqual([]);
  });
});

describe('each figure on both sides', () => {
  const typed = (
    region: string,
    electrode: string,
    claims = '',
  ) => `site: {name: Sizes, region: ${region}, service: panel${claims}}
electrodes: {E: {${electrode}}}
equipment: {panel: {kind: service panel}}
`;
  const iec = (electrode: string) => (figure: string) => typed('iec', electrode.replace('?', figure));
  eitherSide('iec-rod-dimensions', iec('kind: rod, serves: lightning, metal: copper, diameter: ?'), [
    ['15 mm', '14.8 mm'],
    ['0.591 in', '0.585 in'],
  ]);
  eitherSide('iec-rod-dimensions', iec('kind: rod, serves: lightning, metal: galvanised steel, diameter: ?'), [
    ['14 mm', '13.8 mm'],
    ['0.552 in', '0.545 in'],
  ]);
  const clad = 'kind: rod, metal: copper-clad steel, diameter: 15 mm, coating: ?';
  eitherSide('iec-rod-dimensions', iec(`serves: lightning, ${clad}`), [
    ['250 um', '245 um'],
    ['10 mil', '9.7 mil'],
  ]);
  const wire = 'kind: buried wire, serves: lightning, wire: ?';
  eitherSide('iec-buried-conductor-dimensions', iec(wire), [
    ['50 mm2 copper', '49 mm2 copper'],
    ['99 kcmil copper', '97 kcmil copper'],
    ['78 mm2 galvanised steel', '77 mm2 galvanised steel'],
    ['154 kcmil galvanised steel', '152 kcmil galvanised steel'],
    ['strap 30 mm x 3 mm galvanised steel', 'strap 29.5 mm x 3 mm galvanised steel'],
    ['strap 1.17 in x 0.12 in galvanised steel', 'strap 1.15 in x 0.12 in galvanised steel'],
    ['strap 40 mm x 2.5 mm stainless steel', 'strap 39.5 mm x 2.5 mm stainless steel'],
    ['strap 1.56 in x 0.1 in stainless steel', 'strap 1.53 in x 0.1 in stainless steel'],
  ]);
  const plate = 'kind: plate, serves: lightning, metal: copper';
  eitherSide('iec-plate-dimensions', iec(`${plate}, height: 0.7 m, width: ?`), [
    ['0.5 m', '0.49 m'],
    ['19.7 in', '19.4 in'],
  ]);
  eitherSide('iec-plate-dimensions', iec(`${plate}, lattice: yes, height: 0.7 m, width: ?`), [
    ['0.6 m', '0.59 m'],
    ['23.7 in', '23.4 in'],
  ]);
  eitherSide('iec-power-electrode-dimensions', iec('kind: buried wire, wire: ?'), [
    ['25 mm2 copper', '24.7 mm2 copper'],
    ['49.5 kcmil copper', '48.5 kcmil copper'],
    ['strap 25 mm x 2 mm copper', 'strap 24.5 mm x 2 mm copper'],
    ['strap 0.98 in x 0.08 in copper', 'strap 0.96 in x 0.08 in copper'],
  ]);
  eitherSide('iec-power-electrode-dimensions', iec('kind: rod, metal: galvanised steel, diameter: ?'), [
    ['16 mm', '15.8 mm'],
    ['0.63 in', '0.62 in'],
  ]);
  eitherSide(
    'iec-power-electrode-dimensions',
    iec('kind: rod, metal: copper-clad steel, coating: 250 um, diameter: ?'),
    [
      ['14 mm', '13.8 mm'],
      ['0.552 in', '0.545 in'],
    ],
  );
  eitherSide('iec-power-electrode-dimensions', iec(clad), [
    ['250 um', '245 um'],
    ['10 mil', '9.7 mil'],
  ]);
  const au = (electrode: string) => (figure: string) =>
    typed('au', electrode.replace('?', figure), ', claims: AS/NZS 1768');
  eitherSide('au-rod-dimensions', au('kind: rod, diameter: 16 mm, length: ?'), [
    ['2.4 m', '2.38 m'],
    ['7.9 ft', '7.8 ft'],
  ]);
  eitherSide('au-rod-dimensions', au('kind: rod, length: 2.4 m, diameter: ?'), [
    ['16 mm', '15.8 mm'],
    ['0.63 in', '0.62 in'],
  ]);
  eitherSide('au-rod-dimensions', au('kind: buried wire, closed: yes, depth: 0.6 m, wire: ?'), [
    ['25 mm2 copper', '24.7 mm2 copper'],
    ['49.5 kcmil copper', '48.5 kcmil copper'],
  ]);
  eitherSide('au-rod-dimensions', au('kind: buried wire, closed: yes, wire: 25 mm2 copper, depth: ?'), [
    ['0.6 m', '0.59 m'],
    ['2 ft', '23 in'],
  ]);
  const antenna = (electrodes: string) => (figure: string) =>
    `site: {name: Sizes, region: iec, service: none}
electrodes: {${electrodes.replaceAll('?', figure)}}
supports: {mast: {kind: mast, metal: steel, sections: one piece}}
conductors: {lead: {from: mast@base, to: R}}
`;
  eitherSide('iec-antenna-electrode-minimum', antenna('R: {kind: rod, length: ?}'), [
    ['2.5 m', '2.48 m'],
    ['8.21 ft', '8.1 ft'],
  ]);
  eitherSide('iec-antenna-electrode-minimum', antenna('R: {kind: rods, count: 2, spacing: 3 m, length: ?}'), [
    ['1.5 m', '1.48 m'],
    ['4.93 ft', '4.85 ft'],
  ]);
  eitherSide(
    'iec-antenna-electrode-minimum',
    antenna('R: {kind: buried wire, closed: yes, wire: 50 mm2 copper, length: ?}'),
    [
      ['5 m', '4.9 m'],
      ['16.5 ft', '16.2 ft'],
    ],
  );
});

it('none of them is asked of what is no rod, wire or plate', () => {
  const pipe = `site: {name: Sizes, region: iec, service: panel, claims: class III}
electrodes: {E: {kind: structural steel}}
equipment: {panel: {kind: service panel}}
`;
  for (const rule of ['iec-rod-dimensions', 'iec-buried-conductor-dimensions', 'iec-plate-dimensions'])
    expect(findingsOf(rule, pipe).outcome).toBe('not applicable');
});

it('iec-rod-dimensions: a metal that nobody named is asked about', () => {
  expect(ask('iec-rod-dimensions', 'R: {kind: rod, serves: lightning, diameter: 16 mm}')).toEqual([
    'cannot tell R: figure unknown',
  ]);
});

everyOutcome('iec-rod-dimensions');
everyOutcome('iec-buried-conductor-dimensions');
everyOutcome('iec-plate-dimensions');
everyOutcome('iec-power-electrode-dimensions');
everyOutcome('iec-antenna-electrode-minimum');
everyOutcome('au-rod-dimensions');
