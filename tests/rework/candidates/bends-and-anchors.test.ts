import { describe, expect, it } from 'vitest';
import { candidatesOf } from '../../../src/rework/candidates/candidates-of.ts';
import { unanswered } from '../../../src/rework/candidates/unanswered.ts';
import type { Work } from '../../../src/rework/work.ts';
import { sayWork } from '../../../src/words/say-work.ts';
import { studyOfText, tryOn } from '../plan/tried-site.ts';

const us = { terms: 'us', unitsFirst: 'us' } as const;

function workFor(text: string, rule: string): Work | undefined {
  const study = studyOfText(text);
  const wrong = study.findings.filter((f) => f.rule === rule && f.outcome === 'not met').map((f) => f.id);
  expect(wrong.length).toBeGreaterThan(0);
  const works = candidatesOf(study).filter((w) => w.answers.some((id) => wrong.includes(id)));
  const open = unanswered(study, works).map((f) => f.id);
  expect(wrong.filter((id) => open.includes(id))).toEqual(works.length === 0 ? wrong : []);
  return works[0];
}

const cleared = (text: string, work: Work, rule: string) => {
  const tried = tryOn(text, work.changes);
  if ('problem' in tried) throw new Error(tried.problem);
  return tried.findings.every((f) => f.rule !== rule || f.outcome !== 'not met');
};

describe('bends of one conductor', () => {
  const site = (bends: string) => `
site: {name: Bends, region: us, units: ft, service: panel}
electrodes: {rod: {kind: rod, length: 8 ft, diameter: 5/8 in, metal: copper-clad steel}}
supports: {mast: {kind: mast, height: 25 ft, metal: galvanised steel, sections: welded}}
antennas: {v: {kind: vertical, on: mast@top, dc_path: yes}}
equipment: {panel: {kind: service panel, where: inside}}
lines: none
conductors:
  c1: {from: panel, to: rod, wire: 6 AWG copper, length: 5 ft}
  c2:
    from: mast@base
    to: rod
    wire: 6 AWG copper
    length: 25 ft
    bends: ${bends}
`;
  const written = (bends: string) => {
    const [change] = workFor(site(bends), 'bend-radius')?.changes ?? [];
    return change?.is === 'set' ? change.value : undefined;
  };

  it('stay as many as they are: only the radii below the limit change', () => {
    expect(written('[{angle: 90 deg, radius: 2 in}, {angle: 100 deg, radius: 9 in}]')).toEqual([
      { angle: '90 deg', radius: '8 in' },
      { angle: '100 deg', radius: '9 in' },
    ]);
    expect(written('[{angle: 90 deg, radius: 2 in}, {angle: 90 deg, radius: 3 in}]')).toEqual([
      { angle: '90 deg', radius: '8 in' },
      { angle: '90 deg', radius: '8 in' },
    ]);
  });

  it('that nobody measured stay unknown', () => {
    expect(written('[{angle: 90 deg, radius: 2 in}, 45 deg, {angle: unknown, radius: 1 to 9 in}]')).toEqual([
      { angle: '90 deg', radius: '8 in' },
      { angle: '45 deg' },
      { angle: 'unknown', radius: '1 to 9 in' },
    ]);
  });

  it('are read however they are written', () => {
    const two = [
      { angle: '90 deg', radius: '8 in' },
      { angle: '45 deg', radius: '9 in' },
    ];
    expect(written('\n      - angle: 90 deg\n        radius: 2 in\n      - {angle: 45 deg, radius: 9 in}')).toEqual(
      two,
    );
    expect(written('[{"angle": "90 deg", "radius": {is: 2 in, known: seen}}, {radius: 9 in, angle: 45 deg}]')).toEqual(
      two,
    );
    expect(written('{angle: 90 deg, radius: 2"}')).toEqual([{ angle: '90 deg', radius: '8 in' }]);
    expect(written('\n      angle: 90 deg\n      radius: 2 in')).toEqual([{ angle: '90 deg', radius: '8 in' }]);
  });

  it('are for a person where a comment of the owner would go with the list', () => {
    expect(written('\n      - angle: 90 deg # by the gutter\n        radius: 2 in')).toBeUndefined();
  });

  it('are told one by one, and the study of the new file has no tight one', () => {
    const text = site('[{angle: 45 deg, radius: 9 in}, {angle: 90 deg, radius: 2 in}]');
    const work = workFor(text, 'bend-radius')!;
    expect(cleared(text, work, 'bend-radius')).toBe(true);
    const { title, steps } = sayWork(work.values, us);
    expect(title).toBe('Lay the bend of c2 wider');
    expect(steps).toContain('Counted from mast@base it is bend 2; the other stays as it is.');
    const all = sayWork(workFor(site('{angle: 90 deg, radius: 2 in}'), 'bend-radius')!.values, us);
    expect(all.steps.join(' ')).not.toContain('Counted');
  });
});

