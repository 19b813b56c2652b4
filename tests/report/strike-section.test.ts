import { describe, expect, it } from 'vitest';
import type { StudyStrike } from '../../src/study/study-strike.ts';
import { pageOf, piecesOf, sectionOf } from './page-of.ts';
import { carrier, clubStrike, difference, houseStrike, refusedStrike, struck } from './sample-strike.ts';
import { clubStudy, houseStudy } from './samples.ts';

const htmlOf = (...strikes: readonly StudyStrike[]) => sectionOf(pageOf(struck(clubStudy, ...strikes)), 'strike');
const withClub = (rest: Partial<StudyStrike>) => htmlOf({ ...clubStrike, ...rest });
const piecesIn = (html: string) => piecesOf(`<body>${html}`);
const textIn = (html: string) => piecesIn(html).join('\n');

/** Cells of the table with this id, row by row, each cell's lines joined. */
function tableOf(html: string, id: string): readonly (readonly string[])[] {
  const from = html.indexOf(`id="${id}"`);
  if (from === -1) throw new Error(`no table ${id}`);
  const body = html.slice(html.indexOf('<tbody>', from), html.indexOf('</tbody>', from));
  return body
    .split('<tr>')
    .slice(1)
    .map((r) => r.split(/<t[hd]/).slice(1))
    .map((cells) => cells.map((c) => piecesOf(`<body><td${c}`).join(' | ')));
}

const club = htmlOf(clubStrike);

describe('the section on strikes', () => {
  it('is not on the page of a study without one, nor of one stored before there were any', () => {
    expect(pageOf(struck(clubStudy))).not.toContain('id="strike"');
    expect(pageOf(clubStudy)).not.toContain('id="strike"');
  });

  it('says why in one sentence where a strike could not be worked out, and gives no figure', () => {
    const text = textIn(htmlOf(refusedStrike));
    expect(text).toContain('Strike at loop');
    expect(text).toContain('Not worked out. loop hangs on nothing that reaches an electrode');
    expect(htmlOf(refusedStrike)).not.toContain('<table');
    expect(text).not.toMatch(/Quasi-static|\bkV\b/);
  });

  it('says why a part carries more than the whole stroke, and only then', () => {
    const why = 'More than 100 % of the stroke: besides it, currents swing round loops of the metal itself.';
    const [first, ...others] = clubStrike.conductors;
    const text = textIn(withClub({ conductors: [{ ...first!, shareOfPeak: 1.0076 }, ...others] }));
    expect(text).toContain('101 %');
    expect(text).toContain(why);
    expect(textIn(club)).not.toContain('More than 100 %');
    expect(textIn(withClub({ conductors: [{ ...first!, shareOfPeak: 1.003 }, ...others] }))).not.toContain(why);
  });

  it('never has a word that promises, nor a figure of more than three digits beside its unit', () => {
    for (const html of [club, sectionOf(pageOf(struck(houseStudy, houseStrike, refusedStrike)), 'strike')]) {
      const text = textIn(html.replace(/<svg.*?<\/svg>/gs, ''));
      expect(text).not.toMatch(/\bsafe(?:ly|ty)?\b|\billegal/i);
      const figures = text.match(/\d+(?:\.\d+)?(?= (?:k?V|k?A|µs|K|°F|[kM]?J|C|%)\b)/g) ?? [];
      expect(figures.length).toBeGreaterThan(20);
      expect(figures.filter((f) => f.replace('.', '').replace(/^0+|0+$/g, '').length > 3)).toEqual([]);
    }
  });

  it('has a caption of its own for each figure and table, of several strikes too', () => {
    const html = htmlOf(clubStrike, { ...clubStrike, at: 'mast-east@top' });
    const captions = [...html.matchAll(/<(?:caption|figcaption)[^>]*>([^<]*)</g)].map((m) => m[1]);
    expect(captions.length).toBeGreaterThan(20);
    const page = pageOf(struck(clubStudy, clubStrike, { ...clubStrike, at: 'mast-east@top' }));
    const all = [...page.matchAll(/<(?:caption|figcaption)[^>]*>([^<]*)</g)].map((m) => m[1]);
    expect(new Set(all).size).toBe(all.length);
    const ids = [...html.matchAll(/ id="([^"]*)"/g)].map((m) => m[1]);
    expect(new Set(ids).size).toBe(ids.length);
  });

  it('never skips a level of heading', () => {
    const levels = [...club.matchAll(/<h(\d)/g)].map((m) => Number(m[1]));
    for (const [i, level] of levels.entries()) expect(level - (levels[i - 1] ?? 1)).toBeLessThanOrEqual(1);
    expect(levels).toContain(4);
  });
});

