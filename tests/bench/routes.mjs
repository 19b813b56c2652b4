// Shortest routes between pairs of ends, and one tree over six, among twelve buildings with a gas pipe and a trench, in bare nodes.
import { spawnSync } from 'node:child_process';
import { join } from 'node:path';
import { build } from 'esbuild';
import { childTime } from './child-time.mjs';
import { inTurns, median } from './in-turns.mjs';

const PAIR_LIMIT = 1;
const TREE_LIMIT = 12;

export async function routesBench({ scratch, rounds }) {
  const outfile = join(scratch, 'routes-child.mjs');
  await build({
    entryPoints: [join(import.meta.dirname, 'routes-child.mjs')],
    outfile,
    bundle: true,
    format: 'esm',
    platform: 'node',
    target: 'node20',
    logLevel: 'error',
  });
  const child = () => {
    const { status, stdout, stderr } = spawnSync(process.execPath, [outfile], { encoding: 'utf8' });
    if (status !== 0) throw new Error(stderr);
    return JSON.parse(stdout);
  };
  const times = await inTurns({ bare: () => childTime(process.execPath, ['-e', '0']), routes: child }, rounds);
  const bareMs = median(times.bare.map((t) => t.cpuMs ?? t.wallMs));
  const pairMs = median(times.routes.map((t) => t.pairsMs / t.pairs));
  const treeMs = median(times.routes.map((t) => t.treeMs));
  const detail = `bare node ${bareMs.toFixed(0)} ms, a pair ${pairMs.toFixed(1)} ms, six ends ${treeMs.toFixed(0)} ms`;
  const same = times.routes.every((t) => JSON.stringify(t.costs) === JSON.stringify(times.routes[0].costs));
  const wrong = same ? undefined : 'the same routes cost something else on another run';
  return [
    { name: 'a route between two ends, in bare nodes', ratio: pairMs / bareMs, most: PAIR_LIMIT, detail, wrong },
    { name: 'a route between six ends, in bare nodes', ratio: treeMs / bareMs, most: TREE_LIMIT, detail, wrong },
  ];
}
