import { expect, test } from 'vitest';
import { readSite } from '../../../src/site/read-site.ts';
import { runStudy } from '../../../src/study/run-study.ts';

/** `outcome at` of each verdict on the way of a protector in the panel, 10 ft from the rod. */
function ways(kind: string): readonly string[] {
  const { site, problems } = readSite(
    `site: {name: Ways, region: us, units: ft, service: panel}
electrodes: {R1: {kind: rod}}
equipment: {panel: {kind: service panel}}
arresters: {a1: {kind: ${kind}, on: panel}}
conductors: {gec: {from: panel, to: R1, wire: 6 AWG copper, length: 10 ft}}
`,
    'ways',
  );
  if (site === null) throw new Error(JSON.stringify(problems));
  const { study } = runStudy(site, { state: null, version: 'test', checksum: '', date: null });
  return study.findings.filter((f) => f.rule === 'bond-run-short').map((f) => `${f.outcome} ${f.at.join(' ')}`);
}

test('the way of an antenna protector counts, that of a mains protector does not', () => {
  expect(ways('gas tube')).toEqual(['not met a1']);
  expect(ways('mains protector')).toEqual([]);
});
