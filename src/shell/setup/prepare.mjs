// What both commands of the README do first: check Node, install the locked packages, build, link the command.
import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { chmodSync, existsSync, mkdirSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

export const root = join(dirname(fileURLToPath(import.meta.url)), '..', '..', '..');

/** Installs and builds; ends the process with a plain sentence when that cannot be done. */
export function prepare() {
  const major = Number(process.versions.node.split('.')[0]);
  if (major < 20) stop(`Node ${process.versions.node} is too old: Node 20 or later is needed.`);
  install();
  step('Building', process.execPath, ['node_modules/typescript/bin/tsc', '-p', 'tsconfig.json']);
  step('Bundling', process.execPath, ['src/shell/setup/build.mjs']);
  link();
}

/** Runs one step with its output shown only when it fails. */
export function step(what, command, args, options = {}) {
  process.stderr.write(`${what} ...\n`);
  const run = spawnSync(command, args, {
    cwd: root,
    encoding: 'utf8',
    shell: process.platform === 'win32',
    ...options,
  });
  if (run.status === 0) return run.stdout;
  stop(`${what} failed.\n${run.stdout ?? ''}${run.stderr ?? ''}${run.error?.message ?? ''}`);
}

export function stop(sentence) {
  process.stderr.write(`${sentence}\n`);
  process.exit(3);
}

/** Packages are installed once for each lock file. */
function install() {
  const lock = createHash('sha256')
    .update(readFileSync(join(root, 'package-lock.json')))
    .digest('hex');
  const mark = join(root, 'node_modules', '.evenground-lock');
  if (existsSync(mark) && readFileSync(mark, 'utf8') === lock) return;
  step('Installing packages', 'npm', ['ci', '--ignore-scripts', '--no-audit', '--no-fund'], {
    env: { ...process.env, PUPPETEER_SKIP_DOWNLOAD: '1' },
  });
  writeFileSync(mark, lock);
}

/** `npx evenground` finds commands in node_modules/.bin; this clone's own is put there. */
function link() {
  const bin = join(root, 'node_modules', '.bin');
  const target = join(root, 'dist', 'evenground.js');
  mkdirSync(bin, { recursive: true });
  chmodSync(target, 0o755);
  if (process.platform === 'win32') {
    writeFileSync(join(bin, 'evenground.cmd'), `@node "${target}" %*\r\n`);
    return;
  }
  rmSync(join(bin, 'evenground'), { force: true });
  symlinkSync(join('..', '..', 'dist', 'evenground.js'), join(bin, 'evenground'));
}
