import { describe, expect, it } from 'vitest';
import { eitherSide } from '../either-side.ts';
import { everyOutcome } from '../every-outcome.ts';
import { findingsOf, verdictsOf } from '../verdicts-of.ts';

const header = (more = '') => `site: {name: Sizes, region: us, units: ft, service: panel${more}}\n`;

/** `outcome place: reason` of a rule on these electrodes, each in the short form of the file. */
function ask(rule: string, electrodes: string, more = '', rest = ''): readonly string[] {
  return verdictsOf(rule, site(electrodes, more, rest));
}

function site(electrodes: string, more = '', rest = ''): string {
  return `${header(more)}electrodes: {${electrodes}}\nequipment: {panel: {kind: service panel}}\n${rest}`;
}

describe('rod-diameter-us: NFPA 70 250.52(A)(5), 5/8 in, 1/2 in where listed', () => {
  const rod = (rest: string) => ask('rod-diameter-us', `R: {kind: rod, length: 8 ft${rest}}`);

  it('either side of 5/8 in (15.875 mm), in both systems', () => {
    expect(rod(', diameter: 5/8 in')).toEqual(['met R: as asked']);
    expect(rod(', diameter: 15.9 mm')).toEqual(['met R: as asked']);
    expect(rod(', diameter: 15.7 mm, listed: no')).toEqual(['not met R: less']);
    expect(rod(', diameter: 0.61 in, listed: no')).toEqual(['not met R: less']);
  });

  it('1/2 in (12.7 mm) of a listed one is enough, less is not', () => {
    expect(rod(', diameter: 1/2 in, listed: yes')).toEqual(['met R: as asked']);
    expect(rod(', diameter: 12.5 mm, listed: yes')).toEqual(['not met R: less']);
    expect(rod(', diameter: 3/8 in')).toEqual(['not met R: less']);
  });

  it('between the two it hangs on the mark; a diameter that nobody knows is asked about', () => {
    expect(rod(', diameter: 1/2 in')).toEqual(['cannot tell R: perhaps listed']);
    expect(rod('')).toEqual(['cannot tell R: figure unknown']);
    const { remedy } = findingsOf('rod-diameter-us', site('R: {kind: rod, length: 8 ft}')).findings[0]!;
    expect(remedy).toMatch(/^Look for the mark at the top of R.*`diameter:`/);
  });

  it('is not asked where no rod is, nor of a rod for the telephone alone', () => {
    expect(ask('rod-diameter-us', 'P: {kind: plate}')).toEqual([]);
    expect(rod(', diameter: 1/2 in, serves: communications')).toEqual([]);
    expect(rod(', present: unknown')).toEqual([]);
  });
});

describe('comms-rod-size-us: NFPA 70 800.100(B)(3)(2), 5 ft by 1/2 in', () => {
  const rod = (rest: string) => ask('comms-rod-size-us', `R: {kind: rod, serves: communications${rest}}`);

  it('either side, in both systems', () => {
    expect(rod(', length: 5 ft, diameter: 1/2 in')).toEqual(['met R: as asked']);
    expect(rod(', length: 1.53 m, diameter: 12.7 mm')).toEqual(['met R: as asked']);
    expect(rod(', length: 1.5 m, diameter: 12.7 mm')).toEqual(['met R: as asked']);
    expect(rod(', length: 5 ft, diameter: 0.49 in')).toEqual(['not met R: less']);
  });

  it('asks what is not known, and nothing of a rod that serves an antenna too', () => {
    expect(rod(', diameter: 1/2 in')).toEqual(['cannot tell R: figure unknown']);
    expect(ask('comms-rod-size-us', 'R: {kind: rod, serves: [communications, antenna]}')).toEqual([]);
  });

  it('knows such a rod by the protector whose lead is on it; the antenna rod stays 8 ft', () => {
    const rest = `arresters: {block: {kind: telephone protector, where: outside}}\nconductors: {lead: {from: block, to: R}}\n`;
    expect(ask('comms-rod-size-us', 'R: {kind: rod, length: 6 ft, diameter: 1/2 in}', '', rest)).toEqual([
      'met R: as asked',
    ]);
    expect(ask('rod-length-us', 'R: {kind: rod, length: 6 ft}', '', rest)).toEqual([]);
    expect(ask('rod-length-us', 'R: {kind: rod, length: 6 ft}')).toEqual(['not met R: short']);
  });
});

