import { describe, expect, it } from 'vitest';
import { oneSite, studyOf, tableOf } from './golden-study.ts';

/** Supplies that a region has, and one that nobody named. */
const supplies = {
  us: ['us-grounded', 'unknown'],
  iec: ['tn-s', 'tn-c-s', 'tt', 'unknown'],
  uk: ['tn-s', 'tn-c-s', 'tt', 'unknown'],
} as const;
type Region = keyof typeof supplies;

/** Without rods: panel and mast on 6 and 16 mm² to the panel, so that all earth there is comes with the supply or is missing. */
const noElectrode = oneSite
  .replace(/electrodes:\n(?: {2}.*\n)+/, 'electrodes: none\n')
  .replace(/joints:\n(?: {2}.*\n)+/, '')
  .replace(
    /conductors:\n(?: {2}.*\n)+/,
    `conductors:
  c2: {from: entry, to: panel, wire: 6 mm2 copper, length: 2 m, joints: [bolted lug, bolted lug]}
  c3: {from: mast@base, to: panel, wire: 16 mm2 copper, length: 5 m, joints: [bolted lug, bolted lug]}
`,
  );
const sites: Readonly<Record<string, string>> = { 'as typed': oneSite, 'no electrode': noElectrode };

/** What each rule says: outcome, places and reason; where it is met or not applicable, that alone. */
function verdictsOf(region: string, supply: string, body: string): ReadonlyMap<string, string> {
  const study = studyOf(`region: ${region}, supply: ${supply}`, body);
  return new Map(
    study.conditions.map(({ rule, outcome }) => {
      if (outcome === 'not applicable' || outcome === 'not looked at') return [rule, '-'];
      if (outcome === 'met') return [rule, 'met'];
      const own = study.findings.filter((f) => f.rule === rule && f.outcome === outcome);
      const at = own.flatMap((f) => f.at).sort();
      const keys = [...new Set(own.map((f) => f.because.key))].sort();
      return [rule, `${outcome}: ${at.join(' ')} (${keys.join(', ')})`];
    }),
  );
}

const [head, ...rows] = tableOf('supply-tables.tsv');

/** The rules whose word hangs on the supply, in a region, on one of the sites: `rule cell cell …`. */
function differing(region: Region, site: string): readonly string[] {
  const all = supplies[region].map((supply) => verdictsOf(region, supply, sites[site]!));
  return [...all[0]!.keys()].flatMap((rule) => {
    const cells = all.map((verdicts) => verdicts.get(rule)!);
    return new Set(cells).size > 1 ? [[rule, ...cells].join('\t')] : [];
  });
}

describe('the one site on each supply that its region has: what hangs on the supply, and nothing else does', () => {
  it('has its columns', () => {
    expect(head).toEqual(['region', 'site', 'rule', ...supplies.iec, 'why']);
    expect(supplies.uk).toEqual(supplies.iec);
  });

  it.each(Object.keys(supplies).flatMap((region) => Object.keys(sites).map((site) => [region as Region, site] as const)))(
    '%s, %s',
    (region, site) => {
      const expected = rows.filter(([r, s]) => r === region && s === site).map((cells) => cells.slice(2, 7).join('\t'));
      expect(differing(region, site)).toEqual(expected);
    },
  );

  it('has no row of another region or site, and says why in each', () => {
    expect(rows.filter(([r, s]) => !Object.hasOwn(supplies, r!) || !Object.hasOwn(sites, s!))).toEqual([]);
    expect(rows.filter((cells) => (cells[7] ?? '').length < 10)).toEqual([]);
  });
});
