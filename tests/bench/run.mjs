// All benches in one run: node tests/bench/run.mjs [word of a name]. Each is a ratio to a peer of the same run, medians
// of runs in turns. Exit 1 when one is over its limit; a bench whose peer is not installed says so by name.
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { builtCommand, commandBench, exampleWithFaults, largestExample, writeLargeSite } from './command.mjs';
import { compareBenches } from './compare.mjs';
import { cutPointsBench } from './cut-points.mjs';
import { pdfBench } from './pdf.mjs';
import { routesBench } from './routes.mjs';
import { rulesBench } from './rules.mjs';
import { soilBenches } from './soil.mjs';
import { soilInCheckBench } from './soil-in-check.mjs';
import { strikeBenches } from './strike.mjs';
import { worksBench } from './works.mjs';

const word = process.argv[2] ?? '';
const scratch = mkdtempSync(join(tmpdir(), 'evenground-bench-'));
try {
  process.exitCode = await run();
} finally {
  rmSync(scratch, { recursive: true, force: true });
}

async function run() {
  const command = builtCommand();
  const benches = {
    'cut points': () => cutPointsBench(),
    soil: () => soilBenches(),
    'strikes into networks': () => strikeBenches({ rounds: 9 }),
    'check with soil': () => soilInCheckBench({ command, scratch, rounds: 9 }),
    'rules beyond facts': () => rulesBench({ scratch, rounds: 9 }),
    routes: () => routesBench({ scratch, rounds: 5 }),
    'largest example': () =>
      commandBench({ command, name: 'the largest example', site: largestExample(), scratch, rounds: 9, most: 10 }),
    'marl hill': () =>
      commandBench({ command, name: 'Marl Hill', site: exampleWithFaults, scratch, rounds: 9, most: 10 }),
    '2000 parts': () =>
      commandBench({ command, name: '2000 parts', site: writeLargeSite(scratch), scratch, rounds: 5, most: 25 }),
    compare: () => compareBenches({ command, scratch, rounds: 9 }),
    works: () => worksBench({ command, scratch, rounds: 5 }),
    pdf: () => pdfBench({ command, name: 'Marl Hill', site: exampleWithFaults, scratch, rounds: 5, most: 1 }),
  };
  const results = [];
  for (const [name, bench] of Object.entries(benches)) {
    if (name.includes(word)) results.push(...(await bench()).map(say));
  }
  return results.includes('over') ? 1 : 0;
}

/** Prints one result; says whether it is over its limit. */
function say({ name, skipped, ratio, most, detail, wrong }) {
  if (skipped !== undefined) {
    console.error(`SKIPPED: ${name}: ${skipped}`);
    return 'skipped';
  }
  const isOver = (most !== null && !(ratio <= most)) || wrong !== undefined;
  const limit = most === null ? 'no limit' : `at most ${most}`;
  console.log(`${name}: ratio ${ratio.toFixed(2)} (${limit})${isOver ? ' OVER' : ''}`);
  console.log(`  ${wrong ?? detail}`);
  return isOver ? 'over' : 'within';
}
