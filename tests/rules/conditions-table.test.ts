import { describe, expect, it } from 'vitest';
import { rules } from '../../src/rules/index.ts';
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
  'arrester-fits-power': 'what a strike does',
  'only-bond-stands-strike': 'what a strike does',
  'protector-lead-volts': 'what a strike does',
  'boxes-held-together': 'what a strike does',
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

it('every rule is a row, or is named here with why it is there', () => {
  const strange = rules.map((r) => r.id).filter((id) => !rows.has(id) && !Object.hasOwn(beyondTheTable, id));
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

  it('names how the threshold was seen', () => {
    expect([...provenancesOf(row)]).toContain(rule.source.provenance);
  });

  it('cites a document and a clause that its row has', () => {
    expect(citedIn(rule.source, row)).toEqual([]);
  });
});

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
