import type { Interval } from './interval.ts';

/**
 * Money as its owner would write it: `USD 58.60`, `EUR 120 to 180`, `over 40` where no currency was typed; whole units from
 * 100 on, and two figures where a range is so wide that nobody knows better. null for null.
 */
export function moneyText(money: Interval | null, currency: string | null): string | null {
  if (money === null) return null;
  const before = currency === null ? '' : `${currency} `;
  if (money.high === Infinity) return `over ${before}${amount(money.low, money.low)}`;
  const isWide = money.high > 10 && money.low < money.high * narrowShare;
  const [low, high] = [money.low, money.high].map((m) => (isWide ? twoFigures(m) : amount(m, money.high)));
  return low === high ? `${before}${high}` : `${before}${low} to ${high}`;
}

/** A range whose least is more than this of its greatest is given as it is. */
const narrowShare = 0.9;

function twoFigures(value: number): string {
  return String(value < 10 ? Math.round(value) : Number(value.toPrecision(2)));
}

/** As fine as the greater end of a range deserves. */
function amount(value: number, greater: number): string {
  if (greater >= 100) return String(Math.round(value));
  return Number.isInteger(value) ? String(value) : value.toFixed(2);
}
