// Works of an invented station of 300 parts, whole process against a bare node. The number of works tried is printed.

import { spawnSync } from 'node:child_process';
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { childTime } from './child-time.mjs';
import { ratioOf } from './command.mjs';
import { inTurns } from './in-turns.mjs';
import { largeSite } from './large-site.mjs';

const LIMIT = 30;
const PARTS = 300;

export async function worksBench({ command, scratch, rounds }) {
  const site = join(scratch, 'works.site.yaml');
  writeFileSync(site, largeSite(1, PARTS, PARTS));
  const { stdout, status, stderr } = spawnSync(process.execPath, [command, 'works', site, '--json'], {
    encoding: 'utf8',
    maxBuffer: 1 << 28,
  });
  if (status !== 0) throw new Error(stderr);
  const { steps, leftOut, before, after } = JSON.parse(stdout);
  const run = (...args) => childTime(process.execPath, args);
  const times = await inTurns({ bare: () => run('-e', '0'), works: () => run(command, 'works', site) }, rounds);
  const result = ratioOf(`works of ${PARTS} parts against bare node`, times.works, times.bare, LIMIT);
  const tried = `${steps.length + leftOut.length} works, ${steps.length} in order`;
  const left = `${before.hazards} hazards and ${before.defects} defects before, ${after.hazards} and ${after.defects} after`;
  const isEnough = steps.length + leftOut.length >= 40 && after.hazards < before.hazards;
  const wrong = isEnough ? undefined : `too little to choose from, or nothing done: ${tried}, ${left}`;
  return [{ ...result, detail: `${tried}; ${left}; ${result.detail}`, wrong }];
}
