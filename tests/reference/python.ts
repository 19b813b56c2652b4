import { spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';

export interface Python {
  readonly run: (script: string, input: unknown) => unknown;
}

/**
 * A Python that has the modules, or null after saying on stderr what is not checked for want of it. Scripts stand beside
 * this file, read JSON on stdin and print JSON.
 */
export function findPython(modules: readonly string[], unchecked: string): Python | null {
  const command = ['/usr/bin/python3', 'python3'].find((name) => has(name, modules));
  if (command !== undefined) return { run: (script, input) => run(command, script, input) };
  process.stderr.write(`SKIPPED: ${unchecked}: no python3 with ${modules.join(', ') || 'its own library'} was found\n`);
  return null;
}

function has(command: string, modules: readonly string[]): boolean {
  return spawnSync(command, ['-c', ['pass', ...modules.map((name) => `import ${name}`)].join('\n')]).status === 0;
}

function run(command: string, script: string, input: unknown): unknown {
  const path = fileURLToPath(new URL(script, import.meta.url));
  const done = spawnSync(command, [path], { input: JSON.stringify(input), encoding: 'utf8', maxBuffer: 1 << 28 });
  if (done.status !== 0) throw new Error(`${script}: ${done.stderr}`);
  return JSON.parse(done.stdout);
}
