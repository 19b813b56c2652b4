// npm test: from a fresh clone, everything the tests need, then the tests. Arguments go on to the test runner.
import { spawnSync } from 'node:child_process';
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
if (lint.status !== 0) process.exit(lint.status ?? 3);
const run = spawnSync(process.execPath, ['node_modules/vitest/vitest.mjs', 'run', ...process.argv.slice(2)], {
  cwd: root,
  stdio: 'inherit',
  env: browser === null ? process.env : { ...process.env, EVENGROUND_BROWSER: browser },
});
process.exit(run.status ?? 3);
