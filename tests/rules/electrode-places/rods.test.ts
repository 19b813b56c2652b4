import { describe, expect, it } from 'vitest';
import { eitherSide } from '../either-side.ts';
import { everyOutcome } from '../every-outcome.ts';
import { findingsOf, verdictsOf } from '../verdicts-of.ts';

/** `outcome place: reason` of a rule on these electrodes, each in the short form of the file. */
function ask(rule: string, electrodes: string, more = '', rest = ''): readonly string[] {
  const header = `site: {name: Places, region: us, units: ft, service: panel${more}}\n`;
  return verdictsOf(rule, `${header}electrodes: {${electrodes}}\nequipment: {panel: {kind: service panel}}\n${rest}`);
}

describe('rod-spacing-between-systems: NFPA 70 250.53(B), 6 ft (1.8288 m)', () => {
  const site = (apart: string, rest = '', units = 'ft') =>
    `site: {name: Two, region: us, units: ${units}, service: panel}
electrodes: {A: {kind: rod, at: [0, 0]}, B: {kind: rod, at: [${apart}, 0]}}
equipment: {panel: {kind: service panel}}
conductors: {c: {from: panel, to: A}${rest}}
`;
  const rule = 'rod-spacing-between-systems';

  it('either side, in both systems', () => {
    expect(verdictsOf(rule, site('6'))).toEqual(['met A B: far enough']);
    expect(verdictsOf(rule, site('1.83', '', 'm'))).toEqual(['met A B: far enough']);
    expect(verdictsOf(rule, site('5.9'))).toEqual(['not met A B: near']);
    expect(verdictsOf(rule, site('1.8', '', 'm'))).toEqual(['not met A B: near']);
  });

  it('reads the distance that was typed, too', () => {
    const near = (distance: string) =>
      site('5')
        .replace(/, at: \[[^\]]*\]/g, '')
        .replace('B: {kind: rod', `B: {kind: rod, near: {part: A, distance: ${distance}}`);
    expect(verdictsOf(rule, near('6 ft'))).toEqual(['met A B: far enough']);
    expect(verdictsOf(rule, near('5 ft'))).toEqual(['not met A B: near']);
    expect(verdictsOf(rule, near('5 to 7 ft'))).toEqual(['cannot tell A B: spacing unknown']);
  });

  it('is folded under the finding that they are two systems, and not asked once they are one', () => {
    expect(findingsOf(rule, site('5')).findings.map((f) => f.under)).toEqual(['all-electrodes-one-system:B']);
    expect(verdictsOf(rule, site('5', ', tie: {from: A, to: B}'))).toEqual([]);
    expect(verdictsOf(rule, site('5', ', tie: {from: A, to: B, present: unknown}'))).toEqual([
      'cannot tell A B: perhaps one system',
    ]);
  });
});

describe('rod-vertical-or-45: NFPA 70 250.53(G), 45°, else a trench of 30 in (762 mm)', () => {
  const rod = (rest: string) => ask('rod-vertical-or-45', `R: {kind: rod, length: 8 ft${rest}}`);

  it('either side, in both systems', () => {
    expect(rod(', angle: 45 deg')).toEqual(['met R: steep']);
    expect(rod(', angle: 46 deg, top: 0 in')).toEqual(['not met R: flat']);
    expect(rod(', angle: 90 deg, top: 30 in')).toEqual(['met R: in a trench']);
    expect(rod(', angle: 90 deg, top: 0.77 m')).toEqual(['met R: in a trench']);
    expect(rod(', angle: 90 deg, top: 0.75 m')).toEqual(['met R: in a trench']);
    expect(rod(', angle: 90 deg, top: 0.74 m')).toEqual(['not met R: flat']);
    expect(rod(', angle: 90 deg, top: 29 in')).toEqual(['not met R: flat']);
    expect(rod(', angle: unknown')).toEqual(['cannot tell R: angle unknown']);
    // nobody said how deep it lies
    expect(rod(', angle: 90 deg')).toEqual(['cannot tell R: angle unknown']);
    expect(rod('')).toEqual([]);
  });
});

