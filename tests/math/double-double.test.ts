import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { DoubleDouble } from '../../src/math/double-double.ts';
import { add, divide, type Fraction, fraction, multiply, relativeGap } from './exact.ts';

const size = fc.double({ min: 1e-12, max: 1e12, noNaN: true });
const signed = fc.tuple(size, fc.boolean()).map(([value, minus]) => (minus ? -value : value));
/** High part, and a low part below half of its last digit. */
const pairs = fc
  .tuple(signed, fc.double({ min: -0.49, max: 0.49, noNaN: true }))
  .map(([high, share]) => ({ high, low: share * Math.abs(high) * 2 ** -53 }));

const exactly = ({ high, low }: { high: number; low: number }): Fraction => add(fraction(high), fraction(low));
const number = ({ high, low }: { high: number; low: number }): DoubleDouble => new DoubleDouble().set(high, low);

/** Against exact fractions of whole numbers. */
describe('numbers of 32 digits', () => {
  it('multiply to 1e-31', () => {
    fc.assert(
      fc.property(pairs, pairs, (a, b) => {
        const product = number(a).multiply(b.high, b.low);
        expect(relativeGap(exactly(product), multiply(exactly(a), exactly(b)))).toBeLessThan(1e-31);
      }),
    );
  });

  it('divide to 1e-31', () => {
    fc.assert(
      fc.property(pairs, pairs, (a, b) => {
        const quotient = number(a).divide(b.high, b.low);
        expect(relativeGap(exactly(quotient), divide(exactly(a), exactly(b)))).toBeLessThan(1e-31);
      }),
    );
  });

  it('add numbers of one sign to 1e-31', () => {
    fc.assert(
      fc.property(pairs, pairs, (a, b) => {
        if (a.high * b.high < 0) return;
        expect(relativeGap(exactly(number(a).add(b.high, b.low)), add(exactly(a), exactly(b)))).toBeLessThan(1e-31);
      }),
    );
  });

  it('subtract with an error of 1e-31 of the larger', () => {
    fc.assert(
      fc.property(pairs, pairs, (a, b) => {
        const difference = exactly(number(a).subtract(b.high, b.low));
        const error = add(difference, add(multiply(exactly(a), fraction(-1)), exactly(b)));
        const larger = Math.max(Math.abs(a.high), Math.abs(b.high));
        expect(relativeGap(add(error, fraction(larger)), fraction(larger))).toBeLessThan(1e-31);
      }),
    );
  });

  it('keep what ordinary numbers lose', () => {
    expect(1 + 1e-20 - 1).toBe(0);
    expect(new DoubleDouble().set(1).add(1e-20).subtract(1).toNumber()).toBe(1e-20);
  });
});
