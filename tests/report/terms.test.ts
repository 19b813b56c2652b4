import { describe, expect, it } from 'vitest';
import type { Study } from '../../src/study/study.ts';
import { allTerms } from '../../src/words/terms.ts';
import { studyOfExample } from '../examples/study-of-example.ts';
import { pageOf, piecesOf } from './page-of.ts';
import { clubStrike, houseStrike, struck } from './sample-strike.ts';
import { clubStudy, houseStudy } from './samples.ts';

/** Words of one dictionary that are plain English as well: a rung of the ladder stays, a listed condition. */
const plainEnglish = new Set(['stay', 'listed']);

/** Words that only the other dictionary has. */
function foreignWords(side: 'us' | 'iec'): readonly string[] {
  const other = side === 'us' ? 'iec' : 'us';
  const own = allTerms().map((t) => t[side].toLowerCase());
  return allTerms()
    .map((t) => t[other])
    .filter((word) => !plainEnglish.has(word) && !own.some((w) => w.includes(word.toLowerCase())));
}

/** Texts with foreign words that are the owner's or another document's own, or names of rules: shown as they are. */
function quoted(study: Study, side: 'us' | 'iec'): readonly string[] {
  const foreign = foreignWords(side).map((w) => w.toLowerCase());
  const texts: string[] = [...study.findings, ...study.conditions].map((f) => f.rule);
  const cited = [...study.sources, ...study.findings.map((f) => f.source), ...study.conditions.map((c) => c.source)];
  const formulas = study.earth.electrodes.flatMap((e) => [e.formula, e.source?.document, e.source?.clause]);
  const typed = study.parts.flatMap((p) => [p.id, p.kind, p.note, p.owner, ...Object.values(p.typed)]);
  const guys = study.guys.flatMap((g) => [g.id, g.note, ...Object.values(g.typed)]);
  const site = Object.values(study.site).filter((v) => typeof v === 'string');
  const ends = [...study.joints.flatMap((j) => [j.id, j.on]), ...study.conductors.flatMap((c) => [c.from, c.to])];
  const says = study.states.flatMap((s) => [s.id, s.says]);
  const all = [
    ...texts,
    ...cited.flatMap((s) => [s.document, s.clause]),
    ...formulas,
    ...typed,
    ...guys,
    ...site,
    ...ends,
    ...says,
  ];
  return [
    ...new Set(
      all.filter((t): t is string => typeof t === 'string' && foreign.some((w) => t.toLowerCase().includes(w))),
    ),
  ].sort((a, b) => b.length - a.length);
}

/** Each foreign word on a page, with what stands round it. */
function foreignOn(study: Study, side: 'us' | 'iec'): readonly string[] {
  const own = quoted(study, side);
  const pieces = piecesOf(pageOf(study)).map((piece) => own.reduce((left, q) => left.replaceAll(q, '…'), piece));
  return foreignWords(side).flatMap((word) => {
    const escaped = word.replace(/[()]/g, '\\$&');
    const flags = word === word.toUpperCase() ? 'u' : 'iu';
    const whole = new RegExp(`(?<![\\p{L}])${escaped}(?:s|es)?(?![\\p{L}])`, flags);
    return [...new Set(pieces.filter((p) => whole.test(p)))].map((p) => `${word}: ${p.slice(0, 160)}`);
  });
}

const us: readonly (readonly [string, Study])[] = [
  ['the club', clubStudy],
  ['the club, struck', struck(clubStudy, clubStrike)],
  ...['marl-hill/marl-hill', 'first-dipole/first-dipole', 'good-us/good-us', 'good-ca/good-ca'].map(
    (name) => [name, studyOfExample(`${name}.site.yaml`)] as const,
  ),
];
const iec: readonly (readonly [string, Study])[] = [
  ['the house', houseStudy],
  ['the house, struck', struck(houseStudy, houseStrike)],
  ...['town-flat/town-flat', 'good-iec/good-iec', 'good-uk/good-uk', 'good-au/good-au'].map(
    (name) => [name, studyOfExample(`${name}.site.yaml`)] as const,
  ),
];

describe('a page speaks the words of one region', () => {
  it('which differ enough to be looked for', () => {
    expect(foreignWords('us')).toEqual(expect.arrayContaining(['earth electrode', 'earth rod', 'SPD', 'earthing']));
    expect(foreignWords('iec')).toEqual(
      expect.arrayContaining(['grounding electrode', 'ground rod', 'guy', 'service']),
    );
  });

  it.each(us)('%s: the United States and Canada', (_, study) => {
    expect(foreignOn(study, 'us')).toEqual([]);
  });

  it.each(iec)('%s: everybody else', (_, study) => {
    expect(foreignOn(study, 'iec')).toEqual([]);
  });

  it('and a word of the other would be found', () => {
    const verdict = { ...clubStudy.verdict, text: ['The earth rods are apart.', ...clubStudy.verdict.text] };
    const found = foreignOn({ ...clubStudy, verdict }, 'us').map((f) => f.split(':')[0]);
    expect(found).toEqual(['earth rod', 'earth']);
  });
});
