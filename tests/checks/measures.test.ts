import ts from 'typescript';
import { describe, expect, it } from 'vitest';
import { sourceFiles } from './source-files.ts';

const files = sourceFiles();
/** Tables of data are exempt. */
const tables = [
  /^src\/materials\//,
  /^src\/words\//,
  /^src\/site\/format\//,
  /^src\/site\/site\.ts$/,
  /^src\/study\/study\.ts$/,
  /^src\/site\/starter\.ts$/,
  /^src\/rules\/(?:index|rule-ids|code-sets\/moved-thresholds)\.ts$/,
];
const ordinary = files.filter((f) => !tables.some((t) => t.test(f.path)));
const lines = (text: string): number => text.split('\n').length - 1;
const median = (numbers: readonly number[]): number =>
  [...numbers].sort((a, b) => a - b)[Math.floor(numbers.length / 2)]!;

describe('house measures', () => {
  it('keeps files short: median at most 90 lines, none over 400', () => {
    expect(ordinary.filter((f) => lines(f.text) > 400).map((f) => `${f.path}: ${lines(f.text)}`)).toEqual([]);
    expect(median(ordinary.map((f) => lines(f.text)))).toBeLessThanOrEqual(90);
  });

  it('keeps functions short: median at most 12 lines, none over 60', () => {
    const all = ordinary.flatMap((f) => functionLengths(f.path, f.text));
    expect(all.filter((fn) => fn.length > 60).map((fn) => `${fn.name}: ${fn.length}`)).toEqual([]);
    expect(median(all.map((fn) => fn.length))).toBeLessThanOrEqual(12);
  });

  it('keeps a rule within 120 lines', () => {
    const rules = ordinary.filter((f) => /^src\/rules\/[a-z-]+\//.test(f.path));
    expect(rules.filter((f) => lines(f.text) > 120).map((f) => f.path)).toEqual([]);
  });

  it('has no drawer of odds and ends', () => {
    expect(
      files.filter((f) => /(utils?|helpers?|managers?|common|misc)(\/|\.ts$)/.test(f.path)).map((f) => f.path),
    ).toEqual([]);
  });
});

function functionLengths(path: string, text: string): readonly { readonly name: string; readonly length: number }[] {
  const tree = ts.createSourceFile(path, text, ts.ScriptTarget.ES2023, true);
  const found: { name: string; length: number }[] = [];
  const visit = (node: ts.Node): void => {
    if ((ts.isFunctionDeclaration(node) || ts.isMethodDeclaration(node)) && node.body !== undefined) {
      const from = tree.getLineAndCharacterOfPosition(node.getStart()).line;
      const to = tree.getLineAndCharacterOfPosition(node.end).line;
      found.push({ name: `${path} ${node.name?.getText() ?? ''}`, length: to - from + 1 });
    }
    ts.forEachChild(node, visit);
  };
  visit(tree);
  return found;
}
