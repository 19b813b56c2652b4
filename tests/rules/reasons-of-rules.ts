import ts from 'typescript';
import { ruleIds } from '../../src/rules/rule-ids.ts';

/** One `because` or `settle` that a rule can give: the keys it may carry and the names of its values. */
export interface Reason {
  readonly as: 'because' | 'settle';
  readonly keys: readonly string[];
  readonly values: readonly string[];
  /** What the verdict says where the same object says it. */
  readonly is: string | null;
  readonly place: string;
}

/**
 * Every reason that each rule can give, read off the source: the rule's file and whatever of the rules room it calls.
 * Keys that are worked out are resolved by the type checker, so a key that is any text at all stands here as nothing.
 */
export function reasonsOfRules(): ReadonlyMap<string, readonly Reason[]> {
  const program = ts.createProgram(['src/rules/index.ts'], {
    target: ts.ScriptTarget.ES2023,
    module: ts.ModuleKind.ESNext,
    moduleResolution: ts.ModuleResolutionKind.Bundler,
    allowImportingTsExtensions: true,
    noEmit: true,
    strict: true,
    noUncheckedIndexedAccess: true,
    exactOptionalPropertyTypes: true,
    skipLibCheck: true,
    types: ['node'],
  });
  const checker = program.getTypeChecker();
  const files = program.getSourceFiles().filter((f) => /src\/rules\/[^/]+\/[^/]+\.ts$/.test(f.fileName));
  const byId = new Map<string, readonly Reason[]>();
  for (const id of ruleIds) {
    const file = files.find((f) => f.fileName.endsWith(`/${id}.ts`));
    if (file !== undefined) byId.set(id, reasonsFrom(file, checker));
  }
  return byId;
}

/** Walks the file, then every function and constant of the rules room that it names, each once. */
function reasonsFrom(start: ts.SourceFile, checker: ts.TypeChecker): readonly Reason[] {
  const found: Reason[] = [];
  const seen = new Set<ts.Node>();
  const visit = (node: ts.Node): void => {
    if (ts.isImportDeclaration(node)) return;
    if (ts.isIdentifier(node)) follow(declarationOf(node, checker));
    const reason = reasonAt(node, checker);
    if (reason !== null) found.push(reason);
    ts.forEachChild(node, visit);
  };
  const follow = (declaration: ts.Node | null): void => {
    if (declaration === null || seen.has(declaration)) return;
    seen.add(declaration);
    const file = declaration.getSourceFile();
    if (file !== start && /src\/rules\//.test(file.fileName)) visit(declaration);
  };
  visit(start);
  return found;
}

function declarationOf(node: ts.Identifier, checker: ts.TypeChecker): ts.Node | null {
  const named = checker.getSymbolAtLocation(node);
  const symbol = named !== undefined && named.flags & ts.SymbolFlags.Alias ? checker.getAliasedSymbol(named) : named;
  const declaration = symbol?.valueDeclaration;
  const isCode =
    declaration !== undefined && (ts.isFunctionDeclaration(declaration) || ts.isVariableDeclaration(declaration));
  return isCode ? declaration : null;
}

function reasonAt(node: ts.Node, checker: ts.TypeChecker): Reason | null {
  if (!ts.isPropertyAssignment(node)) return null;
  const as = node.name.getText();
  if ((as !== 'because' && as !== 'settle') || !ts.isObjectLiteralExpression(node.initializer)) return null;
  const { line } = node.getSourceFile().getLineAndCharacterOfPosition(node.getStart());
  const values = property(node.initializer, 'values');
  return {
    as,
    keys: texts(property(node.initializer, 'key'), checker),
    values:
      values === null
        ? []
        : checker
            .getTypeAtLocation(values)
            .getProperties()
            .map((p) => p.name),
    is: texts(property(node.parent as ts.ObjectLiteralExpression, 'is'), checker)[0] ?? null,
    place: `${node.getSourceFile().fileName.replace(/.*\/src\//, 'src/')}:${line + 1}`,
  };
}

/** The expression of a property, typed in full or in short (`{ key }`). */
function property(object: ts.ObjectLiteralExpression, name: string): ts.Expression | null {
  for (const p of object.properties) {
    if (p.name?.getText() !== name) continue;
    if (ts.isPropertyAssignment(p)) return p.initializer;
    if (ts.isShorthandPropertyAssignment(p)) return p.name;
  }
  return null;
}

/** The texts that an expression can be; none when it can be any. */
function texts(expression: ts.Expression | null, checker: ts.TypeChecker): readonly string[] {
  if (expression === null) return [];
  const type = typeOf(expression, checker);
  const all = type.isUnion() ? type.types : [type];
  return all.flatMap((t) => (t.isStringLiteral() ? [t.value] : []));
}

/** Of the constant itself where the property is typed in short. */
function typeOf(expression: ts.Expression, checker: ts.TypeChecker): ts.Type {
  const constant = ts.isShorthandPropertyAssignment(expression.parent)
    ? checker.getShorthandAssignmentValueSymbol(expression.parent)
    : undefined;
  return constant === undefined
    ? checker.getTypeAtLocation(expression)
    : checker.getTypeOfSymbolAtLocation(constant, expression);
}