describe('lightning-rod-size-us: UL 96A (2007) 10.1.4, 1/2 in by 8 ft, copper, copper-clad or stainless', () => {
  const rod = (rest: string) => ask('lightning-rod-size-us', `R: {kind: rod, serves: lightning${rest}}`);

  it('either side, in both systems', () => {
    expect(rod(', length: 8 ft, diameter: 1/2 in, metal: copper-clad steel')).toEqual(['met R: as asked']);
    expect(rod(', length: 2.44 m, diameter: 12.7 mm, metal: stainless steel')).toEqual(['met R: as asked']);
    expect(rod(', length: 2.4 m, diameter: 12.7 mm, metal: stainless steel')).toEqual(['met R: as asked']);
    expect(rod(', length: 8 ft, diameter: 0.49 in, metal: copper')).toEqual(['not met R: less']);
  });

  it('galvanised steel is not in the list; an unknown metal may be', () => {
    expect(rod(', length: 10 ft, diameter: 3/4 in, metal: galvanised steel')).toEqual(['not met R: metal not listed']);
    expect(rod(', length: 10 ft, diameter: 3/4 in')).toEqual(['cannot tell R: metal unknown']);
    expect(ask('lightning-rod-size-us', 'R: {kind: rod}')).toEqual([]);
  });
});

describe('tower-rod-size: TIA-222-G (2006), 5/8 in by 10 ft', () => {
  const claims = ', claims: TIA-222-G';
  const rod = (rest: string, more = claims) => ask('tower-rod-size', `R: {kind: rod, serves: tower${rest}}`, more);

  it('either side, in both systems', () => {
    expect(rod(', length: 10 ft, diameter: 5/8 in')).toEqual(['met R: as asked']);
    expect(rod(', length: 3.05 m, diameter: 16 mm')).toEqual(['met R: as asked']);
    expect(rod(', length: 3 m, diameter: 16 mm')).toEqual(['met R: as asked']);
    expect(rod(', length: 2.9 m, diameter: 16 mm')).toEqual(['not met R: less']);
    expect(rod(', length: 10 ft')).toEqual(['cannot tell R: figure unknown']);
    // all of it in the soil: 9.5 ft are
    expect(rod(', length: 10 ft, diameter: 5/8 in, top: -6 in')).toEqual(['not met R: less']);
  });

  it('is asked of nobody who does not claim that edition', () => {
    expect(rod(', length: 8 ft, diameter: 5/8 in', '')).toEqual([]);
    expect(rod(', length: 8 ft, diameter: 5/8 in', ', claims: TIA-222-F')).toEqual([]);
    // an edition that was not seen, or that nobody named, may ask it
    for (const edition of ['TIA-222-H', 'TIA-222'])
      expect(rod(', length: 8 ft, diameter: 5/8 in', `, claims: ${edition}`)).toEqual([
        'cannot tell R: edition unknown',
      ]);
    expect(rod(', length: 8 ft, diameter: 5/8 in', ', code: {document: TIA-222, edition: G}')).toEqual([
      'not met R: less',
    ]);
  });
});

