import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { foldFindings } from '../../src/rules/fold-findings.ts';
import type { Severity } from '../../src/rules/rule.ts';

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

describe('a cause that is none', () => {
  const at = (id: string, outcome: string, under: string | null = null, agreed: object | null = null) => ({
    id,
    under,
    outcome,
    agreed,
  });
  const under = (...findings: ReturnType<typeof at>[]) => foldFindings(findings).find((f) => f.id === 'b')!.under;

  it.each([
    ['met', null],
    ['cannot tell', null],
    ['not met', 'a'],
  ])('%s takes in what is not met: %s', (outcome, parent) => {
    expect(under(at('a', outcome), at('b', 'not met', 'a'))).toBe(parent);
  });

  it('that cannot be told takes in a doubt', () => {
    expect(under(at('a', 'cannot tell'), at('b', 'cannot tell', 'a'))).toBe('a');
  });

  it('that was agreed to stand hides nothing that was not', () => {
    expect(under(at('a', 'not met', null, {}), at('b', 'not met', 'a'))).toBeNull();
    expect(under(at('a', 'not met', null, {}), at('b', 'not met', 'a', {}))).toBe('a');
  });
});

describe('a cause that weighs less', () => {
  const of = (id: string, severity: Severity, under: string | null = null, outcome = 'not met') => ({
    id,
    under,
    outcome,
    severity,
  });
  const folded = (...findings: ReturnType<typeof of>[]) => foldFindings(findings).map((f) => f.under);

  it('takes in nothing that is graver', () => {
    expect(folded(of('a', 'advice'), of('b', 'hazard', 'a'))).toEqual([null, null]);
    expect(folded(of('a', 'defect'), of('b', 'hazard', 'a'))).toEqual([null, null]);
    expect(folded(of('a', 'defect'), of('b', 'defect', 'a'))).toEqual([null, 'a']);
    expect(folded(of('a', 'hazard'), of('b', 'advice', 'a'))).toEqual([null, 'a']);
  });

  it('takes in a doubt, which nobody reads as found', () => {
    expect(folded(of('a', 'advice'), of('b', 'hazard', 'a', 'cannot tell'))).toEqual([null, 'a']);
  });

  it('leaves what the graver one causes under the graver one', () => {
    expect(folded(of('a', 'advice'), of('b', 'hazard', 'a'), of('c', 'defect', 'b'))).toEqual([null, null, 'b']);
  });
});

/** Any list with any causes, circles among them: no finding may vanish from the page. */
it('leaves every finding standing alone or under one that stands alone', () => {
  const id: fc.Arbitrary<string> = fc.constantFrom('a', 'b', 'c', 'd', 'e');
  const severity = fc.constantFrom<Severity[]>('hazard', 'defect', 'advice');
  const list = fc.uniqueArray(fc.record({ id, severity, under: fc.option(fc.oneof(id, fc.constant('elsewhere'))) }), {
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
