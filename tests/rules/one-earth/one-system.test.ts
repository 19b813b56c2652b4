import { describe, expect, it } from 'vitest';
import { everyOutcome } from '../every-outcome.ts';
import { findingsOf, verdictsOf } from '../verdicts-of.ts';

/** A house with its rod and a mast with another one; what ties the two is left to the case. */
const site = (
  conductors: string,
  header = 'region: us, service: panel',
  lines = '',
) => `site: {name: One, units: ft, ${header}}
electrodes: {house: {kind: rod}, E2: {kind: rod}}
supports: {mast: {kind: mast, metal: steel, sections: one piece}}
antennas: {beam: {kind: yagi, on: mast@top}}
bars: {entry: {kind: entry panel}}
equipment: {panel: {kind: service panel}, radio: {kind: transceiver}}
${lines}conductors: ${conductors === '' ? 'none' : `{${conductors}}`}
`;
const gec = 'c1: {from: panel, to: house}';
const lead = 'c2: {from: mast@base, to: E2}';
const tie = 'c3: {from: E2, to: house}';
const perhaps = 'c3: {from: E2, to: house, present: unknown}';
const open = 'c3: {from: E2, to: unknown}';
const outcomeOf = (rule: string, text: string) => findingsOf(rule, text).outcome;
const notAll = 'region: us, service: panel, incomplete: [conductors]';

/** NFPA 70 250.24, 250.50; IEC 60364-5-54 542.1 (second-hand); no threshold. */
describe('service-electrode-known', () => {
  const rule = 'service-electrode-known';

  it('asks a way from the service to an electrode', () => {
    expect(verdictsOf(rule, site(gec))).toEqual(['met panel: tied']);
    const bare =
      'site: {name: Bare, region: us, service: panel}\nelectrodes: none\nequipment: {panel: {kind: service panel}}\n';
    expect(verdictsOf(rule, bare)).toEqual(['not met panel: no electrode']);
    expect(verdictsOf(rule, bare.replace('electrodes: none\n', ''))).toEqual(['cannot tell panel: not found']);
  });

  it('says when nobody knows where the service is, and asks nothing of a field station', () => {
    expect(verdictsOf(rule, site(gec, 'region: us, service: unknown'))).toEqual(['cannot tell : service unknown']);
    expect(outcomeOf(rule, site(gec, 'region: us, service: none'))).toBe('not applicable');
  });
});

/** NFPA 70 250.50, 250.58 (second-hand): unbonded electrodes = 0. A count of none has no unit. */
describe('all-electrodes-one-system', () => {
  const rule = 'all-electrodes-one-system';

  it('counts permanent metal alone', () => {
    expect(verdictsOf(rule, site(`${gec}, ${tie}`))).toEqual(['met E2: in the system', 'met house: in the system']);
    expect(verdictsOf(rule, site(`${gec}, ${lead}`))).toEqual(['not met E2: apart', 'met house: in the system']);
    // the soil between two rods, a shield and a cord are no bonds
    const coax = 'lines: {coax: {kind: coax, path: [beam, {bond: mast@base}, {bond: panel}, radio]}}\n';
    expect(verdictsOf(rule, site(`${gec}, ${lead}`, undefined, coax))[0]).toBe('not met E2: apart');
  });

  it('names what would decide, and does not ask of the supplier’s own electrode or of a field station', () => {
    expect(verdictsOf(rule, site(`${gec}, ${perhaps}`))).toContain('cannot tell E2: decided by');
    expect(verdictsOf(rule, site(gec, notAll))).toContain('cannot tell E2: decided by');
    const asked = findingsOf(rule, site(`${gec}, ${perhaps}`)).findings.find((f) => f.at[0] === 'E2')!;
    expect(asked.remedy).toContain('`present:`');
    expect(outcomeOf(rule, site(gec, 'region: us, service: none'))).toBe('not applicable');
    const theirs = site(gec).replace('E2: {kind: rod}', 'E2: {kind: rod, owner: utility}');
    expect(verdictsOf(rule, theirs)).toEqual(['met house: in the system']);
  });

  // NFPA 70 250.54 waives the bond of an auxiliary electrode for equipment, never for an antenna (810.21(J); second-hand)
  it('asks the same of an electrode whatever it is called', () => {
    const clean = site(`${gec}, c2: {from: radio, to: E2}`).replace(
      'E2: {kind: rod}',
      'E2: {kind: rod, note: auxiliary}',
    );
    expect(verdictsOf(rule, clean)[0]).toBe('not met E2: apart');
  });
});

