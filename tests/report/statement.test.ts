import { describe, expect, it } from 'vitest';
import type { Study } from '../../src/study/study.ts';
import { houseMeanings } from '../../src/words/glossary-words.ts';
import { type LeaveOut, leaveOutKinds } from '../../src/words/statement-words.ts';
import { allTerms } from '../../src/words/terms.ts';
import { studyOfExample, studyOfText } from '../examples/study-of-example.ts';
import { asFile, type Compared, compared, marlHill, statementOf, twoBuildings } from './compared.ts';
import { piecesOf, readEntities, sectionOf } from './page-of.ts';

const page = statementOf(marlHill);
const rowsOf = (html: string): readonly (readonly string[])[] =>
  html
    .split('<tr>')
    .slice(1)
    .map((r) => piecesOf(`<body>${r}`));

/** Cells of a row with their lines, read apart from the code under test. */
const cellsOf = (html: string, first: RegExp): readonly string[] => {
  const row = html.split('<tr>').find((r) => first.test(piecesOf(`<body>${r}`)[0] ?? '')) ?? '';
  return [...row.matchAll(/<t[hd][^>]*>(.*?)<\/t[hd]>/gs)].map((m) =>
    readEntities(m[1]!.replace(/<span>/g, ' | ').replace(/<[^>]*>/g, '')).trim(),
  );
};

const flat = asFile(studyOfExample('town-flat/town-flat.site.yaml'), 'e');
/** The flat with the roof mast bonded to the main bar. */
const flatAfter: Study = asFile({ ...flat, site: { ...flat.site, revision: 'after' } }, 'f');