describe('military-rod-size: MIL-HDBK-1004/6, 3/4 in by 10 ft', () => {
  const rod = (rest: string, more = ', claims: MIL-HDBK-1004/6') =>
    ask('military-rod-size', `R: {kind: rod${rest}}`, more);

  it('either side, in both systems', () => {
    expect(rod(', length: 10 ft, diameter: 3/4 in, metal: copper-clad steel')).toEqual(['met R: as asked']);
    expect(rod(', length: 3.05 m, diameter: 19.05 mm, metal: copper')).toEqual(['met R: as asked']);
    expect(rod(', length: 10 ft, diameter: 18.9 mm, metal: copper')).toEqual(['not met R: less']);
    expect(rod(', length: 10 ft, metal: copper')).toEqual(['cannot tell R: figure unknown']);
    expect(rod(', length: 8 ft, diameter: 5/8 in', '')).toEqual([]);
  });
});

describe('ring-us: NFPA 70 250.52(A)(4), bare copper, 2 AWG (33.6 mm²), 20 ft', () => {
  const ring = (rest: string) => ask('ring-us', `ring: {kind: buried wire, closed: yes${rest}}`);

  it('either side, in both systems', () => {
    expect(ring(', length: 20 ft, wire: 2 AWG copper')).toEqual(['met ring: as asked']);
    expect(ring(', length: 6.1 m, wire: 35 mm2 copper')).toEqual(['met ring: as asked']);
    expect(ring(', length: 6 m, wire: 35 mm2 copper')).toEqual(['met ring: as asked']);
    expect(ring(', length: 20 ft, wire: 4 AWG copper')).toEqual(['not met ring: less']);
    expect(ring(', length: 100 ft, wire: 2 AWG insulated copper')).toEqual(['not met ring: covered']);
  });

  it('takes the length along its route', () => {
    expect(ring(', route: [[0, 0], [5, 0], [5, 5], [0, 5]], wire: 2 AWG copper')).toEqual(['met ring: as asked']);
    expect(ring(', route: [[0, 0], [4, 0], [4, 4], [0, 4]], wire: 2 AWG copper')).toEqual(['not met ring: less']);
  });

  it('asks what is not known; a straight wire, or a ring round a tower, is no ground ring', () => {
    expect(ring(', length: 100 ft')).toEqual(['cannot tell ring: figure unknown']);
    expect(ring(', length: 12 ft, wire: 6 AWG copper, serves: tower')).toEqual([]);
    expect(ask('ring-us', 'wire: {kind: buried wire, closed: no, length: 12 ft}')).toEqual([]);
  });
});

describe('plate-us: NFPA 70 250.52(A)(7), 2 ft² (0.186 m²), steel 1/4 in, others 0.06 in, 30 in deep', () => {
  const plate = (rest: string) => ask('plate-us', `P: {kind: plate${rest}}`);

  it('either side, in both systems', () => {
    expect(plate(', width: 2 ft, height: 1 ft, depth: 30 in, thickness: 0.06 in, metal: copper')).toEqual([
      'met P: as asked',
    ]);
    expect(plate(', width: 0.5 m, height: 0.38 m, depth: 0.77 m, thickness: 1.6 mm, metal: copper')).toEqual([
      'met P: as asked',
    ]);
    expect(plate(', width: 0.5 m, height: 0.36 m, depth: 0.77 m, thickness: 1.6 mm, metal: copper')).toEqual([
      'not met P: less',
    ]);
    expect(plate(', width: 2 ft, height: 1 ft, depth: 29 in, thickness: 1/4 in, metal: steel')).toEqual([
      'not met P: less',
    ]);
    expect(plate(', width: 2 ft, height: 1 ft, depth: 30 in, thickness: 1/8 in, metal: galvanised steel')).toEqual([
      'not met P: less',
    ]);
  });

  it('asks what is not known', () => {
    expect(plate(', width: 2 ft, height: 1 ft')).toEqual(['cannot tell P: figure unknown']);
    // an area is typed as two figures, and nothing is stamped on a plate
    const { remedy } = findingsOf('plate-us', site('P: {kind: plate}')).findings[0]!;
    expect(remedy).toContain('`width:`, `height:`, `depth:`, `thickness:`');
    expect(remedy).not.toContain('mark');
    expect(plate(', width: 2 ft, height: 1 ft, depth: 30 in, thickness: 1/8 in')).toEqual([
      'cannot tell P: metal unknown',
    ]);
    expect(ask('plate-us', 'R: {kind: rod}')).toEqual([]);
  });
});

