import { rules } from '../../rules/index.ts';
import type { Region } from '../../site/site.ts';
import { nearName } from '../../units/near-name.ts';
import { notStated } from '../../words/not-stated.ts';
import { rulePageWords as words } from '../../words/rule-page-words.ts';
import { ruleWords } from '../../words/rules/index.ts';
import { type Speech, say } from '../../words/say.ts';
import { termsOf } from '../../words/terms.ts';
import { type ExitCode, exitCode, Stop } from '../exit-code.ts';
import { print } from '../print.ts';
import { rulePage } from '../rule-page.ts';
import { sayRule } from '../say-rule.ts';
import { wrap } from '../terminal.ts';

export interface RulesOptions {
  readonly region: string;
  readonly json?: boolean;
  readonly markdown?: boolean;
  readonly output?: string;
}

const regions: readonly Region[] = ['us', 'ca', 'iec', 'uk', 'au'];

const speechFor = (region: string): Speech => ({ terms: termsOf(region), unitsFirst: region === 'us' ? 'us' : 'si' });

/** The catalogue, one line a rule, then what is not asked as one; as JSON or as a page too. */
export function listRules({ region, json, markdown, output }: RulesOptions): ExitCode {
  const speech = speechFor(region);
  if (json) print(`${JSON.stringify(records(), null, 2)}\n`, output);
  else print(markdown ? rulePage(rules, speech) : list(speech), output);
  return exitCode.fine;
}

function records() {
  return rules.map(({ id, family, severity, codeSets, source, since, clauses, limits }) => ({
    id,
    family,
    severity,
    codeSets,
    source,
    since,
    clauses,
    limits,
  }));
}

function list(speech: Speech): string {
  const asked = rules.map(
    (r) =>
      `${r.severity.padEnd(7)} ${r.family.padEnd(9)} ${r.codeSets.join(',').padEnd(9)} ${r.id}: ${say(ruleWords[r.id]!.title, {}, speech)}`,
  );
  const others = Object.entries(notStated).map(([id, { reason }]) => {
    return say(words.notStatedList, { id, reason: say(reason, {}, speech) }, speech);
  });
  const counts = { rules: String(asked.length), notStated: String(others.length) };
  return `${[...asked, ...others, say(words.count, counts, speech)].join('\n')}\n`;
}

/** A rule's record in words: why, limit, what counts as met, how to put it right, where it comes from. */
export function explain(id: string, options: { readonly region: string }): ExitCode {
  const found = rules.find((r) => r.id === id);
  const speech = speechFor(options.region);
  if (found === undefined) return explainNone(id, speech);
  const region = regions.find((r) => r === options.region) ?? 'us';
  const paragraphs = sayRule(found, region, speech);
  print(`${paragraphs.map((p) => wrap(p, 100)).join('\n\n')}\n`, undefined);
  return exitCode.fine;
}

/** A condition that is no rule has its reason; else the near name. */
function explainNone(id: string, speech: Speech): ExitCode {
  const other = Object.hasOwn(notStated, id) ? notStated[id] : undefined;
  if (other === undefined) {
    const near = nearName(
      id,
      rules.map((r) => r.id),
    );
    const meant = near === null ? '' : ` Did you mean ${near}?`;
    throw new Stop(exitCode.input, `${id}: no rule has this id.${meant} All of them: evenground rules`);
  }
  const text = say(words.notStatedList, { id, reason: say(other.reason, {}, speech) }, speech);
  print(`${wrap(text, 100)}\n`, undefined);
  return exitCode.fine;
}
