import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { compareStudies } from '../../src/compare/compare-studies.ts';
import { mirrored, summary } from './mirror.ts';
import { renameIds } from './rename-ids.ts';
import { root, stored, studyOfText, textOf } from './study-of-text.ts';

/** Every layout that was typed before and after. */
const reworked = readdirSync(join(root, 'tests/cases'))
  .filter((name) => name.endsWith('-after.site.yaml'))
  .map((name) => [`tests/cases/${name.replace('-after', '')}`, `tests/cases/${name}`] as const);
const pairs = [
  ['examples/marl-hill/marl-hill.site.yaml', 'examples/marl-hill/marl-hill-after.site.yaml'],
  ['examples/two-buildings/two-buildings.site.yaml', 'examples/two-buildings/two-buildings-after.site.yaml'],
  ...reworked,
] as const;

describe('a comparison', () => {
  it.each(pairs)('mirrors the one the other way round: %s', (before, after) => {
    const [b, a] = [before, after].map((file) => studyOfText(textOf(file), { beside: join(root, file) })) as [
      never,
      never,
    ];
    expect(summary(compareStudies(a, b))).toEqual(mirrored(compareStudies(b, a)));
  });

  it.each(pairs)('of a file with itself is empty, read from a store or not: %s', (before) => {
    const b = studyOfText(textOf(before), { beside: join(root, before) });
    for (const a of [b, stored(b)]) {
      const c = compareStudies(b, a);
      expect(c).toMatchObject({ differs: false, worseIn: 0, betterIn: 0, site: [] });
      expect(c.materials).toEqual({ added: [], removed: [] });
      const { pairs: kept, ...parts } = c.parts;
      expect(Object.values(parts).flat()).toEqual([]);
      expect(kept.every((p) => p.before === p.after && p.by === 'id')).toBe(true);
    }
  });

  it('gives the same with a stored study in the place of either', () => {
    const [b, a] = pairs[0].map((file) => studyOfText(textOf(file))) as [never, never];
    const fresh = compareStudies(b, a);
    expect(JSON.stringify(compareStudies(stored(b), stored(a)))).toBe(JSON.stringify(fresh));
    expect(JSON.stringify(compareStudies(b, stored(a)))).toBe(JSON.stringify(fresh));
  });

  // c5 has another end and another wire, trench-net is of another kind: without a name in common they are other things
  it.each([
    [pairs[0], 'c5'],
    [pairs[1], 'trench-net'],
  ])('of a rework knows what stayed when everything has another name after it: %s', ([before, after], changed) => {
    const b = studyOfText(textOf(before));
    const plain = compareStudies(b, studyOfText(textOf(after)));
    const renamed = compareStudies(b, studyOfText(renameIds(textOf(after), (id) => `x-${id}`)));
    expect(renamed.parts.pairs.map((p) => [p.before, p.after])).toEqual(
      plain.parts.pairs.filter((p) => p.before !== changed).map((p) => [p.before, `x-${p.after}`]),
    );
    expect(renamed.parts.added.map((p) => p.id)).toEqual(
      [...plain.parts.added.map((p) => p.id), changed].map((id) => `x-${id}`).sort(),
    );
    expect(renamed.parts.removed.map((p) => p.id)).toEqual([...plain.parts.removed.map((p) => p.id), changed].sort());
    expect(renamed.worseIn).toBe(plain.worseIn);
  });

  it('with the strike of a file with itself, and of one with other names, differs in nothing', () => {
    const text = textOf('examples/marl-hill/marl-hill-after.site.yaml');
    const b = studyOfText(text, { detail: true });
    expect(b.strikes[0]!.differences.length).toBeGreaterThan(5);
    expect(compareStudies(b, stored(b)).differs).toBe(false);
    const renamed = compareStudies(
      b,
      studyOfText(
        renameIds(text, (id, i) => `n${9999 - i}-${id.length}`),
        { detail: true },
      ),
    );
    const { differences, conductors, electrodes } = renamed.strike!;
    expect([...differences, ...conductors, ...electrodes].filter((row) => row.standing !== 'same')).toEqual([]);
    expect(renamed.differs).toBe(false);
  });
});