describe('concrete-encased-us: NFPA 70 250.52(A)(3), 20 ft of 1/2 in bar or 4 AWG (21.2 mm²) in 2 in of concrete', () => {
  const footing = (rest: string) => ask('concrete-encased-us', `F: {kind: concrete-encased${rest}}`);
  const clean = ', concrete: 2 in, membrane: no, painted: no';

  it('either side, in both systems', () => {
    expect(footing(`, length: 20 ft, diameter: 1/2 in${clean}`)).toEqual(['met F: as asked']);
    expect(footing(`, length: 6.1 m, wire: 25 mm2 copper${clean}`)).toEqual(['met F: as asked']);
    expect(footing(`, length: 5.9 m, diameter: 13 mm${clean}`)).toEqual(['not met F: less']);
    expect(footing(`, length: 20 ft, wire: 6 AWG copper${clean}`)).toEqual(['not met F: less']);
    expect(footing(', length: 20 ft, diameter: 1/2 in, concrete: 49 mm, membrane: no, painted: no')).toEqual([
      'not met F: thin concrete',
    ]);
  });

  it('a vapour barrier, insulation or epoxy voids it, whatever else is known', () => {
    expect(footing(', membrane: yes')).toEqual(['not met F: membrane']);
    expect(footing(', painted: yes')).toEqual(['not met F: coated bars']);
  });

  it('asks who poured it where nobody saw', () => {
    expect(footing(', length: 40 ft, diameter: 1/2 in')).toEqual(['cannot tell F: not seen']);
    expect(footing('')).toEqual(['cannot tell F: figure unknown']);
    const asked = findingsOf('concrete-encased-us', site('F: {kind: concrete-encased}')).findings[0]!;
    expect([asked.tool, asked.remedy]).toEqual(['papers', expect.stringMatching(/^Ask who poured F.*`length:`/)]);
    expect(ask('concrete-encased-us', 'R: {kind: rod}')).toEqual([]);
  });
});

describe('water pipes: NFPA 70 250.52(A)(1), 10 ft in the soil; 250.53(D)(2), never alone', () => {
  const pipe = (rest: string) => ask('water-pipe-electrode', `W: {kind: water pipe${rest}}`);

  it('either side, in both systems; a plastic piece voids it', () => {
    expect(pipe(', length: 10 ft, continuous: yes')).toEqual(['met W: as asked']);
    expect(pipe(', length: 3.05 m, continuous: yes')).toEqual(['met W: as asked']);
    expect(pipe(', length: 3 m, continuous: yes')).toEqual(['met W: as asked']);
    expect(pipe(', length: 2.9 m, continuous: yes')).toEqual(['not met W: less']);
    expect(pipe(', length: 60 ft, continuous: no')).toEqual(['not met W: plastic']);
    expect(pipe(', length: 60 ft')).toEqual(['cannot tell W: perhaps plastic']);
    expect(pipe('')).toEqual(['cannot tell W: figure unknown']);
    expect(ask('water-pipe-electrode', 'R: {kind: rod}')).toEqual([]);
  });

  it('needs an electrode of another kind in its group', () => {
    const tied = (tie: string) =>
      ask(
        'water-pipe-supplemented',
        'W: {kind: water pipe}, W2: {kind: water pipe}, R: {kind: rod}',
        '',
        `conductors: {a: {from: W, to: W2}${tie}}\n`,
      );
    expect(tied(', b: {from: W, to: R}')).toEqual(['met W: another', 'met W2: another']);
    expect(tied('')).toEqual(['not met W: alone', 'not met W2: alone']);
    expect(tied(', b: {from: W, to: R, present: unknown}')).toEqual(['cannot tell W W2: perhaps']);
    expect(ask('water-pipe-supplemented', 'R: {kind: rod}')).toEqual([]);
  });
});

