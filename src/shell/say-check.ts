import type { Study, StudyFinding } from '../study/study.ts';
import { plain, type Terminal, wrap } from './terminal.ts';

const marks = { hazard: 'HAZARD', defect: 'DEFECT', advice: 'ADVICE' } as const;
const colours = { hazard: 'red', defect: 'yellow', advice: 'cyan' } as const;

/** The terminal's page of a check: what is asked, findings in order, what to look at, verdict, next command. */
export function sayCheck(study: Study, file: string, terminal: Terminal): string {
  const alone = study.findings.filter((f) => f.under === null);
  const blocks = [
    title(study, terminal),
    ...study.questions.map((q) => wrap(`${file}:${q.line}:${q.column}: ${plain(q.text)}`, terminal.width, 0, 2)),
    ...alone.filter((f) => f.outcome === 'not met').map((f) => findingBlock(f, study, terminal)),
    doubtBlock(alone, terminal),
    verdictBlock(study, file, terminal),
  ];
  return `${blocks.filter((b) => b !== '').join('\n\n')}\n`;
}

function title(study: Study, { paint }: Terminal): string {
  const state = study.state.id === 'as typed' ? '' : `, state ${study.state.id}`;
  return paint(plain(`${study.site.name ?? study.site.file}${state}`), 'bold');
}

function findingBlock(f: StudyFinding, study: Study, { width, paint }: Terminal): string {
  const head = `${paint(marks[f.severity], colours[f.severity])}  ${plain(f.title)}${f.agreed === null ? '' : ' (agreed to stand)'}`;
  const folded = study.findings.filter((other) => other.under === f.id && other.outcome === 'not met');
  const measured = f.measured === null ? '' : ` ${f.measured.text}.`;
  return [
    head,
    wrap(plain(`${f.because.text}${measured}`), width, 8),
    wrap(plain(`Do: ${f.remedy}`), width, 8, 4),
    paint(wrap(clause(f), width, 8, 2), 'dim'),
    ...folded.map((other) => paint(wrap(plain(`also: ${other.title}`), width, 8, 2), 'dim')),
  ].join('\n');
}

function clause(f: StudyFinding): string {
  const { document, edition, clause: number, provenance } = f.source;
  const cited = [document, edition, number].filter((part) => part !== null).join(', ');
  const check = provenance === 'memory' ? '; from memory, check against your copy' : '';
  return `[${f.rule}; ${f.family}: ${cited}${check}]`;
}

function doubtBlock(alone: readonly StudyFinding[], { width, paint }: Terminal): string {
  const doubts = alone.filter((f) => f.outcome === 'cannot tell');
  if (doubts.length === 0) return '';
  const texts = new Set(doubts.map((f) => plain(`- ${f.because.text} ${f.remedy}`)));
  const lines = [...texts].map((text) => wrap(text, width, 2, 2));
  return [paint('CANNOT TELL: go and look', 'bold'), ...lines].join('\n');
}

function verdictBlock(study: Study, file: string, { width, paint }: Terminal): string {
  const { verdict } = study;
  const actions = verdict.actions.map((a, i) => wrap(plain(`${i + 1}. ${a.text}`), width, 2, 3));
  return [
    ...(actions.length > 0 ? [paint('FIRST', 'bold'), ...actions, ''] : []),
    wrap(plain(verdict.text.join(' ')), width),
    `${verdictLine(study)} Next: evenground report ${file} -o report`,
  ].join('\n');
}

/** The last line's verdict: counts of each kind. */
export function verdictLine({ verdict }: Study): string {
  const { hazards, defects, advices, cannotTell, agreed } = verdict;
  const stand = agreed === 0 ? '' : `, ${agreed} agreed to stand`;
  return `${hazards} hazard, ${defects} defect, ${advices} advice, ${cannotTell} cannot tell${stand}.`;
}
