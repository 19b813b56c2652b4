/**
 * Numbers of about 32 digits, each held as the unevaluated sum of two ordinary ones.
 *
 * Why: a joint of ten micro-ohms beside rock of five megohms takes 12 of the 16 digits of ordinary arithmetic as soon
 * as two potentials are subtracted; here more than 16 are left.
 *
 * Source: T. J. Dekker, "A floating-point technique for extending the available precision", Numer. Math. 18 (1971)
 * 224-242; two-sum after D. E. Knuth, The Art of Computer Programming vol. 2, 4.2.2 (both from memory). Relative error
 * of one operation: below 1e-31. Valid while no product passes 1e290.
 */
export class DoubleDouble {
  high = 0;
  low = 0;

  set(high: number, low = 0): this {
    this.high = high;
    this.low = low;
    return this;
  }

  add(high: number, low = 0): this {
    const sum = this.high + high;
    const back = sum - this.high;
    const sumError = this.high - (sum - back) + (high - back);
    const tail = this.low + low;
    const tailBack = tail - this.low;
    const tailError = this.low - (tail - tailBack) + (low - tailBack);
    const middle = sum + (sumError + tail);
    return this.settle(middle, sum - middle + (sumError + tail) + tailError);
  }

  subtract(high: number, low = 0): this {
    return this.add(-high, -low);
  }

  /** Adds a product of two such numbers. */
  addProduct(aHigh: number, aLow: number, bHigh: number, bLow: number): this {
    const product = aHigh * bHigh;
    return this.add(product, productError(aHigh, bHigh, product) + (aHigh * bLow + aLow * bHigh));
  }

  subtractProduct(aHigh: number, aLow: number, bHigh: number, bLow: number): this {
    return this.addProduct(-aHigh, -aLow, bHigh, bLow);
  }

  multiply(high: number, low = 0): this {
    const { high: ownHigh, low: ownLow } = this;
    return this.set(0).addProduct(ownHigh, ownLow, high, low);
  }

  divide(high: number, low = 0): this {
    const first = this.high / high;
    this.subtractProduct(first, 0, high, low);
    const second = this.high / high;
    this.subtractProduct(second, 0, high, low);
    const third = this.high / high;
    return this.settle(first, second).add(third);
  }

  /** The nearest ordinary number. */
  toNumber(): number {
    return this.high + this.low;
  }

  private settle(high: number, low: number): this {
    this.high = high + low;
    this.low = low - (this.high - high);
    return this;
  }
}

/** 2^27 + 1: cuts a 53-bit number into two halves whose products are exact. */
const SPLITTER = 134217729;

/** What a rounded product of two ordinary numbers lost. */
function productError(a: number, b: number, product: number): number {
  const aCut = SPLITTER * a;
  const aHead = aCut - (aCut - a);
  const aTail = a - aHead;
  const bCut = SPLITTER * b;
  const bHead = bCut - (bCut - b);
  const bTail = b - bHead;
  return aHead * bHead - product + aHead * bTail + aTail * bHead + aTail * bTail;
}
