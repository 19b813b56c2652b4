import { describe, expect, it, test } from 'vitest';
import { bondingOf } from '../../../src/bonding/bonding-of.ts';
import type { Facts } from '../../../src/facts/facts.ts';
import { readSite } from '../../../src/site/read-site.ts';
import { everyOutcome } from '../every-outcome.ts';
import { checkOf } from '../heard.ts';
import { findingsOf, verdictsOf } from '../verdicts-of.ts';

const rule = 'boxes-held-together';
const text = (more: string, soil = 'soil: {type: clay}') => `
site: {name: Boxes, region: us, units: m, service: main}
${soil}
places: {desk: [4, 0, 1], far: [24, 0, 1]}
electrodes: {R1: {kind: rod, at: [0, 0], length: 2.4 m, diameter: 16 mm}, R2: {kind: rod, at: [24, 0], length: 2.4 m, diameter: 16 mm}}
supports: {mast: {kind: mast, at: [0, 0], height: 9 m, metal: galvanised steel, sections: one piece}}
bars: {bar: {kind: station ground bar, at: [4, 0, 1]}}
equipment:
  main: {kind: service panel, at: [24, 0, 1]}
  radio: {kind: transceiver, at: desk}
${more}`;
const metal = `conductors:
  c1: {from: mast@base, to: R1, wire: 16 mm2 copper, length: 1 m}
  c2: {from: bar, to: R1, wire: 16 mm2 copper, length: 4 m}
  c3: {from: radio, to: bar, wire: 16 mm2 copper, length: 0.5 m}
  c4: {from: main, to: R2, wire: 16 mm2 copper, length: 1 m}
  c5: {from: R1, to: R2, wire: 16 mm2 copper, length: 24 m}
`;

test('a computer on a lead of a panel far away, and one on the bar of the radio', () => {
  const line = 'lines: {usb: {kind: usb, path: [computer, radio]}}\n';
  const far = `  computer: {kind: computer, at: desk}\n${line}${metal}  c6: {from: computer, to: main, wire: 16 mm2 copper, length: 20 m}\n`;
  const near = `  computer: {kind: computer, at: desk}\n${line}${metal}  c6: {from: computer, to: bar, wire: 16 mm2 copper, length: 0.5 m}\n`;
  expect(verdictsOf(rule, text(far))).toEqual(['not met computer radio: apart']);
  expect(verdictsOf(rule, text(near))).toEqual(['met computer radio: held']);
});

test('what only the shield of a plugged line holds is not said to be held by bonds', () => {
  const coax = 'lines: {jumper: {kind: coax, path: [bar, radio], length: 0.5 m}}\n';
  const unbonded = metal.replace(/ {2}c3.*\n/, '');
  expect(verdictsOf(rule, text(coax + unbonded))).toEqual(['met bar radio: held by a line']);
  expect(verdictsOf(rule, text(coax + metal))).toEqual(['met bar radio: held']);
});

describe('what is not known', () => {
  const line = 'lines: {usb: {kind: usb, path: [computer, radio]}}\n';
  const box = `  computer: {kind: computer, at: desk}\n${line}`;
  it('the soil', () => expect(verdictsOf(rule, text(box + metal, ''))).toEqual(['cannot tell : no soil']));
  it('a length of a wire without places', () => {
    const wire = `${metal}  c6: {from: computer, to: bar2, wire: 16 mm2 copper}\n  c7: {from: bar2, to: bar, wire: 16 mm2 copper, length: 1 m}\n`;
    const site = text(box + wire).replace('bars: {', 'bars: {bar2: {kind: other}, ');
    expect(verdictsOf(rule, site)).toEqual(['cannot tell c6: metal guessed']);
  });
  it('what leads into the soil, of which nothing is in the file', () => {
    const none = text(box + metal)
      .replace(/electrodes: .*\n/, '')
      .replace(/, to: R[12]/g, ', to: unknown')
      .replace(/ {2}(c5).*\n/, '');
    expect(verdictsOf(rule, none)).toEqual(['cannot tell : no electrode']);
    const { remedy } = findingsOf(rule, none).findings[0]!;
    for (const field of ['`electrodes:`', '`conductors:`']) expect(remedy).toContain(field);
  });
  it('what is struck hangs free', () => {
    const free = metal.replace(/ {2}c1.*\n/, '');
    expect(verdictsOf(rule, text(box + free))).toEqual(['cannot tell mast@top: no figures']);
  });
});

