import { describe, expect, it } from 'vitest';
import { bondingDiagram } from '../../src/drawing/bonding-diagram.ts';
import { schematic } from '../../src/drawing/schematic.ts';
import { hasPlan, sitePlan } from '../../src/drawing/site-plan.ts';
import type { Study } from '../../src/study/study.ts';
import { studyOfExample, studyOfText } from '../examples/study-of-example.ts';
import { pageOf, piecesOf, sectionOf } from '../report/page-of.ts';
import { clubStudy, houseStudy } from '../report/samples.ts';
import { textsOf } from './drawn.ts';

/** A tower with two guys, drawn as a schematic: no place is typed. */
const unplacedTower = `
site: {name: Field, region: iec, units: m, service: unknown}
electrodes:
  R1: {kind: rod, length: 1.5 m}
supports:
  tower: {kind: tower, height: 12 m, guys: {guy-a: {metal: galvanised steel}, guy-b: {}}}
conductors:
  lead: {from: guy-a@tower, to: R1, wire: 16 mm2 copper, length: 1 m}
`;

const studies: readonly (readonly [string, Study])[] = [
  ['the club', clubStudy],
  ['the house', houseStudy],
  ['Marl Hill', studyOfExample('marl-hill/marl-hill.site.yaml')],
  ['a tower of which no place is known', studyOfText(unplacedTower)],
  ['the careful station', studyOfExample('good-us/good-us.site.yaml')],
];

/** Number of each part by its name, read from the rows of the schedules; `No.` is their first column. */
function numbersInSchedules(study: Study): ReadonlyMap<string, string> {
  const numbers = new Map<string, string>();
  const add = (name: string, number: string) => {
    expect(numbers.get(name) ?? number, `${name} has one number`).toBe(number);
    numbers.set(name, number);
  };
  const section = sectionOf(pageOf(study), 'schedules');
  for (const table of section.split('<div class="table').slice(1)) {
    const rows = table.split('<tr>').filter((row) => row.includes('scope="row"'));
    const cells = rows.map((row) => row.split(/<\/t[hd]>/).map((cell) => piecesOf(`<body>${cell}`)));
    if (table.includes('id="schedule-joints"')) {
      for (const [, list] of cells) {
        for (const name of list!.join(' ').matchAll(/(?:^|, )(\d+[a-z]*) ([^\s,]+)/g)) add(name[2]!, name[1]!);
      }
    } else for (const [number, name] of cells) add(name![0]!, number![0]!);
  }
  return numbers;
}

describe.each(studies)('the drawings of %s', (_, study) => {
  const numbers = numbersInSchedules(study);
  const plan = hasPlan(study) ? sitePlan(study) : schematic(study);
  const drawings = [plan, bondingDiagram(study)];

  it('number every part and every guy as the schedules do', () => {
    expect([...numbers.keys()].sort()).toEqual(
      expect.arrayContaining([...study.parts, ...study.guys].map((p) => p.id).sort()),
    );
  });

  it('name no part under another number', () => {
    const pairs = drawings.flatMap((svg) => pairsOf(svg));
    const known = pairs.filter(([, name]) => numbers.has(name));
    expect(known.length).toBeGreaterThan(study.parts.length / 2);
    for (const [number, name] of known) expect([name, number]).toEqual([name, numbers.get(name)]);
  });

  it('show every guy under the number of its row, on the plan where its anchor is known and in the schematic always', () => {
    const drawn = new Map(pairsOf(plan).map(([number, name]) => [name, number]));
    const due = study.guys.filter((g) => !hasPlan(study) || g.anchorM !== null);
    expect(due.map((g) => drawn.get(g.id))).toEqual(due.map((g) => numbers.get(g.id)));
  });

  it('mark runs and ties with numbers of lines and conductors that stand in a schedule', () => {
    const all = new Set(numbers.values());
    const bare = textsOf(drawings.join('')).flatMap(
      ({ text }) => /^(?:by )?[FPTDCL]?(\d+[a-z]*)\??$/.exec(text)?.[1] ?? [],
    );
    expect(bare.length).toBeGreaterThan(0);
    // The scale bars have figures too.
    const scale = new Set(['0', '1', '2', '4', '5', '10', '20', '40', '100', '200']);
    expect(bare.filter((n) => !all.has(n) && !scale.has(n))).toEqual([]);
  });
});

/** Number and name where they stand beside each other: `5 tower !` on the plan, two texts of one row elsewhere. */
function pairsOf(svg: string): readonly (readonly [number: string, name: string])[] {
  const texts = textsOf(svg);
  return texts.flatMap(({ text, yMm }, i) => {
    const together = /^(\d+) (\S+?)(?: ×\d+)?(?: !)?$/.exec(text);
    if (together !== null) return [[together[1]!, together[2]!] as const];
    const next = texts[i + 1];
    const isRow = /^\d+$/.test(text) && next !== undefined && Math.abs(next.yMm - yMm) < 0.01;
    return isRow ? [[text, next.text.replace(/ ×\d+$/, '')] as const] : [];
  });
}
