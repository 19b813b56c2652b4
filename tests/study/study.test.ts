import { describe, expect, it } from 'vitest';
import { exampleFiles, studyOfExample } from '../examples/study-of-example.ts';

/** Keys that others may build on: never renamed. */
const keys = [
  'format',
  'tool',
  'site',
  'state',
  'codes',
  'parts',
  'assumptions',
  'unknowns',
  'bonding',
  'paths',
  'lines',
  'reach',
  'conductors',
  'joints',
  'arresters',
  'earth',
  'findings',
];

describe.each(exampleFiles())('the study of %s', (file) => {
  const study = studyOfExample(file);
  const text = JSON.stringify(study, null, 2);

  it('has the keys of the contract', () => {
    expect(keys.filter((key) => !Object.hasOwn(study, key))).toEqual([]);
  });

  it('is the same text written, read and written again', () => {
    expect(JSON.stringify(JSON.parse(text), null, 2)).toBe(text);
  });

  it('loses nothing in JSON but the open end of a range, which is null there', () => {
    expect(notFinite(study).filter((path) => !path.endsWith('.high'))).toEqual([]);
    expect(JSON.parse(text)).toEqual(withOpenEndsNull(study));
  });

  it('says its verdict in at most three sentences, and names findings that stand in it', () => {
    expect(study.verdict.text.length).toBeLessThanOrEqual(3);
    const ids = new Set(study.findings.map((f) => `${f.rule}:${f.at.join('+')}`));
    for (const { finding } of study.verdict.actions) expect([...ids]).toContain(finding);
  });

  it('lists parts of which every group, way and weak point speaks', () => {
    const ids = new Set([...study.parts.map((p) => p.id), ...study.joints.map((j) => j.id)]);
    const known = (id: string) => ids.has(id) || ids.has(id.split('.')[0]!) || id.includes(':');
    const spoken = [
      ...study.bonding.groups.flatMap((g) => g.parts),
      ...study.bonding.weakPoints.flatMap((w) => [w.at, ...w.losesEarth, ...w.losesService]),
    ];
    expect(spoken.filter((id) => !known(id))).toEqual([]);
  });
});

/** Paths of figures that JSON has no word for. */
function notFinite(value: unknown, path = ''): readonly string[] {
  if (typeof value === 'number') return Number.isFinite(value) ? [] : [path];
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, inner]) => notFinite(inner, `${path}.${key}`));
}

function withOpenEndsNull(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(withOpenEndsNull);
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(
    Object.entries(value).map(([key, inner]) => [
      key,
      key === 'high' && inner === Infinity ? null : withOpenEndsNull(inner),
    ]),
  );
}
