import { readFileSync } from 'node:fs';
import ts from 'typescript';
import { describe, expect, it } from 'vitest';
import { clampTraps } from '../../src/electrodes/clamp-loop.ts';
import { groundWords } from '../../src/words/ground-words.ts';
import { soilCommandWords } from '../../src/words/soil-command-words.ts';
import { soilFitWords } from '../../src/words/soil-fit-words.ts';
import { soilWords } from '../../src/words/soil-words.ts';
import { isTerm } from '../../src/words/terms.ts';

/** Texts that a member of an interface may be, in the order of the source: `readonly key: 'a' | 'b'`. */
function textsOfMember(file: string, owner: string, member: string): readonly string[] {
  const tree = ts.createSourceFile(file, readFileSync(file, 'utf8'), ts.ScriptTarget.ES2023, true);
  const texts: string[] = [];
  const literals = (node: ts.Node): void => {
    if (ts.isLiteralTypeNode(node) && ts.isStringLiteral(node.literal)) texts.push(node.literal.text);
    ts.forEachChild(node, literals);
  };
  const visit = (node: ts.Node): void => {
    if (ts.isPropertySignature(node) && node.name.getText(tree) === member && node.type !== undefined)
      literals(node.type);
    else ts.forEachChild(node, visit);
  };
  const isOwner = (s: ts.Statement) =>
    (ts.isInterfaceDeclaration(s) || ts.isTypeAliasDeclaration(s)) && s.name.text === owner;
  tree.statements.filter(isOwner).forEach(visit);
  return texts;
}

const sorted = (texts: Iterable<string>) => [...texts].sort();
const troubles = textsOfMember('src/electrodes/body-troubles.ts', 'BodyTrouble', 'key');
const unsolved = textsOfMember('src/electrodes/solve-bodies.ts', 'UnsolvedBodies', 'reason');
const traps = [...textsOfMember('src/electrodes/slope-method.ts', 'SlopeAnswer', 'reason'), ...clampTraps];
const fitReasons = textsOfMember('src/soil/sounding-fit.ts', 'FitReason', 'key');

describe('reasons of the soil that reach a page', () => {
  it('are found in the source, so that the comparisons below compare something', () => {
    expect(troubles).toContain('shorter-than-radius');
    expect(unsolved).toContain('too many segments');
    expect(fitReasons).toContain('misfit');
    expect(traps).toEqual(expect.arrayContaining(['slope-high', 'metal-loop']));
  });

  it('have a sentence each, and there is none that nothing gives', () => {
    const keys = new Set([...troubles, ...unsolved, 'soil out of reach']);
    expect(sorted(Object.keys(groundWords.unsolved))).toEqual(sorted(keys));
    expect(sorted(Object.keys(groundWords.traps))).toEqual(sorted([...traps, 'probes-disagree']));
    expect(sorted(Object.keys(soilFitWords.reasons))).toEqual(sorted(new Set(fitReasons)));
  });
});

describe('words of the soil', () => {
  const all = textsIn([groundWords, soilCommandWords, soilFitWords, soilWords]);

  it('name only terms that both dictionaries hold', () => {
    const terms = all.flatMap((text) => [...text.matchAll(/\[([A-Za-z][a-z ]*)\]/g)].map((m) => m[1]!));
    expect(terms.length).toBeGreaterThan(10);
    expect(terms.filter((t) => !isTerm(t.toLowerCase()))).toEqual([]);
  });

  it('promise nothing and blame nobody', () => {
    expect(
      all
        .map((text) => text.replace(/\{\w+\}/g, ''))
        .filter((text) => /\b(?:safe|safely|illegal|invalid|error|guarantee)\b/i.test(text)),
    ).toEqual([]);
  });

  it('give a reason as part of a sentence: no capital, no full stop', () => {
    for (const [key, why] of Object.entries(groundWords.unsolved)) expect(why, key).toMatch(/^[a-z].*[a-z0-9]$/);
  });
});

function textsIn(value: unknown): readonly string[] {
  if (typeof value === 'string') return [value];
  return value !== null && typeof value === 'object' ? Object.values(value).flatMap(textsIn) : [];
}
