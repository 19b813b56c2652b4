import { describe, expect, it } from 'vitest';
import { everyOutcome } from '../every-outcome.ts';
import { findingsOf, verdictsOf } from '../verdicts-of.ts';

/** A mast and its lead to a rod, with what is said of the lead. */
const lead = (
  says: string,
  region = 'us',
  kind = 'mast',
  more = '',
) => `site: {name: Lead, region: ${region}, units: ft, service: unknown}
electrodes: {R: {kind: rod}}
supports: {mast: {kind: ${kind}, metal: galvanised steel}}
conductors: {c: {from: mast@base, to: R, wire: 6 AWG copper${says}}}
${more}`;
const bare = (region: string) => `site: {name: Bare, region: ${region}, service: unknown}\n`;

/** MIL-HDBK-419A; UFGS 13100A; NFPA 780 4.9.4 (read). */
describe('no-upward-run', () => {
  const rule = 'no-upward-run';

  it('takes the owner’s word', () => {
    expect(verdictsOf(rule, lead(', rises: no'))).toEqual(['met c: down']);
    expect(verdictsOf(rule, lead(', rises: yes'))).toEqual(['not met c: up']);
    expect(verdictsOf(rule, lead(''))).toEqual(['cannot tell c: nobody said']);
  });

  it('reads a route with heights towards the electrode, whichever end that is', () => {
    const route = (heights: string, units = 'ft') =>
      lead(`, route: [${heights}]`).replace('units: ft', `units: ${units}`);
    expect(verdictsOf(rule, route('[0, 0, 9], [0, 0, 2], [4, 0, 2], [4, 0, 0]'))).toEqual(['met c: down']);
    expect(verdictsOf(rule, route('[0, 0, 9], [0, 0, 2], [4, 0, 3], [4, 0, 0]'))).toEqual(['not met c: up']);
    expect(verdictsOf(rule, route('[0, 0, 3], [0, 0, 1], [1, 0, 1.3], [1, 0, 0]', 'm'))).toEqual(['not met c: up']);
    const turned = lead(', route: [[4, 0, 0], [4, 0, 3], [0, 0, 2], [0, 0, 9]]').replace(
      'from: mast@base, to: R',
      'from: R, to: mast@base',
    );
    expect(verdictsOf(rule, turned)).toEqual(['not met c: up']);
    expect(verdictsOf(rule, route('[0, 0], [4, 0]'))).toEqual(['cannot tell c: nobody said']);
  });

  it('leaves out what lies in soil, and leads shorter than a foot', () => {
    expect(findingsOf(rule, lead(', buried: 1 ft')).outcome).toBe('not applicable');
    expect(findingsOf(rule, lead(', length: 11 in')).outcome).toBe('not applicable');
    expect(verdictsOf(rule, lead(', length: 13 in'))).toEqual(['cannot tell c: nobody said']);
    expect(findingsOf(rule, bare('iec')).outcome).toBe('not looked at');
  });
});

/** UL 96A 9.3.3 (read): to 6 ft above grade. */
it('conductor-guarded: guarded, out of reach or in a pipe', () => {
  const rule = 'conductor-guarded';
  expect(verdictsOf(rule, lead(', guarded: yes'))).toEqual(['met c: guarded']);
  expect(verdictsOf(rule, lead(', guarded: no'))).toEqual(['not met c: open']);
  expect(verdictsOf(rule, lead(', enclosure: plastic conduit'))).toEqual(['met c: in a pipe']);
  expect(verdictsOf(rule, lead(', enclosure: none'))).toEqual(['cannot tell c: nobody said']);
  expect(findingsOf(rule, lead(', guarded: no', 'iec')).outcome).toBe('not applicable');
  expect(findingsOf(rule, lead(', buried: 1 ft')).outcome).toBe('not applicable');
  // what its owner says of it is heard, though a part of it lies in the soil
  expect(verdictsOf(rule, lead(', buried: 1 ft, guarded: no'))).toEqual(['not met c: open']);
  expect(verdictsOf('no-upward-run', lead(', buried: 1 ft, rises: yes'))).toEqual(['not met c: up']);
});

