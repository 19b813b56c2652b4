import { expect, it } from 'vitest';
import { familyIn } from '../../src/rules/family-in.ts';
import { rules } from '../../src/rules/index.ts';
import type { Region } from '../../src/site/site.ts';

const rule = (id: string) => rules.find((r) => r.id === id)!;

it.each([
  ['all-electrodes-one-system', 'us', 'code'],
  ['all-electrodes-one-system', 'unknown', 'code'],
  ['all-electrodes-one-system', 'iec', 'practice'],
  ['panel-tied-to-service', 'uk', 'practice'],
  ['gas-pipe-never-electrode', 'iec', 'code'],
  ['iec-mast-earthed', 'iec', 'code'],
  ['mast-grounded', 'us', 'code'],
  ['core-static-drain', 'us', 'practice'],
] as const)('%s is, in %s, of the family %s', (id, region, family) => {
  expect(familyIn(rule(id), region as Region)).toBe(family);
});