describe('rod-top-protected: NFPA 70 250.53(G), flush or below, or guarded', () => {
  const rod = (rest: string) => ask('rod-top-protected', `R: {kind: rod, length: 8 ft${rest}}`);

  it('either side of the ground, in both systems', () => {
    expect(rod(', top: 0 in')).toEqual(['met R: flush']);
    expect(rod(', top: 0.1 m')).toEqual(['met R: flush']);
    expect(rod(', top: -1 in, guarded: no')).toEqual(['not met R: stands out']);
    expect(rod(', top: -30 mm, guarded: no')).toEqual(['not met R: stands out']);
    expect(rod(', top: -6 in, guarded: yes')).toEqual(['met R: guarded']);
    expect(rod(', top: -6 in')).toEqual(['cannot tell R: perhaps open']);
    expect(rod(', top: unknown')).toEqual(['cannot tell R: perhaps open']);
    expect(rod(', guarded: no')).toEqual(['cannot tell R: perhaps open']);
  });

  it('says nothing of a top that was taken at grade', () => {
    expect(rod('')).toEqual([]);
  });
});

describe('rod-top-depth-military: TM 5-811-3, 6 in (152.4 mm); FAA-STD-019, 1 ft (304.8 mm)', () => {
  const rod = (rest: string, claims = ', claims: TM 5-811-3') =>
    ask('rod-top-depth-military', `R: {kind: rod, length: 10 ft${rest}}`, claims);

  it('either side, in both systems', () => {
    expect(rod(', top: 6 in')).toEqual(['met R: deep']);
    expect(rod(', top: 153 mm')).toEqual(['met R: deep']);
    expect(rod(', top: 5.8 in')).toEqual(['not met R: shallow']);
    expect(rod(', top: 0.15 m')).toEqual(['met R: deep']);
    expect(rod(', top: 147 mm')).toEqual(['not met R: shallow']);
    expect(rod(', top: 0.3 m', ', claims: FAA-STD-019')).toEqual(['met R: deep']);
    expect(rod(', top: 0.31 m', ', claims: FAA-STD-019')).toEqual(['met R: deep']);
    expect(rod(', top: 0.29 m', ', claims: FAA-STD-019')).toEqual(['not met R: shallow']);
    expect(rod(', top: 11.7 in', ', claims: FAA-STD-019')).toEqual(['not met R: shallow']);
    expect(rod(', top: 1 ft', ', claims: FAA-STD-019')).toEqual(['met R: deep']);
    expect(rod('')).toEqual(['cannot tell R: top unknown']);
    expect(rod(', top: 0 in', '')).toEqual([]);
  });
});

describe('rods-in-undisturbed-soil: MIL-HDBK-419A vol. II 1.2.4, 6 ft (1.8288 m) below gravel', () => {
  const rod = (rest: string) => ask('rods-in-undisturbed-soil', `R: {kind: rod${rest}}`);

  it('either side, in both systems', () => {
    expect(rod(', stands_in: gravel, gravel: 2 ft, length: 8 ft')).toEqual(['met R: through gravel']);
    expect(rod(', stands_in: gravel, gravel: 0.6 m, length: 2.44 m')).toEqual(['met R: through gravel']);
    expect(rod(', stands_in: gravel, gravel: 2.2 ft, length: 8 ft')).toEqual(['not met R: in gravel']);
    expect(rod(', stands_in: gravel, gravel: 0.7 m, length: 2.44 m')).toEqual(['not met R: in gravel']);
    expect(rod(', stands_in: gravel, length: 8 ft')).toEqual(['cannot tell R: gravel unknown']);
  });

  const below = (figure: string) =>
    `site: {name: Gravel, region: us, service: none}\nelectrodes: {R: {kind: rod, stands_in: gravel, gravel: 1 mm, length: ${figure}}}\n`;
  eitherSide('rods-in-undisturbed-soil', below, [
    ['6 ft', '5.8 ft'],
    ['1.83 m', '1.78 m'],
    ['1.8 m', '1.78 m'],
  ]);

  it('by what it stands in, where somebody said', () => {
    expect(rod(', stands_in: undisturbed soil')).toEqual(['met R: firm']);
    expect(rod(', stands_in: compacted fill')).toEqual(['met R: firm']);
    expect(rod(', stands_in: loose fill')).toEqual(['not met R: loose']);
    expect(rod(', stands_in: unknown')).toEqual(['cannot tell R: nobody saw']);
    expect(rod('')).toEqual([]);
    expect(ask('rods-in-undisturbed-soil', 'W: {kind: buried wire, stands_in: gravel}')).toEqual([
      'not met W: wire in gravel',
    ]);
  });
});