it('one walk along a lead settles both: the sentence is the same', () => {
  const settle = (rule: string) => findingsOf(rule, lead('')).findings[0]!.remedy;
  expect(settle('conductor-guarded')).toBe(settle('no-upward-run'));
});

/** NFPA 70 250.64(E); UL 96A 9.3.3; MIL-HDBK-419A (read): both ends, or no steel. */
describe('ferrous-sleeve-bonded', () => {
  const rule = 'ferrous-sleeve-bonded';
  const pipe = (says: string) => verdictsOf(rule, lead(`, enclosure: ${says}`));

  it('asks both ends of steel, under any of its names', () => {
    expect(pipe('steel pipe, enclosure_bonded: both ends')).toEqual(['met c: both ends']);
    expect(pipe('EMT, enclosure_bonded: one end')).toEqual(['not met c: choke']);
    expect(pipe('galvanized conduit, enclosure_bonded: no')).toEqual(['not met c: choke']);
    expect(pipe('steel conduit')).toEqual(['cannot tell c: nobody said']);
  });

  it('asks nothing of plastic, copper and stainless steel', () => {
    for (const text of ['PVC', 'plastic conduit', 'copper tube', 'stainless steel tube'])
      expect(pipe(`${text}, enclosure_bonded: no`)).toEqual(['met c: no iron']);
  });

  it('asks of what a pipe is where its name does not say', () => {
    expect(pipe('conduit, enclosure_bonded: no')).toEqual(['cannot tell c: metal unknown']);
    expect(pipe('metal conduit, enclosure_bonded: both ends')).toEqual(['met c: both ends']);
    expect(verdictsOf(rule, lead(', runs: in conduit'))).toEqual(['cannot tell c: metal unknown']);
    expect(findingsOf(rule, lead(', enclosure: none')).outcome).toBe('not applicable');
    expect(findingsOf(rule, lead('')).outcome).toBe('not applicable');
  });
});

/** UL 96A 9.3.5; IEC 62305-3 5.3.4 (read). */
it('not-in-downspout: neither in one nor hung on one', () => {
  const rule = 'not-in-downspout';
  const gutter = 'metalwork: {spout: {kind: gutter}}\n';
  expect(verdictsOf(rule, lead(', enclosure: downspout'))).toEqual(['not met c: in it']);
  expect(verdictsOf(rule, lead(', on: spout', 'iec', 'mast', gutter))).toEqual(['not met c: in it']);
  expect(verdictsOf(rule, lead(', on: mast'))).toEqual(['met c: elsewhere']);
  expect(verdictsOf(rule, lead(', role: down conductor', 'us', 'air terminal', gutter))).toEqual([
    'cannot tell c: nobody said',
  ]);
  expect(findingsOf(rule, lead('', 'us', 'mast', gutter)).outcome).toBe('not applicable');
  // that no pipe is round it does not say what it hangs on
  expect(verdictsOf(rule, lead(', enclosure: none, role: down conductor', 'us', 'air terminal', gutter))).toEqual([
    'cannot tell c: nobody said',
  ]);
  expect(verdictsOf(rule, lead(', enclosure: plastic conduit', 'us', 'mast', gutter))).toEqual(['met c: elsewhere']);
});

/** MIL-HDBK-419A vol. II (read): more than an eighth. */
it('loop-opening: an open side of more than an eighth of the way round', () => {
  const rule = 'loop-opening';
  const loop = (opening: string, length: string) =>
    verdictsOf(rule, lead(`, loop: {opening: ${opening}, length: ${length}}`));
  expect(loop('6.1 in', '4 ft')).toEqual(['met c: wide']);
  expect(loop('6 in', '4 ft')).toEqual(['not met c: narrow']);
  expect(loop('13 cm', '1 m')).toEqual(['met c: wide']);
  expect(loop('12 cm', '1 m')).toEqual(['not met c: narrow']);
  expect(loop('unknown', '1 m')).toEqual(['cannot tell c: size unknown']);
  expect(loop('5 to 7 in', '4 ft')).toEqual(['cannot tell c: size unknown']);
  expect(findingsOf(rule, lead('')).outcome).toBe('not applicable');
});

