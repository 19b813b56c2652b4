import { describe, expect, it } from 'vitest';
import { type StrikeAsked, sayStrike } from '../../src/shell/say-strike.ts';
import type { StudyStrike } from '../../src/study/study-strike.ts';
import { handMadeStrike, larchRiseSite } from './strike-fixture.ts';

const site = larchRiseSite();
const nothingAsked: StrikeAsked = { file: 'larch-rise.site.yaml', state: null, between: [] };

function page(strike: Partial<StudyStrike> = {}, asked: Partial<StrikeAsked> = {}, width = 80): string {
  const terminal = { width, paint: (text: string) => text };
  return sayStrike({ ...handMadeStrike, ...strike }, site, { ...nothingAsked, ...asked }, terminal);
}

/** Lines of the block under a heading. */
function block(text: string, heading: string): readonly string[] {
  const lines = text.split('\n');
  const start = lines.indexOf(heading);
  if (start < 0) throw new Error(`${heading} is not on the page`);
  return lines.slice(start + 1, lines.indexOf('', start));
}
const flat = (text: string) => text.replace(/\s+/g, ' ');
const cells = (line: string | undefined) => (line ?? '').trim().split(/ {2,}/);

describe('the page of a strike', () => {
  it('says what was put in, where it comes from and how that is known', () => {
    const said = flat(block(page(), 'WHAT WAS PUT IN').join(' '));
    expect(said).toContain('First negative stroke, median of all: 30 kA, 1/200 µs, steepest 48.4 kA/µs');
    expect(said).toContain('[from IEC 62305-1, 2010; from memory, check against your copy]');
    expect(said).toContain('tower@top 1.6 MV, main-panel 320 kV');
  });

  it('lists the worst differences first, each with its range and what joins the two', () => {
    const [head, ...rows] = block(page(), 'WORST DIFFERENCES');
    expect(cells(head)).toEqual(['kV', 'range, kV', 'V per kA', 'V per kA/µs']);
    expect(rows.map((row) => cells(row)[0])).toEqual([
      'tower@base to entry',
      'entry to main-panel',
      'radio to main-panel (by cord)',
      'radio to entry (in reach)',
    ]);
    // 68.3 kV of 51.2 to 90.4: a twentieth of that width is 2 kV. Over 30 kA 2277 V, over 48.4 kA/us 1411 V.
    expect(cells(rows[1])).toEqual(['entry to main-panel', '68', '51 to 90', '2300', '1400']);
    // 24.5 to 24.8 kV is one figure to three digits' worth of soil; 24 600 / 30, / 48.4.
    expect(cells(rows[2])).toEqual(['radio to main-panel (by cord)', '24.6', '820', '510']);
  });

  it('marks what is beyond the front, and what is known by length alone, and says what the marks mean', () => {
    const rows = block(page(), 'WORST DIFFERENCES');
    expect(rows.find((row) => row.includes('tower@base'))).toContain('141*');
    expect(rows.find((row) => row.includes('in reach'))).toContain('0.85^');
    // 42.3 m = 138.8 ft, 30 m = 98.4 ft.
    expect(flat(page())).toContain(
      '* Longer ways than this front allows (the longest 140 ft (42 m), the most 98 ft (30 m))',
    );
    expect(flat(page())).toContain('low by up to 30 %');
    const plainOnes = handMadeStrike.differences.map((d) => ({ ...d, isBeyond: false, route: 'straight' as const }));
    expect(page({ differences: plainOnes })).not.toMatch(/^[*^] /m);
  });

  it('leaves roundings of nothing unsaid', () => {
    const [first] = handMadeStrike.differences;
    const none = { ...first!, peakV: 3e-13, rangeV: { value: 3e-13, low: 3e-13, high: 4e-13 } };
    const tiny = { ...none, voltPerKiloampere: 1e-14, voltPerKiloamperePerMicrosecond: 6e-15 };
    const [, row] = block(page({ differences: [tiny] }), 'WORST DIFFERENCES');
    expect(cells(row)).toEqual(['entry to main-panel', 'under 0.01', 'under 1', 'under 1']);
  });

  it('answers a point by its part where the study does', () => {
    const text = page({}, { between: [['main-panel', 'entry@1 ft']] });
    expect(cells(block(text, 'WHAT WAS ASKED FOR')[1])[0]).toBe('entry to main-panel');
  });

  it('keeps lines from outside apart, an open end said as such', () => {
    const rows = block(page(), 'OUTSIDE LINES AGAINST THE LOCAL CASE');
    expect(cells(rows[1])).toEqual(['mains at main-panel', '410', 'over 260', '14000', '8500']);
    expect(block(page(), 'WORST DIFFERENCES').join()).not.toContain('mains');
  });

  it('answers what was asked for first, either way round, and says of what there is no answer', () => {
    const text = page(
      {},
      {
        between: [
          ['radio', 'tower@45 ft'],
          ['beam', 'radio'],
        ],
      },
    );
    const rows = block(text, 'WHAT WAS ASKED FOR');
    expect(cells(rows[1])).toEqual(['tower@45 ft to radio', '3.4', '3.3 to 3.5', '110', '70']);
    expect(rows[2]).toContain('Of beam to radio nothing can be said here');
    expect(text.indexOf('WHAT WAS ASKED FOR')).toBeLessThan(text.indexOf('WORST DIFFERENCES'));
    expect(page()).not.toContain('WHAT WAS ASKED FOR');
  });

  it('says where the current goes, with the wire, how warm and whether it melts', () => {
    const rows = block(page(), 'WHERE THE CURRENT GOES').map(cells);
    // 3.1 K = 5.58 degrees Fahrenheit, 12.4 K = 22.3; 18.4, 11.6 and 7.9 of 30 kA are 61, 39 and 26 %.
    expect(rows).toContainEqual(['c1 (2 AWG copper)', '18.4', '61 %', '5.6 °F', 'at I']);
    expect(rows).toContainEqual(['c2 (6 AWG copper)', '11.6', '39 %', '22 °F', 'no']);
    expect(rows).toContainEqual(['c3 (6 AWG copper)', '7.9', '26 %', 'YES']);
    expect(rows).toContainEqual(['feed (coax)', '1.24', '4 %', '-', '-']);
    expect(rows).toContainEqual(['R1', '21.1', '70 %']);
    const text = flat(page());
    expect(text).toContain('Less than 1 % each: c4.');
    expect(text).toContain('Lines that carry current, the shield of a cable or the cord of a box: feed.');
    expect(text).toContain('Melts: c3.');
  });

  it('says unknown of a wire of which too little is known, and how many those are', () => {
    const conductors = handMadeStrike.conductors.map((c) => ({ ...c, riseK: null, melts: null, levels: [] }));
    const text = page({ conductors });
    expect(block(text, 'WHERE THE CURRENT GOES').map(cells)).toContainEqual([
      'c2 (6 AWG copper)',
      '11.6',
      '39 %',
      'unknown',
      'unknown',
    ]);
    expect(flat(text)).toContain('Not known whether it melts: c1, c2, c3, c4.');
  });

  it('names a wire that melts however little it carries', () => {
    const conductors = handMadeStrike.conductors.map((c) => (c.id === 'c4' ? { ...c, melts: true } : c));
    expect(flat(page({ conductors }))).toContain('Melts: c3, c4.');
    expect(block(page({ conductors }), 'WHERE THE CURRENT GOES').map((row) => cells(row)[0])).toContain(
      'c4 (6 AWG copper)',
    );
  });

  it('says volts and heat of joints, unknown where nobody knows', () => {
    const rows = block(page(), 'JOINTS').map(cells);
    expect(rows[1]).toEqual(['c1:R1', '18.4', '9.2 V', '24 J']);
    expect(rows[2]).toEqual(['c2:entry', '11.6', 'unknown', 'unknown']);
  });

  it('says cores and protectors', () => {
    expect(block(page(), 'CORES').map(cells)).toContainEqual(['feed at radio', '4.2']);
    expect(flat(block(page(), 'FIRED').join(' '))).toContain(
      '- a1 reaches its level after 0.31 µs. - Not reached: a2.',
    );
    expect(flat(page({ fired: [] }))).toContain('- None of a1, a2 in this calculation;');
  });

  it('says one failure at a time, the greatest growth first, and what is cut off without a number', () => {
    const rows = block(page(), 'IF ONE THING FAILS');
    expect(cells(rows[1])).toEqual(['c3: radio to main-panel', '25', '520']);
    expect(cells(rows[2])).toEqual(['c1: tower@base to entry', '140', '290']);
    const said = flat(rows.join(' '));
    expect(said).toContain('Without c4 no metal leads from R2 to the soil');
    expect(said).toContain('One other raises no difference by 5 % or more.');
    expect(page({ failures: [] })).not.toContain('IF ONE THING FAILS');
  });

  it('ends with the worst and the next command', () => {
    expect(page().trimEnd().split('\n').slice(-2)).toEqual([
      'Worst: tower@base to entry, 141 kV*. Melts: c3.',
      'Next: evenground without larch-rise.site.yaml c3',
    ]);
    expect(page({ failures: [] })).toMatch(/Next: evenground check larch-rise.site.yaml\n$/);
  });

  it('says when nothing stands apart', () => {
    const text = page({ differences: [] });
    expect(flat(text)).toContain('No two things that a line joins');
    expect(text).not.toContain('Worst:');
  });

  it.each([40, 60, 80, 100])('keeps within %d columns', (width) => {
    const lines = page({}, { between: [['radio', 'tower@45 ft']] }, width).split('\n');
    // The last line is a command to be copied, and is left whole.
    expect(lines.slice(0, -2).filter((line) => line.length > width)).toEqual([]);
  });

  it('never promises, and lets no text steer the terminal', () => {
    const text = page({ at: 'tower\u001b[31m', assumptions: ['a\u202eb'] });
    expect(text).not.toMatch(/\bsafe(?:ly|ty)?\b|NaN|Infinity|undefined|\{|\}/i);
    // biome-ignore lint/suspicious/noControlCharactersInRegex: they must not come through
    expect(text).not.toMatch(/[\u001b\u202e]/);
  });

  it('tells of many only the worst, and how many are left', () => {
    const [first] = handMadeStrike.differences;
    const many = Array.from({ length: 25 }, (_, i) => ({ ...first!, a: `box-${i}`, peakV: 1000 + i }));
    const rows = block(page({ differences: many }), 'WORST DIFFERENCES');
    expect(rows).toHaveLength(12);
    expect(cells(rows[1])[0]).toBe('box-24 to main-panel');
    expect(rows[11]).toBe('... and 15 smaller ones; --json has them all.');
  });
});
