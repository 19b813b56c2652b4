import { describe, expect, it } from 'vitest';
import { type Fate, fateSign, fateStroke, fates } from '../../src/drawing/compare-fate.ts';
import { changesNotOnPlan, comparePlan, hasComparePlan } from '../../src/drawing/compare-plan.ts';
import { compareSchematic } from '../../src/drawing/compare-schematic.ts';
import { unionOf } from '../../src/drawing/compare-union.ts';
import { studyOfExample, studyOfText } from '../examples/study-of-example.ts';
import { type Compared, compared, marlHill, twoBuildings } from '../report/compared.ts';
import { boxesOf, overlap, textsOf } from './drawn.ts';

/** E1 stays, E2 goes, E3 comes, E4 has another length, E5 stands 6 m farther east; w1 stays, w2 goes, w3 comes. */
const field = (electrodes: string, conductors: string) =>
  studyOfText(`
site: {name: Field, region: iec, units: m, service: none}
electrodes:
  E1: {kind: rod, at: [0, 0], length: 1.5 m}
${electrodes}
conductors:
  w1: {from: E1, to: E4, wire: 16 mm2 copper}
${conductors}
`);
const before = field(
  `  E2: {kind: rod, at: [20, 0], length: 1.5 m}
  E4: {kind: rod, at: [0, 20], length: 1.5 m}
  E5: {kind: rod, at: [30, 20], length: 1.5 m}`,
  '  w2: {from: E1, to: E2, wire: 16 mm2 copper}',
);
const after = field(
  `  E3: {kind: rod, at: [20, -15], length: 1.5 m}
  E4: {kind: rod, at: [0, 20], length: 3 m}
  E5: {kind: rod, at: [36, 20], length: 1.5 m}`,
  '  w3: {from: E1, to: E3, wire: 16 mm2 copper}',
);
const changed = compared(before, after);

function planOf({ before: was, after: is, comparison }: Compared): string {
  return comparePlan(was, is, comparison);
}

