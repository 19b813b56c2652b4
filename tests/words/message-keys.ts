import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import ts from 'typescript';

/** Calls that note something about a file, and which argument of theirs is the message key. */
const noters: Readonly<Record<string, number>> = { refuse: 2, refused: 2, ask: 2, slip: 0, assume: 2 };

export interface UsedKey {
  readonly key: string;
  readonly by: string;
  readonly file: string;
}

/**
 * Every message key that the source hands to one of the calls above: text in the call, either side of a condition, or the
 * texts in the variable that the call names.
 */
export function usedKeys(folder: string): readonly UsedKey[] {
  return filesOf(folder).flatMap((file) => {
    const tree = ts.createSourceFile(file, readFileSync(file, 'utf8'), ts.ScriptTarget.ES2023, true);
    const keys: UsedKey[] = [];
    const visit = (node: ts.Node): void => {
      if (ts.isCallExpression(node) && ts.isIdentifier(node.expression)) {
        const by = node.expression.text;
        const argument = Object.hasOwn(noters, by) ? node.arguments[noters[by]!] : undefined;
        if (argument !== undefined) for (const key of textsOf(argument, tree)) keys.push({ key, by, file });
      }
      ts.forEachChild(node, visit);
    };
    visit(tree);
    return keys;
  });
}

/** The members of a union of texts, such as `type Fault = 'a' | 'b'`. */
export function unionMembers(file: string, name: string): readonly string[] {
  const tree = ts.createSourceFile(file, readFileSync(file, 'utf8'), ts.ScriptTarget.ES2023, true);
  const alias = tree.statements.find((s) => ts.isTypeAliasDeclaration(s) && s.name.text === name);
  return alias === undefined ? [] : literalsIn((alias as ts.TypeAliasDeclaration).type);
}

function filesOf(folder: string): readonly string[] {
  return readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.ts'))
    .sort()
    .map((name) => join(folder, name));
}

/** What an expression can come to: not the texts that a condition compares with. */
function textsOf(value: ts.Node, tree: ts.SourceFile, seen: ReadonlySet<string> = new Set()): readonly string[] {
  const all = (nodes: readonly ts.Node[]) => nodes.flatMap((node) => textsOf(node, tree, seen));
  if (ts.isStringLiteralLike(value)) return [value.text];
  if (ts.isConditionalExpression(value)) return all([value.whenTrue, value.whenFalse]);
  if (ts.isBinaryExpression(value)) return all([value.left, value.right]);
  if (ts.isElementAccessExpression(value)) return all([value.expression]);
  if (ts.isObjectLiteralExpression(value)) {
    return all(value.properties.filter(ts.isPropertyAssignment).map((p) => p.initializer));
  }
  if (!ts.isIdentifier(value) || seen.has(value.text)) return [];
  const more = new Set([...seen, value.text]);
  return declared(value.text, tree).flatMap((node) => textsOf(node, tree, more));
}

function declared(name: string, tree: ts.SourceFile): readonly ts.Expression[] {
  const found: ts.Expression[] = [];
  const visit = (node: ts.Node): void => {
    if (ts.isVariableDeclaration(node) && ts.isIdentifier(node.name) && node.name.text === name) {
      if (node.initializer !== undefined) found.push(node.initializer);
    }
    ts.forEachChild(node, visit);
  };
  visit(tree);
  return found;
}

function literalsIn(node: ts.Node): readonly string[] {
  if (ts.isLiteralTypeNode(node) && ts.isStringLiteral(node.literal)) return [node.literal.text];
  const found: string[] = [];
  ts.forEachChild(node, (child) => {
    found.push(...literalsIn(child));
  });
  return found;
}
