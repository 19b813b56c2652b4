import { expect, test } from 'vitest';
import { readSite } from '../../../src/site/read-site.ts';
import { runStudy } from '../../../src/study/run-study.ts';

/** `rule outcome at` of what is said of a metal arm of this kind and of its lead. */
function said(kind: string, lead: string): readonly string[] {
  const { site, problems } = readSite(
    `site: {name: Balcony, region: iec, units: m, service: unknown}
electrodes: {E1: {kind: rod}}
supports: {arm: {kind: ${kind}, height: 6 m, metal: aluminium}}
conductors: ${lead}
`,
    'balcony',
  );
  if (site === null) throw new Error(JSON.stringify(problems));
  const { study } = runStudy(site, { state: null, version: 'test', checksum: '', date: null });
  return study.findings
    .filter((f) => f.rule === 'iec-mast-earthed' || f.rule === 'antenna-earthing-size-iec')
    .map((f) => `${f.rule} ${f.outcome} ${f.at.join(' ')}`)
    .sort();
}

// IEC 60728-11: no earthing conductor at least 2 m below the roof's edge and at most 1.5 m from the wall (second-hand).
test('an arm on the face of a building may be released, a mast is not', () => {
  expect(said('building face', 'none')).toEqual(['iec-mast-earthed cannot tell arm']);
  expect(said('mast', 'none')).toEqual(['iec-mast-earthed not met arm']);
});

test('so may the lead of such an arm', () => {
  const thin = '{c1: {from: arm, to: E1, wire: 4 mm2 copper}}';
  expect(said('building face', thin)).toEqual(['antenna-earthing-size-iec cannot tell c1', 'iec-mast-earthed met arm']);
  expect(said('mast', thin)).toEqual(['antenna-earthing-size-iec not met c1', 'iec-mast-earthed met arm']);
});

test('a lead of 16 mm² is enough anywhere', () => {
  const lead = '{c1: {from: arm, to: E1, wire: 16 mm2 copper}}';
  expect(said('building face', lead)).toEqual(['antenna-earthing-size-iec met c1', 'iec-mast-earthed met arm']);
});
