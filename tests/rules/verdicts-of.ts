import { adoptedYear } from '../../src/rules/code-sets/adopted-edition.ts';
import { setAsks, siteSets } from '../../src/rules/code-sets/site-sets.ts';
import { rules } from '../../src/rules/index.ts';
import { readSite } from '../../src/site/read-site.ts';
import type { SiteHeader } from '../../src/site/site.ts';
import { runStudy } from '../../src/study/run-study.ts';
import { hear } from './heard.ts';

/** What a rule says of a typed site, in one of its states: the findings of it, as the study holds them. */
export function findingsOf(rule: string, text: string, state: string | null = null) {
  const { site, problems } = readSite(text, 'typed');
  if (site === null) throw new Error(JSON.stringify(problems));
  const { study, faults } = runStudy(site, { state, version: 'test', checksum: '', date: null });
  if (faults.length > 0) throw faults[0]!.error;
  const { outcome } = study.conditions.find((c) => c.rule === rule)!;
  const findings = study.findings.filter((f) => f.rule === rule);
  for (const f of findings) hear({ rule, outcome: f.outcome, line: lineOf(f), measured: f.measured, text });
  if (findings.length === 0 && isAsked(rule, site.header)) hear({ rule, outcome, line: null, measured: null, text });
  return { findings, outcome };
}

/** `outcome place: reason` of each. */
export function verdictsOf(rule: string, text: string, state: string | null = null): readonly string[] {
  return findingsOf(rule, text, state).findings.map(lineOf);
}

interface Said {
  readonly outcome: string;
  readonly at: readonly string[];
  readonly because: { readonly key: string };
}

function lineOf({ outcome, at, because }: Said): string {
  return `${outcome} ${at.join(' ')}: ${because.key}`;
}

/** That no code set of the site asks a rule, or no edition yet, is not its own word. */
function isAsked(id: string, header: SiteHeader): boolean {
  const { source, since = 0, ...rule } = rules.find((r) => r.id === id)!;
  const year = adoptedYear(header, source.document) ?? since;
  return year >= since && siteSets(header).some((set) => setAsks(rule, set));
}