/** MIL-HDBK-419A (read), NFPA 780: two ways; slender masts and poles are exempt. */
describe('two-paths-from-strike-point', () => {
  const rule = 'two-paths-from-strike-point';
  const second = (kind: string, to: string, header = '') => `site: {name: Two, region: us, service: unknown${header}}
electrodes: {R: {kind: rod}, S: {kind: rod}}
supports: {mast: {kind: ${kind}, metal: copper}}
conductors: {c: {from: mast@base, to: R, wire: 2 AWG copper}, d: {from: mast@base, to: ${to}, wire: 2 AWG copper}}
`;

  it('asks two ways of a rod that is put up to be struck, to one electrode or to two', () => {
    expect(verdictsOf(rule, lead('', 'us', 'air terminal'))).toEqual(['not met mast: one way']);
    expect(verdictsOf(rule, second('air terminal', 'R'))).toEqual(['met mast: two ways']);
    expect(verdictsOf(rule, second('air terminal', 'S'))).toEqual(['met mast: two ways']);
  });

  it('asks it of a wide tower only where lightning protection is claimed, never of a slender mast', () => {
    const claims = ', claims: class II';
    const one = (kind: string, header: string) =>
      lead('', 'us', kind).replace(', service: unknown', `, service: unknown${header}`);
    expect(verdictsOf(rule, one('lattice tower', claims))).toEqual(['not met mast: one way']);
    expect(findingsOf(rule, one('lattice tower', '')).outcome).toBe('not applicable');
    expect(findingsOf(rule, one('mast', claims)).outcome).toBe('not applicable');
  });

  it('cannot tell where the file does not hold all conductors', () => {
    const some = lead('', 'us', 'air terminal').replace(
      'service: unknown',
      'service: unknown, incomplete: [conductors]',
    );
    expect(verdictsOf(rule, some)).toEqual(['cannot tell mast: not typed']);
    const no =
      'site: {name: No, region: us, service: unknown}\nsupports: {rod: {kind: air terminal}}\nconductors: none\n';
    expect(verdictsOf(rule, no)).toEqual(['not met rod: no way']);
  });
});

/** NFPA 70 800.100(A)(4) (second-hand): 20 ft, printed as 6.0 m; article 810 has no such limit. */
describe('protector-lead-20-ft', () => {
  const rule = 'protector-lead-20-ft';
  const of = (
    kind: string,
    length: string,
    region = 'us',
    house = 'house: {dwelling: yes}',
  ) => `site: {name: Phone, region: ${region}, service: unknown}
buildings: {${house}}
electrodes: {R: {kind: rod}}
arresters: {block: {kind: ${kind}}}
conductors: {c: {from: block, to: R, wire: 10 AWG copper, length: ${length}}}
`;

  it('asks at most 20 ft of a telephone protector', () => {
    expect(verdictsOf(rule, of('telephone protector', '20 ft'))).toEqual(['met c: short']);
    expect(verdictsOf(rule, of('telephone protector', '6.0 m'))).toEqual(['met c: short']);
    expect(verdictsOf(rule, of('telephone protector', '20.1 ft'))).toEqual(['not met c: long']);
    expect(verdictsOf(rule, of('telephone protector', '6.2 m'))).toEqual(['not met c: long']);
    expect(verdictsOf(rule, of('telephone protector', 'about 20 ft'))).toEqual(['cannot tell c: length unknown']);
    expect(verdictsOf(rule, of('telephone protector', 'unknown'))).toEqual(['cannot tell c: length unknown']);
  });

  it('has no word on an antenna’s arrester', () => {
    expect(findingsOf(rule, of('gas tube', '90 ft')).outcome).toBe('not applicable');
    expect(findingsOf(rule, of('telephone protector', '90 ft', 'iec')).outcome).toBe('not applicable');
  });

  it('reads the lead that is typed on the protector itself', () => {
    const own =
      'site: {name: Own, region: us, service: unknown}\nbuildings: {house: {dwelling: yes}}\narresters: {block: {kind: telephone protector, lead: 25 ft}}\n';
    expect(verdictsOf(rule, own)).toEqual(['not met block: long']);
  });

  it('has a figure for houses of one or two families alone', () => {
    const long = (house: string) => verdictsOf(rule, of('telephone protector', '25 ft', 'us', house));
    expect(long('hut: {dwelling: no}')).toEqual([]);
    expect(findingsOf(rule, of('telephone protector', '25 ft', 'us', 'hut: {dwelling: no}')).outcome).toBe(
      'not applicable',
    );
    expect(long('hut: {walls: brick}')).toEqual(['cannot tell c: house unknown']);
    expect(long('house: {dwelling: yes}, hut: {dwelling: no}')).toEqual(['cannot tell c: house unknown']);
    const near = (where: string) =>
      verdictsOf(
        rule,
        of(`telephone protector, where: ${where}`, '25 ft', 'us', 'house: {dwelling: yes}, hut: {dwelling: no}'),
      );
    expect(near('house')).toEqual(['not met c: long']);
    expect(near('hut')).toEqual([]);
    expect(verdictsOf(rule, of('telephone protector', '15 ft', 'us', 'hut: {walls: brick}'))).toEqual(['met c: short']);
  });
});