describe('what is not asked', () => {
  it('mains lines, and boxes that nothing joins and nobody reaches', () => {
    const mains = `lines: {cord: {kind: mains, path: [main, radio], protective_conductor: yes}}\n${metal}`;
    expect(findingsOf(rule, text(mains)).outcome).toBe('not applicable');
  });
  it('a site without anything that is struck, whose strike is then never worked out', () => {
    const { site } = readSite(
      'site: {name: None, region: us, units: m, service: unknown}\nequipment: {a: {kind: x}}\n',
      'x',
    );
    const facts = {
      site,
      sections: site!.sections,
      get strike(): never {
        throw new Error('worked out');
      },
    };
    expect(checkOf(rule, facts as unknown as Facts).map((v) => v.is)).toEqual(['not applicable']);
  });
});

/** Figures handed in as the network would give them; a site of three boxes. */
function judge(differences: readonly (readonly [a: string, b: string, volt: number])[]) {
  const { site } = readSite(
    text('  x: {kind: computer}\n  y: {kind: modem}\n  lamp: {kind: camera, on: mast@top}\n'),
    'x',
  );
  const pairs = differences.map(([a, b, value]) => ({
    pair: { a, b, why: 'reach', by: null },
    peak: { value, atS: 1e-6 },
    wayM: 3,
  }));
  const strike = { refused: null, taken: null, differences: pairs };
  const { bonding } = bondingOf(site!, null);
  const facts = { site, sections: site!.sections, strike, bonding } as unknown as Facts;
  return checkOf(rule, facts).map((v) => ('at' in v ? [v.is, v.at.join(' '), 'under' in v ? v.under : null] : []));
}

test('2.5 kV is the most, either way round', () => {
  expect(judge([['radio', 'x', 2500]])).toEqual([['met', 'radio x', null]]);
  expect(judge([['radio', 'x', -2500]])).toEqual([['met', 'radio x', null]]);
  expect(judge([['radio', 'x', 2501]])).toEqual([['not met', 'radio x', null]]);
  expect(judge([['radio', 'x', -2501]])).toEqual([['not met', 'radio x', null]]);
});

test('a box that is over against several others leads with the worst of them', () => {
  const three = judge([
    ['radio', 'x', 3000],
    ['x', 'y', -9000],
    ['radio', 'y', 100],
  ]);
  expect(three).toEqual([
    ['not met', 'x y', null],
    ['not met', 'radio x', 'boxes-held-together:x+y'],
    ['met', 'radio y', null],
  ]);
});

test('over against one bar, two boxes are two findings; a box on the mast is not asked', () => {
  const two = judge([
    ['bar', 'x', 3000],
    ['bar', 'y', 9000],
    ['bar', 'lamp', 90000],
  ]);
  expect(two.map(([is, at, under]) => [is, at, under])).toEqual([
    ['not met', 'bar y', null],
    ['not met', 'bar x', null],
  ]);
});

describe('panels that only a feeder joins', () => {
  // two metres of feeder beside each other: the volts are small, and still it is no bond for a strike
  const feeder = (bond: string) => `
site: {name: Feeder, region: us, units: m, service: main}
soil: {type: clay}
electrodes: {R1: {kind: rod, at: [0, 0], length: 2.4 m, diameter: 16 mm}, R2: {kind: rod, at: [30, 0], length: 2.4 m, diameter: 16 mm}}
supports: {mast: {kind: mast, at: [0, 0], height: 9 m, metal: galvanised steel, sections: one piece}}
equipment:
  main: {kind: service panel, at: [30, 0, 1]}
  sub: {kind: sub-panel, at: [32, 0, 1]}
lines:
  feeder: {kind: mains, path: [main, sub], length: 2 m, protective_conductor: yes}
  alarm: {kind: control, path: [main, sub], length: 2 m}
conductors:
  c1: {from: mast@base, to: R1, wire: 16 mm2 copper, length: 1 m}
  c4: {from: main, to: R2, wire: 16 mm2 copper, length: 1 m}
  c5: {from: R1, to: R2, wire: 16 mm2 copper, length: 30 m, buried: no}
${bond}`;
  it('are not held by it, and are by a bond beside it', () => {
    expect(verdictsOf(rule, feeder(''))).toEqual(['not met main sub: by feeder']);
    const bond = '  c6: {from: main, to: sub, wire: 16 mm2 copper, length: 2 m}\n';
    expect(verdictsOf(rule, feeder(bond))).toEqual(['met main sub: held']);
  });
});

everyOutcome('boxes-held-together');