describe('below-moisture-and-frost: NFPA 70 250.53(A)(1), as deep as the frost that was typed', () => {
  const rod = (text: string, frost = 'soil: {type: clay, frost: 4 ft}\n') =>
    ask('below-moisture-and-frost', `E: {${text}}`, '', frost);

  it('either side, in both systems', () => {
    expect(rod('kind: rod, length: 4 ft')).toEqual(['met E: below']);
    expect(rod('kind: rod, length: 3.9 ft')).toEqual(['not met E: above']);
    expect(rod('kind: rod, length: 1 m, top: 0.22 m')).toEqual(['met E: below']);
    expect(rod('kind: rod, length: 1 m, top: 0.2 m')).toEqual(['not met E: above']);
    // 6 ft at 60° reach 3 ft deep, at 30° 5.2 ft
    expect(rod('kind: rod, length: 6 ft, angle: 60 deg')).toEqual(['not met E: above']);
    expect(rod('kind: rod, length: 6 ft, angle: 30 deg')).toEqual(['met E: below']);
    expect(rod('kind: rod, length: 6 ft, angle: 30 to 60 deg')).toEqual(['cannot tell E: depth unknown']);
    expect(rod('kind: rod, length: 8 ft, angle: 90 deg, top: 30 in')).toEqual(['not met E: above']);
    expect(rod('kind: plate, depth: 30 in')).toEqual(['not met E: above']);
    expect(rod('kind: plate')).toEqual(['cannot tell E: depth unknown']);
  });

  it('asks nothing of wires, nor where no frost was typed', () => {
    expect(rod('kind: buried wire, depth: 1 ft')).toEqual([]);
    expect(rod('kind: rod, length: 1 ft', '')).toEqual([]);
  });
});

it('names a clause by the number that it has in the adopted edition: 250.53(G), (H) to 2017; (A)(4), (5) since 2020', () => {
  const clauses = (year: string) => {
    const text = `site: {name: Moved, region: us, service: none, code: {document: NFPA 70, edition: "${year}"}}
electrodes: {R: {kind: rod, angle: 0 deg, top: 0 in}, P: {kind: plate}}
`;
    const rules = ['rod-vertical-or-45', 'rod-top-protected', 'plate-us'];
    return rules.map((rule) => findingsOf(rule, text).findings[0]!.source.clause);
  };
  expect(clauses('2017')).toEqual(['250.53(G)', '250.53(G)', '250.52(A)(7), 250.53(H)']);
  expect(clauses('2020')).toEqual(['250.53(A)(4)', '250.53(A)(4)', '250.52(A)(7), 250.53(A)(5)']);
});

