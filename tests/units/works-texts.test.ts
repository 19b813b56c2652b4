import { expect, it } from 'vitest';
import { hoursText } from '../../src/units/hours-text.ts';
import { moneyText } from '../../src/units/money-text.ts';
import { tapeText } from '../../src/units/tape-text.ts';

const exact = (n: number) => ({ low: n, high: n });

it('a length as a tape shows it, in both systems', () => {
  // 30 in = 0.762 m; 8 in = 0.2032 m; 78 ft = 23.7744 m; 12.5 ft = 3.81 m
  expect(tapeText(exact(0.762), 'us')).toBe('30 in (76 cm)');
  expect(tapeText(exact(0.762), 'si')).toBe('76 cm (30 in)');
  expect(tapeText(exact(0.2032), 'us')).toBe('8 in (20 cm)');
  expect(tapeText(exact(23.7744), 'us')).toBe('78 ft (23.8 m)');
  expect(tapeText(exact(3.81), 'us')).toBe('12.5 ft (3.8 m)');
  expect(tapeText({ low: 17.7, high: 19.5 }, 'si')).toBe('17.7 to 19.5 m (58 to 64 ft)');
});

it('says when there is no end, and nothing where nothing is known', () => {
  expect(tapeText({ low: 30.48, high: Infinity }, 'us')).toBe('over 100 ft (30.5 m)');
  expect(tapeText({ low: 0, high: Infinity }, 'us')).toBeNull();
  expect(tapeText(null, 'si')).toBeNull();
});

it('money with the currency as it was typed, no finer than it is known', () => {
  expect(moneyText(exact(58.5892), 'USD')).toBe('USD 58.59');
  expect(moneyText(exact(20), 'EUR')).toBe('EUR 20');
  expect(moneyText(exact(1367.4), null)).toBe('1367');
  expect(moneyText({ low: 437, high: 1277 }, 'USD')).toBe('USD 440 to 1300');
  expect(moneyText({ low: 95, high: 101 }, 'kr')).toBe('kr 95 to 101');
  expect(moneyText({ low: 40, high: Infinity }, 'USD')).toBe('over USD 40');
  expect(moneyText(null, 'USD')).toBeNull();
});

it('hours to the half below ten and whole beyond, outwards', () => {
  expect(hoursText({ low: 2.7, high: 9.4 })).toBe('2.5 to 9.5 h');
  expect(hoursText({ low: 23.25, high: 84.1 })).toBe('23 to 85 h');
  expect(hoursText(exact(4))).toBe('4 h');
  expect(hoursText({ low: 0.5, high: Infinity })).toBe('over 0.5 h');
});
