import { describe, expect, it } from 'vitest';
import { compareStudies } from '../../src/compare/compare-studies.ts';
import { renderHtml } from '../../src/report/render-html.ts';
import { sheetModel } from '../../src/report/sheet-model.ts';
import { worksModel } from '../../src/report/works-model.ts';
import type { WorksPlan } from '../../src/rework/work.ts';
import type { Study } from '../../src/study/study.ts';
import { acting, hostileText, type Json, mapTexts } from './hostile-text.ts';
import { piecesOf, sectionOf, templates } from './page-of.ts';
import { clubPlan, iecPlan, pricedPlan } from './sample-works.ts';

const sheetOf = (plan: WorksPlan) => renderHtml(sheetModel(plan, compareStudies(plan.before, plan.after)), templates);
const worksOf = (plan: WorksPlan) => renderHtml(worksModel(plan, compareStudies(plan.before, plan.after)), templates);
const textOf = (html: string) => piecesOf(`<body>${html}`).join(' ');

const sheet = sheetOf(clubPlan);
const page = worksOf(pricedPlan);

/** What an electrician is told of each work, whatever kind it is. */
const items = [
  'What',
  'Why',
  'Where',
  'Size and length',
  'Way',
  'Depth',
  'Bends',
  'Joints',
  'Lands on what is there',
  'Where it is exposed',
  'Who may open the panel',
  'Material',
  'Do not',
];

