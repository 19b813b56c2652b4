// npm start: from a fresh clone to a report on the main example.
import { spawnSync } from 'node:child_process';
import { join } from 'node:path';
import { ensureBrowser } from './browser.mjs';
import { prepare, root } from './prepare.mjs';

const example = join('examples', 'marl-hill', 'marl-hill.site.yaml');
const out = join('out', 'marl-hill');

prepare();
const browser = await ensureBrowser();
const command = ['dist/evenground.js', 'report', example, '-o', out, '--pdf'];
if (browser !== null) command.push('--browser', browser);
const run = spawnSync(process.execPath, command, { cwd: root, stdio: 'inherit' });
process.stdout.write(`
Open  ${join(out, 'marl-hill.html')}   (or the PDF beside it)
Yours: npx evenground new my.site.yaml       a starter file to fill in
       npx evenground check my.site.yaml     what is wrong, in order of danger
       npx evenground report my.site.yaml -o my-report --pdf
`);
process.exit(run.status ?? 3);
