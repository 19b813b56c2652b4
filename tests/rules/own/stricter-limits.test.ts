import { describe, expect, it } from 'vitest';
import { knownRules } from '../../../src/shell/known-rules.ts';
import { readSite } from '../../../src/site/read-site.ts';
import { readStandard } from '../../../src/site/standard/read-standard.ts';
import { runStudy } from '../../../src/study/run-study.ts';
import { twoWaveguides } from '../two-waveguides.ts';

/** What the pack says of a site, then what an owner's limit for the same rule says; `outcome: key` of each finding. */
function asked(rule: string, text: string, limit: string) {
  const { site, problems } = readSite(text, 'own.site.yaml');
  expect(problems).toEqual([]);
  const read = readStandard(`name: club rules\nrules: {${rule}: {limit: ${limit}}}\n`, 'club.yaml', knownRules());
  expect(read.problems).toEqual([]);
  const { study } = runStudy(site!, {
    state: null,
    version: 'test',
    checksum: '',
    date: null,
    beside: { standard: read.standard },
  });
  const all = study.findings.filter((f) => f.rule === rule);
  const said = (own: boolean) => all.filter((f) => (f.codeSet === 'own') === own).map((f) => `${f.id} ${f.outcome}`);
  return { pack: said(false), own: said(true) };
}

/** Titles and remedies of what an owner's limit finds. */
function saidOf(rule: string, text: string, limit: string) {
  const { site } = readSite(text, 'own.site.yaml');
  const read = readStandard(`name: club rules\nrules: {${rule}: {limit: ${limit}}}\n`, 'club.yaml', knownRules());
  const how = { state: null, version: 'test', checksum: '', date: null, beside: { standard: read.standard } };
  const found = runStudy(site!, how).study.findings.find((f) => f.rule === rule && f.codeSet === 'own')!;
  return { title: found.title, remedy: found.remedy };
}

/** Every limit of the pack is as its own test beside the rule has it; those of the owner are invented. */
describe('small-conductor-in-conduit: 6 AWG is 13.3 mm2', () => {
  const rule = 'small-conductor-in-conduit';
  const gec = (rest: string) => `site: {name: Own, region: us, units: ft, service: panel}
electrodes: {R: {kind: rod}}
equipment: {panel: {kind: service panel}}
conductors: {gec: {from: panel, to: R, wire: ${rest}}}
`;

  it('a stricter limit finds the wire', () => {
    const found = asked(rule, gec('6 AWG copper, enclosure: none'), 'at least 4 AWG');
    expect(found.pack).toEqual([`${rule}:gec met`]);
    expect(found.own).toEqual([`own/${rule}:gec not met`]);
    expect(asked(rule, gec('4 AWG copper, enclosure: none'), 'at least 4 AWG').own).toEqual([`own/${rule}:gec met`]);
  });

  it('a wire in conduit is met at any size', () => {
    for (const wire of ['6 AWG copper', '8 AWG copper'])
      expect(asked(rule, gec(`${wire}, enclosure: armor`), 'at least 4 AWG').own).toEqual([`own/${rule}:gec met`]);
  });

  it('a stricter limit cannot be told of a wire of which nobody said what is round it', () => {
    const found = asked(rule, gec('6 AWG copper'), 'at least 4 AWG');
    expect(found).toEqual({ pack: [`${rule}:gec met`], own: [`own/${rule}:gec cannot tell`] });
    expect(asked(rule, gec('4 AWG copper'), 'at least 4 AWG').own).toEqual([`own/${rule}:gec met`]);
  });

  it('a laxer limit lets a thinner one stand', () => {
    const found = asked(rule, gec('8 AWG copper, enclosure: none'), 'at least 8 AWG');
    expect(found).toEqual({ pack: [`${rule}:gec not met`], own: [`own/${rule}:gec met`] });
  });
});

describe('panel-to-rod-conductor: a strap of 1 1/2 in', () => {
  const rule = 'panel-to-rod-conductor';
  const lead = (wire: string) => `site: {name: Own, region: us, units: ft, service: unknown}
electrodes: {R: {kind: rod}}
bars: {entry: {kind: entry panel}}
conductors: {c: {from: entry, to: R, wire: ${wire}}}
`;

  it('a stricter width finds the strap', () => {
    const found = asked(rule, lead('strap 2 in x 0.022 in copper'), 'at least 3 in');
    expect(found).toEqual({ pack: [`${rule}:c met`], own: [`own/${rule}:c not met`] });
    expect(asked(rule, lead('strap 3 in x 0.022 in copper'), 'at least 3 in').own).toEqual([`own/${rule}:c met`]);
  });

  it('a width says nothing of a round wire', () => {
    expect(asked(rule, lead('6 AWG copper'), 'at least 3 in').own).toEqual([`own/${rule}:c met`]);
  });
});

