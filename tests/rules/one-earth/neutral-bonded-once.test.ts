import { expect, test } from 'vitest';
import { everyOutcome } from '../every-outcome.ts';
import { verdictsOf } from '../verdicts-of.ts';

/** Verdicts on these boxes; the service is at `main`. */
const neutrals = (boxes: string) =>
  verdictsOf(
    'neutral-bonded-once',
    `site: {name: Neutrals, region: us, units: ft, service: main}\nequipment: {${boxes}}\n`,
  );

const main = 'main: {kind: service panel, neutral_bonded: yes}';

// NFPA 70 250.24, 250.142; MIL-HDBK-1012/1 (read): one bond. A count of bonds has no unit.
test('a sub-panel, and a second service panel beside the one that is the service', () => {
  expect(neutrals(`${main}, sub: {kind: sub-panel, neutral_bonded: yes}`)).toEqual(['not met sub: bonded again']);
  expect(neutrals(`${main}, sub: {kind: sub-panel, neutral_bonded: no}`)).toEqual(['met sub: kept apart']);
  expect(neutrals(`${main}, sub: {kind: sub-panel}`)).toEqual(['cannot tell sub: nobody said']);
  expect(neutrals(`hut: {kind: service panel, neutral_bonded: yes}, ${main}`)).toEqual(['not met hut: bonded again']);
});

test('none at all: where the meter box was looked at too it is not met, else nobody knows', () => {
  const none = 'main: {kind: service panel, neutral_bonded: no}';
  expect(neutrals(none)).toEqual(['cannot tell main: not at the service']);
  expect(neutrals(`${none}, meter: {kind: meter box}`)).toEqual(['cannot tell main: not at the service']);
  expect(neutrals(`${none}, meter: {kind: meter box, neutral_bonded: no}`)).toEqual(['not met main: nowhere']);
  expect(neutrals(`${none}, meter: {kind: meter box, neutral_bonded: yes}`)).toEqual([]);
});

// NFPA 70 250.142(A): on the supply side of the service disconnect the neutral may be bonded (from memory).
test('the meter box on the supply side may be bonded as well, and so may a source of its own', () => {
  expect(neutrals(`meter: {kind: meter box, neutral_bonded: yes}, ${main}`)).toEqual([]);
  expect(neutrals(`${main}, gen: {kind: portable generator, neutral_bonded: yes}`)).toEqual([]);
});

// NFPA 70 250.30 (from memory): a source whose neutral is switched with it is a system of its own, with a bond of its own.
test('a generator that feeds the panel is bonded too only where the transfer switch switches the neutral', () => {
  const fed = (gen: string, path = '[gen, main]') =>
    verdictsOf(
      'neutral-bonded-once',
      `site: {name: Neutrals, region: us, units: ft, service: main}
equipment: {${main}, switch: {kind: transfer switch}, gen: {kind: generator${gen}}}
lines: {feed: {kind: mains, path: ${path}}}
`,
    );
  expect(fed(', neutral_bonded: yes')).toEqual(['cannot tell gen: perhaps at the source too']);
  expect(fed('')).toEqual(['cannot tell gen: perhaps at the source too']);
  expect(fed(', neutral_bonded: yes, neutral_switched: yes')).toEqual(['met gen: one at a time']);
  expect(fed(', neutral_bonded: no, neutral_switched: no')).toEqual(['met gen: one at a time']);
  // the switch takes the bond of the panel away, and the source has none
  expect(fed(', neutral_bonded: no, neutral_switched: yes')).toEqual(['not met gen: nowhere while it runs']);
  expect(fed(', neutral_bonded: no')).toEqual(['cannot tell gen: perhaps at the source too']);
  expect(fed(', neutral_switched: yes')).toEqual(['cannot tell gen: perhaps at the source too']);
  expect(fed(', neutral_bonded: yes, neutral_switched: no')).toEqual(['not met gen: bonded at the source too']);
  expect(fed(', neutral_bonded: yes', '[gen, switch, main]')).toEqual(['cannot tell gen: perhaps at the source too']);
});

test('a panel under another name is not overlooked', () => {
  expect(neutrals(`${main}, barn: {kind: breaker box, neutral_bonded: yes}`)).toEqual(['not met barn: bonded again']);
  expect(neutrals('main: {kind: breaker box, neutral_bonded: yes}')).toEqual([]);
});

// Canadian Electrical Code, 10-208 in the older numbering (from memory): one way of feeding a second building.
test('in Canada a bond in another building may be accepted, unless something surely rules that out', () => {
  const shop = (says: { region?: string; where?: string; feeder?: string; header?: string; wire?: string } = {}) =>
    verdictsOf(
      'neutral-bonded-once',
      `site: {name: Shop, region: ${says.region ?? 'ca'}, units: m, service: main${says.header ?? ''}}
buildings: {house: {}, shop: {}}
electrodes: {r1: {kind: rod}, r2: {kind: rod}}
equipment: {main: {kind: service panel, where: house, neutral_bonded: yes}, sub: {kind: sub-panel, where: ${says.where ?? 'shop'}, neutral_bonded: yes}}
lines: {feeder: {kind: mains, path: [main, sub], protective_conductor: ${says.feeder ?? 'no'}}}
conductors: {g: {from: main, to: r1}${says.wire ?? ', s: {from: sub, to: r2}'}}
`,
    );
  const perhaps = ['cannot tell sub: perhaps accepted'];
  const again = ['not met sub: bonded again'];
  expect(shop()).toEqual(perhaps);
  expect(shop({ feeder: 'unknown' })).toEqual(perhaps);
  expect(shop({ where: 'unknown' })).toEqual(perhaps);
  expect(shop({ wire: ', s: {from: sub, to: r2, present: unknown}' })).toEqual(perhaps);
  expect(shop({ wire: '', header: ', incomplete: [conductors]' })).toEqual(perhaps);
  expect(shop({ feeder: 'yes' })).toEqual(again);
  expect(shop({ where: 'house' })).toEqual(again);
  expect(shop({ wire: '' })).toEqual(again);
  expect(shop({ region: 'us' })).toEqual(again);
});

everyOutcome('neutral-bonded-once');
