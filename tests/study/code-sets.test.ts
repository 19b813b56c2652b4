import { describe, expect, it } from 'vitest';
import { readSite } from '../../src/site/read-site.ts';
import { readAgreed } from '../../src/site/standard/read-agreed.ts';
import { readStandard } from '../../src/site/standard/read-standard.ts';
import type { StudyOptions } from '../../src/study/run-study.ts';
import { runStudy } from '../../src/study/run-study.ts';

/** A mast whose lead of 10 mm2 meets NFPA 70 810.21(H) (5.26 mm2) and not IEC 60728-11 (16 mm2). */
const parts = `
electrodes:
  E1: {kind: rod, length: 2.5 m, diameter: 16 mm, metal: copper-clad steel}
supports:
  mast: {kind: mast, height: 9 m, metal: galvanised steel, sections: one piece}
antennas:
  beam: {kind: yagi, on: mast@top, dc_path: yes, touches_support: yes}
bars: none
arresters: none
equipment:
  panel: {kind: service panel, neutral_bonded: yes}
lines: none
conductors:
  c1: {from: panel, to: E1, wire: 16 mm2 copper, length: 3 m, joints: [bolted lug, exothermic weld]}
  lead: {from: mast@base, to: E1, wire: 10 mm2 copper, length: 2 m, joints: [bolted lug, exothermic weld]}
metalwork: none
`;

function study(head: string, beside: StudyOptions['beside'] = {}) {
  const text = `site: {name: One, service: panel, units: m, ${head}}${parts}`;
  const { site, problems } = readSite(text, 'one.site.yaml');
  expect(problems).toEqual([]);
  return runStudy(site!, { state: null, version: '0', checksum: '', date: null, beside }).study;
}

type Found = ReturnType<typeof study>;
const of = ({ findings }: Found, rule: string) => findings.filter((f) => f.rule === rule);
const outcomes = (found: Found, rule: string) => of(found, rule).map((f) => [f.codeSet, f.outcome, f.family]);

describe('two sets of conditions on one site', () => {
  const both = study('region: us, codes: [us, iec]');

  it('are asked each by itself', () => {
    expect(both.codeSets).toEqual(['us', 'iec']);
    expect(outcomes(both, 'mast-ground-size')).toEqual([['us', 'met', 'code']]);
    expect(outcomes(both, 'antenna-earthing-size-iec')).toEqual([['iec', 'not met', 'code']]);
  });

  it('say of one condition what it is in each: code here, practice there', () => {
    expect(outcomes(both, 'all-electrodes-one-system')).toEqual([
      ['us', 'met', 'code'],
      ['iec', 'met', 'practice'],
    ]);
    expect(of(both, 'all-electrodes-one-system').map((f) => f.id)).toEqual([
      'all-electrodes-one-system:E1',
      'iec/all-electrodes-one-system:E1',
    ]);
  });

  it('stand once where they say the same', () => {
    expect(of(both, 'single-point-of-failure-joint').every((f) => f.codeSet === 'any')).toBe(true);
  });

  it('are counted each by itself', () => {
    const [us, iec] = both.verdict.bySet!;
    expect([us!.codeSet, iec!.codeSet]).toEqual(['us', 'iec']);
    expect(us!.hazards).toBe(0);
    expect(iec!.hazards).toBe(1);
    expect(both.verdict.hazards).toBe(us!.hazards);
  });

  it('find what each finds alone', () => {
    for (const set of ['us', 'iec'] as const) {
      const alone = study(`region: ${set}`);
      const ofSet = both.conditions.filter((c) => c.codeSet === set || c.codeSet === 'any');
      for (const c of ofSet) expect(alone.conditions.find((a) => a.rule === c.rule)?.outcome, c.rule).toBe(c.outcome);
    }
  });

  it('have no finding with the id of another', () => {
    expect(new Set(both.findings.map((f) => f.id)).size).toBe(both.findings.length);
  });
});

describe('a clause that does not bind here', () => {
  it('is common practice, and says whose figure it is', () => {
    const [finding] = of(study('region: iec'), 'all-electrodes-one-system');
    expect(finding!.family).toBe('practice');
    expect(finding!.basis).toBe(
      'Common practice here: the figure comes from NFPA 70, 250.50, 250.58, which binds in the United States and not here.',
    );
  });

  it('says nothing more where it binds', () => {
    expect(of(study('region: us'), 'all-electrodes-one-system')[0]!.basis).toBe('');
  });
});

