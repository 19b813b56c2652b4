// The site that is named, asked by the conditions of five regions and by an owner's own, twice: read anew each time, and every
// fact that a rule may ask worked out first. Prints the processor time of the rules alone in milliseconds, of the first run,
// in which the engine compiles each of them, and of the second, and what they found.
import { readFileSync } from 'node:fs';
import { setFlagsFromString } from 'node:v8';
import { factsOf } from '../../src/facts/facts-of.ts';
import { rules } from '../../src/rules/index.ts';
import { runRules } from '../../src/rules/run-rules.ts';
import { readSite } from '../../src/site/read-site.ts';
import { readStandard } from '../../src/site/standard/read-standard.ts';

// as the command does it
setFlagsFromString('--interrupt-budget=1000000');

const text = readFileSync(process.argv[2], 'utf8');
const own = 'limits: {ties: {of: conductors, wire: at least 4 AWG}, lugs: {of: joints, bolts: at least 2}}';
const { standard } = readStandard(
  own,
  'own.yaml',
  rules.map((r) => ({ id: r.id, key: null })),
);

const first = timeOnce();
console.log(JSON.stringify({ firstMs: first.cpuMs, ...timeOnce() }));

function timeOnce() {
  const { site } = readSite(text, 'large.site.yaml');
  const facts = factsOf(site, null, false);
  for (const name of new Set(rules.flatMap((r) => r.needs))) workOut(facts[name], 6);
  const before = process.cpuUsage();
  const run = runRules(facts, { terms: 'us', unitsFirst: 'us' }, { standard });
  const { findings, faults } = run;
  const { user, system } = process.cpuUsage(before);
  if (faults.length > 0) throw faults[0].error;
  return { cpuMs: (user + system) / 1000, findings: findings.length, conditions: run.conditions.length };
}

/** Reads what is worked out when it is read. */
function workOut(value, depth) {
  if (depth === 0 || value === null || typeof value !== 'object') return;
  for (const key of Object.keys(value)) workOut(value[key], depth - 1);
}
