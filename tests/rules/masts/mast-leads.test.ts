import { describe, expect, it } from 'vitest';
import { everyOutcome } from '../every-outcome.ts';
import { findingsOf, verdictsOf } from '../verdicts-of.ts';

const head = (region = 'us') => `site: {name: Leads, region: ${region}, units: ft, service: unknown}\n`;
const outcomeOf = (rule: string, text: string) => findingsOf(rule, text).outcome;

/** TIA-222-G and the examination question on legs, second-hand: a lead for each leg. A count has no unit. */
describe('tower-leg-connections', () => {
  const rule = 'tower-leg-connections';
  const site = (tower: string, ...froms: string[]) =>
    `${head()}electrodes: {R1: {kind: rod}}\nsupports: {t: {kind: ${tower}}}\nconductors:\n${froms.map((f, i) => `  c${i}: {from: ${f}, to: R1}\n`).join('')}`;

  it('counts leads against legs, three where nobody counted', () => {
    expect(verdictsOf(rule, site('lattice tower', 't.leg1@base', 't.leg2@base', 't.leg3@base'))).toEqual([
      'met t: each leg',
    ]);
    expect(verdictsOf(rule, site('lattice tower', 't.leg1@base', 't.leg2@base'))).toEqual(['not met t: few']);
    expect(verdictsOf(rule, site('tower, legs: 4', 't.leg1@base', 't.leg2@base', 't.leg3@1 m'))).toEqual([
      'not met t: few',
    ]);
  });

  it('counts legs, not leads: three on one leg are one', () => {
    const [found] = findingsOf(rule, site('lattice tower', 't.leg1@base', 't.leg1@base', 't.leg1@base')).findings;
    expect([found!.outcome, found!.measured!.value]).toEqual(['not met', 1]);
    expect(found!.because.text).toBe('Not every leg of t has a conductor at its foot.');
  });

  it('takes a landing at 9 ft or 3 m for one of the foot, and none higher', () => {
    const third = (at: string) => verdictsOf(rule, site('lattice tower', 't.leg1@base', 't.leg2@base', `t.leg3@${at}`));
    expect(third('9 ft')).toEqual(['met t: each leg']);
    expect(third('10 ft')).toEqual(['not met t: few']);
    expect(third('3 m')).toEqual(['met t: each leg']);
    expect(third('3.1 m')).toEqual(['not met t: few']);
  });

  it('cannot tell which legs they are on, nor what is not in the file', () => {
    expect(verdictsOf(rule, site('lattice tower', 't@base', 't@base', 't@base'))).toEqual(['cannot tell t: which leg']);
    const partly = site('lattice tower', 't@base').replace(
      'service: unknown',
      'service: unknown, incomplete: [conductors]',
    );
    expect(verdictsOf(rule, partly)).toEqual(['cannot tell t: perhaps more']);
  });

  it('leaves a tube and a tower without a lead to other rules', () => {
    expect(outcomeOf(rule, site('mast', 't@base'))).toBe('not applicable');
    expect(outcomeOf(rule, site('tower', 't@base'))).toBe('not applicable');
    expect(outcomeOf(rule, `${head()}supports: {t: {kind: lattice tower}}\nconductors: none\n`)).toBe('not applicable');
  });
});

/** Field experience, second-hand; that concrete within 3 m (10 ft) is its own block is ours. */
describe('tower-not-through-concrete-alone', () => {
  const rule = 'tower-not-through-concrete-alone';
  const site = (near: string, conductors: string) => `${head('iec')}
electrodes: {block: {kind: concrete-encased${near}}, R1: {kind: rod}}
supports: {mast: {kind: mast}}
conductors: {${conductors}}
`;
  const toBlock = 'c1: {from: mast@base, to: block}';
  const near = (distance: string) => `, near: [{part: mast, distance: ${distance}}]`;

  it('finds a mast whose every lead ends in its own block', () => {
    expect(verdictsOf(rule, site(near('2.9 m'), toBlock))).toEqual(['not met mast: concrete alone']);
    expect(verdictsOf(rule, site(near('3.1 m'), toBlock))).toEqual(['met mast: beside']);
    expect(verdictsOf(rule, site(near('9.8 ft'), toBlock))).toEqual(['not met mast: concrete alone']);
    expect(verdictsOf(rule, site(near('9.9 ft'), toBlock))).toEqual(['met mast: beside']);
    expect(verdictsOf(rule, site(near('0.5 m'), `${toBlock}, c2: {from: mast@base, to: R1}`))).toEqual([
      'met mast: beside',
    ]);
  });

  it('takes no bar for a way beside: what the bar leads to counts', () => {
    const bar = (more: string, service = 'none') =>
      verdictsOf(
        rule,
        `${site(near('0.5 m'), `c1: {from: mast@base, to: b}, c2: {from: b, to: block}${more}`)}bars: {b: {kind: tower bar}}\n`.replace(
          'service: unknown',
          `service: ${service}`,
        ),
      );
    expect(bar('')).toEqual(['not met mast: concrete alone']);
    expect(bar(', c3: {from: b, to: R1}')).toEqual(['met mast: beside']);
    expect(bar(', c3: {from: b, to: R1, present: unknown}')).toEqual(['cannot tell mast: end unknown']);
    expect(bar(', c3: {from: b, to: unknown}')).toEqual(['cannot tell mast: end unknown']);
    // through the service to the supplier's earth
    expect(bar('', 'b')).toEqual(['met mast: beside']);
  });

  it('cannot tell whose concrete it is, nor where a wire ends', () => {
    expect(verdictsOf(rule, site('', toBlock))).toEqual(['cannot tell mast: whose block']);
    expect(verdictsOf(rule, site('', 'c1: {from: mast@base, to: unknown}'))).toEqual(['cannot tell mast: end unknown']);
  });

  it('leaves a mast without a lead, and one on a roof, alone', () => {
    expect(outcomeOf(rule, site('', 'c1: {from: R1, to: block}'))).toBe('not applicable');
    expect(outcomeOf(rule, site('', toBlock).replace('kind: mast', 'kind: roof mast'))).toBe('not applicable');
  });
});

