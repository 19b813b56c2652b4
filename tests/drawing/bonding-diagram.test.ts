import { describe, expect, it } from 'vitest';
import { bondingDiagram } from '../../src/drawing/bonding-diagram.ts';
import { itemNumbers } from '../../src/drawing/item-numbers.ts';
import type { Study } from '../../src/study/study.ts';
import { exampleFiles, studyOfExample } from '../examples/study-of-example.ts';
import { pageOf, piecesOf, sectionOf } from '../report/page-of.ts';
import { clubStudy, houseStudy } from '../report/samples.ts';
import { textsOf } from './drawn.ts';

const studies: readonly (readonly [string, Study])[] = [
  ['the club', clubStudy] as const,
  ['the house', houseStudy] as const,
  ...exampleFiles().map((file) => [file, studyOfExample(file)] as const),
];

describe.each(studies)('the bonding diagram of %s', (_, study) => {
  const svg = bondingDiagram(study);
  const texts = textsOf(svg);

  it('has each part of each group in one row', () => {
    const numbers = itemNumbers(study);
    const long = new Set(study.parts.filter((p) => ['conductors', 'lines'].includes(p.section)).map((p) => p.id));
    const ids = new Set(study.parts.map((p) => p.id));
    const wanted = study.bonding.groups.flatMap((g) => g.parts).filter((id) => ids.has(id) && !long.has(id));
    const bold = /<text [^>]*font-weight="bold"[^>]*>(\d+)<\/text>/g;
    const rows = [...svg.matchAll(bold)].map((m) => m[1]!);
    expect(rows.sort()).toEqual(wanted.map((id) => numbers.get(id)!).sort());
  });

  it('marks weak points as the table does', () => {
    const sample = 'W1'; // of the legend
    const marks = texts.map((t) => t.text).filter((t) => /^W\d+( W\d+)*$/.test(t));
    const table = piecesOf(`<body>${sectionOf(pageOf(study), 'weak')}`).filter((t) => /^W\d+$/.test(t));
    const drawn = new Set([...marks.flatMap((m) => m.split(' '))].filter((m) => m !== sample));
    expect(table.length > 0 ? table[0] : sample).toBe(sample);
    for (const mark of drawn) expect(table).toContain(mark);
  });

  it('fits a sheet at a size that can be read, or is a very long list', () => {
    const heightMm = Number(/height="([\d.]+)mm"/.exec(svg)![1]);
    expect(heightMm).toBeLessThan(260);
  });

  it('has a legend for every stroke and symbol', () => {
    expect(texts.map((t) => t.text)).toEqual(expect.arrayContaining(['Legend', 'bond', 'unknown tie']));
  });
});

it('a group of many parts is set in both columns, and its second half says that it goes on', () => {
  const svg = bondingDiagram(studyOfExample('good-us/good-us.site.yaml'));
  const titles = textsOf(svg).filter((t) => t.text.endsWith('(continued)'));
  expect(titles).toHaveLength(1);
  expect(titles[0]!.xMm).toBeGreaterThan(90);
});
