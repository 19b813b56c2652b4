import { describe, expect, test } from 'vitest';
import { bondingOf } from '../../src/bonding/bonding-of.ts';
import { type Few, siteOf } from './site-of.ts';

/** How many separate ways the entry has to the panel, and how many that share no part either. */
function waysToPanel(few: Few): readonly [number, number] {
  const site: Few = {
    service: 'panel',
    electrodes: { R1: {}, R2: {} },
    bars: { entry: {} },
    equipment: { panel: { kind: 'service panel' } },
    ...few,
  };
  const way = bondingOf(siteOf(site), null).bonding.ways.find((w) => w.part === 'entry')!.toService!;
  return [way.separatePaths, way.separatePathsStrict];
}

const long = { from: 'entry', passes: ['R1', 'R2'], to: 'panel' };

describe('separate ways share no conductor', () => {
  test('two wires are two ways; one wire is one, whatever clamps it passes', () => {
    expect(
      waysToPanel({ conductors: { a: { from: 'entry', to: 'panel' }, b: { from: 'entry', to: 'panel' } } }),
    ).toEqual([2, 2]);
    expect(waysToPanel({ conductors: { long } })).toEqual([1, 1]);
  });

  test('ways that take different spans of one wire share that wire', () => {
    // long: entry - R1 - R2 - panel. With a: entry - R2 and b: R1 - panel there are two ways of which no span is shared (first
    // span, b; and a, last span), but both are lost with long: without it a ends at R2 and b begins at R1, and nothing joins R1 and R2.
    const conductors = { long, a: { from: 'entry', to: 'R2' }, b: { from: 'R1', to: 'panel' } };
    expect(waysToPanel({ conductors })).toEqual([1, 1]);
    // With c: R2 - R1 there is a way without long (a, c, b), beside long itself.
    expect(waysToPanel({ conductors: { ...conductors, c: { from: 'R2', to: 'R1' } } })).toEqual([2, 2]);
  });

  test('two ways over one rod share a part but no conductor', () => {
    // entry - R1 twice, R1 - panel twice: two ways by wires, one that does not share R1.
    const conductors = {
      a: { from: 'entry', to: 'R1' },
      b: { from: 'entry', to: 'R1' },
      c: { from: 'R1', to: 'panel' },
      d: { from: 'R1', to: 'panel' },
    };
    expect(waysToPanel({ conductors })).toEqual([2, 1]);
  });

  test('two wires under one clamp, or through one splice, are lost together', () => {
    const both = (joints: readonly object[]): Few => ({
      joints: { J: {} },
      conductors: { a: { from: 'entry', to: 'panel', joints }, b: { from: 'entry', to: 'panel', joints } },
    });
    expect(waysToPanel(both([{}, {}]))).toEqual([2, 2]);
    expect(waysToPanel(both([{}, { named: 'J' }]))).toEqual([1, 1]);
    expect(waysToPanel(both([{}, {}, {}]))).toEqual([2, 2]);
    expect(waysToPanel(both([{}, { named: 'J' }, {}]))).toEqual([1, 1]);
  });

  test('a chain of wires of which each shares a splice with the next is one thing', () => {
    const through = (...names: string[]) => ({
      from: 'entry',
      to: 'panel',
      joints: [{}, ...names.map((named) => ({ named })), {}],
    });
    const conductors = { a: through('J'), b: through('J', 'K'), c: through('K'), d: { from: 'entry', to: 'panel' } };
    expect(waysToPanel({ joints: { J: {}, K: {} }, conductors })).toEqual([2, 2]);
  });

  test('the protective conductor of a feeder is one wire', () => {
    const few: Few = {
      equipment: { panel: { kind: 'service panel' }, sub: { kind: 'sub-panel' } },
      bars: { entry: { on: 'sub' } },
      lines: { feeder: { kind: 'mains', path: ['panel', { plug: 'p' }, 'sub'], protectiveConductor: 'yes' } },
      conductors: { a: { from: 'entry', to: 'panel' } },
    };
    expect(waysToPanel(few)).toEqual([2, 2]);
  });
});
