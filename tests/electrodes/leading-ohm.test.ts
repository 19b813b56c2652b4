import { describe, expect, it } from 'vitest';
import { leadingOhm } from '../../src/electrodes/leading-ohm.ts';

describe('resistance of the first few of many', () => {
  it('by hand: two of 2 ohm that share 1 have 1.5, a third that shares nothing and has 3 makes 1', () => {
    const ohm = leadingOhm(Float64Array.of(2, 1, 0, 1, 2, 0, 0, 0, 3), 3)!;
    expect([...ohm].map((each) => Number(each.toFixed(12)))).toEqual([2, 1.5, 1]);
  });

  it('has none where two coincide', () => {
    expect(leadingOhm(Float64Array.of(2, 2, 2, 2), 2)).toBeNull();
  });
});
