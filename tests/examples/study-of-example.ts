import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { readSiteBytes } from '../../src/site/read-site-bytes.ts';
import { runStudy } from '../../src/study/run-study.ts';
import type { Study, StudyFinding } from '../../src/study/study.ts';

const folder = fileURLToPath(new URL('../../examples/', import.meta.url));

/** Paths of all example sites, relative to `examples/`, in order. */
export function exampleFiles(): readonly string[] {
  return readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.site.yaml'))
    .sort();
}

export function readExample(file: string) {
  return readSiteBytes(readFileSync(`${folder}${file}`), file);
}

/** The study of an example as typed, or in one of its states. */
export function studyOfExample(file: string, state: string | null = null): Study {
  return studyOfBytes(readFileSync(`${folder}${file}`), file, state);
}

/** The same with all that a report shows of the soil. */
export function detailedStudyOfExample(file: string): Study {
  return studyOfBytes(readFileSync(`${folder}${file}`), file, null, true);
}

/** The study of a site that a test types itself. */
export function studyOfText(text: string): Study {
  return studyOfBytes(new TextEncoder().encode(text), 'typed.site.yaml', null);
}

function studyOfBytes(bytes: Uint8Array, file: string, state: string | null, detail = false): Study {
  const { site, problems } = readSiteBytes(bytes, file);
  if (site === null) throw new Error(`${file} is refused: ${JSON.stringify(problems)}`);
  const { study, faults } = runStudy(site, { state, version: '0', checksum: '0', date: null, detail });
  if (faults.length > 0) throw faults[0]!.error;
  return study;
}

/** Findings of a rule that are not met, by place. */
export function notMet(study: Study, rule: string): readonly (readonly string[])[] {
  return study.findings.filter((f) => f.rule === rule && f.outcome === 'not met').map((f) => f.at);
}

/** What a reader of the check sees on a line of its own: folded and agreed findings left out. */
export function standing(study: Study, outcome: StudyFinding['outcome']): readonly StudyFinding[] {
  return study.findings.filter((f) => f.outcome === outcome && f.under === null && f.agreed === null);
}

/** One line for each, for the message of a failing check. */
export function inWords(findings: readonly StudyFinding[]): readonly string[] {
  return findings.map((f) => `${f.severity} ${f.rule} ${f.at.join('+')}: ${f.because.text}`);
}
