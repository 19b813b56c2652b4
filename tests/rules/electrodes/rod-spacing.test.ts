import { expect, test } from 'vitest';
import { readSite } from '../../../src/site/read-site.ts';
import { runStudy } from '../../../src/study/run-study.ts';

/** `rule outcome (under)` of each verdict on the spacing of two 8 ft rods. */
function spacing(region: string, distance: string): readonly string[] {
  const { site, problems } = readSite(
    `site: {name: Rods, region: ${region}, units: ft, service: unknown}
electrodes: {R1: {kind: rod, length: 8 ft, at: [0, 0]}, R2: {kind: rod, length: 8 ft, at: [${distance}, 0]}}
conductors: {c1: {from: R1, to: R2}}
`,
    'rods',
  );
  if (site === null) throw new Error(JSON.stringify(problems));
  const { study } = runStudy(site, { state: null, version: 'test', checksum: '', date: null });
  return study.findings
    .filter((f) => f.rule.startsWith('rod-spacing'))
    .map((f) => `${f.rule} ${f.outcome}${f.under === null ? '' : ` under ${f.under}`}`)
    .sort();
}

test('closer than the code asks is one finding; between 6 ft and two lengths it is advice alone', () => {
  expect(spacing('us', '5 ft')).toEqual([
    'rod-spacing-effective not met under rod-spacing-minimum:R1+R2',
    'rod-spacing-minimum not met',
  ]);
  expect(spacing('us', '6 ft')).toEqual(['rod-spacing-effective not met', 'rod-spacing-minimum met']);
  expect(spacing('us', '16 ft')).toEqual(['rod-spacing-effective met', 'rod-spacing-minimum met']);
});

test('where no code asks for 6 ft the advice stands alone', () => {
  expect(spacing('iec', '5 ft')).toEqual(['rod-spacing-effective not met']);
});
