import { expect, it } from 'vitest';
import { formatQuantity } from '../../src/units/format.ts';

/** Sections as printed in the conductor tables of the electrical code of the United States (chapter 9, table 8), from memory. */
it.each([
  [3.31e-6, '12 AWG (3.31 mm²)'],
  [5.261e-6, '10 AWG (5.26 mm²)'],
  [13.3e-6, '6 AWG (13.3 mm²)'],
  [42.41e-6, '1 AWG (42.4 mm²)'],
  [67.43e-6, '2/0 AWG (67.4 mm²)'],
  [107.2e-6, '4/0 AWG (107 mm²)'],
  [127e-6, '250 kcmil (127 mm²)'],
])('a section of %d m² is shown as %s', (areaM2, shown) => {
  expect(formatQuantity(areaM2, 'area', 'both-us-first')).toBe(shown);
  expect(formatQuantity({ low: areaM2, high: areaM2 }, 'area', 'both-us-first')).toBe(shown);
});

it('a metric section, and a range over several gauges, bear no gauge', () => {
  expect(formatQuantity(16e-6, 'area', 'both-si-first')).toBe('16 mm² (31.6 kcmil)');
  expect(formatQuantity({ low: 5.26e-6, high: 13.3e-6 }, 'area', 'us')).not.toContain('AWG');
});

it('a length is no section, whatever its figure', () => {
  expect(formatQuantity(13.3e-6, 'length', 'us')).not.toContain('AWG');
});