const line = (kind: string, on: string, path: string, region = 'us') => `${head(region)}
supports: {t: {kind: ${kind}, height: 300 ft}}
antennas: {whip: {kind: vertical, on: ${on}}}
lines: {coax: {kind: coax, path: [whip, ${path}]}}
`;

/** MIL-HDBK-419A vol. II, read: at the top and where it leaves; within 10 ft is ours. */
describe('shield-bonded-top-and-base', () => {
  const rule = 'shield-bonded-top-and-base';

  it.each([
    ['both', '{bond: t@41 ft}, {bond: t@2 ft}', 'met coax: both'],
    ['no top', '{bond: t@39 ft}, {bond: t@2 ft}', 'not met coax: no top'],
    ['no base', '{bond: t@48 ft}, {bond: t@10.5 ft}', 'not met coax: no base'],
    ['one half way', '{bond: t@25 ft}', 'not met coax: neither'],
    ['none, and the path says how it comes down', '{bend: t@2 ft}', 'not met coax: neither'],
    ['a path that says nothing of the mast', '{plug: j1}', 'cannot tell coax: heights unknown'],
    ['in metres', '{bond: t@12.3 m}, {bond: t@3 m}', 'met coax: both'],
    ['in metres, too low', '{bond: t@12.1 m}, {bond: t@3 m}', 'not met coax: no top'],
    ['a height nobody knows', '{bond: t}, {bond: t@2 ft}', 'cannot tell coax: heights unknown'],
    ['a stop nobody looked at', 'unknown', 'cannot tell coax: heights unknown'],
  ])('%s', (_says, path, expected) => expect(verdictsOf(rule, line('tower', 't@50 ft', path))).toEqual([expected]));

  it('counts a bar on the mast and what hangs on it', () => {
    const bar = line('tower', 't@12 ft', '{bond: t@11 ft}, a1').replace(
      'lines:',
      'bars: {foot: {kind: tower bar, on: t@2 ft}}\narresters: {a1: {kind: gas tube, on: foot}}\nlines:',
    );
    expect(verdictsOf(rule, bar)).toEqual(['met coax: both']);
    expect(verdictsOf(rule, bar.replace('t@12 ft', 't@30 ft'))).toEqual(['not met coax: no top']);
  });

  it('takes one bond for both only below 10 ft: half way up a low mast it is at one of the two at most', () => {
    expect(verdictsOf(rule, line('mast', 't@19 ft', '{bond: t@9.5 ft}'))).toEqual(['not met coax: one for both']);
    expect(verdictsOf(rule, line('mast', 't@19 ft', '{bond: t@18 ft}, {bond: t@1 ft}'))).toEqual(['met coax: both']);
    expect(verdictsOf(rule, line('mast', 't@19 ft', '{bond: t@9.5 ft}, {bond: t}'))).toEqual([
      'cannot tell coax: heights unknown',
    ]);
    expect(verdictsOf(rule, line('mast', 't@3 m', '{bond: t@1.5 m}'))).toEqual(['met coax: both']);
  });

  it('asks nothing of a pole in a loft with its antenna; of one with an antenna outdoors it does', () => {
    const loft = (antenna: string) =>
      line('mast', `t@9 ft${antenna}`, '{bend: t@2 ft}')
        .replace('height: 300 ft', 'height: 9 ft, where: house')
        .concat('buildings: {house: {}}\n');
    expect(outcomeOf(rule, loft(', where: house'))).toBe('not applicable');
    expect(verdictsOf(rule, loft(', where: outside'))).toEqual(['not met coax: neither']);
    const exit = 'line-goes-down-before-in';
    const on = (antenna: string) => loft(antenna).replace('{bend: t@2 ft}', '{bond: t@8 ft}, unknown');
    expect(outcomeOf(exit, on(', where: house'))).toBe('not applicable');
    expect(verdictsOf(exit, on(', where: outside'))).toEqual(['not met coax: high']);
  });

  it('asks one bond of a low mast, and nothing of a roof mast or of wood', () => {
    expect(verdictsOf(rule, line('mast', 't@9 ft', '{bond: t@base}'))).toEqual(['met coax: both']);
    expect(outcomeOf(rule, line('roof mast', 't@40 ft', '{plug: j1}'))).toBe('not applicable');
    expect(outcomeOf(rule, line('wood pole', 't@40 ft', '{bond: t@base}'))).toBe('not applicable');
    expect(outcomeOf(rule, head())).toBe('not looked at');
  });
});