/** A clause prints each figure in both systems, rounded apart: either is met by either, and not by the next less. */
describe('each figure on both sides', () => {
  const typed = (electrode: string, claims = '') => `${header(claims)}electrodes: {E: {${electrode}}}
equipment: {panel: {kind: service panel}}
`;
  const rod = (rest: string) => (figure: string) => typed(`kind: rod, ${rest.replace('?', figure)}`);
  eitherSide('rod-diameter-us', rod('length: 8 ft, listed: no, diameter: ?'), [
    ['5/8 in', '0.61 in'],
    ['15.9 mm', '15.7 mm'],
  ]);
  eitherSide('rod-diameter-us', rod('length: 8 ft, listed: yes, diameter: ?'), [
    ['1/2 in', '0.49 in'],
    ['12.7 mm', '12.5 mm'],
  ]);
  const pipe = (figure: string) => typed(`kind: pipe, length: 8 ft, metal: galvanised steel, diameter: ${figure}`);
  eitherSide('rod-diameter-us', pipe, [
    ['3/4 in', '0.74 in'],
    ['21 mm', '18.9 mm'],
    ['19.05 mm', '18.9 mm'],
  ]);
  const small = 'serves: communications';
  eitherSide('comms-rod-size-us', rod(`${small}, diameter: 1/2 in, length: ?`), [
    ['5 ft', '4.9 ft'],
    ['1.5 m', '1.49 m'],
    ['1.52 m', '1.48 m'],
  ]);
  eitherSide('comms-rod-size-us', rod(`${small}, length: 5 ft, diameter: ?`), [
    ['1/2 in', '0.49 in'],
    ['12.7 mm', '12.5 mm'],
  ]);
  const strike = 'serves: lightning, metal: copper';
  eitherSide('lightning-rod-size-us', rod(`${strike}, diameter: 1/2 in, length: ?`), [
    ['8 ft', '7.8 ft'],
    ['2.44 m', '2.39 m'],
  ]);
  eitherSide('lightning-rod-size-us', rod(`${strike}, length: 8 ft, diameter: ?`), [
    ['1/2 in', '0.49 in'],
    ['12.7 mm', '12.5 mm'],
  ]);
  const tower = (rest: string) => (figure: string) =>
    typed(`kind: rod, serves: tower, ${rest.replace('?', figure)}`, ', claims: TIA-222-G');
  eitherSide('tower-rod-size', tower('diameter: 5/8 in, length: ?'), [
    ['10 ft', '9.8 ft'],
    ['3.05 m', '2.98 m'],
  ]);
  eitherSide('tower-rod-size', tower('length: 10 ft, diameter: ?'), [
    ['5/8 in', '0.61 in'],
    ['15.9 mm', '15.7 mm'],
  ]);
  const army = (rest: string) => (figure: string) =>
    typed(`kind: rod, metal: copper, ${rest.replace('?', figure)}`, ', claims: MIL-HDBK-1004/6');
  eitherSide('military-rod-size', army('diameter: 3/4 in, length: ?'), [
    ['10 ft', '9.9 ft'],
    ['3.05 m', '3.03 m'],
  ]);
  eitherSide('military-rod-size', army('length: 10 ft, diameter: ?'), [
    ['3/4 in', '0.74 in'],
    ['19.1 mm', '18.9 mm'],
  ]);
  const ring = (rest: string) => (figure: string) =>
    typed(`kind: buried wire, closed: yes, ${rest.replace('?', figure)}`);
  eitherSide('ring-us', ring('wire: 2 AWG copper, length: ?'), [
    ['20 ft', '19.6 ft'],
    ['6.1 m', '5.95 m'],
  ]);
  eitherSide('ring-us', ring('length: 20 ft, wire: ?'), [
    ['2 AWG copper', '3 AWG copper'],
    ['33.6 mm2 copper', '33 mm2 copper'],
  ]);
  const footing = (rest: string) => (figure: string) =>
    typed(`kind: concrete-encased, membrane: no, painted: no, ${rest.replace('?', figure)}`);
  eitherSide('concrete-encased-us', footing('diameter: 1/2 in, concrete: 2 in, length: ?'), [
    ['20 ft', '19.6 ft'],
    ['6.1 m', '5.95 m'],
  ]);
  eitherSide('concrete-encased-us', footing('length: 20 ft, concrete: 2 in, diameter: ?'), [
    ['1/2 in', '0.49 in'],
    ['12.7 mm', '12.5 mm'],
  ]);
  eitherSide('concrete-encased-us', footing('length: 20 ft, concrete: 2 in, wire: ?'), [
    ['4 AWG copper', '5 AWG copper'],
    ['21.2 mm2 copper', '21 mm2 copper'],
  ]);
  eitherSide('concrete-encased-us', footing('length: 20 ft, diameter: 1/2 in, concrete: ?'), [
    ['2 in', '1.95 in'],
    ['50 mm', '49 mm'],
  ]);
  eitherSide('water-pipe-electrode', (figure) => typed(`kind: water pipe, continuous: yes, length: ${figure}`), [
    ['10 ft', '9.8 ft'],
    ['3.05 m', '2.98 m'],
  ]);
  const plate = (rest: string) => (figure: string) => typed(`kind: plate, ${rest.replace('?', figure)}`);
  eitherSide('plate-us', plate('height: 1 ft, depth: 30 in, thickness: 1/4 in, metal: steel, width: ?'), [
    ['2 ft', '1.98 ft'],
    ['0.61 m', '0.6 m'],
  ]);
  eitherSide('plate-us', plate('width: 0.5 m, depth: 30 in, thickness: 1/4 in, metal: steel, height: ?'), [
    ['0.372 m', '0.37 m'],
  ]);
  eitherSide('plate-us', plate('width: 2 ft, height: 1 ft, thickness: 1/4 in, metal: steel, depth: ?'), [
    ['30 in', '29 in'],
    ['0.75 m', '0.74 m'],
  ]);
  const size = 'width: 2 ft, height: 1 ft, depth: 30 in';
  eitherSide('plate-us', plate(`${size}, metal: steel, thickness: ?`), [
    ['1/4 in', '0.24 in'],
    ['6.4 mm', '6.3 mm'],
  ]);
  eitherSide('plate-us', plate(`${size}, metal: copper, thickness: ?`), [
    ['0.06 in', '0.055 in'],
    ['1.5 mm', '1.48 mm'],
  ]);
});

