import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { rules } from '../../src/rules/index.ts';
import { rulePage } from '../../src/shell/rule-page.ts';

const page = readFileSync(join(import.meta.dirname, 'rules.md'), 'utf8');

/** When this fails: npx evenground rules --markdown -o tests/docs/rules.md */
it('the page of all rules is what their records say', () => {
  expect(page).toBe(rulePage(rules, { terms: 'us', unitsFirst: 'us' }));
});

it('has a row for every rule, and its provenance', () => {
  const rows = page.split('\n').filter((line) => line.startsWith('| `'));
  expect(rows.length).toBe(rules.length);
  for (const r of rules) {
    const row = rows.find((line) => line.startsWith(`| \`${r.id}\` |`));
    expect(row, r.id).toBeDefined();
    if (r.source.provenance === 'memory') expect(row).toContain('from memory: check against your copy');
  }
});