describe('findings agreed to stand', () => {
  const agreed = (text: string) => ({ agreed: readAgreed(text, 'agreed.yaml').agreements!.agreed });
  const rock = agreed('agreed: [{rule: single-rod-25-ohm, at: E1, reason: rock, by: owner, date: 2026-01-02}]');

  it('in a file of their own are softened, counted, and not gone', () => {
    const before = study('region: us');
    const after = study('region: us', rock);
    expect(of(before, 'single-rod-25-ohm')[0]!.outcome).toBe('not met');
    expect(of(after, 'single-rod-25-ohm')[0]!.agreed).toEqual({ reason: 'rock', by: 'owner', date: '2026-01-02' });
    expect(after.verdict.defects).toBe(before.verdict.defects - 1);
    expect(after.verdict.agreed).toBe(1);
    expect(after.agreements!.map((a) => [a.stale, a.text])).toEqual([[false, '']]);
  });

  it('that answer to nothing are said', () => {
    const stale = study(
      'region: us',
      agreed('agreed: [{rule: mast-grounded, at: mast, reason: r, by: b, date: 2026}]'),
    );
    expect(stale.agreements![0]!.stale).toBe(true);
    expect(stale.agreements![0]!.text).toMatch(/nothing answers to it: mast-grounded at mast\./);
    expect(stale.verdict.agreed).toBe(0);
  });

  it('at a part that the file does not have are said with the one that was perhaps meant', () => {
    const text = (at: string, rule = 'single-rod-25-ohm') =>
      study('region: us', agreed(`agreed: [{rule: ${rule}, at: ${at}, reason: r, by: b, date: 2026}]`)).agreements![0]!
        .text;
    expect(text('E-1')).toMatch(/nothing answers to it.* Nothing in the file is called E-1\. Did you mean E1\?$/);
    expect(text('masst', 'mast-grounded')).toMatch(/called masst\. Did you mean mast\?$/);
    // one that is there and put right, and one that is like nothing
    expect(text('mast', 'mast-grounded')).toMatch(/take it out of the file\.$/);
    expect(text('greenhouse')).toMatch(/take it out of the file\.$/);
  });

  it('without a reason, a name or a date are said to be that', () => {
    const bare = study('region: us', agreed('agreed: [{rule: single-rod-25-ohm, by: owner}]'));
    expect(bare.agreements![0]!.text).toMatch(/^Agreed to stand without a reason and a date: single-rod-25-ohm\./);
  });
});

describe('a standard of the owner', () => {
  const known = [{ id: 'mast-ground-size', key: 'areaM2' }];
  const standardOf = (text: string) => ({ standard: readStandard(text, 'club.yaml', known).standard });
  const own = (found: Found) =>
    found.findings.filter((f) => f.codeSet === 'own').map((f) => [f.id, f.outcome, f.severity]);

  it('asks a rule at its own limit, beside the code and without touching it', () => {
    const found = study(
      'region: us',
      standardOf('name: club rules\nrules: {mast-ground-size: {limit: at least 16 mm2, severity: hazard}}'),
    );
    expect(outcomes(found, 'mast-ground-size')).toContainEqual(['us', 'met', 'code']);
    expect(own(found)).toEqual([['own/mast-ground-size:lead', 'not met', 'hazard']]);
    const finding = found.findings.find((f) => f.codeSet === 'own')!;
    expect(finding.source).toMatchObject({ document: 'club rules', provenance: 'read' });
    expect(finding.basis).toContain('club rules, which is the site owner’s own and no code');
    // 1 kcmil = 0.5067 mm2
    expect(finding.measured!.text).toBe('10 mm² (19.7 kcmil); at least 16 mm² (31.6 kcmil) is asked');
  });

  it.each([
    ['at least 10 mm2', 'met'],
    ['at least 10.1 mm2', 'not met'],
    ['at most 10 mm2', 'met'],
    ['at most 9.9 mm2', 'not met'],
    ['at least 8 AWG', 'met'],
    ['at least 6 AWG', 'not met'],
  ])('%s of a lead of 10 mm2 (between 8 and 6 AWG): %s', (limit, outcome) => {
    const text = `limits: {leads: {of: mast leads, wire: ${limit}}}`;
    expect(own(study('region: us', standardOf(text)))).toEqual([['own/own-leads:lead', outcome, 'defect']]);
  });

  it('counts by itself', () => {
    const found = study(
      'region: us',
      standardOf('limits: {leads: {of: mast leads, wire: at least 50 mm2, severity: hazard}}'),
    );
    expect(found.codeSets).toEqual(['us', 'own']);
    expect(found.verdict.hazards).toBe(0);
    expect(found.verdict.bySet!.find((s) => s.codeSet === 'own')!.hazards).toBe(1);
  });

  it('cannot tell what nobody typed', () => {
    const text = 'limits: {lugs: {of: joints, bolts: at least 2}}';
    const found = study('region: us', standardOf(text));
    expect(new Set(own(found).map(([, outcome]) => outcome))).toEqual(new Set(['cannot tell']));
  });
});

describe('a condition that several documents ask', () => {
  const pipe = (head: string) => {
    const text = `site: {name: One, service: panel, units: m, ${head}}${parts}`.replace(
      'metalwork: none',
      'metalwork: {gas: {kind: gas pipe, bonded: no}}',
    );
    const { site } = readSite(text, 'one.site.yaml');
    return runStudy(site!, { state: null, version: '0', checksum: '', date: null }).study;
  };
  const sources = (found: Found) =>
    of(found, 'metalwork-bonded').map(({ codeSet, source, basis }) => [codeSet, source.document, source.clause, basis]);

  it('is laid to those that bind where the site is', () => {
    expect(sources(pipe('region: us'))).toEqual([['any', 'NFPA 70', '250.104', '']]);
    expect(sources(pipe('region: uk'))).toEqual([['any', 'IEC 60364-4-41', '411.3.1.2', '']]);
  });

  it('is laid in each set to its own', () => {
    expect(sources(pipe('region: us, codes: [us, iec, au]')).map(([set, document]) => [set, document])).toEqual([
      ['au', 'NFPA 70; IEC 60364-4-41'],
      ['iec', 'IEC 60364-4-41'],
      ['us', 'NFPA 70'],
    ]);
  });

  it('says of no document that it binds where another does', () => {
    const [[, document, , basis]] = sources(pipe('region: au')) as [string[]];
    expect(document).toBe('NFPA 70; IEC 60364-4-41');
    expect(basis).toBe(
      'Common practice here: the figure comes from NFPA 70; IEC 60364-4-41, 250.104; 411.3.1.2, which does not bind here.',
    );
  });
});