/** MIL-HDBK-419A vol. II, read: taller than 200 ft. */
describe('shield-bonded-midway', () => {
  const rule = 'shield-bonded-midway';

  it('asks a bond half way from above 200 ft, or 60.96 m, on', () => {
    const ends = '{bond: t@200 ft}, {bond: t@2 ft}';
    expect(outcomeOf(rule, line('tower', 't@200 ft', ends))).toBe('not applicable');
    expect(verdictsOf(rule, line('tower', 't@201 ft', ends))).toEqual(['not met coax: none midway']);
    expect(verdictsOf(rule, line('tower', 't@61 m', ends))).toEqual(['not met coax: none midway']);
    expect(outcomeOf(rule, line('tower', 't@60.9 m', ends))).toBe('not applicable');
    expect(verdictsOf(rule, line('tower', 't@201 ft', `{bond: t@100 ft}, ${ends}`))).toEqual(['met coax: midway']);
  });

  it('cannot tell where nobody knows how high antenna and mast are; a mast of known height settles it', () => {
    const on = (height: string) => line('tower', 't', '{bond: t@2 ft}').replace('height: 300 ft', `height: ${height}`);
    expect(verdictsOf(rule, on('unknown'))).toEqual(['cannot tell coax: heights unknown']);
    expect(verdictsOf(rule, on('300 ft'))).toEqual(['cannot tell coax: heights unknown']);
    expect(outcomeOf(rule, on('60 m'))).toBe('not applicable');
    expect(outcomeOf(rule, on('190 ft'))).toBe('not applicable');
  });

  it('cannot tell with a height that nobody knows', () => {
    expect(verdictsOf(rule, line('tower', 't@201 ft', '{bond: t}'))).toEqual(['cannot tell coax: heights unknown']);
  });
});

