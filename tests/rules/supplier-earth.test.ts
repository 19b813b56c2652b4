import { expect, it } from 'vitest';
import { factsOf } from '../../src/facts/facts-of.ts';
import { runRules } from '../../src/rules/run-rules.ts';
import { readSite } from '../../src/site/read-site.ts';

/** A flat without an electrode of its own: the mast is bonded to the main bar, and the supply says whose earth that is. */
const flat = (region: string, supply: string) => `
site: {name: Flat, region: ${region}, units: m, service: main-bar, supply: ${supply}}
electrodes: none
supports: {stub: {kind: mast, height: 2 m, metal: aluminium}}
bars: {main-bar: {kind: main earthing bar, where: inside}}
arresters: {p1: {kind: gas tube, on: stub, where: outside}}
conductors: {m1: {from: stub@base, to: main-bar, wire: 16 mm2 copper, length: 15 m}}
`;

const outcome = (region: string, supply: string, rule: string) => outcomeIn(flat(region, supply), rule);

function outcomeIn(text: string, rule: string): string | undefined {
  const { site } = readSite(text, 'flat');
  const { conditions } = runRules(factsOf(site!, null), { terms: 'iec', unitsFirst: 'si' });
  return conditions.find((c) => c.rule === rule)?.outcome;
}

// TN: the network's earth comes with the supply; TT: it does not (IEC 60364-1, 312.2, from memory).
it.each([
  ['iec', 'tn-c-s', 'service-electrode-known', 'not applicable'],
  ['uk', 'tn-s', 'service-electrode-known', 'not applicable'],
  ['uk', 'tt', 'service-electrode-known', 'not met'],
  ['us', 'us-grounded', 'service-electrode-known', 'not met'],
  ['iec', 'tn-c-s', 'iec-mast-earthed', 'cannot tell'],
  ['iec', 'tt', 'iec-mast-earthed', 'not met'],
  ['iec', 'tn-s', 'arrester-bonded', 'cannot tell'],
  ['iec', 'tt', 'arrester-bonded', 'not met'],
  // which of the two it is, nobody said
  ['iec', 'unknown', 'service-electrode-known', 'cannot tell'],
  ['uk', 'unknown', 'iec-mast-earthed', 'cannot tell'],
  ['iec', 'unknown', 'arrester-bonded', 'cannot tell'],
  // multiple earthed neutral: each installation has an electrode of its own (AS/NZS 3000, from memory)
  ['au', 'tn-c-s', 'service-electrode-known', 'not met'],
  ['au', 'unknown', 'service-electrode-known', 'not met'],
  ['au', 'tt', 'service-electrode-known', 'not met'],
  // the network earths the main bar all the same: what hangs on it is for an electrician to say
  ['au', 'tn-c-s', 'mast-grounded', 'cannot tell'],
  ['au', 'tn-c-s', 'arrester-bonded', 'cannot tell'],
  ['au', 'unknown', 'mast-grounded', 'cannot tell'],
  ['au', 'tt', 'mast-grounded', 'not met'],
  ['us', 'unknown', 'service-electrode-known', 'not met'],
])('in %s on %s, %s is %s', (region, supply, rule, expected) => {
  expect(outcome(region, supply, rule)).toBe(expected);
});

it('says nothing of an electrode in Australia where nobody looked for one', () => {
  const text = flat('au', 'tn-c-s').replace('electrodes: none\n', '');
  expect(outcomeIn(text, 'service-electrode-known')).toBe('cannot tell');
  expect(outcomeIn(text, 'mast-grounded')).toBe('cannot tell');
});
