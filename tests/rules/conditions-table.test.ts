import { describe, expect, it } from 'vitest';
import { rules } from '../../src/rules/index.ts';
import type { Rule } from '../../src/rules/rule.ts';
import { notStated } from '../../src/words/not-stated.ts';
import { type ConditionRow, conditionRows, provenancesOf } from './conditions-table.ts';
import { toDo } from './to-do.ts';

/** Rules that are no row of the table, each with why it is there. */
const beyondTheTable: Readonly<Record<string, string>> = {
  'service-electrode-known': 'what all rows on one earth presume',
  'iec-mast-earthed': 'the IEC side of mast-grounded',
  'arrester-bonded': 'an arrester that hangs in the air does nothing',
  'arrester-lead-short': 'panel-arrester-on-panel and surge-device-lead as one figure for any arrester',
  'core-static-drain': 'the second half of discharge-unit-present',
  'metalwork-bonded': 'pipes and frames in regions without a row',
  'bond-between-groups-long': 'the tie of trap 20',
  'galvanic-pair': 'a figure in volts for joint metals',
  'condition-sound': 'what the owner typed as loose, corroded or open',
};

/** Rules whose limits stand in another column or row, each with where. */
const limitsFromElsewhere: Readonly<Record<string, string>> = {
  'rod-diameter-us': 'trade size 3/4 of a pipe, among the traps of the row',
  'main-bonding-size-iec': '10 mm² of uk-multiple-earth-rf-rod-bond, whose size it asks',
  'pool-zone-bonding-iec': 'where the zones end: IEC 60364-7-702',
  'roof-mast-bonded-to-lightning-system': 'the main conductor of common-bond-main-size',
  'shield-bonded-top-and-base': 'ours: how far from an end still counts as there',
  'iec-antenna-electrode-minimum': 'what must hold, in the row itself',
  'electrode-from-foundation-iec': 'the default where sources disagree: 0.6 to 3.0 m',
  'tower-rods-count': 'the waiver of the row: 10 ohm',
  'type-a-length': 'half of l1 where the electrode is vertical',
  'type-b-radius': 'l1 of type-a-length',
  'unit-sanity': 'ours, near the example of the row',
  'path-minimum-area': 'mast-ground-size and antenna-earthing-size-iec, which it looks at along the whole way',
};

const rows = new Map<string, ConditionRow>(conditionRows.map((r) => [r.id, r]));
const ofRows = rules.filter((r) => rows.has(r.id));

it('holds 215 conditions, each once', () => {
  expect(conditionRows.length).toBe(215);
  expect(rows.size).toBe(215);
});

it('every row is a rule, or said not to be one with a reason, or still to do; and only one of these', () => {
  const ids: ReadonlySet<string> = new Set(rules.map((r) => r.id));
  const homes = (id: string) => [ids.has(id), Object.hasOwn(notStated, id), toDo.includes(id)].filter(Boolean).length;
  const wrong = conditionRows.filter(({ id }) => homes(id) !== 1).map(({ id }) => `${id}: ${homes(id)} homes`);
  expect(wrong).toEqual([]);
});

it('what is to do or not stated are rows of the table', () => {
  expect([...toDo, ...Object.keys(notStated)].filter((id) => !rows.has(id))).toEqual([]);
  for (const { reason } of Object.values(notStated)) expect(reason.length).toBeGreaterThan(20);
});

it('every rule is a row, is named here with why it is there, or is what a strike does by calculation', () => {
  const ofClauses = rules.filter((r) => r.family !== 'strike');
  const strange = ofClauses.map((r) => r.id).filter((id) => !rows.has(id) && !Object.hasOwn(beyondTheTable, id));
  expect(strange).toEqual([]);
});

describe.each(ofRows)('$id', (rule) => {
  const row = rows.get(rule.id)!;

  it('has the severity of its row', () => {
    // an exemption never fails, whatever its record says
    if (row.severity !== 'none') expect(rule.severity).toBe(row.severity);
  });

  it('is asked where its row is', () => {
    const asked: readonly string[] = rule.codeSets;
    if (row.regions.includes('any')) expect(asked).toContain('any');
    else if (!asked.includes('any')) expect(asked).toEqual(expect.arrayContaining([...row.regions]));
  });

  it('has limits that its row has, in one of the two systems', () => {
    // one that is excused has to need it
    if (Object.hasOwn(limitsFromElsewhere, rule.id)) expect(limitsNotIn(rule, row)).not.toEqual([]);
    else expect(limitsNotIn(rule, row)).toEqual([]);
  });

  it('names how the threshold was seen', () => {
    expect([...provenancesOf(row)]).toContain(rule.source.provenance);
  });

  it('cites a document and a clause that its row has', () => {
    expect(citedIn(rule.source, row)).toEqual([]);
  });
});

/** Limits of a rule whose figure, as printed in either system, is not among those of its row. */
function limitsNotIn({ limits = [] }: Rule, row: ConditionRow): readonly string[] {
  const figures = row.threshold.replace(/(?<=\d),(?=\d)/g, '').match(/\d+(?:\.\d+)?(?:\/\d+)?/g) ?? [];
  const inRow = figures.map((text) => text.split('/').map(Number)).map(([a, b]) => (b === undefined ? a! : a! / b));
  return limits.flatMap(({ key, value }) => {
    const shown = asPrinted(key, value);
    const isThere = shown.some((v) => inRow.some((r) => Math.abs(r - v) <= 0.02 * Math.abs(v)));
    return isThere ? [] : [`${key} ${value}: none of ${shown.join(', ')} in "${row.threshold}"`];
  });
}

/** A limit in the units that a table prints it in: metre, millimetre, foot, inch; square millimetre, kcmil, AWG; milliohm. */
function asPrinted(key: string, value: number): readonly number[] {
  if (key.endsWith('M2')) return [value, value * 1e6, value * 1e4, (value * 1e6) / 0.5067, ...awgOf(value * 1e6)];
  if (key.endsWith('M')) return [value, value * 1e3, value * 1e6, value / 0.3048, value / 0.0254];
  if (key.endsWith('Ohm')) return [value, value * 1e3, value * 1e6];
  return [value, value * 100];
}

/** AWG by its definition (ASTM B258): d = 0.127 mm x 92^((36 - n)/39). */
function awgOf(areaMm2: number): readonly number[] {
  const diameterMm = Math.sqrt((4 * areaMm2) / Math.PI);
  const n = 36 - 39 * (Math.log(diameterMm / 0.127) / Math.log(92));
  return n > 0 ? [Math.round(n)] : [Math.round(1 - n)];
}

/** What a rule cites and its row does not: documents, and numbers of clauses where none of them is in the row. */
function citedIn(source: { document: string; clause: string | null }, row: ConditionRow): readonly string[] {
  const inRow = row.clause.replace(/\bNEC\b/g, 'NFPA 70').toLowerCase();
  const documents = source.document.toLowerCase().split(/; /);
  const isOwn = (d: string) => /^ours|^common practice/.test(d) && /ours|common practice/.test(inRow);
  // a check of our own may have found a document that says the same
  if (inRow !== 'ours' && !documents.some((d) => inRow.includes(d) || isOwn(d)))
    return [`${source.document} is not in "${row.clause}"`];
  const numbers = (text: string): readonly string[] => text.match(/\b\d+(?:\.\d+)+|\b54-\d+/g) ?? [];
  const [own, theirs] = [numbers(source.clause ?? ''), numbers(row.clause)];
  if (own.length === 0 || theirs.length === 0 || own.some((n) => theirs.includes(n))) return [];
  return [`${source.clause} is not in "${row.clause}"`];
}