describe('the contractor’s sheet', () => {
  it('is about one work of each kind', () => {
    expect(new Set(clubPlan.steps.map((s) => s.work.kind)).size).toBe(13);
  });

  it.each(clubPlan.steps.map((s, i) => [s.work.kind, i + 1] as const))(
    'of %s has every item, each with something said, hold point, readings and who signs',
    (_, number) => {
      const section = sectionOf(sheet, `work-${number}`);
      expect(sectionOf(sheet, 'list')).toContain(`<a href="#work-${number}">`);
      const rows = [...section.matchAll(/<tr><th scope="row"[^>]*>(.*?)<\/th><td[^>]*>(.*?)<\/td>/g)];
      const asked = new Map(rows.map(([, label, text]) => [textOf(label!), textOf(text!)]));
      for (const item of items) expect(asked.get(item)?.length ?? 0, item).toBeGreaterThan(5);
      const text = textOf(section);
      expect(text).toContain('STOP before');
      expect(text).toContain('Test after the work');
      expect(text).toContain('The transmitter is off and stays off.');
      for (const role of ['Did the work', 'Looked at it before it was covered', 'Took the readings'])
        expect(text).toContain(role);
    },
  );

  it('tells what to lay: size, both lengths, way by the compass, depth, bends', () => {
    const text = textOf(sectionOf(sheet, 'work-1'));
    // 78 ft = 23.77 m; 30 in = 76 cm; 8 in = 20 cm; the route was typed as 26 ft south, 50 ft west, 2 ft north
    expect(text).toMatch(/w-bond: 6 AWG copper \(13\.3 mm²\), 78 ft \(23\.8 m\), from \d+ E2 to \d+ E1/);
    expect(text).toMatch(/26 ft \(7\.9 m\) south, then 50 ft \(15\.2 m\) west, then 24 in \(61 cm\) north/);
    expect(text).toContain('30 in (76 cm) below finished ground, as planned');
    expect(text).toContain('Radius 8 in (20 cm) or more');
  });

  it('counts the joints with their listing, and says what the work lands on', () => {
    const text = textOf(sectionOf(sheet, 'work-1'));
    expect(text).toMatch(/2 × exothermic weld, listed for this use \(joins for good: may be buried\): at \d+ E1/);
    expect(text).toContain('Joints to make: 2.');
    expect(text).toMatch(/E1: ground rod, outdoors; part of the grounding of the service already/);
  });

  it('expects what the conductor and its joints have: 78 ft of 6 AWG copper at 0.395 ohm per 1000 ft', () => {
    // wire tables (from memory): 0.3951 ohm per 1000 ft at 20 °C; 78 ft are 31 milliohm, and two welds hardly count
    const reading = /about (\d+) milliohm; less/.exec(textOf(sectionOf(sheet, 'work-1')))!;
    expect(Number(reading[1])).toBeGreaterThanOrEqual(30);
    expect(Number(reading[1])).toBeLessThanOrEqual(33);
  });

  it('tells the resistance to the soil as a range, from the study of the finished site', () => {
    const text = textOf(sectionOf(sheet, 'work-6'));
    expect(text).toMatch(/about [\d.]+ ohm after this work; [\d.]+ to [\d.]+ ohm with all works done/);
  });

  it('has a reading of each new rod before it is tied, and of none that was there', () => {
    const alone = /Resistance to ground alone, before it is tied; with date and weather/;
    const { low, high } = clubPlan.after.earth.electrodes.find((e) => e.id === 'w-rod')!.aloneOhm!;
    const found = /weather \d+ w-rod ([\d.]+) to ([\d.]+) ohm/.exec(textOf(sectionOf(sheet, 'work-6')))!;
    expect(Number(found[1]) / low).toBeCloseTo(1, 1);
    expect(Number(found[2]) / high!).toBeCloseTo(1, 1);
    for (const number of [1, 7]) expect(textOf(sectionOf(sheet, `work-${number}`))).not.toMatch(alone);
    const rods = clubPlan.after.earth.electrodes.map((e) => (e.id === 'w-rod' ? { ...e, aloneOhm: null } : e));
    const plan = { ...clubPlan, after: { ...clubPlan.after, earth: { ...clubPlan.after.earth, electrodes: rods } } };
    expect(textOf(sectionOf(sheetOf(plan), 'work-6'))).toMatch(/weather \d+ w-rod cannot be told from the file/);
  });

  it('speaks of a plan only where there is one; else it has a schematic that says so', () => {
    const placeless = (s: Study): Study => ({
      ...s,
      guys: [],
      parts: s.parts.map((p) => ({ ...p, positionM: null, routeM: [] })),
    });
    expect(textOf(sectionOf(sheet, 'list'))).toContain('The number before a name is that of the plan.');
    expect(textOf(sectionOf(sheet, 'work-13'))).toContain('now stands at its new place on the plan');
    const none = sheetOf({ ...clubPlan, before: placeless(clubPlan.before), after: placeless(clubPlan.after) });
    expect(textOf(sectionOf(none, 'list'))).toContain('The number before a name is that of the drawing.');
    expect(textOf(sectionOf(none, 'work-13'))).toContain('goes to a new place; agree with the owner on site');
    expect(textOf(sectionOf(none, 'plan'))).toContain(
      'Schematic, not to scale: the file holds too few places for a plan.',
    );
    expect(sectionOf(none, 'plan')).toContain('<svg');
    expect(textOf(none)).not.toMatch(/on the plan|of the plan|where the plan|that is drawn/);
  });

  it('has buried things located first where something is dug, and only there', () => {
    const dig = 'Buried cables and pipes are located and marked here; nothing is dug or driven before.';
    expect(textOf(sectionOf(sheet, 'work-1'))).toContain(dig);
    expect(textOf(sectionOf(sheet, 'work-7'))).toContain(dig);
    expect(textOf(sectionOf(sheet, 'work-2'))).not.toContain(dig);
    expect(textOf(sectionOf(sheet, 'first'))).toMatch(/Known to lie in the soil here: .*shed-feeder.*gas/);
  });

  it('says who opens the panel where one is concerned, and has that person sign', () => {
    for (const number of [4, 9]) {
      const text = textOf(sectionOf(sheet, `work-${number}`));
      expect(text).toMatch(/Only a licensed electrician opens \d+ main-panel/);
      expect(text).toContain('Licensed electrician, for the panel');
    }
    const other = textOf(sectionOf(sheet, 'work-1'));
    expect(other).toContain('No panel is opened.');
    expect(other).not.toContain('Licensed electrician, for the panel');
  });

  it('names the source of each figure and how it is known', () => {
    const text = textOf(sectionOf(sheet, 'rules'));
    expect(text).toContain('18 in (46 cm) NFPA 780 from memory: check against your copy');
    expect(text).toContain('30 in (76 cm) NFPA 70, clause 250.53(F) from memory: check against your copy');
    expect(text).toContain('MIL-HDBK-419A, edition vol. II, clause down conductors read in the document');
    expect(text).toContain('NFPA 780, clause 4.9.5 from memory: check against your copy');
    expect(text).not.toContain('Canadian');
  });

  it('in Canada says of American codes that they are American, and of nothing else', () => {
    const site = { ...clubPlan.after.site, region: 'ca' };
    const text = textOf(sectionOf(sheetOf({ ...clubPlan, after: { ...clubPlan.after, site } }), 'rules'));
    const american = 'American: look in your copy of the Canadian code';
    expect(text).toContain(`NFPA 70, clause 250.53(F) from memory: check against your copy; ${american}`);
    expect(text).toContain('MIL-HDBK-419A, edition vol. I, clause 7.6 read in the document itself Not on covers');
  });

  it('lists the material of all works with spare: 78 + 38 + 10 + 18 ft of one wire, a tenth more', () => {
    const text = textOf(sectionOf(sheet, 'material'));
    expect(text).toContain('6 AWG copper 144 ft (43.9 m) 158 ft (48.3 m) 1, 3, 5, 6');
    expect(text).toContain('rod coupler 1 1 7');
  });

  it('has a joint and a reading for the receptacles of pulled lines, on the bar that they are bolted to', () => {
    const bar = clubPlan.after.parts.find((p) => p.section === 'bars')!.id;
    const values = { words: 'pulled-lines', lines: 'beam-coax', count: 1, panels: bar };
    const steps = clubPlan.steps.map((step) =>
      step.work.kind === 'put-right' ? { ...step, work: { ...step.work, at: [bar], values } } : step,
    );
    const number = clubPlan.steps.findIndex((s) => s.work.kind === 'put-right') + 1;
    const before = textOf(sectionOf(sheet, `work-${number}`));
    const text = textOf(sectionOf(sheetOf({ ...clubPlan, steps }), `work-${number}`));
    expect(before).not.toContain('receptacle');
    expect(text).toMatch(new RegExp(`Joints each grounded receptacle by a bolted lug on bare metal of \\d+ ${bar}`));
    expect(text).toMatch(new RegExp(`Continuity each grounded receptacle – \\d+ ${bar}`));
  });

  it('has no price on it', () => {
    expect(textOf(sheetOf(pricedPlan))).not.toContain('USD');
  });
});

