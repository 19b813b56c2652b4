import { describe, expect, it } from 'vitest';
import { ownStudy } from '../rules/own/own-study.ts';
import { asFile, compared, comparePageOf, statementOf } from './compared.ts';
import { pageOf, piecesOf, sectionOf } from './page-of.ts';

/** Two rods of 8 ft, or of 10 ft, beside an owner who asks 10 ft; nothing here is a hazard by the code. */
const study = (length: string) =>
  ownStudy(
    `site: {name: Sets, region: us, units: ft, service: panel, supply: us-grounded}
electrodes:
  r: {kind: rod, length: ${length}, diameter: 5/8 in, metal: copper-clad steel}
  r2: {kind: rod, length: ${length}, diameter: 5/8 in, metal: copper-clad steel}
equipment: {panel: {kind: service panel, where: outside, neutral_bonded: yes}}
conductors: {g: {from: panel, to: r, passes: [r2], wire: 4 AWG copper, length: 25 ft}}
`,
    'name: club rules\nlimits: {rods: {of: rods, length: at least 10 ft, severity: hazard}}',
  );
const cellsOf = (html: string, row: string) => {
  const pieces = piecesOf(`<body>${html}`);
  const at = pieces.indexOf(row);
  return at === -1 ? [] : pieces.slice(at, at + 4);
};

describe('counts of several sets', () => {
  const page = pageOf(study('8 ft'));

  it('have a column each on the first page, below the sentence that says whose they are', () => {
    const verdict = sectionOf(page, 'verdict');
    expect(cellsOf(verdict, 'Hazard').slice(2)).toEqual(['0', '2']);
    const said = piecesOf(`<body>${verdict}`);
    expect(said).toEqual(expect.arrayContaining(['United States', 'own standard']));
    expect(said.some((t) => /by the owner’s standard: 2 findings that can hurt people/.test(t))).toBe(true);
  });

  const works = compared(asFile(study('8 ft'), 'a'), asFile(study('10 ft'), 'b'));

  it('stand by name in what a statement found, and before and after', () => {
    const statement = statementOf(works);
    const found = piecesOf(`<body>${sectionOf(statement, 'found')}`).join(' ');
    expect(found).toMatch(/United States: 0 findings that can hurt .* own standard: 2 findings that can hurt people/);
    const hazards = cellsOf(sectionOf(statement, 'figures'), 'Findings: hazards');
    expect(hazards.slice(1, 3)).toEqual(['United States 0, own standard 2', 'United States 0, own standard 0']);
  });

  it('stand by name in the table of a comparison', () => {
    const hazard = cellsOf(sectionOf(comparePageOf(works), 'verdict'), 'Hazard');
    expect(hazard.slice(1, 3)).toEqual(['United States 0, own standard 2', 'United States 0, own standard 0']);
  });
});