describe('what was put in', () => {
  it('has every figure of the stroke and where it is from', () => {
    const rows = new Map(tableOf(club, 'strike-1-stroke').map(([what, value]) => [what, value]));
    expect(rows.get('At')).toBe('9 tower@top');
    expect(rows.get('Peak current')).toBe('30 kA');
    expect(rows.get('Front')).toBe('1 µs');
    expect(rows.get('Time to half value')).toBe('200 µs');
    expect(rows.get('Steepest rise')).toBe('24.3 kA/µs');
    expect(rows.get('Charge')).toBe('8.7 C');
    expect(rows.get('Action integral: heat per ohm')).toBe('0.131 MJ/ohm');
    expect(rows.get('Figures from')).toContain('from memory: check against your copy');
  });
});

describe('differences', () => {
  const rows = tableOf(club, 'strike-1-differences');

  it('lead with the worst of what people and cables join, its range, its time and why', () => {
    expect(textIn(club)).toContain(
      'Worst: 9 tower against 15 entry, 212 kV (range 170 to 254 kV) after 0.6 µs; foot of the support against the way in (35 line1).',
    );
  });

  it('fall in size, with range, per kA and per kA/µs', () => {
    expect(rows.map(([pair]) => pair)).toEqual([
      '9 tower | 15 entry',
      '27 hf-radio | 28 main-panel',
      '33 tuner | 28 main-panel',
      '34 vhf-radio | 28 main-panel',
      '34 vhf-radio | 13 jpole',
      '27 hf-radio | 31 rotator-box',
      '27 hf-radio | 25 computer',
      '29 modem | 25 computer',
      '28 main-panel | 32 sub-panel',
      '27 hf-radio | 33 tuner',
      '27 hf-radio | 34 vhf-radio',
    ]);
    // 96.4 kV over 30 kA, and over 24.3 kA/µs.
    expect(rows[1]).toEqual([
      '27 hf-radio | 28 main-panel',
      '96.4 kV | 77 to 116 kV',
      '1.1 µs',
      '3.21 kV',
      '3.97 kV',
      'a box against the service (40 outlet)',
    ]);
  });

  it('bear a mark where the figure ends, and the mark is explained below with the lengths that decide', () => {
    expect(rows[4]![1]).toBe('48.2 kV * | 38.6 to 57.8 kV');
    expect(rows[6]![1]).toBe('12.6 kV † | no upper bound is known');
    const text = textIn(club);
    expect(text).toContain('(135 ft (41.2 m), where it allows 98.4 ft (30 m)): the figure may be low by up to 30 %.');
    expect(text).toContain('† Places are not known: an upper estimate');
    const plain = difference(['hf-radio', 'entry'], 'line', 5);
    expect(textIn(withClub({ differences: [plain], failures: [] }))).not.toMatch(/^[*†‡] /m);
  });

  it('keep one that was asked for by name, and say how many are left out', () => {
    const many = Array.from({ length: 20 }, (_, i) => difference([`box-${i}`, 'entry'], 'reach', 50 + i));
    const asked = difference(['hf-radio', 'modem'], 'asked', 0.2);
    const html = withClub({ differences: [...many, asked] });
    const pairs = tableOf(html, 'strike-1-differences').map(([pair]) => pair);
    expect(pairs).toHaveLength(15);
    expect(pairs).toContain('27 hf-radio | 29 modem');
    expect(textIn(html)).toContain('The study file beside this page has all 21.');
  });

  it('have lines from outside in a table of their own, against remote ground by the region’s word', () => {
    const outside = tableOf(club, 'strike-1-outside');
    expect(outside[1]).toEqual(['41 phone', '29 modem | remote ground', '38.8 kV *‡ | 31 to 46.6 kV', '0.9 µs']);
    expect(rows.some(([pair]) => pair!.includes('remote'))).toBe(false);
    // No cable leads to remote ground: nothing against it is an estimate of what one would see.
    const own = htmlOf({ ...clubStrike, differences: clubStrike.differences.filter((d) => d.why === 'outside') });
    expect(textIn(own)).not.toContain('†');
    expect(textIn(own)).toContain('‡ Hangs on where remote ground is taken to be.');
    expect(textIn(sectionOf(pageOf(struck(houseStudy, houseStrike)), 'strike'))).toContain('remote earth');
  });
});

