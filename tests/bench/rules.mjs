// What the rules take beyond the facts that they rest on, in bare nodes: 300 parts, all code sets and an owner's standard. The
// limit is on the rules' own work, a site after another; what a process pays for the first, which is mostly the engine
// compiling each rule once, is printed beside it.
import { spawnSync } from 'node:child_process';
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { build } from 'esbuild';
import { childTime } from './child-time.mjs';
import { inTurns, median } from './in-turns.mjs';
import { largeSite } from './large-site.mjs';

const LIMIT = 0.3;

export async function rulesBench({ scratch, rounds }) {
  const outfile = join(scratch, 'rules-child.mjs');
  await build({
    entryPoints: [join(import.meta.dirname, 'rules-child.mjs')],
    outfile,
    bundle: true,
    format: 'esm',
    platform: 'node',
    target: 'node20',
    logLevel: 'error',
    banner: {
      js: "import { createRequire as benchRequire } from 'node:module'; const require = benchRequire(import.meta.url);",
    },
  });
  const site = join(scratch, 'rules.site.yaml');
  writeFileSync(site, largeSite(1, 300, 300).replace('region: us,', 'region: us, codes: [us, ca, iec, uk, au],'));
  const child = () => {
    const { status, stdout, stderr } = spawnSync(process.execPath, [outfile, site], { encoding: 'utf8' });
    if (status !== 0) throw new Error(stderr);
    return JSON.parse(stdout);
  };
  const times = await inTurns({ bare: () => childTime(process.execPath, ['-e', '0']), rules: child }, rounds);
  const bareMs = median(times.bare.map((t) => t.cpuMs ?? t.wallMs));
  const [rulesMs, firstMs] = ['cpuMs', 'firstMs'].map((name) => median(times.rules.map((t) => t[name])));
  const { findings, conditions } = times.rules[0];
  const what = `${conditions} conditions of five regions and an owner, ${findings} findings`;
  const detail = `${what}; bare node ${bareMs.toFixed(0)} ms, rules alone ${rulesMs.toFixed(1)} ms, the first time ${firstMs.toFixed(1)} ms`;
  const wrong = findings > 500 ? undefined : 'found less than such a site holds';
  return [
    { name: 'rules beyond their facts, in bare nodes', ratio: rulesMs / bareMs, most: LIMIT, detail, wrong },
    {
      name: 'rules beyond their facts, in a process that has run none',
      ratio: firstMs / bareMs,
      most: null,
      detail,
      wrong,
    },
  ];
}
