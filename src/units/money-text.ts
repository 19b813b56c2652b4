import type { Interval } from './interval.ts';

/**
 * Money as its owner would write it: `USD 58.60`, `EUR 120 to 180`, `over 40` where no currency was typed; whole units from
 * 100 on. null for null.
 */
export function moneyText(money: Interval | null, currency: string | null): string | null {
  if (money === null) return null;
  const before = currency === null ? '' : `${currency} `;
  if (money.high === Infinity) return `over ${before}${amount(money.low, money.low)}`;
  const [low, high] = [amount(money.low, money.high), amount(money.high, money.high)];
  return low === high ? `${before}${high}` : `${before}${low} to ${high}`;
}

/** As fine as the greater end of a range deserves. */
function amount(value: number, greater: number): string {
  if (greater >= 100) return String(Math.round(value));
  return Number.isInteger(value) ? String(value) : value.toFixed(2);
}
