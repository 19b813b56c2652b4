import { rules } from '../../rules/index.ts';
import { nearName } from '../../units/near-name.ts';
import { ruleWords } from '../../words/rules/index.ts';
import { type Speech, say } from '../../words/say.ts';
import { termsOf } from '../../words/terms.ts';
import { type ExitCode, exitCode, Stop } from '../exit-code.ts';
import { print } from '../print.ts';
import { wrap } from '../terminal.ts';

const speechFor = (region: string): Speech => ({ terms: termsOf(region), unitsFirst: region === 'us' ? 'us' : 'si' });

/** The catalogue, one line a rule. */
export function listRules(options: { readonly region: string; readonly json?: boolean }): ExitCode {
  const speech = speechFor(options.region);
  if (options.json) {
    const records = rules.map((r) => ({
      id: r.id,
      family: r.family,
      severity: r.severity,
      codeSets: r.codeSets,
      source: r.source,
    }));
    print(`${JSON.stringify(records, null, 2)}\n`, undefined);
    return exitCode.fine;
  }
  const lines = rules.map(
    (r) =>
      `${r.severity.padEnd(7)} ${r.family.padEnd(9)} ${r.codeSets.join(',').padEnd(9)} ${r.id}: ${say(ruleWords[r.id]!.title, {}, speech)}`,
  );
  print(`${lines.join('\n')}\n${rules.length} rules. Next: evenground explain <rule>\n`, undefined);
  return exitCode.fine;
}

/** A rule's record in words: why, clause, what counts as met, how to put it right. */
export function explain(id: string, options: { readonly region: string }): ExitCode {
  const found = rules.find((r) => r.id === id);
  if (found === undefined) {
    const near = nearName(
      id,
      rules.map((r) => r.id),
    );
    throw new Stop(
      exitCode.input,
      `${id}: no rule has this id.${near === null ? '' : ` Did you mean ${near}?`} All of them: evenground rules`,
    );
  }
  const speech = speechFor(options.region);
  const words = ruleWords[found.id]!;
  const { document, edition, clause, provenance } = found.source;
  const cited = [document, edition, clause].filter((part) => part !== null).join(', ');
  const seen = {
    read: 'read',
    'second-hand': 'read second-hand',
    memory: 'from memory: check against your copy',
    ours: 'ours',
  }[provenance];
  const filled = (template: string) => say(template, { at: 'the part', parts: 'what hangs on it' }, speech);
  const paragraphs = [
    `${found.id} (${found.severity}, ${found.family}, asked in: ${found.codeSets.join(', ')})`,
    filled(words.title),
    `Why: ${filled(words.why)}`,
    `Met when: ${filled(words.met)}`,
    `Put right: ${filled(words.remedy)}`,
    `Source: ${cited} (${seen}). The local authority decides.`,
  ];
  print(`${paragraphs.map((p) => wrap(p, 100)).join('\n\n')}\n`, undefined);
  return exitCode.fine;
}