describe('iec-antenna-electrode-minimum: one rod of 2.5 m', () => {
  const rule = 'iec-antenna-electrode-minimum';
  const mast = (electrodes: string, more = '') => `site: {name: Own, region: iec, units: m, service: panel}
electrodes: {${electrodes}}
supports: {mast: {kind: mast, metal: steel, sections: one piece}}
equipment: {panel: {kind: service panel}}
conductors: {lead: {from: mast@base, to: R}${more}}
`;

  it('a stricter length finds the rod', () => {
    const found = asked(rule, mast('R: {kind: rod, length: 2.5 m}'), 'at least 3 m');
    expect(found).toEqual({ pack: [`${rule}:R met`], own: [`own/${rule}:R not met`] });
    expect(asked(rule, mast('R: {kind: rod, length: 3 m}'), 'at least 3 m').own).toEqual([`own/${rule}:R met`]);
  });

  it('the longest of several rods counts, and another arrangement that will do stands', () => {
    const two = mast('R: {kind: rod, length: 2.5 m}, S: {kind: rod, length: 3.5 m}', ', t: {from: R, to: S}');
    expect(asked(rule, two, 'at least 3 m').own).toEqual([`own/${rule}:R+S met`]);
    expect(asked(rule, mast('R: {kind: concrete-encased}'), 'at least 3 m').own).toEqual([`own/${rule}:R met`]);
    // 2.5 m and 2.6 m, 4 m apart: two rods of 1.5 m that stand 3 m apart
    const apart = mast(
      'R: {kind: rod, length: 2.5 m, at: [0, 0]}, S: {kind: rod, length: 2.6 m, at: [4, 0]}',
      ', t: {from: R, to: S}',
    );
    expect(asked(rule, apart, 'at least 3 m').own).toEqual([`own/${rule}:R+S met`]);
  });
});

describe('waveguides-bonded-together: lines that are not tied are at least 6 ft apart', () => {
  const rule = 'waveguides-bonded-together';

  it('a stricter distance finds lines that stood apart far enough', () => {
    const found = asked(rule, twoWaveguides('8 ft'), 'at least 10 ft');
    expect(found).toEqual({ pack: [`${rule}:w1+w2 met`], own: [`own/${rule}:w1+w2 not met`] });
    expect(asked(rule, twoWaveguides('10 ft'), 'at least 10 ft').own).toEqual([`own/${rule}:w1+w2 met`]);
    expect(asked(rule, twoWaveguides('9 to 11 ft'), 'at least 10 ft').own).toEqual([`own/${rule}:w1+w2 cannot tell`]);
  });

  it('lines that are tied are met at any distance, and a laxer distance lets near ones stand', () => {
    const tied = twoWaveguides('1 ft', 't: {from: one, to: other}');
    expect(asked(rule, tied, 'at least 10 ft').own).toEqual([`own/${rule}:w1+w2 met`]);
    const found = asked(rule, twoWaveguides('4 ft'), 'at least 3 ft');
    expect(found).toEqual({ pack: [`${rule}:w1+w2 not met`], own: [`own/${rule}:w1+w2 met`] });
  });
});

describe('what an owner asks for', () => {
  const gec = (wire: string) => `site: {name: Own, region: us, units: ft, service: panel}
electrodes: {R: {kind: rod}}
equipment: {panel: {kind: service panel}}
conductors: {gec: {from: panel, to: R, wire: ${wire} copper, enclosure: none}}
`;

  it.each(['6 AWG', '8 AWG'])('is what title and remedy of a wire of %s say, never the figure of the code', (wire) => {
    const { title, remedy } = saidOf('small-conductor-in-conduit', gec(wire), 'at least 4 AWG');
    expect(title).toBe('gec is not within the limit of club rules for small-conductor-in-conduit');
    expect(remedy).toMatch(/^Bring gec to at least 4 AWG \(21\.[12] mm²\), or ask/);
  });
});
