import { expect, it } from 'vitest';
import { studyOfText } from '../../examples/study-of-example.ts';

/** A lone rod that nobody measured, where this edition is adopted. */
function loneRod(code: string) {
  const text = `
site: {name: One rod, region: us, units: ft, service: panel${code}}
electrodes:
  E1: {kind: rod, length: 8 ft, diameter: 5/8 in, metal: copper-clad steel}
bars: none
equipment:
  panel: {kind: service panel, neutral_bonded: yes}
conductors:
  c1: {from: panel, to: E1, wire: 6 AWG copper, length: 5 ft}
`;
  return studyOfText(text).findings.find((f) => f.rule === 'single-rod-25-ohm')!;
}

/** To 2008, 250.56: test, then add one; since 2011, 250.53(A)(2): add one unless tested (second-hand). */
it.each([
  ['2008', 'cannot tell', '250.56'],
  ['2011', 'not met', '250.53(A)(2) exception'],
  ['2023', 'not met', '250.53(A)(2) exception'],
])('edition %s: %s, by %s', (edition, outcome, clause) => {
  const finding = loneRod(`, code: {document: NFPA 70, edition: ${edition}}`);
  expect([finding.outcome, finding.source.clause, finding.source.edition]).toEqual([outcome, clause, edition]);
});

it('no edition named: as the newest', () => {
  expect(loneRod('').outcome).toBe('not met');
});

it.each(['NEC 2008', 'NFPA 70-2008', '2008 NEC', 'edition of 2008'])(
  'an edition typed as %s is that of 2008',
  (typed) => {
    const finding = loneRod(`, code: {document: NFPA 70, edition: ${typed}}`);
    expect([finding.outcome, finding.source.clause]).toEqual(['cannot tell', '250.56']);
  },
);

/** Section 3 of the collection of clauses: the numbers of 2026 were not seen and are not cited. */
it('no number is given as that of an edition whose numbers were not seen', () => {
  const { outcome, source } = loneRod(', code: {document: NFPA 70, edition: 2026}');
  expect([outcome, source.edition, source.clause]).toEqual(['not met', '2011 on', '250.53(A)(2) exception']);
});