describe('a plan of two studies', () => {
  const svg = planOf(changed);
  const said = textsOf(svg).map((t) => t.text);

  it('has the sign of what became of it before the number of each piece', () => {
    const label = (id: string) => said.find((t) => t.endsWith(` ${id}`));
    expect(label('E1')).toMatch(/^\d+ E1$/);
    expect(label('E2')).toMatch(/^×\d+ E2$/);
    expect(label('E3')).toMatch(/^\+\d+ E3$/);
    expect(label('E4')).toMatch(/^Δ\d+ E4$/);
    expect(
      said
        .filter((t) => /^[+×Δ]\d+\?$/.test(t))
        .map((t) => t.charAt(0))
        .sort(),
    ).toEqual(['+', '×']);
  });

  it('tells them apart when printed without colour: strokes, dashes and signs differ', () => {
    const looks = fates.map((fate: Fate) => {
      const { stroke, ...rest } = fateStroke(fate);
      expect(stroke).toBeTruthy();
      return JSON.stringify(rest);
    });
    expect(new Set(looks).size).toBe(fates.length);
    expect(new Set(fates.map((f) => fateSign[f])).size).toBe(fates.length);
    const grey = svg.replace(/ (?:stroke|fill)="#[0-9a-f]{6}"/g, '');
    const runs = [...grey.matchAll(/<polyline points="[^"]*"( [^>]*)>/g)].map(([, rest]) => rest!);
    expect(new Set(runs.filter((r) => r.includes('stroke-width'))).size).toBeGreaterThanOrEqual(3);
  });

  it('explains in its legend each stroke that it has, and no other', () => {
    const entries = ['+ added', '× removed', 'Δ changed', 'as it was'];
    for (const entry of entries) expect(said.some((t) => t.startsWith(entry))).toBe(true);
    const itself = textsOf(planOf(compared(before, before))).map((t) => t.text);
    expect(itself.filter((t) => entries.some((e) => t.startsWith(e)))).toEqual(['as it was: thin, pale']);
  });

  it('shows where something stood that was moved, 6 m beside where it stands', () => {
    const ratio = Number(/1:(\d+)/.exec(svg)![1]);
    const [, x1, x2] = /<line x1="([\d.]+)" y1="[\d.]+" x2="([\d.]+)" y2="[\d.]+"[^>]*stroke-dasharray="0.4 0.8"/.exec(
      svg,
    )!;
    expect(Math.abs(Number(x2) - Number(x1))).toBeCloseTo(6000 / ratio, 1);
    expect(said).toContain('where it stood before');
  });

  it('names what was added, removed and changed for those who cannot see it', () => {
    const description = /<desc>([^<]*)<\/desc>/.exec(svg)![1]!;
    expect(description).toContain('Added: E3, w3.');
    expect(description).toContain('Removed: E2, w2.');
    expect(description).toMatch(/Changed: (?:E4, E5|E5, E4)\./);
  });
});

describe('both studies as one', () => {
  it('keeps apart a part that is gone and another that bears its name now', () => {
    const plain = (id: string, to: string) =>
      studyOfText(`
site: {name: Field, region: iec, units: m, service: none}
electrodes:
  ${id}: {kind: rod, at: [0, 0], length: 1.5 m}
  F: {kind: rod, at: [9, 9], length: 1.5 m}
conductors: {w: {from: ${to}, to: F, wire: 16 mm2 copper}}
`);
    const [was, is] = [plain('E', 'E'), plain('E', 'E')];
    const parts = { ...compared(was, is).comparison.parts, pairs: [], changed: [] };
    const union = unionOf(was, is, parts);
    expect(union.study.parts.map((p) => p.id)).toEqual(
      expect.arrayContaining(['E', 'E (before)', 'F', 'F (before)', 'w', 'w (before)']),
    );
    expect(union.study.conductors.map((c) => `${c.id}: ${c.from}, ${c.to}`)).toEqual([
      'w: E, F',
      'w (before): E (before), F (before)',
    ]);
    expect(union.fates.get('E')).toBe('added');
    expect(union.fates.get('E (before)')).toBe('removed');
  });

  it('takes what is typed as not there any more for removed', () => {
    const { fates: all } = unionOf(marlHill.before, marlHill.after, marlHill.comparison.parts);
    expect(all.get('thick-one')).toBe('removed');
    expect(all.get('tower-ring')).toBe('added');
    expect(all.get('clamp1')).toBe('removed');
    expect(all.get('guy-1')).toBe('changed');
    expect(all.get('roof-mast')).toBe('same');
  });
});

describe.each([
  ['Marl Hill', marlHill],
  ['two buildings', twoBuildings],
])('the plan of %s', (_, all) => {
  const svg = planOf(all);

  it('has labels that cover no other and stay inside the frame', () => {
    const frame = boxesOf(svg, 'stroke-width="0.35"')[0]!;
    const labels = [...boxesOf(svg, 'fill-opacity'), ...boxesOf(svg, 'rx=')];
    expect(labels.length).toBeGreaterThan(3);
    const pairs = labels.flatMap((a, i) => labels.slice(i + 1).map((b) => [a, b] as const));
    expect(pairs.filter(([a, b]) => overlap(a, b))).toEqual([]);
    for (const l of labels) {
      expect(l.xMm).toBeGreaterThanOrEqual(frame.xMm);
      expect(l.xMm + l.widthMm).toBeLessThanOrEqual(frame.xMm + frame.widthMm);
      expect(l.yMm + l.heightMm).toBeLessThanOrEqual(frame.yMm + frame.heightMm);
    }
  });

  it('shows everything that something became of, or says what it leaves out', () => {
    const said = textsOf(svg)
      .map((t) => t.text)
      .join('\n');
    const missing = changesNotOnPlan(all.before, all.after, all.comparison);
    const placed = all.comparison.parts.added.filter(
      (p) => p.positionM !== null && p.routeM.length < 2 && ['electrodes', 'bars', 'arresters'].includes(p.section),
    );
    expect(placed.length).toBeGreaterThan(2);
    for (const p of placed) expect(said.includes(` ${p.id}`) !== missing.includes(p.id)).toBe(true);
  });

  it('explains each letter before a number and each mark behind one, and no other', () => {
    const said = textsOf(svg).map((t) => t.text);
    const labels = said.flatMap((t) => /^[+×Δ]?([A-Z]?)\d+(\??)$/.exec(t) ?? []).filter((t) => /^[A-Z?]$/.test(t));
    const legend = said.slice(said.indexOf('Legend')).filter((t) => /^[A-Z?]$/.test(t));
    expect(legend.length).toBeGreaterThan(1);
    expect([...legend].sort()).toEqual([...new Set(labels)].sort());
    expect(said.includes('not known whether in the soil')).toBe(labels.includes('?'));
  });

  it('is the same each time, and from studies that were stored', () => {
    const stored = JSON.parse(JSON.stringify(all)) as Compared;
    expect(planOf(stored)).toBe(svg);
  });
});

describe('without places', () => {
  const flat = studyOfExample('town-flat/town-flat.site.yaml');
  const fewer = { ...flat, parts: flat.parts.filter((p) => p.id !== 'computer') };
  const all = compared(flat, fewer);

  it('there is a schematic that says that it is no plan, with the same signs', () => {
    expect(hasComparePlan(all.before, all.after, all.comparison)).toBe(false);
    const said = textsOf(compareSchematic(all.before, all.after, all.comparison)).map((t) => t.text);
    expect(said).toContain('Schematic, not to scale: too few positions are typed for a plan.');
    expect(said.filter((t) => /^×\d+$/.test(t)).length).toBeGreaterThan(0);
  });
});
