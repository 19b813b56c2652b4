import { expect, it } from 'vitest';
import { studyOfText } from '../examples/study-of-example.ts';
import { pageOf, piecesOf, sectionOf } from './page-of.ts';

/** NFPA 70 250.104 (second-hand) names piping and structural metal, and no cladding. */
it('what a code asks and what practice asks by one rule stand apart, each with its own source', () => {
  const study = studyOfText(`
site: {name: Two kinds, region: us, units: ft, service: panel}
equipment: {panel: {kind: service panel, where: inside}}
metalwork: {pipe: {kind: oil pipe, bonded: no}, skin: {kind: siding, bonded: no, within_reach: [panel]}}
`);
  const pieces = piecesOf(`<body>${sectionOf(pageOf(study), 'findings')}`);
  const sources = pieces.filter((p) => p.includes('(metalwork-bonded)'));
  expect(sources).toHaveLength(2);
  expect(sources.map((p) => /^Does not meet the condition/.test(p))).toEqual([true, false]);
  expect(sources[1]).toMatch(/Common practice/);
});
