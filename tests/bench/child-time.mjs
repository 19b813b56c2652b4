import { spawnSync } from 'node:child_process';

const canSayCpu = spawnSync('bash', ['-c', 'time true'], { stdio: 'ignore' }).status === 0;

/**
 * Runs a program to its end, what it prints thrown away: its time by the clock and, where bash can say it, the processor
 * time of it and of the children that it waited for (else null). Throws when it ends with a code that is not expected.
 */
export function childTime(program, args, expected = [0]) {
  const quiet = 'TIMEFORMAT="%U %S"; time "$@" >/dev/null 2>&1';
  const [file, all] = canSayCpu ? ['bash', ['-c', quiet, 'bash', program, ...args]] : [program, args];
  const start = performance.now();
  const child = spawnSync(file, all, { stdio: ['ignore', 'ignore', 'pipe'], encoding: 'utf8' });
  const wallMs = performance.now() - start;
  if (!expected.includes(child.status)) throw new Error(`${program} ${args.join(' ')} ended with ${child.status}`);
  return { wallMs, cpuMs: canSayCpu ? cpuOf(child.stderr) : null };
}

function cpuOf(said) {
  const [user, system] = said.trim().split(' ').map(Number);
  return (user + system) * 1000;
}
