import { describe, expect, it } from 'vitest';
import { faults, openQuestions } from './marl-hill-faults.ts';
import { exampleFiles, inWords, notMet, readExample, standing, studyOfExample } from './study-of-example.ts';

const goodSites: Readonly<Record<string, string>> = {
  us: 'good-us/good-us.site.yaml',
  iec: 'good-iec/good-iec.site.yaml',
  uk: 'good-uk/good-uk.site.yaml',
  ca: 'good-ca/good-ca.site.yaml',
  au: 'good-au/good-au.site.yaml',
};

describe('every example', () => {
  it.each(exampleFiles())('%s is read without a problem', (file) => {
    const { site, problems } = readExample(file);
    expect(problems).toEqual([]);
    expect(site?.questions).toEqual([]);
  });

  it.each(exampleFiles())('%s can be studied in each of its states', (file) => {
    const states = readExample(file).site?.states.map((s) => s.id) ?? [];
    for (const state of [null, ...states]) expect(studyOfExample(file, state).findings.length).toBeGreaterThan(0);
  });
});

describe('Marl Hill as found', () => {
  const study = studyOfExample('marl-hill/marl-hill.site.yaml');

  it.each(faults)('$says', ({ rule, at }) => {
    expect(notMet(study, rule).flat()).toContain(at);
  });

  it.each(openQuestions)('$says', ({ rule, at }) => {
    const doubts = study.findings.filter((f) => f.rule === rule && f.outcome === 'cannot tell');
    expect(doubts.flatMap((f) => f.at)).toContain(at);
  });

  it('does not call the tower rods unbonded: they hang on the long wire, twist and all', () => {
    expect(study.bonding.unbondedElectrodes).toEqual(['E2', 'anchor-rod']);
  });
});

describe('Marl Hill after rework', () => {
  const study = studyOfExample('marl-hill/marl-hill-after.site.yaml');

  it('has no hazard and no defect left', () => {
    expect(inWords(standing(study, 'not met').filter((f) => f.severity !== 'advice'))).toEqual([]);
  });

  it('hangs together as one system', () => {
    expect(study.bonding.unbondedElectrodes).toEqual([]);
  });
});

describe.each(Object.entries(goodSites))('a careful site in %s', (region, file) => {
  const study = studyOfExample(file);

  it('is of the region and large enough to mean something', () => {
    const count = (section: string) => study.parts.filter((p) => p.section === section).length;
    expect(study.site.region).toBe(region);
    expect(study.parts.length).toBeGreaterThanOrEqual(40);
    expect(count('supports')).toBeGreaterThanOrEqual(2);
    expect(count('lines')).toBeGreaterThanOrEqual(4);
  });

  it('has nothing that fails', () => {
    expect(inWords(standing(study, 'not met'))).toEqual([]);
  });

  it('leaves no question', () => {
    expect(inWords(standing(study, 'cannot tell'))).toEqual([]);
  });

  it('meets every condition that is asked there and has anything to look at', () => {
    const asked = study.conditions.filter((c) => c.outcome !== 'not applicable');
    expect(asked.filter((c) => c.outcome !== 'met').map((c) => `${c.rule}: ${c.outcome}`)).toEqual([]);
  });
});

describe('a first dipole, half the facts unknown', () => {
  const study = studyOfExample('first-dipole/first-dipole.site.yaml');

  it('asks at most twelve things of whoever lives there, and one of an electrician', () => {
    const doubts = standing(study, 'cannot tell');
    const own = inWords(doubts.filter((f) => f.tool !== 'electrician'));
    expect(own.length, own.join('\n')).toBeLessThanOrEqual(12);
    expect(doubts.filter((f) => f.tool === 'electrician').map((f) => f.at)).toEqual([['bare-wire:main-panel']]);
  });

  it('names three things to do first', () => {
    expect(study.verdict.actions).toHaveLength(3);
  });

  it('counts as not told what nobody said of its joints and runs, in one line for one look', () => {
    const told = ['surface-cleaned', 'contact-area', 'clamp-accessible', 'clamp-metal-match'];
    const conditions = study.conditions.filter((c) => told.includes(c.rule));
    expect(conditions.map((c) => c.outcome)).toEqual(told.map(() => 'cannot tell'));
    const lines = standing(study, 'cannot tell').filter((f) => told.includes(f.rule));
    expect(lines.map((f) => f.rule)).toEqual(['surface-cleaned']);
  });
});
