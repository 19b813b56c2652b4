import { describe, expect, it } from 'vitest';
import { changeSentences } from '../../src/report/compare-change.ts';
import { compareContext } from '../../src/report/compare-context.ts';
import { compareReportModel } from '../../src/report/compare-report-model.ts';
import { allTerms } from '../../src/words/terms.ts';
import { studyOfExample } from '../examples/study-of-example.ts';
import { asFile, type Compared, compared, comparePageOf, marlHill, twoBuildings } from './compared.ts';
import { piecesOf, sectionOf } from './page-of.ts';

const page = comparePageOf(marlHill);
const pieces = piecesOf(page);
const rowOf = (html: string, first: string): readonly string[] => {
  const rows = html.split('<tr>').map((r) => piecesOf(`<body>${r}`));
  return rows.find((r) => r[0] === first) ?? [];
};

describe('the before-and-after report of Marl Hill', () => {
  it('has its sections in order, each under its number', () => {
    const ids = [...page.matchAll(/<section id="([^"]+)"/g)].map((m) => m[1]);
    const first = ['verdict', 'plan', 'findings', 'figures', 'ways', 'strike', 'weak', 'reach', 'parts', 'materials'];
    expect(ids).toEqual(
      [...first, 'look-at', 'unknowns', 'cautions', 'glossary', 'signatures'].filter(
        (id) => id !== 'strike' || marlHill.comparison.strike !== null,
      ),
    );
  });

  it('has both heads on its cover', () => {
    for (const says of ['Before: 2026-05-02', 'After: 2026-06-28', 'Before: as found', 'After: after rework'])
      expect(pieces).toContain(says);
    expect(page).toContain('a'.repeat(64));
    expect(page).toContain('b'.repeat(64));
  });

  it('says the change in three sentences', () => {
    const context = compareContext(marlHill.before, marlHill.after, marlHill.comparison, []);
    const said = changeSentences(context);
    expect(said.length).toBe(3);
    for (const sentence of said) expect(pieces).toContain(sentence);
    const { cleared } = marlHill.comparison.findings;
    expect(said[0]).toContain(`${cleared.filter((c) => c.counts).length} cleared`);
  });

  it('counts findings as the checks of the two files do', () => {
    const { before, after } = marlHill;
    expect(rowOf(sectionOf(page, 'verdict'), 'Hazard')).toEqual([
      'Hazard',
      String(before.verdict.hazards),
      String(after.verdict.hazards),
    ]);
    expect(rowOf(sectionOf(page, 'verdict'), 'Defect')).toEqual([
      'Defect',
      String(before.verdict.defects),
      String(after.verdict.defects),
    ]);
    expect(rowOf(sectionOf(page, 'verdict'), 'Cannot tell')).toEqual([
      'Cannot tell',
      String(before.verdict.cannotTell),
      String(after.verdict.cannotTell),
    ]);
  });

  it('lists every finding that the comparison holds, in its list', () => {
    const findings = sectionOf(page, 'findings');
    const said = piecesOf(`<body>${findings}`).join(' ');
    for (const list of ['cleared', 'new', 'better', 'worse', 'unsettled', 'unchanged'] as const) {
      const all = marlHill.comparison.findings[list];
      for (const { before, after } of all) expect(said).toContain((after ?? before)!.title.trim());
      const heading = {
        cleared: 'Cleared',
        new: 'New',
        better: 'Better',
        worse: 'Worse',
        unsettled: 'Was not met, cannot be told now',
        unchanged: 'As before',
      }[list];
      expect(said).toContain(`${heading} (${all.filter((c) => c.counts).length})`);
    }
  });

  it('has what was changed with what it was: the wire of c2, the rotor now in soil', () => {
    const parts = sectionOf(page, 'parts');
    const rows = parts.split('<tr>').map((r) => piecesOf(`<body>${r}`));
    const c2 = rows.find((r) => r[0]!.endsWith(' c2') && r.includes('wire'));
    expect(c2!.slice(-2)).toEqual(['6 AWG copper', 'strap 3 in x 0.022 in copper']);
    const rotor = rows.find((r) => r[0]!.endsWith(' rotor') && r.includes('buried'));
    expect(rotor!.slice(-2)).toEqual(['not typed', 'yes']);
  });

  it('names each part that was added or removed', () => {
    const said = piecesOf(`<body>${sectionOf(page, 'parts')}`);
    const { added, removed } = marlHill.comparison.parts;
    expect(added.length).toBeGreaterThan(20);
    for (const p of [...added, ...removed]) expect(said.some((t) => t.endsWith(` ${p.id}`))).toBe(true);
  });

  it('shows the material that was put in, in the words of the region', () => {
    const said = piecesOf(`<body>${sectionOf(page, 'materials')}`);
    const words: Readonly<Record<string, string>> = {
      'mains protector': 'surge protective device of the mains',
      rod: 'ground rod',
      'station ground bar': 'ground bar of the station',
    };
    for (const { name } of marlHill.comparison.materials.added) expect(said).toContain(words[name] ?? name);
  });

  it('has no script and fetches nothing, and promises nothing', () => {
    expect(page).not.toMatch(/<script|<link|<iframe|javascript:|@import|url\(/i);
    expect(page.match(/(?:src|href)="(?!#|data:)[^"]*"/g)).toBeNull();
    expect(pieces.filter((t) => /\bsafe(?:ly|ty)?\b/i.test(t))).toEqual([]);
    expect(pieces.some((t) => t.includes('no promise that damage cannot happen'))).toBe(true);
  });

  it('is the same each time, and from studies that were stored', () => {
    expect(comparePageOf(JSON.parse(JSON.stringify(marlHill)) as Compared)).toBe(page);
    expect(comparePageOf(twoBuildings)).not.toBe(page);
  });
});

it('a file against itself differs in nothing, and the page says so', () => {
  const same = compared(marlHill.after, marlHill.after);
  const said = piecesOf(sectionOf(comparePageOf(same), 'verdict').replace('<section', '<body><section'));
  expect(said).toContain('Nothing differs between the two but names, file, revision and date.');
});

describe('one file in two states, without places', () => {
  const flat = (state: string | null) => asFile(studyOfExample('town-flat/town-flat.site.yaml', state), 'e');
  const all = compared(flat(null), flat('storm'));
  const html = comparePageOf(all);

  it('heads its columns by the states', () => {
    const reach = sectionOf(html, 'reach');
    expect(reach).toContain('First: as typed in the file');
    expect(reach).toContain('Second: storm');
    expect(rowOf(reach, '7 radio').filter((t) => t.startsWith('×'))).toEqual(['× 11 coax from 3 jpole']);
  });

  it('says that its schematic is no plan', () => {
    expect(piecesOf(html)).toContain('Schematic, not to scale: too few positions are typed for a plan.');
  });

  it('speaks the words of its region only', () => {
    const foreign = allTerms()
      .filter(({ us }) => us !== 'listed' && !allTerms().some(({ iec }) => iec.includes(us)))
      .map(({ us }) => us);
    expect(foreign).toContain('ground rod');
    const found = foreign.filter((word) =>
      piecesOf(html).some((t) => new RegExp(`(?<!\\p{L})${word.replace(/[()]/g, '\\$&')}s?(?!\\p{L})`, 'iu').test(t)),
    );
    expect(found).toEqual([]);
  });
});

it('the model of a report is on the paper of its region', () => {
  const { before, after, comparison } = marlHill;
  expect(compareReportModel(before, after, comparison).paper).toBe('letter');
});
