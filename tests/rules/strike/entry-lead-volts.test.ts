import { describe, expect, it, test } from 'vitest';
import { everyOutcome } from '../every-outcome.ts';
import { checkOf } from '../heard.ts';
import { findingsOf, verdictsOf } from '../verdicts-of.ts';
import { factsWith, strikeSite } from './strike-site.ts';

const rule = 'entry-lead-volts';

describe('15 kV are the most', () => {
  it.each([
    [15_000, 'met'],
    [-15_000, 'met'],
    [15_001, 'not met'],
    [-15_001, 'not met'],
  ])('%i V: %s', (value, is) => {
    const leads = [{ bar: 'entry', into: 'R2', lengthM: 1, peak: { value, atS: 1e-6 } }];
    const verdicts = checkOf(rule, factsWith(strikeSite(), { leads }));
    expect(verdicts).toMatchObject([{ is, at: ['entry'] }]);
  });
});

describe('the lead of a panel that all of a feed line comes to', () => {
  // 30 kA 1/200 rises by 41.9 kA/us at most; a line from the mast top brings much of it to the panel
  const line =
    'antennas: {a: {kind: yagi, on: mast@9 m, touches_support: yes}}\nlines: {feed: {kind: coax, path: [a, entry, radio], lengths: [30 m, 4 m]}}\n';
  const at = (lead: string, more = line) => verdictsOf(rule, strikeSite({ lead, more }));
  it.each([
    [', length: 0.5 m', 'met entry: short'],
    [', length: 1 ft', 'met entry: short'],
    [', length: 12 m', 'not met entry: long'],
    [', length: 40 ft', 'not met entry: long'],
  ])('%s: %s', (lead, expected) => expect(at(lead)).toEqual([expected]));

  it('says how long it is', () => {
    const [finding] = findingsOf(rule, strikeSite({ lead: ', length: 12 m', more: line })).findings;
    expect(finding!.because.text).toMatch(/^The lead of entry is 12 m \(39\.4 ft\) long, and \d+ kV stand along it/);
    expect(finding!.measured!.limit).toBe(15e3);
  });
});

describe('what is not known', () => {
  it('the soil, a length', () => {
    expect(verdictsOf(rule, strikeSite({ soil: '' }))).toEqual(['cannot tell : no soil']);
    const unplaced = strikeSite({ lead: ' ' }).replace('at: wall', 'where: outside');
    expect(verdictsOf(rule, unplaced)).toEqual(['cannot tell lead: metal guessed']);
  });
  const settle = (text: string) => findingsOf(rule, text).findings[0]!.remedy!;
  it('of a typed soil asks for no soil, but for what is missing of the electrodes', () => {
    const short = strikeSite().replaceAll('length: 8 ft, ', '');
    expect(verdictsOf(rule, short)).toEqual(['cannot tell R1 R2: electrode unknown']);
    expect(settle(short)).toBe(
      'Find out and type `length:` of R1, R2; or measure R1, R2 alone and type `resistance:`.',
    );
    const open = strikeSite().replaceAll('length: 8 ft', 'length: over 2 m');
    expect(verdictsOf(rule, open)).toEqual(['cannot tell R1 R2: electrode unknown']);
    expect(settle(open)).toMatch(/^Measure R1, R2 alone by fall of potential/);
    // one that is known is enough
    expect(verdictsOf(rule, strikeSite().replace('length: 8 ft, ', ''))).not.toContain(
      'cannot tell R1: electrode unknown',
    );
  });
  it('of a line of two pieces asks for the length of each: that of the whole settles nothing', () => {
    const feed = (path: string, lengths: string) =>
      strikeSite({
        more: `antennas: {a: {kind: yagi, on: mast@9 m, touches_support: yes}}\nlines: {feed: {kind: coax, path: [${path}]${lengths}}}\n`,
      }).replace('desk: [22, 4, 1], wall: [20, 0, 0]', 'desk: {where: inside}, wall: {where: outside}');
    const two = 'a, entry, radio';
    for (const lengths of ['', ', length: 34 m'])
      expect(verdictsOf(rule, feed(two, lengths))).toEqual(['cannot tell feed: pieces guessed']);
    expect(settle(feed(two, ', length: 34 m'))).toContain('`lengths:`');
    expect(verdictsOf(rule, feed(two, ', lengths: [30 m, 4 m]'))).toEqual(['met entry: short']);
    expect(verdictsOf(rule, feed('a, {bend: [3, 3]}, entry', ''))).toEqual(['cannot tell feed: metal guessed']);
    expect(verdictsOf(rule, feed('a, {bend: [3, 3]}, entry', ', length: 30 m'))).toEqual(['met entry: short']);
  });
  it('stands beneath the doubt on boxes where there is one', () => {
    const usb = '  pc: {kind: computer, at: desk}\n';
    const text = strikeSite({ soil: '', more: 'lines: {usb: {kind: usb, path: [radio, pc]}}\n' });
    const [doubt] = findingsOf(rule, text.replace('conductors:', `${usb}conductors:`)).findings;
    expect(doubt!.under).toBe('boxes-held-together');
  });
});

test('not asked without an entry panel, without anything to strike, or of a panel that hangs free', () => {
  const outcome = (text: string) => findingsOf(rule, text).outcome;
  expect(outcome(strikeSite().replace('kind: entry panel', 'kind: station ground bar'))).toBe('not applicable');
  expect(
    outcome(
      strikeSite()
        .replace(/supports:.*\n/, '')
        .replace(/ {2}down:.*\n/, ''),
    ),
  ).toBe('not applicable');
  const free = strikeSite()
    .replace(/ {2}lead:.*\n/, '')
    .replace(/ {2}c5:.*\n/, '');
  expect(outcome(free)).toBe('not applicable');
});

everyOutcome('entry-lead-volts');
