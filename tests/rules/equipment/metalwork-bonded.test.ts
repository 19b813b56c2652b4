import { expect, test } from 'vitest';
import { readSite } from '../../../src/site/read-site.ts';
import { runStudy } from '../../../src/study/run-study.ts';

/** `outcome at` of each verdict on metalwork. */
function metal(kind: string): readonly string[] {
  const { site, problems } = readSite(
    `site: {name: Metal, region: us, units: ft, service: unknown}\nmetalwork: {wire: {kind: ${kind}}}\n`,
    'metal',
  );
  if (site === null) throw new Error(JSON.stringify(problems));
  const { study } = runStudy(site, { state: null, version: 'test', checksum: '', date: null });
  return study.findings.filter((f) => f.rule === 'metalwork-bonded').map((f) => `${f.outcome} ${f.at.join(' ')}`);
}

test('a fence is asked about, the live wire of an electric fence is not', () => {
  expect(metal('fence')).toEqual(['cannot tell wire']);
  expect(metal('electric fence')).toEqual([]);
});