describe('the matrix', () => {
  const rows = tableOf(club, 'strike-1-matrix');
  const names = rows.map(([name]) => name!);
  const at = (a: string, b: string) => rows[names.indexOf(a)]![1 + names.indexOf(b)];

  it('has the parts in the order of their numbers, down and across', () => {
    const head = /<thead>.*?<\/thead>/s.exec(club.slice(club.indexOf('id="strike-1-matrix"')))![0];
    expect([...head.matchAll(/<span>([^<]*)</g)].map((m) => m[1])).toEqual(names);
    expect(names.map((n) => Number.parseInt(n, 10))).toEqual([9, 13, 15, 25, 27, 28, 29, 31, 32, 33, 34]);
  });

  it('has each pair twice, in kV with its mark, nothing on the diagonal and a dash where nothing was looked at', () => {
    expect(at('27 hf-radio', '28 main-panel')).toBe('96.4');
    expect(at('28 main-panel', '27 hf-radio')).toBe('96.4');
    expect(at('13 jpole', '34 vhf-radio')).toBe('48.2*');
    expect(at('27 hf-radio', '34 vhf-radio')).toBe('0.84');
    expect(at('27 hf-radio', '27 hf-radio')).toBe('');
    expect(at('9 tower', '29 modem')).toBe('–');
  });

  it('shades by steps that its legend names', () => {
    const shadeOf = (text: string) => new RegExp(`class="shade-(\\d)">${text.replace('*', '\\*')}<`).exec(club)?.[1];
    const found = ['0.84', '2.31', '6.2', '12.6†', '96.4', '212'].map(shadeOf);
    expect(found).toEqual(['0', '1', '2', '3', '4', '5']);
    const legend = ['under 1 kV', '1 to 3 kV', '3 to 10 kV', '10 to 30 kV', '30 to 100 kV', '100 kV and more'];
    expect(legend.map(shadeOf)).toEqual(['0', '1', '2', '3', '4', '5']);
  });

  it('holds no more parts than paper does, those of the worst differences', () => {
    const many = Array.from({ length: 30 }, (_, i) => difference([`a${i}`, `b${i % 7}`], 'reach', 100 - i));
    const html = withClub({ differences: many });
    const shown = tableOf(html, 'strike-1-matrix').map(([name]) => name!);
    expect(shown).toHaveLength(12);
    expect(shown).toEqual(expect.arrayContaining(['a0', 'b0', 'a5', 'b5']));
  });

  it('is left out where a table says it sooner', () => {
    expect(withClub({ differences: clubStrike.differences.slice(0, 2) })).not.toContain('strike-1-matrix');
  });
});

describe('where the current goes', () => {
  it('has conductors by falling peak and those that carry next to nothing in a sentence', () => {
    const rows = tableOf(club, 'strike-1-conductors');
    expect(rows[0]).toEqual(['9 tower', '29.1 kA', '97 %', '1.8 µs', '0.123 MJ/ohm']);
    expect(rows.map(([part]) => part).slice(0, 4)).toEqual(['9 tower', '50 c8', '46 c4', '45 c3']);
    expect(rows).toHaveLength(13);
    expect(textIn(club)).toContain('2 others carry less than 1 % of the stroke each.');
    expect(textIn(withClub({ conductors: [carrier('c1', 9), carrier('c7', 0.1)] }))).toContain('1 other carries less');
  });

  it('has what each electrode lets into the soil', () => {
    expect(tableOf(club, 'strike-1-electrodes')[0]).toEqual(['3 ring', '12.1 kA', '40 %']);
  });

  it('has the plan where there is one, and names what is not on it', () => {
    expect(club).toContain('id="strike-1-plan"');
    expect(textIn(club)).toMatch(/too short for this plan or has no known place: .*50 c8/);
    expect(sectionOf(pageOf(struck(houseStudy, houseStrike)), 'strike')).not.toContain('id="strike-1-plan"');
  });

  it('cuts long tables, and says so', () => {
    const conductors = Array.from({ length: 60 }, (_, i) => carrier(`w${i}`, 1 + i / 10));
    const html = withClub({ conductors });
    expect(tableOf(html, 'strike-1-conductors')).toHaveLength(16);
    expect(textIn(html)).toContain('The study file beside this page has all 60.');
    expect(textIn(html)).toMatch(/section is not known: (?:\S+, ){23}\S+ and 36 more\./);
  });
});

