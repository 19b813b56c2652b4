import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import ts from 'typescript';

export interface SourceFile {
  /** `src/site/read-site.ts` */
  readonly path: string;
  readonly room: string;
  readonly text: string;
  readonly imports: readonly { readonly from: string; readonly typeOnly: boolean }[];
}

/** Every TypeScript file of the source, with what it imports; by path. */
export function sourceFiles(): readonly SourceFile[] {
  return readdirSync('src', { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.ts'))
    .sort()
    .map((name) => read(join('src', name).replaceAll('\\', '/')));
}

function read(path: string): SourceFile {
  const text = readFileSync(path, 'utf8');
  const tree = ts.createSourceFile(path, text, ts.ScriptTarget.ES2023, true);
  const imports: { from: string; typeOnly: boolean }[] = [];
  const visit = (node: ts.Node): void => {
    const specifier = ts.isImportDeclaration(node) || ts.isExportDeclaration(node) ? node.moduleSpecifier : undefined;
    if (specifier !== undefined && ts.isStringLiteral(specifier)) {
      imports.push({ from: specifier.text, typeOnly: isTypeOnly(node as ts.ImportDeclaration | ts.ExportDeclaration) });
    }
    if (ts.isCallExpression(node) && node.expression.kind === ts.SyntaxKind.ImportKeyword) {
      const [argument] = node.arguments;
      if (argument !== undefined && ts.isStringLiteral(argument))
        imports.push({ from: argument.text, typeOnly: false });
    }
    ts.forEachChild(node, visit);
  };
  visit(tree);
  return { path, room: path.split('/')[1]!.replace(/\.ts$/, ''), text, imports };
}

function isTypeOnly(node: ts.ImportDeclaration | ts.ExportDeclaration): boolean {
  return ts.isImportDeclaration(node) ? (node.importClause?.isTypeOnly ?? false) : node.isTypeOnly;
}