describe('the page of works', () => {
  it('has the works in order with what each costs and what then remains', () => {
    const text = textOf(sectionOf(page, 'list'));
    const { hazards, defects, advices } = pricedPlan.steps[0]!.inTurn.after;
    expect(text).toContain(`${hazards} / ${defects} / ${advices}`);
    expect(text).toContain('Work is in the cost, at the rate of the file (hour: 60).');
  });

  it('adds up the material by hand: 86 ft at 2.60, 144 ft at 1.10, and pieces', () => {
    const text = textOf(sectionOf(page, 'material'));
    // 86 x 2.6 = 223.60; 144 x 1.1 = 158.40; 8 welds at 18 = 144; 7 lugs at 6 = 42
    for (const row of ['2 AWG copper per ft: 2.6 USD 224', '6 AWG copper per ft: 1.1 USD 158', 'USD 144', 'USD 42'])
      expect(text).toContain(row);
  });

  it('names what has no price, and does not invent one', () => {
    const text = textOf(sectionOf(worksOf(clubPlan), 'material'));
    expect(text).toMatch(/acorn clamp 1 2 no price in the file – –/);
    expect(text).toMatch(/Without a price in the file, and on top of that: acorn clamp, bolted lug, rod coupler\./);
    expect(text).toContain('Together, of what has a price');
  });

  it('without any prices goes by material', () => {
    const plan = { ...clubPlan, before: { ...clubPlan.before, prices: null } };
    const text = textOf(worksOf(plan));
    expect(text).toContain('The file has no prices');
    expect(text).not.toContain('USD');
    expect(textOf(sectionOf(worksOf(plan), 'list'))).toContain('78 ft (23.8 m) of conductor, 2 joints');
  });

  it('says what remains, what was left out and why, and that hours are our own', () => {
    expect(textOf(sectionOf(page, 'left'))).toContain('it goes over the budget of USD 1500.');
    const [first, second] = clubPlan.before.findings.filter((f) => f.outcome === 'not met');
    expect(textOf(sectionOf(page, 'left'))).toContain(`it would bring: ${first!.title}.`);
    expect(textOf(sectionOf(page, 'left'))).toContain(`it brings as much as it takes away: ${second!.title}.`);
    expect(textOf(sectionOf(page, 'left'))).toContain('it brings as much as it takes away.');
    expect(textOf(sectionOf(page, 'method'))).toContain('our own allowance, no source');
    const standing = pricedPlan.after.findings.filter(
      (f) => f.under === null && f.agreed === null && f.outcome === 'not met',
    );
    for (const f of standing) expect(textOf(sectionOf(page, 'remain'))).toContain(f.title.replaceAll('  ', ' '));
  });

  it('lists what is cleared apart from what nobody can tell any more, on the page and on the sheet', () => {
    const [step, ...rest] = clubPlan.steps;
    const [gone, doubtful] = clubPlan.before.findings.filter((f) => f.outcome === 'not met' && f.under === null);
    const inTurn = { ...step!.inTurn, cleared: [gone!], unsettled: [doubtful!] };
    const plan = { ...clubPlan, steps: [{ ...step!, inTurn }, ...rest] };
    const each = textOf(sectionOf(worksOf(plan), 'each'));
    expect(each).toContain(`Takes away: ${gone!.title} (${gone!.severity}). `);
    const looked = `Leaves to be looked at (the file no longer tells): ${doubtful!.title} (${doubtful!.severity}).`;
    expect(each).toContain(looked);
    expect(textOf(sectionOf(worksOf(plan), 'list'))).toContain('1 to be looked at');
    const why = textOf(sectionOf(sheetOf(plan), 'work-1'));
    expect(why).toContain(`leaves to be looked at: ${doubtful!.title} (${doubtful!.severity})`);
    expect(why).toContain(`${gone!.title} (${gone!.severity})`);
    // nothing is said of what there is none of
    const plain = { ...clubPlan, steps: [{ ...step!, inTurn: { ...inTurn, unsettled: [] } }] };
    for (const html of [worksOf(plain), sheetOf(plain)]) expect(textOf(html)).not.toMatch(/to be looked at/i);
  });

  it('of a plan without works says so and how it stands', () => {
    const none = { ...clubPlan, steps: [], after: clubPlan.before };
    expect(textOf(sectionOf(worksOf(none), 'summary'))).toContain('No work was found');
    expect(textOf(sheetOf(none))).toContain('No work is on this sheet.');
  });

  it('of a search that was stopped says so', () => {
    expect(textOf(sectionOf(worksOf({ ...clubPlan, stopped: true }), 'summary'))).toContain('The search was stopped');
  });
});

