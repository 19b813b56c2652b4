import { expect, test } from 'vitest';
import { readSite } from '../../../src/site/read-site.ts';
import { runStudy } from '../../../src/study/run-study.ts';

/** `outcome at` of each verdict of a rule on one line that comes in to a radio or router. */
function verdicts(rule: string, line: string, where = 'house', antenna = 'outside'): readonly string[] {
  const { site, problems } = readSite(
    `site: {name: Lines, region: us, units: ft, service: unknown}
buildings: {house: {}}
antennas: {wire: {kind: long wire, dc_path: no, where: ${antenna}}}
bars: {block: {kind: other, where: outside}}
arresters: {a1: {kind: spark gap, where: outside}}
equipment: {box: {kind: router, where: ${where}}}
lines: {line: ${line}}
`,
    'lines',
  );
  if (site === null) throw new Error(JSON.stringify(problems));
  const { study } = runStudy(site, { state: null, version: 'test', checksum: '', date: null });
  return study.findings.filter((f) => f.rule === rule).map((f) => `${f.outcome} ${f.at.join(' ')}`);
}

test('a single wire is a feed line: it is asked for an arrester', () => {
  const asked = (path: string, where?: string) =>
    verdicts('arrester-on-every-feed-line', `{kind: single wire, path: [${path}]}`, where);
  expect(asked('wire, box')).toEqual(['not met line']);
  expect(asked('wire, a1, box')).toEqual(['met line']);
  expect(asked('wire, box', 'unknown')).toEqual(['cannot tell line']);
});

test('the shield of cable television is bonded where it comes in (NFPA 70, 820.93; 800.100)', () => {
  const asked = (path: string) => verdicts('shield-bonded-at-entry', `{kind: cable tv, path: [${path}]}`);
  expect(asked('street, box')).toEqual(['not met line']);
  expect(asked('street, block, box')).toEqual(['met line']);
  expect(asked('street, unknown, box')).toEqual(['cannot tell line']);
});

test('static is asked of an antenna outdoors, not of one under the roof', () => {
  const asked = (antenna: string) => verdicts('core-static-drain', '{kind: coax, path: [wire, box]}', 'house', antenna);
  expect(asked('outside')).toEqual(['not met line']);
  expect(asked('unknown')).toEqual(['not met line']);
  expect(asked('house')).toEqual([]);
});