describe('a difference of next to nothing', () => {
  it('is less than 10 V in the matrix, not a figure of many digits', () => {
    const pairs = [difference(['tower', 'entry'], 'base', 50), difference(['entry', 'hf-radio'], 'line', 0.0000119)];
    const html = withClub({ differences: [...pairs, difference(['tower', 'hf-radio'], 'asked', 49)] });
    const cells = tableOf(html, 'strike-1-matrix').flat();
    expect(cells.filter((c) => c === '&lt;0.01' || c === '<0.01')).toHaveLength(2);
    expect(textIn(html)).not.toMatch(/0\.0000/);
    expect(tableOf(html, 'strike-1-differences').map(([pair]) => pair)).toEqual([
      '9 tower | 15 entry',
      '9 tower | 27 hf-radio',
    ]);
    expect(textIn(html)).toContain('The study file beside this page has all 3.');
  });
});

describe('heat', () => {
  const rows = new Map(tableOf(club, 'strike-1-heat').map(([part, ...cells]) => [part!, cells]));

  it('says first what melts, in this stroke and at which level', () => {
    expect(textIn(club)).toContain('Melts in this stroke: 42 rotor.');
    expect(textIn(club)).toMatch(/Melts at a protection level: .*47 c5 \(I, II\)/);
  });

  it('has each rise in the site’s unit with the other below it, and the word where it melts', () => {
    // 6.6 K are 11.9 °F, 601 K are 1082 °F, to two digits.
    expect(rows.get('50 c8')).toEqual([
      '12 °F | 6.6 K',
      '1100 °F | 600 K',
      '500 °F | 280 K',
      '200 °F | 110 K',
      '200 °F | 110 K',
    ]);
    expect(rows.get('45 c3')!.slice(1, 3)).toEqual(['melts', '230 °F | 130 K']);
    expect(rows.get('48 c6')![0]).toBe('under 1.8 °F | under 1 K');
    expect(rows.get('42 rotor')).toEqual(Array(5).fill('melts'));
  });

  it('names those of unknown metal, and says where none melts', () => {
    expect(textIn(club)).toContain('metal or section is not known: 9 tower, 36 line2, 44 c2, 49 c7, 38 line4.');
    const cool = carrier('c1', 2, { riseK: 3, melts: false, levels: [{ level: 'I', riseK: 80, melts: false }] });
    const html = withClub({ conductors: [cool] });
    expect(textIn(html)).toContain('none melts');
    expect(tableOf(html, 'strike-1-heat')[0]!.slice(1, 4)).toEqual(['5.4 °F | 3 K', '140 °F | 80 K', '–']);
    expect(textIn(withClub({ conductors: [carrier('c1', 2)] }))).toContain('section is not known: 43 c1.');
  });

  it('leaves out in one sentence what no stroke warms', () => {
    const warm = carrier('c1', 2, { riseK: 0.2, melts: false, levels: [{ level: 'I', riseK: 3, melts: false }] });
    const cold = carrier('c2', 3, { riseK: 0.2, melts: false, levels: [{ level: 'I', riseK: 0.9, melts: false }] });
    const html = withClub({ conductors: [warm, cold] });
    expect(tableOf(html, 'strike-1-heat').map(([part]) => part)).toEqual(['43 c1']);
    expect(textIn(html)).toContain('1 other becomes less than 1 K warmer, in this stroke and at every level.');
    expect(withClub({ conductors: [cold] })).not.toContain('id="strike-1-heat"');
  });
});

