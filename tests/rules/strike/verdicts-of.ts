import { readSite } from '../../../src/site/read-site.ts';
import { runStudy } from '../../../src/study/run-study.ts';

/** What a rule says of a typed site: the findings of it, as the study holds them. */
export function findingsOf(rule: string, text: string) {
  const { site, problems } = readSite(text, 'strike');
  if (site === null) throw new Error(JSON.stringify(problems));
  const { study, faults } = runStudy(site, { state: null, version: 'test', checksum: '', date: null });
  if (faults.length > 0) throw faults[0]!.error;
  const condition = study.conditions.find((c) => c.rule === rule)!;
  return { findings: study.findings.filter((f) => f.rule === rule), outcome: condition.outcome };
}

/** `outcome place: reason` of each. */
export function verdictsOf(rule: string, text: string): readonly string[] {
  return findingsOf(rule, text).findings.map((f) => `${f.outcome} ${f.at.join(' ')}: ${f.because.key}`);
}