describe('the statement of Marl Hill', () => {
  it('tells what was there, what was done, figures, what is open, cables, electrodes, cautions, words, signatures', () => {
    const ids = [...page.matchAll(/<section id="([^"]+)"/g)].map((m) => m[1]);
    expect(ids).toEqual([
      'found',
      'done',
      'plan',
      'figures',
      'open',
      'lines',
      'electrodes',
      'cautions',
      'left-out',
      'words',
      'signatures',
    ]);
  });

  it('has both dates, both files and an empty line for each who signs', () => {
    const said = piecesOf(page);
    expect(said).toEqual(
      expect.arrayContaining(['As found', '2026-05-02 (as found)', 'As left', '2026-06-28 (after rework)']),
    );
    expect(said.some((t) => t.startsWith('marl-hill/marl-hill.site.yaml: aaaa'))).toBe(true);
    expect(
      rowsOf(sectionOf(page, 'signatures'))
        .slice(1)
        .map((r) => r.length),
    ).toEqual([1, 1, 1, 1]);
  });

  it('has for each cable from outside its protector, where it is bonded, and how long the bond is', () => {
    const lines = sectionOf(page, 'lines');
    // From the two files: the dipole's cable came in bare, and has a3 on the plate now; the strap c2 from plate to E2 is 3 ft.
    expect(cellsOf(lines, / line2, coax$/)).toEqual([
      expect.stringMatching(/^\d+ line2, coax$/),
      'nothing | shield bonded to nothing',
      expect.stringMatching(/^gas tube \d+ a3 on \d+ entry \| shield bonded at \d+ entry$/),
      expect.stringMatching(/^3 ft \(0\.914 m\) to \d+ E2$/),
    ]);
    // a2 lay on the desk, bonded to nothing.
    expect(cellsOf(lines, / line3, coax$/)[1]).toMatch(/^gas tube \d+ a2, bonded to nothing/);
    // A mains protector with a lead of 3 in sits in the panel where the drop comes in.
    expect(cellsOf(lines, / service-drop, mains$/).slice(1, 3)).toEqual([
      'nothing',
      expect.stringMatching(/^surge protective device of the mains \d+ spd on \d+ main-panel, lead 3 in \(76\.2 mm\)$/),
    ]);
    expect(cellsOf(lines, / shed-feeder, mains$/).slice(1)).toEqual(['nothing', 'nothing', 'none']);
  });

  it('names every cable: in the table, or among those that run inside one building', () => {
    const lines = sectionOf(page, 'lines');
    const said = piecesOf(`<body>${lines}`).join('\n');
    expect(marlHill.after.lines.length).toBe(16);
    for (const { id } of marlHill.after.lines) expect(said).toMatch(new RegExp(`(?<![\\w-])${id}(?![\\w-])`));
  });

  it('says of each electrode whether its figure was measured', () => {
    const electrodes = sectionOf(page, 'electrodes');
    const names = rowsOf(electrodes)
      .slice(1)
      .flatMap((r) => r[0]!.split(', ').map((n) => n.replace(/^\d+ /, '')));
    expect(names.sort()).toEqual(marlHill.after.earth.electrodes.map((e) => e.id).sort());
    // Reading r2 stands in the first file only: fall of potential at E2, 34, 35 and 37 ohm.
    expect(cellsOf(electrodes, / E2$/).at(-1)).toBe('worked out; measured as found: 34 to 37 ohm');
    expect(cellsOf(electrodes, / tower-ring$/).at(-1)).toBe('worked out');
  });

  it('says measured of an electrode with a reading of its own', () => {
    const back = compared(marlHill.after, marlHill.before);
    expect(cellsOf(sectionOf(statementOf(back), 'electrodes'), / E2$/).at(-1)).toBe('measured');
  });

  it('has figures before and after that are those of the two files', () => {
    const figures = sectionOf(page, 'figures');
    expect(cellsOf(figures, /^Findings: hazards$/).slice(1, 3)).toEqual([String(marlHill.before.verdict.hazards), '0']);
    // E2 and anchor-rod stood apart, of four; all fifteen hang together now.
    expect(cellsOf(figures, /^Grounding electrodes not joined/).slice(1, 3)).toEqual(['2 of 4', '0 of 15']);
    // line2, line4, rotor, lan-tower, service-drop, shed-feeder, and line3 whose tube was bonded to nothing; the feeder is left.
    expect(cellsOf(figures, /^Cables from outside/).slice(1, 3)).toEqual(['7 of 9', '1 of 9']);
  });

  it('says what is still unprotected, and claims nothing', () => {
    const said = piecesOf(page);
    expect(
      piecesOf(`<body>${sectionOf(page, 'open')}`).some((t) =>
        /^With nothing that protects them .* shed-feeder \(mains\)\.$/.test(t),
      ),
    ).toBe(true);
    expect(said.some((t) => t.includes('No grounding keeps a direct strike from doing damage'))).toBe(true);
    expect(said.filter((t) => /\bsafe(?:ly|ty)?\b|guarantee|fully protected|cannot be damaged/i.test(t))).toEqual([]);
  });

  it('says how many findings are not met even where it cannot name all', () => {
    const open = piecesOf(`<body>${sectionOf(page, 'open')}`);
    const { hazards, defects, advices, cannotTell, agreed } = marlHill.after.verdict;
    expect(open.some((t) => t.startsWith(`Not met (${hazards + defects + advices}): `))).toBe(true);
    expect(open.some((t) => t.startsWith(`Could not be told whether these hold (${cannotTell}): `))).toBe(true);
    expect(open.some((t) => t.startsWith(`Agreed by the owner to stand (${agreed}): `))).toBe(true);
  });

  it('has no script and fetches nothing', () => {
    expect(page).not.toMatch(/<script|<link|<iframe|javascript:|@import|url\(/i);
    expect(page.match(/(?:src|href)="(?!#|data:)[^"]*"/g)).toBeNull();
  });

  it('is the same each time, and from studies that were stored', () => {
    expect(statementOf(JSON.parse(JSON.stringify(marlHill)) as Compared)).toBe(page);
  });
});

describe('what protects the mains', () => {
  const good = asFile(studyOfExample('good-iec/good-iec.site.yaml'), '8');
  const html = statementOf(compared(flat, good));

  it('is found on the bar beside the meter, for the cable from the street and what it feeds', () => {
    const lines = sectionOf(html, 'lines');
    for (const id of ['supply-cable', 'rising-main'])
      expect(cellsOf(lines, new RegExp(` ${id}, mains$`))[2]).toMatch(/^SPD of the mains \d+ spd on \d+ main-bar/);
  });

  it('and a resistance of which only the metal is known is not known', () => {
    expect(cellsOf(sectionOf(html, 'figures'), /^Earth resistance of all/)[1]).toBe('not known');
  });
});

/** Words of the tables that stand in a text: as a whole, in the singular or plural, whatever their case. */
function tableWordsIn(texts: readonly string[], side: 'us' | 'iec'): readonly string[] {
  const words = [...allTerms().map((t) => t[side]), ...houseMeanings.map(([word]) => word)];
  const plain = (t: string) => ` ${t.toLowerCase().replace(/[^\p{L}()-]+/gu, ' ')} `;
  const all = texts.map(plain);
  return [...new Set(words)].filter((w) => {
    const forms = [w, `${w}s`, `${w}es`].map((f) => f.toLowerCase());
    return all.some((t) => forms.some((f) => t.includes(` ${f} `)));
  });
}

describe.each([
  ['Marl Hill', marlHill, 'us'],
  ['two buildings', twoBuildings, 'us'],
  ['a flat under IEC', compared(flat, flatAfter), 'iec'],
] as const)('each word of the term tables on the statement of %s', (_, all, side) => {
  const html = statementOf(all);
  const explained = [...sectionOf(html, 'words').matchAll(/<dt>([^<]*)<\/dt><dd>([^<]+)<\/dd>/g)].map((m) =>
    readEntities(m[1]!),
  );

  it('is explained on it, and no other', () => {
    const found = tableWordsIn(piecesOf(html), side);
    expect(found.length).toBeGreaterThan(5);
    expect([...explained].sort()).toEqual([...found].sort());
  });

  it('is of its own region', () => {
    const other = side === 'us' ? 'iec' : 'us';
    const own = allTerms().map((t) => t[side]);
    const typed = new Set(all.after.parts.map((p) => p.id));
    const foreign = allTerms()
      .map((t) => t[other])
      .filter((w) => !['stay', 'listed'].includes(w) && !own.some((o) => o.includes(w)));
    const texts = piecesOf(html).filter((t) => !typed.has(t));
    for (const word of foreign) {
      const whole = new RegExp(
        `(?<!\\p{L})${word.replace(/[()]/g, '\\$&')}s?(?!\\p{L})`,
        word === word.toUpperCase() ? 'u' : 'iu',
      );
      expect(texts.filter((t) => whole.test(t))).toEqual([]);
    }
  });
});

describe('what leaves the house is the owner’s choice', () => {
  const full = (revision: string, more: string) =>
    studyOfText(`
site:
  name: Quarry corner
  region: us
  units: ft
  service: none
  address: 12 Invented Lane
  owner: Ada Example
  permit: P-4711
  revision: ${revision}
  prepared: {by: Bo Sample, for: Example Mutual, date: 2026-01-02}
buildings: {hut: {corners: [[0, 0], [10, 0], [10, 10], [0, 10]]}}
electrodes:
  E1: {kind: rod, at: [12, 0], length: 8 ft, owner: Cy Pattern, photo: [mark.jpg]}
${more}
prices: {currency: USD, rod: 28}
`);
  const was = asFile(full('found', ''), '1');
  const is = asFile(full('left', '  E2: {kind: rod, at: [30, 0], length: 8 ft}'), '2');
  const stored = (study: Study) => JSON.parse(JSON.stringify(study)) as Study;
  const named = (study: Study): Study => ({
    ...study,
    findings: stored(study).findings.map((f) => ({ ...f, title: `${f.title} seen by Ada Example` })),
  });
  const all = compared(named(was), named(is));
  const marks: Readonly<Record<LeaveOut, readonly string[]>> = {
    address: ['12 Invented Lane'],
    names: ['Ada Example', 'Bo Sample', 'Example Mutual'],
    site: ['Quarry corner', 'typed.site.yaml'],
    permit: ['P-4711'],
    plan: ['<svg'],
    photos: ['mark.jpg'],
    prices: ['USD'],
  };

  it('leaves nothing out unless told, and says so', () => {
    const html = statementOf(all);
    for (const kind of leaveOutKinds) for (const mark of marks[kind]) expect(html).toContain(mark);
    expect(piecesOf(`<body>${sectionOf(html, 'left-out')}`).join(' ')).toContain('By the owner’s choice: nothing.');
  });

  it.each(leaveOutKinds)('leaves out %s wherever it stands, says so, and leaves all else', (kind) => {
    const html = statementOf(all, [kind]);
    for (const mark of marks[kind]) expect(html).not.toContain(mark);
    for (const other of leaveOutKinds.filter((k) => k !== kind))
      for (const mark of marks[other]) expect(html).toContain(mark);
    const said = piecesOf(`<body>${sectionOf(html, 'left-out')}`).join(' ');
    expect(said).toMatch(/By the owner’s choice: (?!nothing)/);
  });

  it('says all that it leaves out', () => {
    const said = piecesOf(`<body>${sectionOf(statementOf(all, leaveOutKinds), 'left-out')}`).join(' ');
    for (const word of ['address', 'names of people', 'name of the site', 'permit', 'plan', 'photographs', 'prices'])
      expect(said).toContain(word);
  });
});
