// What printing adds to a report, against the browser printing the same page by itself: a whole process started for it,
// with the same flags, tags and outline on. Judged by the clock: the browser's helpers are not all waited for, so that
// nobody can say their processor time.
import { spawnSync } from 'node:child_process';
import { basename, join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { childTime } from './child-time.mjs';
import { inTurns, median } from './in-turns.mjs';

/** The flags of src/shell/print-pdf.ts. */
const sameFlags = [
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-default-apps',
  '--disable-domain-reliability',
  '--disable-extensions',
  '--disable-sync',
  '--metrics-recording-only',
  '--no-default-browser-check',
  '--no-first-run',
  '--no-pings',
  '--host-resolver-rules=MAP * ~NOTFOUND',
  ...(process.getuid?.() === 0 ? ['--no-sandbox'] : []),
];

export async function pdfBench({ command, name, site, scratch, rounds, most }) {
  const title = `printing ${name} against a bare print of the same page`;
  const browser = ['chromium', 'google-chrome', 'microsoft-edge'].find(
    (program) => spawnSync(program, ['--version'], { stdio: 'ignore' }).status === 0,
  );
  if (browser === undefined)
    return [{ name: title, skipped: 'no chromium, google-chrome or microsoft-edge was found' }];
  const page = join(scratch, basename(site).replace(/\.site\.yaml$/, '.html'));
  const bare = ['--headless=new', ...sameFlags, `--user-data-dir=${join(scratch, 'profile')}`];
  const print = [
    '--generate-pdf-document-outline',
    '--export-tagged-pdf',
    `--print-to-pdf=${join(scratch, 'bare.pdf')}`,
  ];
  const times = await inTurns(
    {
      report: () => childTime(process.execPath, [command, 'report', site, '-o', scratch], [0, 1]),
      printed: () => childTime(process.execPath, [command, 'report', site, '-o', scratch, '--pdf'], [0, 1]),
      bare: () => childTime(browser, [...bare, ...print, pathToFileURL(page).href]),
    },
    rounds,
  );
  const clock = (list) => median(list.map((t) => t.wallMs));
  const ours = clock(times.printed) - clock(times.report);
  const peers = clock(times.bare);
  return [{ name: title, ratio: ours / peers, most, detail: `clock ${ours.toFixed(0)} ms to ${peers.toFixed(0)} ms` }];
}
