// What a comparison of two files takes against a check of one of them, whole processes, at most twice: Marl Hill with what
// became of it against the check of the larger of the two, and generated sites with ones that differ in wires and rods. A
// check that prints findings solves no soil, and a comparison prints ohms: of the largest site the peer is the check that
// prints its study, and the ratio to findings alone stands beside it without a limit.
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { childTime } from './child-time.mjs';
import { exampleWithFaults, ratioOf, writeLargeSite } from './command.mjs';
import { inTurns } from './in-turns.mjs';
import { largeSite } from './large-site.mjs';

const LIMIT = 2;

export async function compareBenches({ command, scratch, rounds }) {
  const reworked = exampleWithFaults.replace('.site.yaml', '-after.site.yaml');
  const middle = join(scratch, 'middle.site.yaml');
  writeFileSync(middle, largeSite(1, 400));
  const large = writeLargeSite(scratch);
  const few = Math.ceil(rounds / 2);
  return [
    ...(await compareBench({ command, name: 'Marl Hill', before: exampleWithFaults, after: reworked, rounds })),
    ...(await compareBench({ command, name: '400 parts', before: middle, after: changed(middle), rounds })),
    ...(await compareBench({
      command,
      name: '2000 parts',
      before: large,
      after: changed(large),
      rounds: few,
      study: true,
    })),
  ];
}

/** A file beside it in which rods are longer and wires thicker. */
function changed(path) {
  const after = path.replace('.site.yaml', '-after.site.yaml');
  const text = readFileSync(path, 'utf8');
  writeFileSync(after, text.replaceAll('length: 8 ft', 'length: 10 ft').replaceAll('4 AWG', '2 AWG'));
  return after;
}

async function compareBench({ command, name, before, after, rounds, study = false }) {
  const run = (...args) => childTime(process.execPath, [command, ...args], [0, 1]);
  const times = await inTurns(
    {
      check: () => run('check', after),
      compare: () => run('compare', before, after),
      ...(study ? { study: () => run('check', after, '--json', '-o', `${after}.study.json`) } : {}),
    },
    rounds,
  );
  const toCheck = ratioOf(`compare of ${name} against a check of it`, times.compare, times.check, study ? null : LIMIT);
  if (!study) return [toCheck];
  return [
    ratioOf(`compare of ${name} against the check that prints its study`, times.compare, times.study, LIMIT),
    toCheck,
  ];
}
