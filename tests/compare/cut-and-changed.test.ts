import { describe, expect, it } from 'vitest';
import { compareStudies } from '../../src/compare/compare-studies.ts';
import { studyOfText } from './study-of-text.ts';

/** A panel, a rod and a mast with its rod, joined by one wire; `conductors` says how. */
const site = (conductors: string, more = '') => `site: {name: Two rods, region: us, units: ft, service: panel}
electrodes:
  E1: {kind: rod, at: [0, 0], length: 8 ft, diameter: 5/8 in, metal: copper-clad steel}
  E2: {kind: rod, at: [30, 0], length: 8 ft, diameter: 5/8 in, metal: copper-clad steel}
supports:
  mast: {kind: mast, at: [32, 0], height: 30 ft, metal: galvanised steel}
equipment:
  panel: {kind: service panel, at: [0, 1], neutral_bonded: yes}
conductors:
  lead: {from: mast@base, to: E2, wire: 6 AWG copper, length: 3 ft, joints: [bolted lug, {kind: acorn clamp}]}
  gec: {from: panel, to: E1, wire: 6 AWG copper, length: 4 ft, joints: [bolted lug, {kind: acorn clamp}]}
${conductors}${more}`;

const whole = site(
  '  long: {from: E1, to: E2, wire: 2 AWG copper, length: 30 ft, joints: [exothermic weld, exothermic weld]}\n',
);
const halves = `  half-1: {from: E1, to: box, wire: 2 AWG copper, length: 12 ft, joints: [exothermic weld, bolted lug]}
  half-2: {from: box, to: E2, wire: 2 AWG copper, length: 18 ft, joints: [bolted lug, exothermic weld]}
`;
const bar = 'bars:\n  box: {kind: station ground bar, at: [12, 0], where: outside}\n';
const cut = site(halves, bar);

describe('a conductor that was cut', () => {
  const c = compareStudies(studyOfText(whole), studyOfText(cut));

  it('is recognised: it is neither gone nor new', () => {
    expect(c.parts.splits).toEqual([{ before: 'long', after: ['half-1', 'half-2'] }]);
    expect(c.parts.added.map((p) => p.id)).toEqual(['box']);
    expect(c.parts.removed).toEqual([]);
    expect(c.parts.pairs.find((p) => p.before === 'long')).toMatchObject({ after: 'half-1', by: 'cut' });
  });

  it('costs the joints at the cut and no metre', () => {
    expect(c.materials.added.map((m) => [m.name, m.count.low])).toEqual([
      ['station ground bar', 1],
      ['bolted lug', 2],
    ]);
    expect(c.materials.removed).toEqual([]);
  });

  it('is two that were joined the other way round', () => {
    const back = compareStudies(studyOfText(cut), studyOfText(whole));
    expect(back.parts.joined).toEqual([{ before: ['half-1', 'half-2'], after: 'long' }]);
    expect([back.parts.added, back.parts.removed.map((p) => p.id)]).toEqual([[], ['box']]);
    expect(back.materials.removed).toEqual(c.materials.added);
  });

  it('is recognised when one piece kept the name, whichever it is', () => {
    for (const kept of ['half-1', 'half-2']) {
      const named = compareStudies(studyOfText(whole), studyOfText(cut.replaceAll(kept, 'long')));
      const pieces = ['half-1', 'half-2'].map((id) => (id === kept ? 'long' : id));
      expect(named.parts.splits).toEqual([{ before: 'long', after: pieces }]);
      expect(named.parts.pairs.find((p) => p.before === 'long')!.after).toBe('long');
      expect(named.parts.added.map((p) => p.id)).toEqual(['box']);
    }
  });

  it('is another one with another wire, or where it is much longer', () => {
    for (const text of [
      cut.replace('box, wire: 2 AWG', 'box, wire: 4 AWG'),
      cut.replace('length: 18 ft', 'length: 40 ft'),
    ]) {
      const other = compareStudies(studyOfText(whole), studyOfText(text));
      expect(other.parts.splits).toEqual([]);
      expect(other.parts.removed.map((p) => p.id)).toEqual(['long']);
    }
  });

  it('stays one finding at a joint that is called otherwise', () => {
    const twisted = (text: string) => text.replace('joints: [exothermic weld', 'joints: [twist');
    const t = compareStudies(studyOfText(twisted(whole)), studyOfText(twisted(cut)));
    const twist = t.findings.unchanged.find((f) => f.after!.rule === 'no-twist-joint')!;
    expect([twist.before!.at, twist.after!.at]).toEqual([['long:E1'], ['half-1:E1']]);
  });
});

describe('what became of a finding', () => {
  const of = (before: string, after: string) => compareStudies(studyOfText(before), studyOfText(after));
  const withStated = (ohm: string) =>
    whole.replace('  E2: {', `  E2: {resistance: ${ohm}, `).replace(/ {2}long.*\n/, '');

  it('is better or worse by its figure against the limit', () => {
    // a lone rod has to show 25 ohm or less
    const c = of(withStated('60 ohm'), withStated('40 ohm'));
    const better = c.findings.better.find((f) => f.after!.rule === 'single-rod-25-ohm')!;
    expect(better.how).toBe('figure');
    const texts = [better.before!.measured!.text, better.after!.measured!.text];
    expect(texts.map((text) => Number.parseFloat(text))).toEqual([60, 40]);
    const back = of(withStated('40 ohm'), withStated('60 ohm'));
    expect(back.findings.worse.map((f) => f.after!.rule)).toContain('single-rod-25-ohm');
    expect(back.worseIn).toBeGreaterThan(0);
  });

  it('is worse where a failure was found out, and unsettled where it cannot be told any more', () => {
    const solder = whole.replace('exothermic weld, exothermic weld', 'exothermic weld, solder');
    const unknown = whole.replace('exothermic weld, exothermic weld', 'exothermic weld, unknown');
    const found = of(unknown, solder).findings.worse.find((f) => f.after!.rule === 'no-solder-in-path')!;
    expect(found).toMatchObject({ how: 'found not met', counts: true });
    const lost = of(solder, unknown).findings;
    expect(lost.unsettled.map((f) => f.after!.rule)).toContain('no-solder-in-path');
    expect([...lost.cleared, ...lost.better].map((f) => f.before!.rule)).not.toContain('no-solder-in-path');
  });

  it('follows a part through its new name', () => {
    const solder = whole.replace('exothermic weld, exothermic weld', 'exothermic weld, solder');
    const renamed = solder.replaceAll('long', 'east-run').replaceAll('E2', 'mast-rod');
    const c = of(solder, renamed);
    expect(c.findings.new).toEqual([]);
    const same = c.findings.unchanged.find((f) => f.after!.rule === 'no-solder-in-path')!;
    expect([same.before!.at, same.after!.at]).toEqual([['long:E2'], ['east-run:mast-rod']]);
    expect(c.differs).toBe(false);
  });
});