/** NFPA 70 810.21(J) (second-hand); no threshold. */
describe('antenna-rod-is-not-a-substitute', () => {
  const rule = 'antenna-rod-is-not-a-substitute';

  it('asks a way to the service beside the rod', () => {
    expect(verdictsOf(rule, site(`${gec}, ${lead}, ${tie}`))).toContain('met mast: both');
    expect(verdictsOf(rule, site(`${gec}, ${lead}`))).toContain('not met mast: rod only');
    expect(findingsOf(rule, site(`${gec}, ${lead}`)).findings[0]!.under).toBe('all-electrodes-one-system:E2');
  });

  it('cannot tell with a tie that nobody saw, or without a known service', () => {
    expect(verdictsOf(rule, site(`${gec}, ${lead}, ${perhaps}`))).toContain('cannot tell mast: perhaps');
    // a wire on the rod that nobody followed
    expect(verdictsOf(rule, site(`${gec}, ${lead}, ${open}`))).toContain('cannot tell mast: perhaps');
    expect(verdictsOf(rule, site(lead, 'region: us, service: unknown'))).toContain('cannot tell mast: service unknown');
  });

  it('is asked where an antenna or mast is earthed', () => {
    expect(outcomeOf(rule, site(gec))).toBe('not applicable');
    expect(outcomeOf(rule, site(lead, 'region: us, service: none'))).toBe('not applicable');
  });
});

/** A check of our own: the same with every feed line taken away. */
describe('screens-not-sole-bond', () => {
  const rule = 'screens-not-sole-bond';
  const coax = 'lines: {coax: {kind: coax, path: [beam, {bond: mast@base}, {bond: panel}, radio]}}\n';
  const of = (conductors: string, header?: string) => verdictsOf(rule, site(conductors, header, coax));

  it('finds an antenna rod that only the shield ties', () => {
    expect(of(`${gec}, ${lead}`)).toContain('not met E2: shield only');
    expect(of(`${gec}, ${lead}, ${tie}`)).toContain('met E2: by bonds');
    expect(of(`${gec}, ${lead}, ${perhaps}`)).toContain('cannot tell E2 mast: perhaps');
    expect(of(`${gec}, ${lead}, ${open}`)).toContain('cannot tell E2 mast: perhaps');
    expect(outcomeOf(rule, site(gec, 'region: us, service: unknown', coax))).toBe('not applicable');
  });
});

/** NFPA 70 250.121, 810.21(F) (from memory); no threshold. */
describe('outlet-ground-not-lightning-ground', () => {
  const rule = 'outlet-ground-not-lightning-ground';
  const cord = 'lines: {cord: {kind: mains, path: [panel, radio], protective_conductor: yes}}\n';
  const onRadio = 'c4: {from: mast@base, to: radio}';
  const of = (conductors: string, header?: string) => verdictsOf(rule, site(conductors, header, cord));

  it('finds a mast on the pin of an outlet', () => {
    expect(of(`${gec}, ${onRadio}`)).toContain('not met mast: cord only');
    expect(of(`${gec}, ${onRadio}, c5: {from: mast@base, to: house}`)).toContain('met mast: by bonds');
    expect(of(`${gec}, ${onRadio}, c5: {from: mast@base, to: house, present: unknown}`)).toContain(
      'cannot tell mast: perhaps',
    );
    expect(outcomeOf(rule, site(onRadio, 'region: us, service: none', cord))).toBe('not applicable');
  });
});

