import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

export interface Ngspice {
  /** Runs a netlist to its end; every vector of its answer by name, `time` among them. */
  readonly run: (netlist: string) => ReadonlyMap<string, Float64Array>;
}

/** The circuit simulator ngspice, or null after saying on stderr what is not checked for want of it. */
export function findNgspice(unchecked: string): Ngspice | null {
  if (spawnSync('ngspice', ['--version']).status === 0) return { run };
  process.stderr.write(`SKIPPED: ${unchecked}: no ngspice was found\n`);
  return null;
}

function run(netlist: string): ReadonlyMap<string, Float64Array> {
  const folder = mkdtempSync(join(tmpdir(), 'ngspice-'));
  try {
    const [circuit, raw] = [join(folder, 'net.cir'), join(folder, 'net.raw')];
    writeFileSync(circuit, netlist);
    const done = spawnSync('ngspice', ['-b', '-n', '-r', raw, circuit], { encoding: 'utf8', cwd: folder });
    if (done.status !== 0) throw new Error(`ngspice: ${done.stderr}${done.stdout}`);
    return vectorsOf(readFileSync(raw));
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/** A raw file: a head of lines, then all vectors point by point as doubles. */
function vectorsOf(raw: Buffer): ReadonlyMap<string, Float64Array> {
  const mark = 'Binary:\n';
  const start = raw.indexOf(mark);
  const head = raw.subarray(0, start).toString('latin1');
  const [variables, points] = ['No. Variables', 'No. Points'].map((key) =>
    Number(new RegExp(`${key}: *(\\d+)`).exec(head)?.[1]),
  ) as [number, number];
  const names = head
    .slice(head.indexOf('Variables:\n') + 'Variables:\n'.length)
    .split('\n')
    .slice(0, variables)
    .map((line) => line.trim().split(/\s+/)[1]!);
  const first = start + mark.length;
  return new Map(
    names.map((name, column) => [
      name,
      Float64Array.from({ length: points }, (_, t) => raw.readDoubleLE(first + 8 * (t * variables + column))),
    ]),
  );
}
