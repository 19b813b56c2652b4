import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { foldFindings } from '../../src/rules/fold-findings.ts';

const finding = (id: string, under: string | null = null) => ({ id, under });

function parents(...findings: { readonly id: string; readonly under: string | null }[]) {
  return Object.fromEntries(foldFindings(findings).map((f) => [f.id, f.under]));
}

describe('a finding that another one causes', () => {
  it('stands under it', () => {
    expect(parents(finding('a'), finding('b', 'a'))).toEqual({ a: null, b: 'a' });
  });

  it('stands alone when its cause was not found', () => {
    expect(parents(finding('b', 'a'))).toEqual({ b: null });
  });

  it('stands under the first cause of a chain, whatever the order of the list', () => {
    expect(parents(finding('c', 'b'), finding('b', 'a'), finding('a'))).toEqual({ a: null, b: 'a', c: 'a' });
  });

  it('stands under the last that was found of a chain that begins with one that was not', () => {
    expect(parents(finding('b', 'a'), finding('c', 'b'))).toEqual({ b: null, c: 'b' });
  });

  it('stands alone when it names itself', () => {
    expect(parents(finding('a', 'a'))).toEqual({ a: null });
  });

  it('keeps everything else of the finding', () => {
    expect(foldFindings([{ id: 'a', under: null, text: 'kept' }])).toEqual([{ id: 'a', under: null, text: 'kept' }]);
  });
});

/** Any list with any causes, circles among them: no finding may vanish from the page. */
it('leaves every finding standing alone or under one that stands alone', () => {
  const id: fc.Arbitrary<string> = fc.constantFrom('a', 'b', 'c', 'd', 'e');
  const list = fc.uniqueArray(fc.record({ id, under: fc.option(fc.oneof(id, fc.constant('elsewhere'))) }), {
    selector: (f) => f.id,
  });
  fc.assert(
    fc.property(list, (findings) => {
      const folded = foldFindings(findings);
      const alone = new Set(folded.filter((f) => f.under === null).map((f) => f.id));
      return folded.length === findings.length && folded.every((f) => f.under === null || alone.has(f.under));
    }),
  );
});