describe('the number of rods at a tower', () => {
  const tower = (rule: string, electrodes: string, ties: string, more = '', support = 'kind: lattice tower, legs: 3') =>
    ask(rule, electrodes, more, `supports: {T: {${support}, metal: steel, sections: bolted}}\nconductors: {${ties}}\n`);
  const three = 'R1: {kind: rod, length: 8 ft}, R2: {kind: rod, length: 2.44 m}, R3: {kind: rod, length: 8 ft}';
  const each = 'a: {from: T.leg1@base, to: R1}, b: {from: T.leg2@base, to: R2}, c: {from: T.leg3@base, to: R3}';
  const legs = 'electrode-count-per-tower-leg';

  it('electrode-count-per-tower-leg: question pool T0B08, a rod of 8 ft (2.4384 m) for each leg', () => {
    expect(tower(legs, three, each)).toEqual(['met T: a rod a leg']);
    expect(tower(legs, three.replace('2.44 m', '2.4 m'), each)).toEqual(['not met T: too few']);
    expect(tower(legs, three.replace('length: 2.44 m', ''), each)).toEqual(['cannot tell T: rods unknown']);
    expect(tower(legs, 'R1: {kind: rods, count: 3, length: 8 ft}', 'a: {from: T@base, to: R1}')).toEqual([
      'met T: a rod a leg',
    ]);
    expect(tower(legs, 'R1: {kind: rods, count: 2, length: 8 ft}', 'a: {from: T@base, to: R1}')).toEqual([
      'not met T: too few',
    ]);
  });

  it('does not count a rod that a long lead of its own reaches, or that stands elsewhere on the plan', () => {
    const leads = (c: string) => `a: {from: T@base, to: R1}, b: {from: T@base, to: R2}, c: {from: T@base, to: R3${c}}`;
    expect(tower(legs, three, leads(', length: 20 ft'))).toEqual(['met T: a rod a leg']);
    expect(tower(legs, three, leads(', length: 21 ft'))).toEqual(['cannot tell T: rods unknown']);
    expect(tower(legs, three, leads(', length: 6.2 m'))).toEqual(['cannot tell T: rods unknown']);
    const far = three.replace('R3: {', 'R3: {near: [{part: T, distance: 40 ft}], ');
    expect(tower(legs, far, leads(', length: 42 ft'))).toEqual(['not met T: too few']);
  });

  it('counts rods on a ring that the legs land on; rods at the far end of the site may be its own', () => {
    const ring = `ring: {kind: buried wire, closed: yes}, ${three}`;
    const onRing =
      'l: {from: T@base, to: ring}, a: {from: ring, to: R1}, b: {from: ring, to: R2}, c: {from: ring, to: R3}';
    expect(tower(legs, ring, onRing)).toEqual(['met T: a rod a leg']);
    expect(
      tower(
        legs,
        three,
        'a: {from: T@base, to: R1}, b: {from: R1, to: panel}, c: {from: panel, to: R2}, d: {from: panel, to: R3}',
      ),
    ).toEqual(['cannot tell T: rods unknown']);
  });

  it('on rock a strap stands for a rod; a crank-up is not asked', () => {
    const straps =
      'R1: {kind: strap on rock, length: 20 ft}, R2: {kind: drilled rod, length: 10 ft}, R3: {kind: strap on rock, length: 20 ft}';
    expect(tower(legs, straps, each)).toEqual(['met T: a rod a leg']);
    expect(tower(legs, three, each, '', 'kind: crank-up tower, legs: 3')).toEqual([]);
  });

  const count = 'tower-rods-count';
  const guyed = 'kind: lattice tower, guys: {g1: {anchor: unknown, metal: steel}}';

  it('tower-rods-count: TIA-222-G (2006), six self-supporting, three and one at each anchor guyed; F three', () => {
    const six = 'R: {kind: rods, count: 6, length: 10 ft}';
    const lead = 'a: {from: T@base, to: R}';
    expect(tower(count, six, lead, ', claims: TIA-222-G')).toEqual(['met T: enough']);
    expect(tower(count, six.replace('6', '5'), lead, ', claims: TIA-222-G')).toEqual(['not met T: too few']);
    // the lead meets one of six that nothing joins
    expect(tower(count, six.replace('}', ', joined: no}'), lead, ', claims: TIA-222-G')).toEqual([
      'cannot tell T: rods unknown',
    ]);
    expect(tower(count, six.replace('6', '3'), lead, ', claims: TIA-222-F')).toEqual(['met T: enough']);
    expect(tower(count, six.replace('6', '2'), lead, ', claims: TIA-222-F')).toEqual(['not met T: too few']);
    expect(tower(count, six, lead, ', claims: TIA-222-H')).toEqual(['cannot tell T: edition unknown']);
    expect(tower(count, six, lead, ', claims: TIA-222')).toEqual(['cannot tell T: edition unknown']);
    expect(tower(count, six, lead)).toEqual([]);
  });

  it('guyed: the anchors too', () => {
    const rods = 'R: {kind: rods, count: 3, length: 10 ft}, A: {kind: rod, length: 10 ft}';
    const lead = 'a: {from: T@base, to: R}, g: {from: g1@anchor, to: A}';
    expect(tower(count, rods, lead, ', claims: TIA-222-G', guyed)).toEqual(['met T: enough']);
    expect(tower(count, rods, 'a: {from: T@base, to: R}', ', claims: TIA-222-G', guyed)).toEqual([
      'not met T: anchor without',
    ]);
  });

  it('is waived where a reading at the tower is at most 10 ohm', () => {
    const read = (ohm: string) =>
      ask(
        count,
        'R: {kind: rod}',
        ', claims: TIA-222-G',
        `supports: {T: {kind: lattice tower, metal: steel, sections: bolted}}
conductors: {a: {from: T@base, to: R}}
readings: {r: {kind: fall of potential, electrode: T, resistance: ${ohm} ohm}}
`,
      );
    expect(read('10')).toEqual(['met T: reads low']);
    expect(read('10.1')).toEqual(['not met T: too few']);
  });

  const ofLength = (figure: string) => `site: {name: Legs, region: us, service: none}
electrodes: {R: {kind: rods, count: 3, length: ${figure}}}
supports: {T: {kind: lattice tower, legs: 3}}
conductors: {a: {from: T@base, to: R}}
`;
  eitherSide('electrode-count-per-tower-leg', ofLength, [
    ['8 ft', '7.9 ft'],
    ['2.44 m', '2.4 m'],
  ]);

  it('is asked of towers: a site without one is not asked', () => {
    const text =
      'site: {name: None, region: us, service: none, claims: TIA-222-G}\nsupports: {pole: {kind: wood pole}}\n';
    for (const rule of [legs, count]) expect(findingsOf(rule, text).outcome).toBe('not applicable');
    const three = 'site: {name: Base, region: us, service: none, claims: TIA-222-G}\n';
    const site = (
      n: number,
    ) => `${three}electrodes: {R: {kind: rods, count: ${n}, length: 10 ft}, A: {kind: rod, length: 10 ft}}
supports: {T: {kind: lattice tower, metal: steel, sections: bolted, guys: {g1: {anchor: unknown, metal: steel}}}}
conductors: {a: {from: T@base, to: R}, g: {from: g1@anchor, to: A}}
`;
    expect(verdictsOf(count, site(3))).toEqual(['met T: enough']);
    expect(verdictsOf(count, site(2))).toEqual(['not met T: too few']);
  });
});

everyOutcome('rod-spacing-between-systems');
everyOutcome('rod-top-protected');
everyOutcome('below-moisture-and-frost');
everyOutcome('rod-vertical-or-45', { limits: 'a rod that is neither says its angle, not its depth' });
everyOutcome('rod-top-depth-military');
everyOutcome('rods-in-undisturbed-soil');
everyOutcome('electrode-count-per-tower-leg');
everyOutcome('tower-rods-count', { limits: 'a reading above 10 ohm alone says nothing: then the rods are counted' });
