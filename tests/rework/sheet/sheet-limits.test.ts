import { describe, expect, it } from 'vitest';
import { isAmericanCode, limitM, sheetLimits } from '../../../src/rework/sheet/sheet-limits.ts';
import { rules } from '../../../src/rules/index.ts';

/** Figures as printed in the documents named beside them. */
const printed = [
  // NFPA 780: counterpoise 18 in; NFPA 70 250.53(F): ring of a service 30 in (both from memory)
  ['us', 'depth', 18 * 0.0254],
  ['us', 'ring', 30 * 0.0254],
  // IEC 62305-3:2010 5.4.3 (from memory)
  ['iec', 'depth', 0.5],
  ['uk', 'depth', 0.5],
  // AS/NZS 1768:2021 as a trade page sums it up
  ['au', 'depth', 0.6],
  // MIL-HDBK-419A vol. II and NFPA 780 4.9.5: 8 in (203 mm)
  ['us', 'radius', 0.2032],
  ['iec', 'radius', 0.2032],
  // UL 96A 9.3.3: 6 ft
  ['us', 'guard', 6 * 0.3048],
] as const;

describe('figures that a contractor is told', () => {
  it.each(printed)('%s: %s', (region, key, lengthM) => {
    expect(limitM(region, key)).toBeCloseTo(lengthM, 6);
  });

  it.each(['us', 'ca', 'iec', 'uk', 'au'])(
    '%s: stand in the document that the rule of the catalogue names',
    (region) => {
      for (const { rule, sources, key } of sheetLimits(region)) {
        expect(sources.length, key).toBeGreaterThan(0);
        if (rule === null) {
          expect(sources.map((s) => s.provenance)).toEqual(['ours']);
          continue;
        }
        const record = rules.find((r) => r.id === rule)!.source;
        for (const { document, edition, clause } of sources) {
          expect(record.document.split('; '), key).toContain(document);
          if (edition !== null) expect(edition).toBe(record.edition);
          if (clause !== null) expect(record.clause).toContain(clause);
        }
      }
    },
  );

  it('Canada reads the American table, and no other country does', () => {
    expect(sheetLimits('ca')).toEqual(sheetLimits('us'));
    const documents = sheetLimits('uk').flatMap((l) => l.sources.map((s) => s.document));
    expect(documents.some((d) => d.includes('NFPA 70'))).toBe(false);
  });

  it('no source is two documents in one: each has a clause and a provenance of its own', () => {
    const sources = ['us', 'iec', 'au'].flatMap((region) => sheetLimits(region).flatMap((l) => l.sources));
    expect(sources.filter((s) => s.document.includes(';') || s.clause?.includes(';'))).toEqual([]);
    const of = (key: string) =>
      sheetLimits('us')
        .find((l) => l.key === key)!
        .sources.map((s) => [s.document, s.clause, s.provenance]);
    // 250.53(F) asks 30 in of a ring; 18 in is asked by NFPA 780
    expect(of('depth')).toEqual([['NFPA 780', null, 'memory']]);
    expect(of('ring')).toEqual([['NFPA 70', '250.53(F)', 'memory']]);
    expect(of('guard')).toEqual([
      ['UL 96A', '9.3.3', 'read'],
      ['NFPA 70', '250.64(B)', 'memory'],
      ['NFPA 70', '810.21(D)', 'second-hand'],
    ]);
  });

  it('codes of the United States are told from handbooks and from codes of others', () => {
    const documents = ['us', 'iec', 'au'].flatMap((region) => sheetLimits(region).flatMap((l) => l.sources));
    const american = new Set(documents.filter(isAmericanCode).map((s) => s.document));
    expect([...american].sort()).toEqual(['NFPA 70', 'NFPA 780', 'UL 96A']);
  });

  it('a key without a figure is refused', () => {
    expect(() => limitM('us', 'surface')).toThrow(RangeError);
  });
});
