import { describe, expect, it } from 'vitest';
import { ampereOf, peakOfPart, strikeIn } from './strike-in.ts';

const mast = (guy: string, more = '') => `
site: {name: Guyed, region: iec, units: m, service: none}
soil: {layers: [{resistivity: 100 ohm m}]}
electrodes:
  R: {kind: rod, at: [0, 0], resistance: 20 ohm}
  G: {kind: rod, at: [8, 0], resistance: 20 ohm}
supports:
  mast: {kind: mast, at: [0, 0], height: 10 m, guys: {g1: {${guy}}}}
conductors:
  down: {from: mast@base, to: R, inductance: 1 uH, resistance: 5 mohm, joints: none}
${more}`;
const guy = 'anchor: [8, 0], metal: galvanised steel';
const tail = '  tail: {from: g1@tower, to: G, inductance: 1 uH, resistance: 5 mohm, joints: none}\n';

describe('a guy of metal that a wire leads on from, to an electrode', () => {
  it('carries in a strike, and the mast carries less', () => {
    const [with_, without] = [tail, ''].map((more) => strikeIn(mast(`${guy}, insulators: no`, more), { detail: true }));
    expect(ampereOf(with_!, 'g1')).toBeGreaterThan(1e3);
    expect(peakOfPart(with_!, 'R')).toBeLessThan(0.8 * peakOfPart(without!, 'R'));
    expect(ampereOf(without!, 'g1')).toBe(0);
    expect([with_!.taken!.guysIn, with_!.taken!.guys]).toEqual([['g1'], []]);
    expect([without!.taken!.guysIn, without!.taken!.guys]).toEqual([[], ['g1']]);
    expect(ampereOf(with_!, 'tail') / ampereOf(with_!, 'g1')).toBeCloseTo(1, 6);
    expect(with_!.taken!.wires.flatMap(({ parts }) => parts)).toContain('g1');
  });

  it('takes its share by inductance and earth: the two ways are a closed loop (by hand, in the tail)', () => {
    const asked = { at: 'mast@top', wave: '10/350', currentA: 10e3 };
    const strike = strikeIn(mast(`${guy}, insulators: no`, tail), asked);
    // alike by the end of a slow stroke but for the wire: 20 ohm each way, 12.8 m of strand of 6.6 mohm per metre in one
    const [guyA, mastA] = [ampereOf(strike, 'g1'), ampereOf(strike, 'down')];
    expect(guyA / mastA).toBeGreaterThan(0.85);
    expect(guyA / mastA).toBeLessThan(1.05);
  });

  it.each([
    ['insulators: yes', []],
    ['insulators: unknown', ['supports.mast.guys.g1.insulators']],
  ])('carries nothing with %s', (insulators, open) => {
    const strike = strikeIn(mast(`${guy}, ${insulators}`, tail));
    expect(ampereOf(strike, 'g1')).toBe(0);
    expect(strike.taken!.guys).toEqual(['g1']);
    expect(strike.taken!.perhaps).toEqual(open);
  });
});
