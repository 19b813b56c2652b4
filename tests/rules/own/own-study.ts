import { expect } from 'vitest';
import { knownRules } from '../../../src/shell/known-rules.ts';
import { readSite } from '../../../src/site/read-site.ts';
import { readStandard } from '../../../src/site/standard/read-standard.ts';
import { runStudy } from '../../../src/study/run-study.ts';
import type { Study } from '../../../src/study/study.ts';

/** The study of a site beside a standard of its owner's; without one where no text is given. */
export function ownStudy(text: string, standardText: string | null): Study {
  const { site, problems } = readSite(text, 'own.site.yaml');
  expect(problems).toEqual([]);
  const read = standardText === null ? null : readStandard(standardText, 'club.yaml', knownRules());
  expect(read?.problems ?? []).toEqual([]);
  const beside = { standard: read?.standard ?? null };
  return runStudy(site!, { state: null, version: 'test', checksum: '', date: null, beside }).study;
}

export function ownFindings({ findings }: Study) {
  return findings.filter((f) => f.codeSet === 'own');
}