/** IEC 60728-11, outdoor antennas (second-hand); no threshold. */
describe('iec-antenna-electrode-to-main-bar', () => {
  const rule = 'iec-antenna-electrode-to-main-bar';
  const iec = 'region: iec, service: panel';

  it('asks metal to the main bar, the foundation’s electrode included', () => {
    expect(verdictsOf(rule, site(`${gec}, ${lead}, ${tie}`, iec))).toEqual(['met E2 house: tied']);
    expect(verdictsOf(rule, site(`${gec}, ${lead}`, iec))).toEqual(['not met E2: apart']);
    const footing = site(`${gec}, ${lead}`, iec).replace('E2: {kind: rod}', 'E2: {kind: concrete-encased}');
    expect(verdictsOf(rule, footing)).toEqual(['not met E2: apart']);
  });

  it('cannot tell with a tie that nobody saw, or without a known service; is asked of earthed antennas', () => {
    expect(verdictsOf(rule, site(`${gec}, ${lead}, ${perhaps}`, iec))).toEqual(['cannot tell E2: perhaps']);
    expect(verdictsOf(rule, site(lead, 'region: iec, service: unknown'))).toEqual(['cannot tell E2: service unknown']);
    expect(outcomeOf(rule, site(gec, iec))).toBe('not applicable');
    expect(outcomeOf(rule, site(lead, 'region: iec, service: none'))).toBe('not applicable');
  });
});

/** BS 7671, main bonding where the supply is TN-C-S (second-hand); its 10 mm² is asked by main-bonding-size-iec. */
describe('uk-multiple-earth-rf-rod-bond', () => {
  const rule = 'uk-multiple-earth-rf-rod-bond';
  const uk = (supply: string) => `region: uk, service: panel, supply: ${supply}`;

  it('asks a bond to the main bar', () => {
    expect(verdictsOf(rule, site(`${gec}, ${tie}`, uk('tn-c-s')))).toContain('met E2: tied');
    expect(verdictsOf(rule, site(gec, uk('tn-c-s')))).toContain('not met E2: apart');
    expect(verdictsOf(rule, site(`${gec}, ${perhaps}`, uk('tn-c-s')))).toContain('cannot tell E2: perhaps');
  });

  it('asks which supply it is; on TN-S and TT it is not asked', () => {
    expect(verdictsOf(rule, site(gec, uk('unknown')))).toEqual(['cannot tell E2 house: supply unknown']);
    expect(outcomeOf(rule, site(gec, uk('tn-s')))).toBe('not applicable');
    expect(outcomeOf(rule, site(gec, uk('tt')))).toBe('not applicable');
    // a field station has no supply to ask about
    expect(outcomeOf(rule, site(gec, 'region: uk, service: none'))).toBe('not applicable');
  });
});

everyOutcome('service-electrode-known');
everyOutcome('all-electrodes-one-system');
everyOutcome('antenna-rod-is-not-a-substitute');
everyOutcome('screens-not-sole-bond');
everyOutcome('outlet-ground-not-lightning-ground');
everyOutcome('iec-antenna-electrode-to-main-bar');
everyOutcome('uk-multiple-earth-rf-rod-bond');

describe('an electrode that may not be there, with the wire to it', () => {
  const rod = (present: string) => `site: {name: Rod, region: us, units: ft, service: panel}
electrodes: {R: {kind: rod, length: 8 ft${present}}}
equipment: {panel: {kind: service panel}}
conductors: {gec: {from: panel, to: R, wire: 6 AWG copper}}
`;

  it('is not apart from the service, and what is to be looked at is the electrode', () => {
    const unseen = rod(', present: unknown');
    expect(verdictsOf('all-electrodes-one-system', unseen).filter((v) => /^not met/.test(v))).toEqual([]);
    expect(verdictsOf('service-electrode-known', unseen)).toEqual(['cannot tell panel: not seen']);
    expect(verdictsOf('service-electrode-known', rod(''))).toEqual(['met panel: tied']);
    expect(verdictsOf('service-electrode-known', rod(', present: no'))).toEqual(['cannot tell panel: not found']);
    const apart = `${unseen}`.replace('from: panel', 'from: bar').concat('bars: {bar: {kind: other}}\n');
    expect(verdictsOf('service-electrode-known', apart)).toEqual(['cannot tell panel: not found']);
  });
});
