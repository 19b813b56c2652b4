import { expect, it } from 'vitest';
import { studyOfText } from '../examples/study-of-example.ts';

const site = (header: string, more = '') => `site: {name: Edition, ${header}}
electrodes: {R: {kind: rod, length: 8 ft}}
equipment: {panel: {kind: service panel}}
conductors: {c: {from: panel, to: R, wire: 6 AWG copper}}
${more}`;
const assumed = (text: string) =>
  studyOfText(text)
    .assumptions.filter((a) => a.path === 'site.code')
    .map((a) => a.taken);

/** The newest step of each document that moved: NFPA 70 230.67 in 2023, IEC 60364-5-54 in 2011, TIA-222 edition G. */
it('lists the edition that was taken where the owner names none', () => {
  const [nec, ...others] = assumed(site('region: us, service: panel'));
  expect(nec).toMatch(/^NFPA 70: no edition is named under `code:`.*\(2023\)/);
  expect(others).toEqual([]);
  expect(assumed(site('region: iec, service: panel')).map((t) => t.split(':')[0])).toEqual(['IEC 60364-5-54']);
});

it('lists nothing where the owner names it, and no document of another country', () => {
  expect(assumed(site('region: us, service: panel, code: {document: NFPA 70, edition: 2017}'))).toEqual([]);
  expect(assumed(site('region: iec, service: panel, code: {document: IEC 60364-5-54, edition: 2011}'))).toEqual([]);
});

it('lists the tower standard where it is claimed without its edition', () => {
  const tower = 'supports: {t: {kind: lattice tower}}\n';
  const claimed = assumed(site('region: us, service: panel, claims: TIA-222', tower));
  expect(claimed.map((t) => t.split(':')[0])).toEqual(['NFPA 70', 'TIA-222']);
  expect(assumed(site('region: us, service: panel', tower)).map((t) => t.split(':')[0])).toEqual(['NFPA 70']);
});

it('asks both sets of a site that names both', () => {
  const both = assumed(site('region: us, codes: [us, iec], service: panel'));
  expect(both.map((t) => t.split(':')[0])).toEqual(['IEC 60364-5-54', 'NFPA 70']);
});
