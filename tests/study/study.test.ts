import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { MetFinding } from '../../src/rules/met-finding.ts';
import { readSiteBytes } from '../../src/site/read-site-bytes.ts';
import { runStudy } from '../../src/study/run-study.ts';
import { exampleFiles, studyOfExample, studyOfText } from '../examples/study-of-example.ts';

/** Keys that others may build on: never renamed. */
const keys = [
  'format',
  'tool',
  'site',
  'state',
  'codes',
  'parts',
  'guys',
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

  it('says its verdict in at most three sentences and one for a code of which little is known, and names what stands in it', () => {
    const thin = study.verdict.text.filter((t) => / this program holds little/.test(t));
    expect(thin).toHaveLength((study.codeSets ?? []).filter((set) => set === 'ca' || set === 'au').length);
    expect(study.verdict.text.length - thin.length).toBeLessThanOrEqual(3);
    const ids = new Set(study.findings.map((f) => f.id));
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

describe('the guys in a study', () => {
  it('say what was typed, and where the anchor is', () => {
    const { guys } = studyOfExample('marl-hill/marl-hill.site.yaml');
    expect(guys.map((g) => [g.id, g.support, g.turnbuckle, g.bypass, g.insulators])).toEqual([
      ['guy-1', 'tower', 'yes', 'no', 'unknown'],
      ['guy-2', 'tower', 'yes', 'no', 'unknown'],
      ['guy-3', 'tower', 'yes', 'unknown', 'unknown'],
    ]);
    // 116 ft and 40 ft by 0.3048 m.
    const [east, north] = guys[0]!.anchorM!;
    expect(east).toBeCloseTo(35.3568, 6);
    expect(north).toBeCloseTo(12.192, 6);
    expect(guys[0]!.typed).toEqual({
      anchor: '[116, 40]',
      metal: 'galvanised steel',
      turnbuckle: 'yes',
      bypass: 'no',
    });
  });

  it('are anchored where a named place is; unknown stays unknown', () => {
    const { guys, parts } = studyOfText(`
site: {name: Field, region: iec, units: m, service: none}
places: {post: [3, 4], elsewhere: {where: outside}}
electrodes: {R1: {kind: rod, at: [6, 8], length: 1.5 m}}
supports:
  mast: {kind: mast, height: 9 m, guys: {a: {anchor: post}, b: {anchor: elsewhere, note: a note}, c: {anchor: unknown}, d: {}}}
  old: {kind: mast, present: no, guys: {e: {anchor: post}}}
conductors: {lead: {from: a@tower, to: R1, wire: 16 mm2 copper, length: 5 m}}
`);
    expect(guys.map((g) => [g.id, g.anchorM?.slice(0, 2) ?? null, g.note])).toEqual([
      ['a', [3, 4], null],
      ['b', null, 'a note'],
      ['c', null, null],
      ['d', null, null],
    ]);
    const lead = parts.find((p) => p.id === 'lead')!;
    expect(lead.routeM.map(([east, north]) => [east, north])).toEqual([
      [3, 4],
      [6, 8],
    ]);
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
  if (value instanceof MetFinding) return withOpenEndsNull(allOf(value));
  return Object.fromEntries(
    Object.entries(value).map(([key, inner]) => [
      key,
      key === 'high' && inner === Infinity ? null : withOpenEndsNull(inner),
    ]),
  );
}

/** What a finding that makes its sentences when they are read says, name by name. */
function allOf(finding: MetFinding): Record<string, unknown> {
  const { title, because, measured, remedy, ...rest } = finding.toJSON();
  expect(finding.title).toBe(title);
  return { ...rest, title, because: finding.because, measured: finding.measured, remedy };
}

describe('every site file that can be read', () => {
  const files = readdirSync('tests/sites', { recursive: true, encoding: 'utf8' }).filter((f) =>
    f.endsWith('.site.yaml'),
  );
  const read = files.flatMap((file) => {
    const { site } = readSiteBytes(readFileSync(join('tests/sites', file)), file);
    return site === null ? [] : [{ file, site }];
  });

  it('is there', () => {
    expect(read.length).toBeGreaterThan(15);
  });

  it.each(read)('gives a whole study: $file', ({ site }) => {
    const { study, faults } = runStudy(site, { state: null, version: '0', checksum: '0', date: null, detail: true });
    expect(faults).toEqual([]);
    expect(Object.keys(JSON.parse(JSON.stringify(study)))).toEqual(Object.keys(study));
  });
});
