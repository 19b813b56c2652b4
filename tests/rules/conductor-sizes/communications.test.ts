import { describe, expect, it } from 'vitest';
import { eitherSide } from '../either-side.ts';
import { everyOutcome } from '../every-outcome.ts';
import { findingsOf, verdictsOf } from '../verdicts-of.ts';

const site = (kind: string, lead: string, tie = '6 AWG copper', region = 'us') =>
  `site: {name: Telephone, region: ${region}, units: ft, service: panel}
electrodes: {R: {kind: rod}, S: {kind: rod}}
arresters: {block: {kind: ${kind}}}
equipment: {panel: {kind: service panel}}
conductors:
  gec: {from: panel, to: S, wire: 6 AWG copper}
  lead: {from: block, to: R, wire: ${lead}}
  tie: {from: R, to: S, wire: ${tie}}
`;

/** NFPA 70 800.100(A)(3): 14 AWG at least (second-hand). */
describe('communications-conductor-size', () => {
  const rule = 'communications-conductor-size';

  it('asks 14 AWG copper, typed in both ways', () => {
    expect(verdictsOf(rule, site('telephone protector', '14 AWG copper'))).toEqual(['met lead: enough']);
    expect(verdictsOf(rule, site('telephone protector', '2.08 mm2 copper'))).toEqual(['met lead: enough']);
    expect(verdictsOf(rule, site('telephone protector', '2.0 mm2 copper'))).toEqual(['not met lead: small']);
    expect(verdictsOf(rule, site('telephone protector', 'unknown'))).toEqual(['cannot tell lead: size unknown']);
  });

  it('does not judge an antenna’s arrester, whose clause asks 10 AWG; that clause leaves telephones alone', () => {
    expect(findingsOf(rule, site('gas tube', '14 AWG copper')).outcome).toBe('not applicable');
    expect(verdictsOf('mast-ground-size', site('gas tube', '14 AWG copper'))).toEqual(['not met lead: small']);
    expect(verdictsOf('mast-ground-size', site('telephone protector', '14 AWG copper'))).toEqual([]);
  });

  it('a protector of a cable from the street is of communications, that of a dish on the roof is not', () => {
    const cable = (path: string) =>
      `${site('data protector', '14 AWG copper')}lines: {net: {kind: network, path: ${path}}}\n`;
    expect(verdictsOf(rule, cable('[street, block, unknown]'))).toEqual(['met lead: enough']);
    expect(verdictsOf(rule, cable('[unknown, block, unknown]'))).toEqual([]);
  });
});

/** NFPA 70 800.100(D), 820.100(D) before 2020: 6 AWG (second-hand). */
describe('comms-electrode-bond-size', () => {
  const rule = 'comms-electrode-bond-size';

  it('asks 6 AWG copper of the tie, and antenna-electrode-bond-size does not ask again', () => {
    expect(verdictsOf(rule, site('telephone protector', '10 AWG copper'))).toEqual(['met tie: enough']);
    const thin = site('telephone protector', '10 AWG copper', '13.2 mm2 copper');
    expect(verdictsOf(rule, thin)).toEqual(['not met tie: small']);
    expect(verdictsOf('antenna-electrode-bond-size', thin)).toEqual([]);
    expect(verdictsOf(rule, site('telephone protector', '10 AWG copper', 'unknown'))).toEqual([
      'cannot tell tie: size unknown',
    ]);
  });

  // before 2020 article 800 spoke of telephone and 820 of cable television
  it('names both articles in which the clause stood before 2020', () => {
    const clause = (edition: string) =>
      findingsOf(
        rule,
        site('telephone protector', '10 AWG copper', '13.2 mm2 copper').replace(
          'region: us',
          `region: us, code: {document: NEC, edition: ${edition}}`,
        ),
      ).findings[0]!.source.clause;
    expect(clause('2017')).toBe('800.100(D), 820.100(D)');
    expect(clause('2020')).toBe('800.100(D)');
  });

  it('leaves the tie of an antenna’s electrode to its own clause', () => {
    const thin = site('gas tube', '10 AWG copper', '8 AWG copper');
    expect(findingsOf(rule, thin).outcome).toBe('not applicable');
    expect(verdictsOf('antenna-electrode-bond-size', thin)).toEqual(['not met tie: small']);
  });

  it('is asked in the United States', () => {
    expect(findingsOf(rule, site('telephone protector', '10 AWG copper', '8 AWG copper', 'iec')).outcome).toBe(
      'not applicable',
    );
  });
});

describe('sizes of communications leads and ties on each side', () => {
  eitherSide('communications-conductor-size', (figure) => site('telephone protector', figure), [
    ['2.08 mm2 copper', '2.05 mm2 copper'],
    ['14 AWG copper', '15 AWG copper'],
  ]);
  eitherSide('comms-electrode-bond-size', (figure) => site('telephone protector', '10 AWG copper', figure), [
    ['13.3 mm2 copper', '13.2 mm2 copper'],
    ['6 AWG copper', '26 kcmil copper'],
  ]);
});

