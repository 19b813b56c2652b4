import { spawnSync } from 'node:child_process';
import { chmodSync, cpSync, existsSync, mkdtempSync, renameSync, rmSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { inject } from 'vitest';

export interface Ran {
  readonly code: number | null;
  readonly signal: NodeJS.Signals | null;
  readonly out: string;
  readonly err: string;
}

export interface BuiltCommand {
  /** Folder that holds `dist` and `templates`, as an installed package does. */
  readonly folder: string;
  readonly main: string;
  /** Runs the command; `shell` in its place runs a line of bash in which `$evenground` is the command. */
  readonly run: (...args: readonly string[]) => Ran;
  readonly bash: (line: string, options?: { readonly uid?: number }) => Ran;
  readonly remove: () => void;
}

/**
 * The command as it is published: bundled, in a folder of its own, so that a bundle somebody else is building is never
 * read. The folder lies in node_modules, from where packages are found as they are from an installed copy.
 */
export function buildCommand(): BuiltCommand {
  const bundle = bundleOfRun();
  const folder = mkdtempSync(resolve('node_modules/.cache/evenground-'));
  chmodSync(folder, 0o755);
  cpSync(bundle, join(folder, 'dist'), { recursive: true });
  cpSync('templates', join(folder, 'templates'), { recursive: true });
  const main = join(folder, 'dist', 'evenground.js');
  return {
    folder,
    main,
    run: (...args) => ran(process.execPath, [main, ...args]),
    bash: (line, options) =>
      // a shell whose input is a socket would read the start-up file of whoever runs the tests
      ran('bash', ['--norc', '-c', `evenground="${process.execPath} ${main}"; ${line}`], { uid: options?.uid }),
    remove: () => rmSync(folder, { recursive: true, force: true }),
  };
}

/** Bundled once in a run of the tests, by the file that asks first; it is put in its place whole. */
function bundleOfRun(): string {
  const kept = inject('bundleFolder');
  const bundle = join(kept, 'dist');
  if (existsSync(bundle)) return bundle;
  const own = join(mkdtempSync(join(kept, 'by-')), 'dist');
  const built = spawnSync(process.execPath, ['src/shell/setup/build.mjs', own], { encoding: 'utf8' });
  if (built.status !== 0) throw new Error(`the command cannot be built:\n${built.stderr}`);
  try {
    renameSync(own, bundle);
  } catch (error) {
    // another process was first
    if (!existsSync(bundle)) throw error;
  }
  return bundle;
}

function ran(command: string, args: readonly string[], options: { readonly uid?: number | undefined } = {}): Ran {
  const { NO_COLOR: _, FORCE_COLOR: __, ...env } = process.env;
  const identity = options.uid === undefined ? {} : { uid: options.uid, gid: options.uid };
  const result = spawnSync(command, [...args], { encoding: 'utf8', env, maxBuffer: 1 << 28, ...identity });
  if (result.error !== undefined) throw result.error;
  return { code: result.status, signal: result.signal, out: result.stdout, err: result.stderr };
}

/** On root permissions do not bind, so what they forbid is tried as somebody else. */
export const somebodyElse = process.getuid?.() === 0 ? { uid: 65534 } : {};

/** Why the command cannot be run as somebody else (a checkout in a closed home of root), or null. */
export function closedToOthers({ main }: BuiltCommand): string | null {
  const { status } = spawnSync('test', ['-r', main], somebodyElse);
  return status === 0 ? null : `SKIPPED: only its owner can read ${main}, so nobody else can run the command.`;
}
