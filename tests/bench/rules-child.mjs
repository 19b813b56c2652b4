// The site that is named, asked by the conditions of five regions and by an owner's own. Every fact that a rule may ask is
// worked out first; prints the processor time of the rules alone, cold, in milliseconds, and what they found.
import { readFileSync } from 'node:fs';
import { setFlagsFromString } from 'node:v8';
import { factsOf } from '../../src/facts/facts-of.ts';
import { rules } from '../../src/rules/index.ts';
import { runRules } from '../../src/rules/run-rules.ts';
import { readSite } from '../../src/site/read-site.ts';
import { readStandard } from '../../src/site/standard/read-standard.ts';

// as the command does it
setFlagsFromString('--interrupt-budget=1000000');

const { site } = readSite(readFileSync(process.argv[2], 'utf8'), 'large.site.yaml');
const own = 'limits: {ties: {of: conductors, wire: at least 4 AWG}, lugs: {of: joints, bolts: at least 2}}';
const { standard } = readStandard(
  own,
  'own.yaml',
  rules.map((r) => ({ id: r.id, key: null })),
);

const facts = factsOf(site, null, false);
for (const name of new Set(rules.flatMap((r) => r.needs))) workOut(facts[name], 6);

const before = process.cpuUsage();
const run = runRules(facts, { terms: 'us', unitsFirst: 'us' }, { standard });
const { findings, faults } = run;
const { user, system } = process.cpuUsage(before);
const { conditions } = run;
if (faults.length > 0) throw faults[0].error;
console.log(
  JSON.stringify({ cpuMs: (user + system) / 1000, findings: findings.length, conditions: conditions.length }),
);

/** Reads what is worked out when it is read. */
function workOut(value, depth) {
  if (depth === 0 || value === null || typeof value !== 'object') return;
  for (const key of Object.keys(value)) workOut(value[key], depth - 1);
}
