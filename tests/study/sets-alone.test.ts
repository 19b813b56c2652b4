import { describe, expect, it } from 'vitest';
import { factsOf } from '../../src/facts/facts-of.ts';
import { runRules } from '../../src/rules/run-rules.ts';
import { readSite } from '../../src/site/read-site.ts';
import type { Region, Site } from '../../src/site/site.ts';
import { siteTexts } from '../site/site-texts.ts';

const sets: readonly Region[] = ['us', 'ca', 'iec', 'uk', 'au'];
const speech = { terms: 'us', unitsFirst: 'us' } as const;

/** What each rule says of each place where these sets are asked. */
function saidIn(site: Site, codeSets: readonly Region[]) {
  const { findings, faults } = runRules(factsOf({ ...site, header: { ...site.header, codeSets } }, null), speech);
  expect(faults).toEqual([]);
  return findings.map(({ rule, codeSet, family, severity, outcome, at, because, measured, change }) => ({
    codeSet,
    said: JSON.stringify([rule, family, severity, outcome, at, because, measured, change]),
  }));
}

const readable = siteTexts().flatMap(({ file, text }) => {
  const { site } = readSite(text, file);
  return site === null ? [] : [{ file, site }];
});

describe('a code set says beside others what it says alone', () => {
  it('of many sites', () => expect(readable.length).toBeGreaterThan(100));

  it.each(readable)('$file', ({ site }) => {
    const together = saidIn(site, sets);
    for (const set of sets) {
      const alone = saidIn(site, [set]).map((f) => f.said);
      const mine = together.filter((f) => f.codeSet === 'any' || f.codeSet === set).map((f) => f.said);
      expect(mine.sort()).toEqual(alone.sort());
    }
  });
});
