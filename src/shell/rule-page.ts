import { limitText } from '../rules/limit-text.ts';
import type { Rule } from '../rules/rule.ts';
import { notStated } from '../words/not-stated.ts';
import { rulePageWords as words } from '../words/rule-page-words.ts';
import { ruleWords } from '../words/rules/index.ts';
import { type Speech, say } from '../words/say.ts';
import { citedText } from './say-rule.ts';

/** Every rule from its record as a page of Markdown: a table for each severity, then what is not asked and why. */
export function rulePage(rules: readonly Rule[], speech: Speech): string {
  const severities = ['hazard', 'defect', 'advice'] as const;
  const tables = severities.flatMap((severity) => {
    const own = rules.filter((r) => r.severity === severity);
    return [`## ${words.groups[severity]} (${own.length})`, table(own, speech)];
  });
  const rest = Object.entries(notStated).map(
    ([id, { title, reason }]) => `- \`${id}\`: ${say(title, {}, speech)}. ${say(reason, {}, speech)}`,
  );
  const blocks = [
    `# ${words.heading}`,
    words.intro,
    ...tables,
    `## ${words.notStatedHeading}`,
    words.notStatedIntro,
    rest.join('\n'),
  ];
  return `${blocks.join('\n\n')}\n`;
}

function table(rules: readonly Rule[], speech: Speech): string {
  const rows = rules.map((r) => [
    `\`${r.id}\``,
    say(ruleWords[r.id]!.title, {}, speech),
    r.codeSets.join(', '),
    words.families[r.family],
    limitText(r, speech),
    citedText(r),
    words.provenance[r.source.provenance],
  ]);
  return [words.head, words.head.map(() => '---'), ...rows].map(tableRow).join('\n');
}

function tableRow(cells: readonly string[]): string {
  return `| ${cells.map((c) => c.replaceAll('|', '\\|')).join(' | ')} |`;
}
