import { describe, expect, it } from 'vitest';
import type { Study } from '../../src/study/study.ts';
import { studyOfExample } from '../examples/study-of-example.ts';
import { pageOf, piecesOf, sectionOf } from './page-of.ts';
import { clubStudy, houseStudy } from './samples.ts';

/** Rule and outcome of each row of the table of conditions and of each item of those that do not apply, as a reader finds them. */
function rowsOf(study: Study): readonly (readonly [rule: string, outcome: string])[] {
  const section = sectionOf(pageOf(study), 'conditions');
  const items = section.split('<li>').slice(1);
  const named = items.flatMap((item) => /\(([a-z0-9, -]+)\)\s*<\/li>/.exec(item)![1]!.split(', '));
  return [...tableRows(section), ...named.map((rule) => [rule, '– not applicable'] as const)];
}

function tableRows(section: string): readonly (readonly [rule: string, outcome: string])[] {
  const rows = section.split('<tr>');
  return rows
    .filter((row) => row.includes('scope="row"'))
    .map((row) => {
      const [first, ...cells] = row.split(/<\/t[hd]>/).map((cell) => piecesOf(`<body>${cell}`));
      const outcome = cells.map((c) => c.join(' ')).filter((c) => Object.values(signs).includes(c.slice(0, 1)));
      expect(outcome).toHaveLength(1);
      return [first!.at(-1)!, outcome[0]!] as const;
    });
}

const signs = { met: '+', 'not met': '×', 'cannot tell': '?', 'not applicable': '–', 'not looked at': '○' };
const studies: readonly (readonly [string, Study])[] = [
  ['the club', clubStudy],
  ['the house', houseStudy],
  ['Marl Hill', studyOfExample('marl-hill/marl-hill.site.yaml')],
];

describe.each(studies)('the conditions of %s', (_, study) => {
  it('stand once each, with the outcome that the study has', () => {
    const applies = study.conditions.filter((c) => c.outcome !== 'not applicable');
    const rest = study.conditions.filter((c) => c.outcome === 'not applicable');
    const shown = rowsOf(study);
    const asShown = (c: Study['conditions'][number]) => [c.rule, `${signs[c.outcome]} ${c.outcome}`];
    expect(shown.slice(0, applies.length)).toEqual(applies.map(asShown));
    // those of one reason stand together
    expect(shown.slice(applies.length).sort()).toEqual(rest.map(asShown).sort());
  });

  it('say why each does not apply', () => {
    const section = piecesOf(`<body>${sectionOf(pageOf(study), 'conditions')}`).join('\n');
    const rest = study.conditions.filter((c) => c.outcome === 'not applicable');
    for (const c of rest) expect(section).toContain(c.because);
  });
});

it('between them the studies have conditions of every outcome', () => {
  const outcomes = new Set(studies.flatMap(([, study]) => rowsOf(study)).map(([, outcome]) => outcome.slice(2)));
  expect([...outcomes].sort()).toEqual(['cannot tell', 'met', 'not applicable', 'not looked at', 'not met']);
});

describe('the page of Marl Hill', () => {
  const study = studyOfExample('marl-hill/marl-hill.site.yaml');

  it('shows each finding that is not met once, alone or under its cause', () => {
    const html = sectionOf(pageOf(study), 'findings');
    const alone = study.findings.filter((f) => f.outcome === 'not met' && f.under === null);
    const folded = study.findings.filter((f) => f.outcome === 'not met' && f.under !== null);
    expect(alone.length).toBeGreaterThan(10);
    expect(folded.length).toBeGreaterThan(0);
    expect(html.match(/<h4>/g)).toHaveLength(alone.length);
    expect(html.match(/<li>/g)).toHaveLength(folded.length);
  });

  it('lists what to look at for each condition that cannot be told, but for what hangs on another', () => {
    const text = piecesOf(`<body>${sectionOf(pageOf(study), 'look-at')}`).join('\n');
    const open = study.findings.filter((f) => f.outcome === 'cannot tell' && f.under === null);
    expect(open.length).toBeGreaterThan(5);
    for (const f of open) {
      const look = study.lookAt!.find((l) => l.settles.includes(f.id))!;
      expect(text).toContain(look.text);
      expect(look.at).toEqual(expect.arrayContaining([...f.at]));
    }
  });
});
