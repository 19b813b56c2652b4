// npm test: from a fresh clone, everything the tests need, then the tests. Arguments go on to the test runner.
import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { ensureBrowser } from './browser.mjs';
import { prepare, root } from './prepare.mjs';

prepare();
const browser = await ensureBrowser();
if (browser === null)
  process.stderr.write(
    'SKIPPED LATER: no browser could be had, so the PDF and page tests will say that they are skipped.\n',
  );
const lint = spawnSync(process.execPath, ['node_modules/@biomejs/biome/bin/biome', 'check', '.'], {
  cwd: root,
  stdio: 'inherit',
});

const scratch = mkdtempSync(join(tmpdir(), 'evenground-test-'));
const results = join(scratch, 'results.json');
const reporters = ['--reporter=dot', '--reporter=json', `--outputFile.json=${results}`];
const run = spawnSync(
  process.execPath,
  ['node_modules/vitest/vitest.mjs', 'run', ...reporters, ...process.argv.slice(2)],
  {
    cwd: root,
    stdio: 'inherit',
    env: browser === null ? process.env : { ...process.env, EVENGROUND_BROWSER: browser },
  },
);
sayCounts();
rmSync(scratch, { recursive: true, force: true });
if (lint.status !== 0) process.stdout.write('The formatter or the linter objects; see above.\n');
process.exit(run.status === 0 ? (lint.status ?? 3) : (run.status ?? 3));

/** One plain line at the end, for people and for machines that read only the end. */
function sayCounts() {
  try {
    const { numPassedTests, numFailedTests, numPendingTests } = JSON.parse(readFileSync(results, 'utf8'));
    process.stdout.write(`${numPassedTests} passed, ${numFailedTests} failed, ${numPendingTests} skipped\n`);
  } catch {
    process.stdout.write('The test runner left no results.\n');
  }
}
