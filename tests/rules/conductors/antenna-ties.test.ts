import { describe, expect, it } from 'vitest';
import { verdictsOf } from '../verdicts-of.ts';

const rule = 'antenna-electrode-bond-size';
const site = (conductors: string, more = '') => `site: {name: Ties, region: us, units: ft, service: panel}
electrodes: {r1: {kind: rod, length: 8 ft}, r2: {kind: rod, length: 8 ft}}
equipment: {panel: {kind: service panel, neutral_bonded: yes}}
conductors: {gec: {from: panel, to: r1, wire: 6 AWG copper}, ${conductors}}
${more}`;
const mast = 'supports: {mast: {kind: mast, metal: galvanised steel, sections: one piece}}\n';
const lead = ', lead: {from: mast@base, to: r2, wire: 10 AWG copper}';

/** NFPA 70 810.21(J) (second-hand) speaks of the electrode of an antenna; between two of the service 250.53(C) does (memory). */
describe('a wire between two rods', () => {
  const tie = 'tie: {from: r1, to: r2, wire: 8 AWG copper}';

  it('of the service alone is no tie of an antenna', () => {
    expect(verdictsOf(rule, site(tie)).filter((v) => v.includes('tie:'))).toEqual([]);
  });

  it('with a mast on one of them is', () => {
    expect(verdictsOf(rule, site(`${tie}${lead}`, mast))).toEqual(['not met tie: small']);
  });
});

/** "6 AWG copper or equivalent": no metal without a figure of its own conducts as well as copper. */
describe('a tie of a metal that the clause has no figure for', () => {
  const of = (wire: string) => verdictsOf(rule, site(`tie: {from: r1, to: r2, wire: ${wire}}${lead}`, mast));

  it('is too small where it is smaller than copper has to be', () => {
    expect(of('14 AWG aluminium')).toEqual(['not met tie: small']);
    expect(of('8 AWG copper-clad steel')).toEqual(['not met tie: small']);
  });

  it('of that section or more cannot be told', () => {
    expect(of('6 AWG aluminium')).toEqual(['cannot tell tie: metal not listed']);
    expect(of('2 AWG aluminium')).toEqual(['cannot tell tie: metal not listed']);
    expect(of('6 AWG copper')).toEqual(['met tie: enough']);
  });
});
