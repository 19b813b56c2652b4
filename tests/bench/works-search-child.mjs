// See works-search.mjs. Annealing over sets of works: one is put in with all that it needs, taken out with all that needs it,
// or exchanged; the temperature falls by a hundred over the time given. Prints one line of a table.
import { readFileSync } from 'node:fs';
import { basename } from 'node:path';
import { candidatesOf } from '../../src/rework/candidates/candidates-of.ts';
import { costOf } from '../../src/rework/cost/cost-of.ts';
import { costOfSet } from '../../src/rework/plan/limits.ts';
import { outlookOf, triedOf } from '../../src/rework/plan/outlook.ts';
import { choosingOf, roundOf, tryAlone } from '../../src/rework/plan/plan-round.ts';
import { isPossible } from '../../src/rework/plan/sets-of-works.ts';
import { stepByStep } from '../../src/rework/plan/step-by-step.ts';
import { readSite } from '../../src/site/read-site.ts';
import { runStudy } from '../../src/study/run-study.ts';
import { newTries } from '../../src/study/try-change.ts';

const [path, seconds, seed] = process.argv.slice(2);
const random = mulberry32(Number(seed));
const name = basename(path);
const text = readFileSync(path, 'utf8');
const options = { state: null, version: 'bench', checksum: '', date: null };
const { study } = runStudy(readSite(text, name).site, options);
const tries = newTries(name, options);
const reckoned = candidatesOf(study).filter((w) => w.unreckoned === undefined);
const round = roundOf({ text, outlook: outlookOf(study) }, reckoned, {
  costOf: (work) => costOf(work, study),
  tryChanges: (from, changes) => {
    const tried = tries(from, changes);
    return 'problem' in tried ? { problem: tried.problem.key } : triedOf(tried.text, tried.run.study);
  },
  limits: { budget: null, hours: null },
});
toEnd(tryAlone(round));
const choosing = choosingOf(round);
const plan = toEnd(stepByStep(choosing));
const { trials, costs, totals } = round;
const { pool } = trials;
const works = pool.works.length;

const planned = worthOf(plan);
const found = search(Number(seconds) * 1000);
console.log(
  [
    name,
    works,
    totals.by,
    seed,
    seconds,
    found.tried,
    say(planned),
    say(found.best),
    (planned.cost / found.best.cost).toFixed(3),
  ].join('\t'),
);

function search(lastsMs) {
  const begun = Date.now();
  const seen = new Map();
  let now = worthOf([]);
  let best = now;
  let tried = 0;
  for (let gone = 0; gone < 1; gone = (Date.now() - begun) / lastsMs) {
    const set = neighbour(now.set);
    if (set === null) continue;
    const key = set.join();
    const next = seen.get(key) ?? worthOf(set);
    if (!seen.has(key)) tried++;
    seen.set(key, next);
    // in shares of what one defect weighs
    const heat = 0.5 * 0.01 ** gone;
    if (next.points <= now.points || random() < Math.exp((now.points - next.points) / heat)) now = next;
    if (next.points < best.points) best = next;
  }
  return { best, tried };
}

function neighbour(set) {
  const one = Math.floor(random() * works);
  const without = set.includes(one) ? takenOut(set, one) : set;
  const isExchange = set.includes(one) ? random() < 0.5 : random() < 0.3 && set.length > 0;
  const other = set.includes(one)
    ? Math.floor(random() * works)
    : isExchange
      ? set[Math.floor(random() * set.length)]
      : null;
  let next = without;
  if (!set.includes(one)) next = putIn(other === null ? set : takenOut(set, other), one);
  else if (isExchange) next = putIn(without, other);
  return isPossible(pool, next) ? next : null;
}

function putIn(set, one) {
  return [...new Set([...set, ...pool.bundles[one]])].sort((a, b) => a - b);
}

function takenOut(set, one) {
  return set.filter((i) => !pool.bundles[i].includes(one));
}

/** Less is better; a set that cannot be written, or that brings a hazard or a defect, is worse than any. */
function worthOf(set) {
  const { effect, isHarmless } = trials.workedOut(set);
  const cost = costOfSet(costs, set, totals);
  if (effect === null || !isHarmless) return { set, cost, hazards: null, defects: null, points: Infinity };
  const { hazards, defects } = effect.after;
  return { set, cost, hazards, defects, points: 100 * hazards + defects + cost / (1 + totals.cost) };
}

function say({ hazards, defects, cost }) {
  return `${hazards} hazards, ${defects} defects, ${cost.toFixed(1)}`;
}

function toEnd(trying) {
  for (let next = trying.next(false); ; next = trying.next(false)) if (next.done) return next.value;
}

function mulberry32(from) {
  let state = from >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = Math.imul(state ^ (state >>> 15), state | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}
