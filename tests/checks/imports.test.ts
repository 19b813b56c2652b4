import { posix } from 'node:path';
import { describe, expect, it } from 'vitest';
import { rooms, shellDoors, typesOnly } from './rooms.ts';
import { type SourceFile, sourceFiles } from './source-files.ts';

const files = sourceFiles();
const free = new Set(['shell', 'index']);

describe('imports', () => {
  it('go only where the table of rooms lets them, type imports too', () => {
    expect(files.filter((f) => !free.has(f.room)).flatMap(wrongImports)).toEqual([]);
  });

  it('reach each package through its one door', () => {
    const shell = files.filter((f) => f.room === 'shell');
    const wrong = shell.flatMap((f) =>
      f.imports
        .filter(
          (i) => !i.from.startsWith('.') && !i.from.startsWith('node:') && !(shellDoors[i.from] ?? []).includes(f.path),
        )
        .map((i) => `${f.path}: ${i.from}`),
    );
    expect(wrong).toEqual([]);
  });

  it('run in no circle', () => {
    expect(circles(files)).toEqual([]);
  });

  it('are named: no default exports', () => {
    expect(files.filter((f) => /^export default /m.test(f.text)).map((f) => f.path)).toEqual([]);
  });
});

function wrongImports(file: SourceFile): readonly string[] {
  const row = rooms[file.room];
  if (row === undefined) return [`${file.path}: room ${file.room} is not in the table`];
  return file.imports.flatMap(({ from, typeOnly }) => {
    if (!from.startsWith('.')) return row.packages.includes(from) ? [] : [`${file.path}: package ${from}`];
    const room = target(file, from).split('/')[1]!;
    if (room === file.room) return [];
    if (!row.rooms.includes(room)) return [`${file.path}: room ${room}`];
    return (typesOnly[file.room] ?? []).includes(room) && !typeOnly
      ? [`${file.path}: room ${room}, of which only types may be named`]
      : [];
  });
}

const target = (file: SourceFile, from: string): string => posix.join(posix.dirname(file.path), from);

function circles(all: readonly SourceFile[]): readonly string[] {
  const next = new Map(
    all.map((f) => [
      f.path,
      f.imports.filter((i) => i.from.startsWith('.') && !i.typeOnly).map((i) => target(f, i.from)),
    ]),
  );
  const state = new Map<string, 'open' | 'done'>();
  const found: string[] = [];
  const visit = (path: string, trail: readonly string[]): void => {
    if (state.get(path) === 'done') return;
    if (state.get(path) === 'open') {
      found.push([...trail.slice(trail.indexOf(path)), path].join(' → '));
      return;
    }
    state.set(path, 'open');
    for (const to of next.get(path) ?? []) visit(to, [...trail, path]);
    state.set(path, 'done');
  };
  for (const path of next.keys()) visit(path, []);
  return found;
}