/** NFPA 70 250.64(A) in the 1999 text (read), 810.21(A): 18 in, printed as 0.45 m. */
describe('aluminium-18-inch', () => {
  const rule = 'aluminium-18-inch';
  const wire = (says: string, metal = 'aluminum') => lead(says).replace('6 AWG copper', `4 AWG ${metal}`);

  it('asks 18 in above the soil', () => {
    expect(verdictsOf(rule, wire(', above_soil: 18 in'))).toEqual(['met c: clear']);
    expect(verdictsOf(rule, wire(', above_soil: 45 cm'))).toEqual(['met c: clear']);
    expect(verdictsOf(rule, wire(', above_soil: 46 cm'))).toEqual(['met c: clear']);
    expect(verdictsOf(rule, wire(', above_soil: 17 in'))).toEqual(['not met c: near']);
    expect(verdictsOf(rule, wire(', above_soil: 44 cm'))).toEqual(['not met c: near']);
    expect(verdictsOf(rule, wire(', above_soil: 12 to 24 in'))).toEqual(['cannot tell c: not known']);
    expect(verdictsOf(rule, wire('', 'copper-clad aluminum'))).toEqual(['cannot tell c: not known']);
  });

  it('finds aluminium in soil or on a rod whose top is at the ground', () => {
    expect(verdictsOf(rule, wire(', buried: 1 ft'))).toEqual(['not met c: in soil']);
    expect(verdictsOf(rule, wire('').replace('kind: rod', 'kind: rod, top: 0 in'))).toEqual([
      'not met c: on electrode',
    ]);
    expect(verdictsOf(rule, wire('').replace('kind: rod', 'kind: rod, top: -20 in'))).toEqual([
      'cannot tell c: not known',
    ]);
  });

  it('has no word on copper, nor indoors, nor elsewhere', () => {
    expect(findingsOf(rule, lead(', above_soil: 1 in')).outcome).toBe('not applicable');
    expect(findingsOf(rule, wire(', where: inside')).outcome).toBe('not applicable');
    expect(findingsOf(rule, wire(', above_soil: 1 in').replace('region: us', 'region: iec')).outcome).toBe(
      'not applicable',
    );
  });
});

/** UFGS 13100A (read): 3 ft. */
it('support-spacing: fixed every 3 ft; of the others it is asked in one doubt, by the walk that settles the rest', () => {
  const rule = 'support-spacing';
  expect(verdictsOf(rule, lead(', fixings: 3 ft'))).toEqual(['met c: close']);
  expect(verdictsOf(rule, lead(', fixings: 0.91 m'))).toEqual(['met c: close']);
  expect(verdictsOf(rule, lead(', fixings: 37 in'))).toEqual(['not met c: far']);
  expect(verdictsOf(rule, lead(', fixings: 95 cm'))).toEqual(['not met c: far']);
  expect(verdictsOf(rule, lead(', fixings: 2 to 4 ft'))).toEqual(['cannot tell c: nobody said']);
  expect(verdictsOf(rule, lead(''))).toEqual(['cannot tell c: nobody said']);
  expect(findingsOf(rule, lead('')).findings[0]!.remedy).toBe(
    findingsOf('no-upward-run', lead('')).findings[0]!.remedy,
  );
  expect(findingsOf(rule, lead(', buried: 1 ft')).outcome).toBe('not applicable');
  const two = lead(', fixings: 3 ft').replace(
    'conductors: {',
    'conductors: {d: {from: mast@base, to: R, role: down conductor, wire: 6 AWG copper}, ',
  );
  expect(verdictsOf(rule, two)).toEqual(['cannot tell d: nobody said', 'met c: close']);
});

