import { describe, expect, test } from 'vitest';
import { bondingOf } from '../../src/bonding/bonding-of.ts';
import { type Few, pointOf, siteOf } from './site-of.ts';

function rings(few: Few, state: string | null = null): readonly string[] {
  return bondingOf(siteOf(few), state).bonding.openRings.map((r) => `${r.at}: ${r.why}`);
}

const wire = (more: object, joints: Few['joints'] = {}): Few => ({
  electrodes: { ring: { kind: 'buried wire', ...more } },
  joints,
});

describe('a buried wire', () => {
  test('called closed is a ring unless it is broken or a joint of its own is', () => {
    expect(rings(wire({ closed: 'yes' }))).toEqual([]);
    expect(rings(wire({ closed: 'yes', condition: 'open' }))).toEqual(['ring: not closed']);
    const crimp = (more: object) => wire({ closed: 'yes' }, { crimp: { on: 'ring', ...more } });
    expect(rings(crimp({ condition: 'sound' }))).toEqual([]);
    expect(rings(crimp({ condition: 'open' }))).toEqual(['ring: not closed']);
    expect(rings(crimp({ present: 'no' }))).toEqual(['ring: not closed']);
    expect(rings(crimp({ present: 'unknown' }))).toEqual(['ring: unknown']);
  });

  test('stays closed when a clamp on it that holds another wire is open', () => {
    const few: Few = {
      ...wire({ closed: 'yes' }, { clamp: { on: 'ring', condition: 'open' } }),
      bars: { bar: {} },
      conductors: { c1: { from: 'bar', to: 'ring', joints: [{}, { named: 'clamp' }] } },
    };
    expect(rings(few)).toEqual([]);
  });

  test('of which its owner wrote that he does not know may be a ring; one of which nothing is said is a wire', () => {
    expect(rings(wire({ closed: 'unknown', typed: { closed: 'unknown' } }))).toEqual(['ring: unknown']);
    expect(rings(wire({}))).toEqual([]);
    expect(rings(wire({ closed: 'no' }))).toEqual([]);
    expect(rings(wire({ closed: 'yes', condition: 'open', present: 'no' }))).toEqual([]);
  });

  test('whose route comes back to its start is drawn closed, whatever is said of it', () => {
    const at = (east: number, north: number) => ({ position: [east, north, 0], part: null });
    const round = [at(0, 0), at(10, 0), at(10, 10), at(0, 0)];
    expect(rings(wire({ route: round, closed: 'yes' }))).toEqual([]);
    expect(rings(wire({ route: round, closed: 'no' }))).toEqual(['ring: not closed']);
    expect(rings(wire({ route: round }))).toEqual(['ring: unknown']);
    const named = ['a', 'b', 'c', 'a'].map((id) => ({ position: null, part: pointOf(id) }));
    expect(rings(wire({ route: named }))).toEqual(['ring: unknown']);
    expect(rings(wire({ route: [at(0, 0), at(10, 0), at(10, 10), at(1, 0)] }))).toEqual([]);
    // There and back again in one trench goes round nothing.
    expect(rings(wire({ route: [at(0, 0), at(10, 0), at(0, 0)] }))).toEqual([]);
  });
});

/** Four rods with a wire from each to the next; `more` changes some of the wires. */
function square(more: Readonly<Record<string, object>> = {}, others: Few['conductors'] = {}): Few {
  const sides = { c1: ['R1', 'R2'], c2: ['R2', 'R3'], c3: ['R3', 'R4'], c4: ['R4', 'R1'] };
  const wires = Object.entries(sides).map(([id, [from, to]]) => [id, { from: from!, to: to!, ...more[id] }] as const);
  return {
    electrodes: { R1: {}, R2: {}, R3: {}, R4: {} },
    bars: { bar: {} },
    joints: { gone: { on: 'R4', present: 'no' } },
    conductors: { ...Object.fromEntries(wires), ...others },
    states: { dug: { lost: ['c2'] } },
  };
}

describe('wires from rod to rod', () => {
  test('that go all the way round are closed; in a state that loses one they are not', () => {
    expect(rings(square())).toEqual([]);
    expect(rings(square(), 'dug')).toEqual(['c2: not closed']);
  });

  test.each([
    ['missing', { present: 'no' }, 'not closed'],
    ['broken', { condition: 'open' }, 'not closed'],
    ['loose from its clamp', { joints: [{ condition: 'open' }, {}] }, 'not closed'],
    ['parted in a splice', { joints: [{}, { condition: 'open' }, {}] }, 'not closed'],
    ['on a clamp that is gone', { joints: [{}, { named: 'gone' }] }, 'not closed'],
    ['perhaps not there', { present: 'unknown' }, 'unknown'],
  ])('are open where one is %s', (_how, more, why) => {
    expect(rings(square({ c3: more }))).toEqual([`c3: ${why}`]);
  });

  test('with two gone name both; with one gone and one in doubt, the doubt decides nothing', () => {
    const no = { present: 'no' };
    expect(rings(square({ c1: no, c3: no }))).toEqual(['c1: not closed', 'c3: not closed']);
    expect(rings(square({ c1: no, c3: { present: 'unknown' } }))).toEqual(['c1: not closed']);
  });

  test('stay closed without a second wire beside one, or one straight across', () => {
    const beside = { x: { from: 'R1', to: 'R2', present: 'no' } };
    expect(rings(square({}, beside))).toEqual([]);
    expect(rings(square({}, { x: { from: 'R1', to: 'R3', present: 'no' } }))).toEqual([]);
  });

  test('in a row, or by way of a bar, never were a ring', () => {
    const row: Few = {
      electrodes: { R1: {}, R2: {}, R3: {} },
      bars: { bar: {} },
      conductors: {
        c1: { from: 'R1', to: 'R2' },
        c2: { from: 'R2', to: 'R3', present: 'no' },
        c3: { from: 'R3', to: 'bar' },
        c4: { from: 'bar', to: 'R1' },
      },
    };
    expect(rings(row)).toEqual([]);
  });

  test('a wire that passes rods is whole past a clamp that is open or a rod that is gone, but not past its own ends', () => {
    const passing = (more: object, R3: Readonly<Record<string, unknown>> = {}): Few => ({
      electrodes: { R1: {}, R2: {}, R3, R4: {} },
      conductors: { long: { from: 'R1', passes: ['R2', 'R3'], to: 'R4', ...more }, last: { from: 'R4', to: 'R1' } },
    });
    expect(rings(passing({}))).toEqual([]);
    expect(rings(passing({}, { present: 'no' }))).toEqual([]);
    expect(rings(passing({ passes: ['R2', { at: 'R3', joint: { condition: 'open' } }] }))).toEqual([]);
    expect(rings(passing({ joints: [{}, { condition: 'open' }] }))).toEqual(['long: not closed']);
  });

  test('one wire that comes back to its own start is a ring by itself', () => {
    const loop = (more: object): Few => ({
      electrodes: { R1: {}, R2: {} },
      conductors: { loop: { from: 'R1', passes: ['R2'], to: 'R1', ...more } },
    });
    expect(rings(loop({}))).toEqual([]);
    expect(rings(loop({ joints: [{}, { condition: 'open' }] }))).toEqual(['loop: not closed']);
    expect(rings(loop({ condition: 'open' }))).toEqual(['loop: not closed']);
    expect(rings(loop({ present: 'unknown' }))).toEqual(['loop: unknown']);
    expect(rings(loop({ present: 'no' }))).toEqual([]);
  });
});
