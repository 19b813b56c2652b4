// The set of works that the plan chooses against the best that a long search by chance finds: run by hand, not in CI.
//   node tests/bench/works-search.mjs SITE [seconds] [seed]
// Both choose from the same works of the same site and both work out every set as a whole; what they are asked for is the
// least hazards, then the least defects, then the least money (or material). What was found is in works-search.tsv.
import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { build } from 'esbuild';

const [site, seconds = '600', seed = '1'] = process.argv.slice(2);
if (site === undefined) throw new Error('node tests/bench/works-search.mjs SITE [seconds] [seed]');
const scratch = mkdtempSync(join(tmpdir(), 'evenground-search-'));
try {
  const outfile = join(scratch, 'works-search-child.mjs');
  await build({
    entryPoints: [join(import.meta.dirname, 'works-search-child.mjs')],
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
  // every set that was worked out is kept, a megabyte each
  const heap = '--max-old-space-size=14000';
  const { status } = spawnSync(process.execPath, [heap, outfile, resolve(site), seconds, seed], { stdio: 'inherit' });
  process.exitCode = status ?? 3;
} finally {
  rmSync(scratch, { recursive: true, force: true });
}