describe('joints, protectors and cores', () => {
  it('have joints by falling voltage, the unknown last and said to be unknown', () => {
    const rows = tableOf(club, 'strike-1-joints');
    expect(rows[0]).toEqual(['55 clamp2', '3.9 kA', '74 V', '38 J']);
    expect(rows.at(-1)).toEqual(['45a c3:entry', '3.9 kA', 'unknown', 'unknown']);
  });

  it('leave out joints that carry nothing and cores that see nothing', () => {
    const joints = [
      { id: 'clamp2', peakA: 3e3, peakV: 30, energyJ: 3 },
      { id: 'weld1', peakA: 1e-9, peakV: 0, energyJ: 0 },
    ];
    const html = withClub({ joints, cores: [{ line: 'line1', at: 'hf-radio', peakV: 0 }] });
    expect(tableOf(html, 'strike-1-joints').map(([joint]) => joint)).toEqual(['55 clamp2']);
    expect(textIn(html)).toContain('The study file beside this page has all 2.');
    expect(html).not.toContain('id="strike-1-cores"');
  });

  it('say which protectors conduct, when, and what stands over them before and after', () => {
    expect(tableOf(club, 'strike-1-fired')).toEqual([
      ['19 a1 | on 35 line1', '0.12 µs', '712 V, then 43 V', '899 A', '6.34 J'],
      ['22 mains-spd', '0.4 µs', '–', '–', '–'],
    ]);
    expect(tableOf(club, 'strike-1-passes')).toEqual([['27 hf-radio', '19 a1', '1.35 kV', '714 V', '49 V']]);
  });

  it('name those that would conduct at the low end of their kind, and say when none does', () => {
    const text = textIn(withClub({ fired: [], mayFire: ['a1'] }));
    expect(text).toContain('No protector reaches the level at which it fires.');
    expect(text).toContain('At the low end of what tubes of their kind do, these would conduct too: 19 a1.');
  });

  it('have the differences that the protectors change, and no others', () => {
    const [first, second, ...others] = clubStrike.differences;
    const differences = [
      { ...first!, firedV: 0.5 * first!.peakV },
      { ...second!, firedV: 0.97 * second!.peakV },
      ...others,
    ];
    expect(tableOf(withClub({ differences }), 'strike-1-changed')).toHaveLength(1);
    expect(club).not.toContain('id="strike-1-changed"');
  });

  it('have the core of each line', () => {
    expect(tableOf(club, 'strike-1-cores')).toEqual([
      ['37 line3', '34 vhf-radio', '5.2 kV'],
      ['35 line1', '27 hf-radio', '640 V'],
    ]);
  });
});

describe('one failure at a time', () => {
  const rows = tableOf(club, 'strike-1-failures');

  it('names without a figure what then hangs on nothing, before what grows most', () => {
    expect(rows[0]).toEqual(['43 c1', '1 E-service', '–', '–']);
    expect(rows[1]![1]).toBe('13 jpole, 7 mast-east');
    expect(rows.slice(2).map(([lost]) => lost)).toEqual(['40 outlet', '47 c5', '45 c3', '55 clamp2']);
  });

  it('has the change in volts, and in times or per cent', () => {
    expect(rows[2]!.slice(2)).toEqual(['27 hf-radio | 28 main-panel', '96.4 kV to 655 kV | 6.8 times']);
    expect(rows[4]![3]).toBe('212 kV to 220 kV | 3.8 % more');
  });

  it('says how many things stand in one row of metal with it; no column where nothing hangs free', () => {
    const worst = { a: 'tower', b: 'entry', beforeV: 10e3, afterV: 30e3 };
    const html = withClub({ failures: [{ lost: 'c3', alike: ['c4', 'clamp2'], separates: [], worst }] });
    expect(tableOf(html, 'strike-1-failures')).toEqual([
      ['45 c3 | or 2 in series with it', '9 tower | 15 entry', '10 kV to 30 kV | 3 times'],
    ]);
    expect(textIn(html)).not.toContain('Hangs on nothing');
  });

  it('has the rest in a sentence', () => {
    expect(textIn(club)).toContain('The loss of 2 other things makes no difference worse.');
  });
});

describe('over time, and where the figures end', () => {
  it('has the chart and its peaks in figures', () => {
    expect(club).toContain('id="strike-1-chart"');
    expect(tableOf(club, 'strike-1-times').map(([part]) => part)).toEqual([
      '9 tower',
      '15 entry',
      '27 hf-radio',
      '28 main-panel',
      '29 modem',
    ]);
  });

  it('names what was taken, once where several strikes take the same', () => {
    const other = { ...clubStrike, at: 'beam', assumptions: [clubStrike.assumptions[0]!, 'The beam is whole.'] };
    const text = textIn(htmlOf(clubStrike, other));
    expect(text.split(clubStrike.assumptions[0]!)).toHaveLength(2);
    expect(text.split('The beam is whole.')).toHaveLength(2);
    expect(text.split(clubStrike.assumptions[1]!)).toHaveLength(2);
  });

  it('says that it is quasi-static, without leader and corona, and how well it was solved', () => {
    const text = textIn(club);
    expect(text).toContain('Quasi-static');
    expect(text).toContain('no leader, no upward streamer, no corona');
    expect(text).toContain('84 pieces of metal in 11 loops, 2140 steps in time');
    expect(text).toContain('from the steps: under 0.1 %');
  });
});