describe('both pages', () => {
  const all = [sheet, page, sheetOf(iecPlan), worksOf(iecPlan)].map(textOf);

  it('promise nothing', () => {
    for (const text of all) {
      expect(text).not.toMatch(/\bsafe(?:ly|r|st)?\b/i);
      expect(text).toMatch(/electrician/);
    }
  });

  it('speak the words of the region', () => {
    for (const text of all.slice(0, 2))
      expect(text).not.toMatch(/earth electrode|earth rod|earthing|\bSPD\b|qualified electr/i);
    for (const text of all.slice(2)) {
      expect(text).not.toMatch(/ground rod|grounding|grounded|licensed electrician|authority having|service panel/i);
      expect(text).toContain('earth rod');
    }
  });

  it('depth elsewhere is that of IEC 62305-3', () => {
    expect(textOf(sectionOf(sheetOf(iecPlan), 'rules'))).toContain('at least 20 in (50 cm) deep');
  });

  it('are the same each time', () => {
    expect(sheetOf(clubPlan)).toBe(sheet);
    expect(worksOf(pricedPlan)).toBe(page);
  });

  it('keep hostile text as text', () => {
    const words = [
      'outcome',
      'severity',
      'family',
      'provenance',
      'section',
      'region',
      'units',
      'kind',
      'unit',
      'why',
      'per',
    ];
    const plain = JSON.parse(JSON.stringify({ ...clubPlan, steps: clubPlan.steps.slice(0, 3) })) as Json;
    const made = mapTexts(plain, (text, path) => {
      const key = path.findLast((k) => !/^\d+$/.test(k)) ?? '';
      const isOwn = [
        'name',
        'title',
        'note',
        'remedy',
        'owner',
        'currency',
        'typed',
        'wire',
        'text',
        'unpriced',
        'because',
      ];
      return !words.includes(key) && isOwn.includes(key) ? text + hostileText : text;
    }) as unknown as WorksPlan;
    for (const html of [sheetOf(made), worksOf(made)]) {
      expect(html).not.toContain('<script');
      expect(html).not.toMatch(/<img[^>]* onerror/);
      for (const c of acting) expect(html).not.toContain(c);
      expect(html).toMatch(/&lt;script|&#60;script/);
    }
  });
});
