import { describe, expect, it } from 'vitest';
import { everyOutcome } from '../every-outcome.ts';
import { findingsOf, verdictsOf } from '../verdicts-of.ts';

/** NFPA 70 810.15, 810.21, 810.51 (second-hand); no threshold. */
describe('mast-grounded', () => {
  const rule = 'mast-grounded';
  const site = (mast: string, conductors: string, header = '') => `
site: {name: Mast, region: us, units: ft, service: unknown${header}}
electrodes: {R: {kind: rod}}
supports: {mast: {kind: mast${mast}}}
conductors: ${conductors === '' ? 'none' : `{${conductors}}`}
`;
  const steel = ', metal: galvanised steel';

  it('asks permanent metal from the mast to an electrode', () => {
    expect(verdictsOf(rule, site(steel, 'c: {from: mast@base, to: R}'))).toEqual(['met mast: earthed']);
    expect(verdictsOf(rule, site(steel, ''))).toEqual(['not met mast: no way']);
    expect(verdictsOf(rule, site(steel, 'c: {from: mast@base, to: unknown}'))).toEqual(['cannot tell mast: perhaps']);
    expect(verdictsOf(rule, site(steel, '', ', incomplete: [conductors]'))).toEqual(['cannot tell mast: perhaps']);
    expect(verdictsOf(rule, site('', '').replace('kind: mast', 'kind: water tank'))).toEqual([
      'cannot tell mast: metal unknown',
    ]);
  });

  it('leaves wood alone', () => {
    expect(findingsOf(rule, site('', '').replace('kind: mast', 'kind: wood pole')).outcome).toBe('not applicable');
  });

  it('leaves a mast in the attic alone that holds indoor antennas', () => {
    const attic = (antenna: string) =>
      `${site(`${steel}, where: inside`, '')}antennas: {loop: {kind: loop, on: mast@top${antenna}}}\n`;
    expect(findingsOf(rule, attic(', where: inside')).outcome).toBe('not applicable');
    expect(verdictsOf(rule, attic(''))).toEqual(['not met mast: no way']);
  });
});

/** MIL-HDBK-1004/6 (read); sliding and hinged joints by common practice; no threshold. */
describe('mast-section-joints-bonded', () => {
  const rule = 'mast-section-joints-bonded';
  const ask = (mast: string) => `site: {name: Mast, region: us, service: unknown}\nsupports: {mast: {${mast}}}\n`;

  it('asks jumpers over what slides or hinges', () => {
    expect(verdictsOf(rule, ask('kind: crank-up tower, jumpers: yes'))).toEqual(['met mast: jumpers']);
    expect(verdictsOf(rule, ask('kind: crank-up tower, sections: sliding, jumpers: no'))).toEqual([
      'not met mast: no jumpers',
    ]);
    expect(verdictsOf(rule, ask('kind: mast, sections: hinged, jumpers: no'))).toEqual(['not met mast: no jumpers']);
    expect(verdictsOf(rule, ask('kind: crank-up tower'))).toEqual(['cannot tell mast: nobody said']);
    // jumpers typed, and not how the sections of a mast that moves meet
    expect(verdictsOf(rule, ask('kind: crank-up tower, jumpers: no'))).toEqual(['not met mast: no jumpers']);
    expect(findingsOf(rule, ask('kind: mast, sections: bolted')).outcome).toBe('not applicable');
  });

  it('asks a jumper over the hinge of a tilt-over mast, whatever its tube is', () => {
    expect(verdictsOf(rule, ask('kind: tilt-over mast, sections: one piece'))).toEqual([
      'cannot tell mast: nobody said',
    ]);
    expect(verdictsOf(rule, ask('kind: tilt-over mast, sections: welded, jumpers: no'))).toEqual([
      'not met mast: no jumpers',
    ]);
    expect(verdictsOf(rule, ask('kind: tilt-over mast, sections: welded, jumpers: yes'))).toEqual([
      'met mast: jumpers',
    ]);
  });
});

/** TIA-222-F and G (second-hand): at least one at each anchor. A count of one has no unit. */
describe('guy-anchor-grounded', () => {
  const rule = 'guy-anchor-grounded';
  const site = (conductors: string, guy = 'metal: galvanised steel') => `
site: {name: Guys, region: us, units: ft, service: unknown}
electrodes: {R: {kind: rod}, A: {kind: rod}}
supports: {tower: {kind: lattice tower, guys: {g1: {anchor: [30, 0], ${guy}}}}}
bars: {b: {kind: other}}
conductors: {c0: {from: tower@base, to: R}${conductors}}
`;

  it('asks a conductor from the guy to an electrode, at once or by a bar', () => {
    expect(verdictsOf(rule, site(', c1: {from: g1, to: A}'))).toEqual(['met g1: electrode']);
    expect(verdictsOf(rule, site(', c1: {from: g1, to: b}, c2: {from: b, to: A}'))).toEqual(['met g1: electrode']);
    expect(verdictsOf(rule, site(''))).toEqual(['not met g1: no electrode']);
    expect(verdictsOf(rule, site(', c1: {from: g1, to: A, condition: open}'))).toEqual(['not met g1: no electrode']);
  });

  it('takes the tower that it holds for no electrode at the anchor', () => {
    expect(verdictsOf(rule, site(', c1: {from: g1, to: tower@base}'))).toEqual(['not met g1: leads elsewhere']);
    expect(verdictsOf(rule, site(', c1: {from: g1, to: unknown}'))).toEqual(['cannot tell g1: perhaps']);
  });

  it('cannot tell of a guy whose metal nobody named; leaves one of rope alone', () => {
    expect(verdictsOf(rule, site('', 'turnbuckle: yes'))).toEqual(['cannot tell g1: perhaps']);
    expect(findingsOf(rule, site('', 'metal: none')).outcome).toBe('not applicable');
    const gone = site('').replace('kind: lattice tower', 'kind: lattice tower, present: no');
    expect(findingsOf(rule, gone).outcome).toBe('not applicable');
  });
});

everyOutcome('mast-grounded');
everyOutcome('mast-section-joints-bonded');
everyOutcome('guy-anchor-grounded');