/** NFPA 70 250.64(B) (from memory): thinner than 6 AWG in conduit or armour. */
it('small-conductor-in-conduit: of the wire from the service, not of an antenna’s lead', () => {
  const rule = 'small-conductor-in-conduit';
  const gec = (wire: string, enclosure = '') => `site: {name: Wire, region: us, service: panel}
electrodes: {R: {kind: rod}}
equipment: {panel: {kind: service panel}}
conductors: {gec: {from: panel, to: R, wire: ${wire}${enclosure}}}
`;
  expect(verdictsOf(rule, gec('6 AWG copper'))).toEqual(['met gec: large']);
  expect(verdictsOf(rule, gec('13.3 mm2 copper'))).toEqual(['met gec: large']);
  expect(verdictsOf(rule, gec('13 mm2 copper', ', enclosure: none'))).toEqual(['not met gec: bare']);
  expect(verdictsOf(rule, gec('26 kcmil copper', ', enclosure: none'))).toEqual(['not met gec: bare']);
  expect(verdictsOf(rule, gec('8 AWG copper', ', enclosure: armor'))).toEqual(['met gec: in conduit']);
  expect(verdictsOf(rule, gec('8 AWG copper', ', runs: in conduit'))).toEqual(['met gec: in conduit']);
  expect(verdictsOf(rule, gec('8 AWG copper'))).toEqual(['cannot tell gec: nobody said']);
  expect(findingsOf(rule, gec('unknown')).outcome).toBe('not applicable');
  expect(findingsOf(rule, lead('').replace('6 AWG', '10 AWG')).outcome).toBe('not applicable');
});

/** Common practice; the code allows a covered one. */
it('buried-tie-bare: a covered tie in the soil is advice; what nobody said is taken as bare and not asked', () => {
  const rule = 'buried-tie-bare';
  const tie = (wire: string, buried = '1 ft') => `site: {name: Tie, region: us, service: unknown}
electrodes: {R: {kind: rod}, S: {kind: rod}}
conductors: {c: {from: R, to: S, wire: ${wire}, buried: ${buried}}}
`;
  expect(verdictsOf(rule, tie('6 AWG copper insulated'))).toEqual(['not met c: covered']);
  expect(verdictsOf(rule, tie('6 AWG bare copper'))).toEqual(['met c: bare']);
  expect(findingsOf(rule, tie('6 AWG copper')).outcome).toBe('not looked at');
  expect(findingsOf(rule, tie('6 AWG copper insulated', 'no')).outcome).toBe('not applicable');
});

/** NFPA 70 810.21(E) gives no number; 180 degrees in all is ours. */
it('ground-conductor-straight: bends of 180 degrees in all, of leads of masts and arresters', () => {
  const rule = 'ground-conductor-straight';
  const bends = (...angles: string[]) =>
    verdictsOf(rule, lead(`, bends: [${angles.map((angle) => `{angle: ${angle}}`).join(', ')}]`));
  expect(bends('90 deg', '90 deg')).toEqual(['met c: straight']);
  expect(bends('90 deg', '91 deg')).toEqual(['not met c: crooked']);
  expect(bends('90 deg', 'unknown')).toEqual(['cannot tell c: angle unknown']);
  expect(bends('100 deg', '90 deg', 'unknown')).toEqual(['not met c: crooked']);
  expect(findingsOf(rule, lead('')).outcome).toBe('not applicable');
});

everyOutcome('two-paths-from-strike-point');
everyOutcome('no-upward-run');
everyOutcome('loop-opening');
everyOutcome('protector-lead-20-ft');
everyOutcome('ground-conductor-straight');
everyOutcome('conductor-guarded');
everyOutcome('ferrous-sleeve-bonded');
everyOutcome('not-in-downspout');
everyOutcome('aluminium-18-inch');
everyOutcome('small-conductor-in-conduit');
everyOutcome('support-spacing');
everyOutcome('buried-tie-bare', {
  'cannot tell': 'bare is what the reader takes where nobody said, and lists among its assumptions',
});