/** NFPA 70 250.4(A)(5), 250.54, second-hand; no threshold. */
describe('earth-is-not-a-fault-path', () => {
  const rule = 'earth-is-not-a-fault-path';
  const site = (protective: string, bonds: string, service = 'panel') => `
site: {name: Clean rod, region: us, units: ft, service: ${service}}
electrodes: {R1: {kind: rod}, clean: {kind: rod}}
equipment: {panel: {kind: service panel}, radio: {kind: transceiver}}
lines: {cord: {kind: mains, path: [panel, radio]${protective}}}
conductors: {c1: {from: panel, to: R1}${bonds}}
`;
  const rod = ', c2: {from: radio, to: clean}';

  it('finds a radio on a rod of its own and a cord of two pins', () => {
    expect(verdictsOf(rule, site(', protective_conductor: no', rod))).toEqual(['not met radio: soil alone']);
    expect(verdictsOf(rule, site(', protective_conductor: yes', rod))).toEqual(['met radio: metal']);
    expect(verdictsOf(rule, site(', protective_conductor: no', `${rod}, c3: {from: clean, to: R1}`))).toEqual([
      'met radio: metal',
    ]);
  });

  it('cannot tell with a cord that nobody looked at', () => {
    expect(verdictsOf(rule, site('', rod))).toEqual(['cannot tell radio: perhaps']);
    expect(verdictsOf(rule, site(', protective_conductor: no', rod, 'unknown'))).toEqual([
      'cannot tell radio: perhaps',
    ]);
  });

  it('cannot tell where conductors were left out, or where the protective conductor goes to no panel of the file', () => {
    const partly = site(', protective_conductor: no', rod).replace(
      'units: ft,',
      'units: ft, incomplete: [conductors],',
    );
    expect(verdictsOf(rule, partly)).toEqual(['cannot tell radio: perhaps']);
    const outlet = site(', protective_conductor: yes', rod).replace('path: [panel, radio]', 'path: [unknown, radio]');
    expect(verdictsOf(rule, outlet)).toEqual(['cannot tell radio: perhaps']);
  });

  describe('a sub-panel without a protective conductor in its feeder', () => {
    const shed = (
      says: { region?: string; feeder?: string; neutral?: string; more?: string; header?: string } = {},
    ) => `site: {name: Shed, region: ${says.region ?? 'uk'}, units: m, service: met${says.header ?? ''}}
electrodes: {R: {kind: rod}}
bars: {met: {kind: main earthing bar}}
equipment:
  cu: {kind: service panel, on: met}
  db: {kind: sub-panel, neutral_bonded: ${says.neutral ?? 'no'}}
  radio: {kind: transceiver}
lines:
  feeder: {kind: mains, path: [cu, db], protective_conductor: ${says.feeder ?? 'no'}}
  cord: {kind: mains, path: [db, radio], protective_conductor: yes}
conductors: {e: {from: met, to: R}${says.more ?? ''}}
`;
    const of = (says: Parameters<typeof shed>[0]) => verdictsOf(rule, shed(says));

    it('brings nothing back, and what hangs on it neither', () => {
      expect(of({})).toEqual(['not met db: panel cut off', 'not met radio: panel cut off']);
      expect(findingsOf(rule, shed()).findings.map((f) => f.under)).toEqual([null, `${rule}:db`]);
      expect(findingsOf(rule, shed()).findings[0]!.severity).toBe('hazard');
      // whatever feeds it
      expect(verdictsOf(rule, shed().replace('[cu, db]', '[unknown, db]'))[0]).toBe('not met db: panel cut off');
    });

    it('weighs the same in the building of an American service; in another the clause on buildings asks of it', () => {
      const american = (where: string) =>
        `${shed({ region: 'us' }).replace('kind: service panel', 'kind: service panel, where: house').replace('kind: sub-panel', `kind: sub-panel, where: ${where}`)}buildings: {house: {}, shed: {}}\n`;
      expect(verdictsOf(rule, american('house'))).toEqual([
        'not met db: panel cut off',
        'not met radio: panel cut off',
      ]);
      const { findings } = findingsOf('no-orphan-equipment', american('house'));
      expect(findings.find((f) => f.at.includes('db'))?.under).toBe(`${rule}:db`);
      for (const where of ['shed', 'unknown']) expect(verdictsOf(rule, american(where)).join()).not.toMatch(/cut off/);
      expect(verdictsOf('separate-building-electrode', american('shed'))).toEqual(['not met db: no electrode']);
    });

    it('is a way back by its feeder, by a bond, or by a neutral that is bonded there', () => {
      expect(of({ feeder: 'yes' })).toEqual(['met radio: metal']);
      expect(of({ more: ', b: {from: db, to: met}' })).toEqual(['met radio: metal']);
      expect(of({ region: 'au', neutral: 'yes' })).toEqual(['met radio: metal']);
    });

    it('cannot be told where nobody said how it is fed, or where an electrode of its own may serve a TT part', () => {
      const unknown = ['cannot tell db: panel unknown', 'cannot tell radio: panel unknown'];
      expect(of({ feeder: 'unknown' })).toEqual(unknown);
      expect(of({ neutral: 'unknown' })).toEqual(unknown);
      expect(of({ header: ', incomplete: [conductors]' })).toEqual(unknown);
      expect(of({ more: ', b: {from: db, to: met, present: unknown}' })).toEqual(unknown);
      expect(verdictsOf(rule, shed({ feeder: 'unknown' }).replace('[cu, db]', '[unknown, db]'))).toEqual(unknown);
      const own = shed({ more: ', s: {from: db, to: S}' }).replace('R: {kind: rod}', 'R: {kind: rod}, S: {kind: rod}');
      expect(verdictsOf(rule, own)).toEqual(['cannot tell db: earth of panel', 'cannot tell radio: earth of panel']);
    });

    it('stays what it was in the United States, where separate-building-electrode asks; in Canada it is asked', () => {
      for (const region of ['us', 'unknown']) expect(of({ region })).toEqual(['met radio: metal']);
      expect(of({ region: 'ca' })).toEqual(['not met db: panel cut off', 'not met radio: panel cut off']);
      expect(of({ region: 'ca', neutral: 'yes' })).toEqual(['met radio: metal']);
      expect(of({ region: 'ca', feeder: 'unknown' })[0]).toBe('cannot tell db: panel unknown');
    });
  });

  it('leaves a radio that is tied to nothing to another rule', () => {
    expect(outcomeOf(rule, site(', protective_conductor: no', ''))).toBe('not applicable');
  });
});

everyOutcome('tower-leg-connections');
everyOutcome('tower-not-through-concrete-alone');
everyOutcome('earth-is-not-a-fault-path');
everyOutcome('shield-bonded-top-and-base');
everyOutcome('shield-bonded-midway');