/** NFPA 70 810.21(J): 6 AWG (second-hand). */
describe('antenna-electrode-bond-size', () => {
  const rule = 'antenna-electrode-bond-size';
  const tie = (figure: string) => site('gas tube', '10 AWG copper', figure);
  eitherSide(rule, tie, [
    ['13.3 mm2 copper', '13.2 mm2 copper'],
    ['6 AWG copper', '26 kcmil copper'],
  ]);

  it('cannot tell without a size or of a metal without a figure; is asked of ties', () => {
    expect(verdictsOf(rule, tie('6 AWG copper'))).toEqual(['met tie: enough']);
    expect(verdictsOf(rule, tie('unknown'))).toEqual(['cannot tell tie: size unknown']);
    expect(verdictsOf(rule, tie('4 AWG aluminum'))).toEqual(['cannot tell tie: metal not listed']);
    expect(findingsOf(rule, tie('6 AWG copper').replace(/ {2}tie.*/, '')).outcome).toBe('not applicable');
  });

  /** A panel on rod S, a mast, and R, the rod of the antenna. */
  const station = (conductors: string) => `site: {name: Ties, region: us, units: ft, service: panel}
electrodes: {R: {kind: rod}, S: {kind: rod}}
supports: {mast: {kind: mast, metal: steel, sections: one piece}}
bars: {entry: {kind: entry panel}, desk: {kind: station ground bar}}
equipment: {panel: {kind: service panel}, radio: {kind: transceiver}}
metalwork: {fence: {kind: fence}, water: {kind: water pipe}}
conductors: {gec: {from: panel, to: S, wire: 6 AWG copper}, ${conductors}}
`;
  const said = (conductors: string) => verdictsOf(rule, station(conductors));

  it('asks every piece between the two electrodes, and a way straight to the panel', () => {
    expect(
      said(
        'a: {from: R, to: entry, wire: 6 AWG copper}, b: {from: entry, to: desk, wire: 14 AWG copper}, c: {from: desk, to: S, wire: 6 AWG copper}',
      ),
    ).toEqual(['not met b: small', 'met a: enough', 'met c: enough']);
    const lead = 'm: {from: mast@base, to: R, wire: 10 AWG copper}';
    expect(said(`${lead}, x: {from: R, to: panel, wire: 8 AWG copper}`)).toEqual(['not met x: small']);
    // a mast with a rod of its own: what leads on to the service joins the two
    expect(said(`${lead}, x: {from: mast@base, to: S, wire: 8 AWG copper}`)).toEqual(['not met x: small']);
  });

  it('does not ask what hangs on one end alone: a lead, a radio, a fence, a pipe', () => {
    expect(said('x: {from: entry, to: S, wire: 10 AWG copper}')).toEqual([]);
    expect(verdictsOf('mast-ground-size', station('x: {from: entry, to: S, wire: 10 AWG copper}'))).toEqual([
      'met x: enough',
    ]);
    expect(verdictsOf('mast-ground-size', station('x: {from: entry, to: S, wire: 12 AWG copper}'))).toEqual([
      'not met x: small',
    ]);
    expect(said('x: {from: mast@base, to: S, wire: 10 AWG copper}')).toEqual([]);
    expect(said('x: {from: radio, to: S, wire: 14 AWG copper}')).toEqual([]);
    // a radio passes no bond on: it joins no two electrodes
    expect(
      said('x: {from: radio, to: R, wire: 14 AWG copper}, y: {from: radio, to: desk}, z: {from: desk, to: panel}'),
    ).toEqual([]);
    expect(said('x: {from: fence, to: R, wire: 8 AWG copper}')).toEqual([]);
    expect(said('x: {from: water, to: panel, wire: 8 AWG copper}')).toEqual([]);
  });
});

everyOutcome('communications-conductor-size');
everyOutcome('comms-electrode-bond-size');
everyOutcome('antenna-electrode-bond-size');

/** NFPA 70 800.100(A) (second-hand): the shield of a line of the street is grounded at a block as a protector's lead is. */
describe('the grounding block of cable television', () => {
  const block = (
    wire: string,
    line = 'kind: cable tv, path: [street, gb, modem]',
  ) => `site: {name: Block, region: us, units: ft, service: panel}
buildings: {house: {dwelling: yes}}
electrodes: {r1: {kind: rod, length: 8 ft}}
antennas: {dish: {kind: satellite dish}}
bars: {gb: {kind: entry panel, where: outside}}
equipment: {panel: {kind: service panel, neutral_bonded: yes}, modem: {kind: modem}}
lines: {cable: {${line}}}
conductors: {gec: {from: panel, to: r1, wire: 6 AWG copper}, cl: {from: gb, to: r1, wire: ${wire}}}
`;
  const of = (rule: string, text: string) => verdictsOf(rule, text).filter((v) => v.includes(' cl:'));

  it('is asked by the clauses of communications, not by those of antennas', () => {
    const good = block('14 AWG copper, length: 18 ft');
    expect(of('communications-conductor-size', good)).toEqual(['met cl: enough']);
    expect(of('protector-lead-20-ft', good)).toEqual(['met cl: short']);
    expect(of('mast-ground-size', good)).toEqual([]);
    expect(of('protector-lead-20-ft', block('10 AWG copper, length: 40 ft'))).toEqual(['not met cl: long']);
    expect(of('communications-conductor-size', block('16 AWG copper, length: 18 ft'))).toEqual(['not met cl: small']);
  });

  it('with the line of an antenna on it is an entry panel', () => {
    const text = block('14 AWG copper, length: 40 ft', 'kind: coax, path: [dish, gb, modem]');
    expect(of('mast-ground-size', text)).toEqual(['not met cl: small']);
    expect(of('protector-lead-20-ft', text)).toEqual([]);
  });
});
