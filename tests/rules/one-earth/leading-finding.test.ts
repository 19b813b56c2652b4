import { expect, test } from 'vitest';
import { readSite } from '../../../src/site/read-site.ts';
import { runStudy } from '../../../src/study/run-study.ts';

/** The rules whose findings are not met and stand alone, and `rule < parent` for those folded under one of them. */
function standing(header: string, mast = true): readonly string[] {
  const { site, problems } = readSite(
    `site: {name: Lead, units: m, ${header}}
electrodes: {house: {kind: rod}, E1: {kind: rod}, E2: {kind: rod}}
supports: {mast: {kind: mast}}
equipment: {board: {kind: service panel}}
conductors:
  c1: {from: board, to: house}
  c2: {from: E1, to: E2}
${mast ? '  c3: {from: mast@base, to: E1}\n' : ''}`,
    'lead',
  );
  if (site === null) throw new Error(JSON.stringify(problems));
  const { study } = runStudy(site, { state: null, version: 'test', checksum: '', date: null });
  return study.findings
    .filter((f) => f.outcome === 'not met' && f.at.join('+') === 'E1+E2')
    .map((f) => (f.under === null ? f.rule : `${f.rule} < ${f.under}`))
    .sort();
}

test('on a TN-C-S supply in the UK the clause of that supply leads', () => {
  expect(standing('region: uk, service: board, supply: tn-c-s')).toEqual([
    'all-electrodes-one-system < uk-multiple-earth-rf-rod-bond:E1+E2',
    'iec-antenna-electrode-to-main-bar < uk-multiple-earth-rf-rod-bond:E1+E2',
    'uk-multiple-earth-rf-rod-bond',
  ]);
});

test('elsewhere in IEC countries that of antennas, where one is tied to them', () => {
  const expected = [
    'all-electrodes-one-system < iec-antenna-electrode-to-main-bar:E1+E2',
    'iec-antenna-electrode-to-main-bar',
  ];
  expect(standing('region: iec, service: board, supply: tn-s')).toEqual(expected);
  expect(standing('region: uk, service: board, supply: tt')).toEqual(expected);
  expect(standing('region: iec, service: board, supply: tn-s', false)).toEqual(['all-electrodes-one-system']);
});

test('in the United States the general one', () => {
  expect(standing('region: us, service: board')).toEqual(['all-electrodes-one-system']);
});

test('with the service unknown nobody knows which is apart: the general one stands for all', () => {
  const { site } = readSite(
    'site: {name: x, region: uk, units: m, service: unknown, supply: tn-c-s}\nelectrodes: {E1: {kind: rod}, E2: {kind: rod}}\nconductors: none\n',
    'x',
  );
  const { study } = runStudy(site!, { state: null, version: 'test', checksum: '', date: null });
  const alone = study.findings.filter((f) => f.outcome === 'not met' && f.under === null).map((f) => f.rule);
  expect(alone).toEqual(['all-electrodes-one-system']);
});