it('rod-diameter-us: a pipe of steel without zinc is not in the list, one of unknown metal is asked about', () => {
  const pipe = (rest: string) => ask('rod-diameter-us', `P: {kind: pipe, length: 8 ft, diameter: 1 in${rest}}`);
  expect(pipe(', metal: galvanised steel')).toEqual(['met P: as asked']);
  expect(pipe(', metal: steel')).toEqual(['not met P: metal not listed']);
  expect(pipe('')).toEqual(['cannot tell P: metal unknown']);
});

it('none of them is asked where no such electrode is', () => {
  const plate = `${header()}electrodes: {P: {kind: plate}}\nequipment: {panel: {kind: service panel}}\n`;
  for (const rule of [
    'comms-rod-size-us',
    'lightning-rod-size-us',
    'water-pipe-electrode',
    'concrete-encased-us',
    'ring-us',
  ])
    expect(findingsOf(rule, plate).outcome).toBe('not applicable');
});

everyOutcome('rod-diameter-us');
everyOutcome('comms-rod-size-us');
everyOutcome('lightning-rod-size-us');
everyOutcome('tower-rod-size');
everyOutcome('military-rod-size');
everyOutcome('ring-us');
everyOutcome('concrete-encased-us');
everyOutcome('water-pipe-electrode');
everyOutcome('water-pipe-supplemented');
everyOutcome('plate-us');