describe('copper on a galvanised foot in the soil', () => {
  const site = (electrode: string) => `
site: {name: Foot in the soil, region: us, units: ft, service: panel}
electrodes:
  rod: {kind: rod, length: 8 ft, diameter: 5/8 in, metal: copper-clad steel}
  own: ${electrode}
supports:
  t: {kind: tower, height: 40 ft, sections: bolted, metal: galvanised steel, base: straight in the soil}
antennas: {y: {kind: yagi, on: t@top, dc_path: yes}}
equipment: {panel: {kind: service panel, where: inside}}
lines: none
conductors:
  c1: {from: panel, to: rod, wire: 6 AWG copper, length: 5 ft}
  c2: {from: rod, to: own, wire: 2 AWG copper, length: 10 ft}
  c3: {from: t@base, to: own, wire: 2 AWG copper, length: 3 ft}
`;
  const rule = 'galvanised-and-copper-in-soil';
  const bought = (work: Work | undefined) => work?.materials.map((m) => `${m.count.low} ${m.name}`);

  it.each([
    '{kind: buried wire, closed: yes, length: 60 ft, depth: 30 in, wire: 2 AWG copper}',
    '{kind: radial, count: 4, length: 20 ft, depth: 30 in, wire: 2 AWG copper}',
    '{kind: plate, metal: copper}',
    '{kind: strap on rock, length: 20 ft, wire: strap 4 in x 0.032 in copper}',
    '{kind: rods, count: 3, length: 8 ft, spacing: 16 ft, metal: copper-clad steel, wire: 2 AWG copper}',
    '{kind: rods, length: 8 ft, spacing: 16 ft, metal: copper-clad steel}',
  ])('has no rod that could be driven in place of %s: for a person', (electrode) => {
    expect(workFor(site(electrode), rule)).toBeUndefined();
  });

  it('gets a rod in place of each rod, as many as there are, and a pipe for a pipe', () => {
    const one = site('{kind: rod, length: 8 ft, diameter: 5/8 in, metal: copper-clad steel}');
    const three = site('{kind: rods, count: 3, length: 8 ft, spacing: 16 ft, metal: copper-clad steel}');
    const pipe = site('{kind: pipe, length: 8 ft, diameter: 1 in, metal: copper}');
    expect(bought(workFor(one, rule))).toEqual(['1 galvanised rod', '1 exothermic weld']);
    expect(bought(workFor(three, rule))).toEqual(['3 galvanised rod', '3 exothermic weld']);
    expect(bought(workFor(pipe, rule))).toEqual(['1 galvanised pipe', '1 exothermic weld']);
    for (const text of [one, three, pipe]) expect(cleared(text, workFor(text, rule)!, rule)).toBe(true);
    expect(sayWork(workFor(three, rule)!.values, us).title).toBe('Galvanised ground rods in place of own');
    expect(sayWork(workFor(pipe, rule)!.values, us).title).toBe('A galvanised pipe in place of own');
  });
});
