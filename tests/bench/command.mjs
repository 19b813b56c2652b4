// The command as it is built, cold, whole processes: `check` against a bare node, `report` against the check that works out
// the same study (`check --json`; a check that prints findings solves no soil). Judged is processor time, user and system,
// which other programs of the machine disturb little; the clock is printed beside it.
import { spawnSync } from 'node:child_process';
import { cpSync, mkdirSync, readdirSync, statSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { childTime } from './child-time.mjs';
import { inTurns, median } from './in-turns.mjs';
import { largeSite } from './large-site.mjs';

const root = join(dirname(fileURLToPath(import.meta.url)), '..', '..');
const LARGE_PARTS = 2000;

/** Builds the command into a folder of its own, from which its packages can be found, and returns its path. */
export function builtCommand() {
  const folder = join(root, 'node_modules', '.cache', 'evenground-bench');
  mkdirSync(folder, { recursive: true });
  cpSync(join(root, 'templates'), join(folder, 'templates'), { recursive: true });
  const build = join(root, 'src', 'shell', 'setup', 'build.mjs');
  const built = spawnSync(process.execPath, [build, join(folder, 'dist')], { stdio: 'inherit' });
  if (built.status !== 0) throw new Error('the command could not be built');
  return join(folder, 'dist', 'evenground.js');
}

/** The longest site file of the examples. */
export function largestExample() {
  const folder = join(root, 'examples');
  const files = readdirSync(folder, { recursive: true }).filter((name) => name.endsWith('.site.yaml'));
  return files.map((name) => join(folder, name)).sort((a, b) => statSync(b).size - statSync(a).size)[0];
}

export const exampleWithFaults = join(root, 'examples', 'marl-hill', 'marl-hill.site.yaml');

/** The benches of one site file: bare node, `check`, `check --json` and `report` in turns. */
export async function commandBench({ command, name, site, scratch, rounds, most }) {
  const run = (...args) => childTime(process.execPath, args, [0, 1]);
  const times = await inTurns(
    {
      bare: () => run('-e', '0'),
      check: () => run(command, 'check', site),
      study: () => run(command, 'check', site, '--json', '-o', join(scratch, 'study.json')),
      report: () => run(command, 'report', site, '-o', scratch),
    },
    rounds,
  );
  return [
    ratioOf(`check of ${name} against bare node`, times.check, times.bare, most),
    ratioOf(`report of ${name} against the check that prints its study`, times.report, times.study, 2),
    ratioOf(`report of ${name} against a check of findings alone`, times.report, times.check, null),
  ];
}

/** Writes the generated site into the scratch folder. */
export function writeLargeSite(scratch) {
  const path = join(scratch, 'large.site.yaml');
  writeFileSync(path, largeSite(1, LARGE_PARTS));
  return path;
}

/**
 * The ratio of medians, by processor time where it is known, with both times in words. `most` null: held to no limit.
 */
export function ratioOf(name, ours, peers, most) {
  const [cpu, peerCpu] = [ours, peers].map((list) => median(list.map((t) => t.cpuMs)));
  const [wall, peerWall] = [ours, peers].map((list) => median(list.map((t) => t.wallMs)));
  const byCpu = cpu !== null && peerCpu !== null && peerCpu > 0;
  const said = (what, a, b) => `${what} ${a.toFixed(0)} ms to ${b.toFixed(0)} ms`;
  const clock = `${said('clock', wall, peerWall)}, ratio ${(wall / peerWall).toFixed(1)}`;
  const detail = byCpu ? `judged by ${said('processor time', cpu, peerCpu)}; ${clock}` : `judged by ${clock}`;
  return { name, ratio: byCpu ? cpu / peerCpu : wall / peerWall, most, detail };
}
