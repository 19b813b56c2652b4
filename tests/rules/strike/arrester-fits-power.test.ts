import { describe, expect, it, test } from 'vitest';
import { linePeak } from '../../../src/network/line-peak.ts';
import type { Line } from '../../../src/site/site.ts';
import { mostPower } from '../../../src/surge/arrester-sizing.ts';
import { linePeakVolts, linePeakVoltsForward } from '../../../src/surge/line-peak-volts.ts';
import { everyOutcome } from '../every-outcome.ts';
import { findingsOf, verdictsOf } from '../verdicts-of.ts';

const rule = 'arrester-fits-power';
const site = (arrester: string, boxes: string, line = 'cable: RG-213, path: [beam, a1, radio]') => `
site: {name: Power, region: us, units: ft, service: unknown}
antennas: {beam: {kind: yagi}}
bars: {entry: {kind: entry panel}}
arresters: {a1: {${arrester}, on: entry}}
equipment: {${boxes}}
lines: {feed: {kind: coax, ${line}}}
`;
const tube = (volt: string) => `kind: gas tube, sparkover: ${volt}`;
const radio = (more: string, kind = 'transceiver') => `radio: {kind: ${kind}${more}}`;

// by hand: 1500 W in 50 ohm is 387.3 V at the peak, 1.5 times that 580.9 V
describe('the lowest spark-over against 1.5 times the peak', () => {
  const legal = radio(', power: 1.5 kW, swr: 1');
  it.each([
    ['580 V to 900 V', ['not met a1: low']],
    ['581 V to 900 V', ['met a1: fits']],
    // 20 percent below 726 V is 580.8 V, below 727 V 581.6 V
    ['726 V', ['not met a1: low']],
    ['727 V', ['met a1: fits']],
  ])('%s: %s', (volt, expected) => expect(verdictsOf(rule, site(tube(volt), legal))).toEqual(expected));

  it('one that the transmitter is sure to fire is a defect, one too near it advice', () => {
    const severity = (volt: string) => findingsOf(rule, site(tube(volt), legal)).findings[0]!.severity;
    expect(severity('230 V to 387 V')).toBe('defect');
    expect(severity('230 V to 388 V')).toBe('advice');
  });
});

// the trade's table: 230 V 150 / 75 W, 350 V 348 / 174 W, 1000 V 2844 / 1422 W at SWR 1 / 2
describe('the trade’s largest powers', () => {
  it.each([
    ['230 V', '1', 150],
    ['230 V', '2', 75],
    ['350 V', '1', 348],
    ['350 V', '2', 174],
    ['1000 V', '1', 2844],
    ['1000 V', '2', 1422],
  ])('%s at SWR %s: %s W, and not 1 percent more', (volt, swr, watt) => {
    const at = (power: number) => verdictsOf(rule, site(tube(volt), radio(`, power: ${power} W, swr: ${swr}`)))[0];
    expect(at(watt * 0.99)).toBe('met a1: fits');
    expect(at(watt * 1.01)).toBe('not met a1: low');
    expect(mostPower(0.8 * Number.parseFloat(volt), 50, Number(swr)) / watt).toBeCloseTo(1, 2);
  });
});

test('far above: more than four times what is asked, of a receiver more than 360 V', () => {
  // 50 W: 70.7 V, 106.07 V, four times that 424.3 V
  const sending = (volt: string) => verdictsOf(rule, site(tube(volt), radio(', power: 50 W, swr: 1')));
  expect(sending('424 V to 500 V')).toEqual(['met a1: fits']);
  expect(sending('425 V to 500 V')).toEqual(['not met a1: high']);
  const receiving = (volt: string) => verdictsOf(rule, site(tube(volt), radio('', 'receiver')));
  expect(receiving('360 V to 500 V')).toEqual(['met a1: fits']);
  expect(receiving('361 V to 500 V')).toEqual(['not met a1: high']);
});

describe('what is not known', () => {
  it('the SWR matters only where twice the matched peak would be too much', () => {
    // 50 W: 70.7 to 141.4 V, asked 106.1 to 212.1 V
    const at = (volt: string) => verdictsOf(rule, site(tube(volt), radio(', power: 50 W')));
    expect(at('213 V to 300 V')).toEqual(['met a1: fits']);
    expect(at('212 V to 300 V')).toEqual(['cannot tell a1: swr unknown']);
    expect(at('107 V to 300 V')).toEqual(['cannot tell a1: swr unknown']);
    expect(at('106 V to 300 V')).toEqual(['not met a1: low']);
  });

  it('the power of a box that sends', () => {
    expect(verdictsOf(rule, site(tube('230 V'), radio('')))).toEqual(['cannot tell a1: power unknown']);
    const path = 'cable: RG-213, path: [beam, a1, amp, radio]';
    const behind = `${radio(', power: 100 W, swr: 1.5')}, amp: {kind: amplifier}`;
    expect(verdictsOf(rule, site(tube('230 V'), behind, path))).toEqual(['cannot tell a1: power unknown']);
  });

  it('the level: by the power it is made for, else not', () => {
    const at = (more: string) => verdictsOf(rule, site(`kind: gas tube${more}`, radio(', power: 400 W, swr: 1')));
    expect(at('')).toEqual(['cannot tell a1: level unknown']);
    expect(at(', rated_power: 400 W')).toEqual(['met a1: rated']);
    expect(at(', rated_power: 399 W')).toEqual(['not met a1: rated less']);
    expect(verdictsOf(rule, site('kind: gas tube', radio('', 'receiver')))).toEqual(['met a1: receives']);
  });

  it('the cable: anything from 50 to 75 ohm', () => {
    // 100 W: 100 V in 50 ohm, 122.5 V in 75 ohm; asked 150 and 183.7 V
    const at = (line: string) =>
      verdictsOf(rule, site(tube('170 V to 200 V'), radio(', power: 100 W, swr: 1'), `${line}path: [beam, a1, radio]`));
    expect(at('cable: RG-213, ')).toEqual(['met a1: fits']);
    expect(at('cable: RG-6, ')).toEqual(['not met a1: low']);
    expect(at('cable: RG-6, impedance: 50 ohm, ')).toEqual(['met a1: fits']);
    expect(at('')).toEqual(['cannot tell a1: swr unknown']);
  });
});

test('not asked of a stub, nor of an arrester on a line that comes to no box', () => {
  expect(findingsOf(rule, site('kind: quarter-wave stub', radio(', power: 1 kW'))).outcome).toBe('not applicable');
  const away = site(tube('90 V'), radio(', power: 1 kW'), 'path: [beam, a1]');
  expect(findingsOf(rule, away).outcome).toBe('not applicable');
});

test('the peak is that of the formulas of a line, at the power that reaches the load and at twice the matched one', () => {
  const line = { impedanceOhm: { low: 75, high: 75 }, cable: null } as unknown as Line;
  const watt = { low: 400, high: 400 };
  expect(linePeak(watt, line, { low: 3, high: 3 }).high).toBeCloseTo(linePeakVolts(400, 75, 3), 9);
  expect(linePeak(watt, line, null).high).toBeGreaterThan(linePeakVoltsForward(400, 75, 1e6));
});

everyOutcome('arrester-fits-power');
