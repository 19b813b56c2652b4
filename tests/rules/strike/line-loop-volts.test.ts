import { describe, expect, it, test } from 'vitest';
import { everyOutcome } from '../every-outcome.ts';
import { checkOf } from '../heard.ts';
import { findingsOf, verdictsOf } from '../verdicts-of.ts';
import { factsWith, strikeSite } from './strike-site.ts';

const rule = 'line-loop-volts';
const line = 'lines: {usb: {kind: usb, path: [radio, main]}}\n';

/** One pair that a signal line joins. */
function judge(volt: number, loopV: number | null, wayM = 5) {
  const pair = { a: 'radio', b: 'main', why: 'line', by: 'usb' };
  const differences = [{ pair, peak: { value: volt, atS: 1e-6 }, wayM }] as never;
  const coupling = () => (loopV === null ? null : { value: loopV, atS: 1e-6 });
  const [verdict] = checkOf(rule, factsWith(strikeSite({ more: line }), { differences, coupling }));
  return [verdict!.is, verdict!.because.key];
}

test('what the bonds hold within 2.5 kV is not looked at twice', () => {
  expect(judge(-2500, 9e3)).toEqual(['met', 'held']);
});

test('beyond, 2.5 kV round the loop are the most, either way round', () => {
  expect(judge(2501, 2500)).toEqual(['met', 'small']);
  expect(judge(2501, -2501)).toEqual(['not met', 'couples']);
});

test('no metal, no loop; no places, no telling', () => {
  expect(judge(9e3, null, Number.POSITIVE_INFINITY)).toEqual(['met', 'no loop']);
  expect(judge(9e3, null)).toEqual(['cannot tell', 'no places']);
});

describe('a site', () => {
  // the bond of radio and panel goes out to the wall and back, or lies along the line
  const wide = strikeSite({ more: line })
    .replace(
      'conductors:',
      'conductors:\n  near: {from: main, to: radio, wire: 16 mm2 copper, route: [[20, 4, 1], [4, 4, 1], [4, 5, 1], [22, 4, 1]]}',
    )
    .replace(/ {2}c5:.*\n/, '');
  const close = wide.replace(/route: \[\[20, 4, 1\].*\]\]/, 'route: [[20, 4, 1], [22, 4, 1]]');

  it('with a bond that goes far round towards the mast, and one along the line', () => {
    expect(verdictsOf(rule, wide)).toEqual(['not met radio main: couples']);
    expect(verdictsOf(rule, close)).toEqual(['met radio main: held']);
  });

  it('has it beneath the finding on the boxes, in feet and metres alike', () => {
    const { findings } = findingsOf(rule, wide);
    expect(findings.map((f) => f.under)).toEqual(['boxes-held-together:radio+main']);
    const feet = wide.replaceAll('length: 1 m', 'length: 3.2808 ft').replaceAll('length: 5 m', 'length: 16.404 ft');
    expect(verdictsOf(rule, feet)).toEqual(['not met radio main: couples']);
  });

  it('without soil cannot tell', () => {
    expect(verdictsOf(rule, strikeSite({ more: line, soil: '' }))).toEqual(['cannot tell : no soil']);
  });

  it('without a signal line is not asked', () => {
    expect(findingsOf(rule, strikeSite()).outcome).toBe('not looked at');
    const mains = 'lines: {cord: {kind: mains, path: [main, radio], protective_conductor: yes, length: 3 m}}\n';
    expect(findingsOf(rule, strikeSite({ more: mains })).outcome).toBe('not applicable');
  });
});

everyOutcome('line-loop-volts');
