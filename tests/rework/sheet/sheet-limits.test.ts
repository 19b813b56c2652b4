import { describe, expect, it } from 'vitest';
import { limitM, sheetLimits } from '../../../src/rework/sheet/sheet-limits.ts';
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
      for (const { rule, source, key } of sheetLimits(region)) {
        if (rule === null) {
          expect(source.provenance, key).toBe('ours');
          continue;
        }
        const record = rules.find((r) => r.id === rule);
        expect({ ...source, rule }).toMatchObject({ ...record!.source, rule });
      }
    },
  );

  it('Canada reads the American table, and no other country does', () => {
    expect(sheetLimits('ca')).toEqual(sheetLimits('us'));
    const documents = sheetLimits('uk').map((l) => l.source.document);
    expect(documents.some((d) => d.includes('NFPA 70'))).toBe(false);
  });

  it('a key without a figure is refused', () => {
    expect(() => limitM('us', 'surface')).toThrow(RangeError);
  });
});
