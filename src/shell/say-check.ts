import { speechOf } from '../drawing/speech.ts';
import { foldedUnder } from '../study/folded-under.ts';
import { lookAtList } from '../study/look-at-list.ts';
import type { Study, StudyFinding, StudyLook, StudySetCounts } from '../study/study.ts';
import { agreedAs } from '../words/agreement-words.ts';
import { checkWords } from '../words/check-words.ts';
import { setName } from '../words/code-set-words.ts';
import type { Tool } from '../words/rule-words.ts';
import { type Speech, say } from '../words/say.ts';
import { toolWords } from '../words/tool-words.ts';
import { severityColours, severityMarks } from './severity-marks.ts';
import { plain, type Terminal, wrap } from './terminal.ts';

/** The terminal's page of a check: what is asked, findings in order, what to look at, verdict, next command. */
export function sayCheck(study: Study, file: string, terminal: Terminal): string {
  const alone = study.findings.filter((f) => f.under === null);
  const blocks = [
    title(study, terminal),
    ...study.questions.map((q) => wrap(`${file}:${q.line}:${q.column}: ${plain(q.text)}`, terminal.width, 0, 2)),
    ...findingBlocks(alone, study, terminal),
    doubtBlock(study, terminal),
    agreementBlock(study, terminal),
    verdictBlock(study, file, terminal),
  ];
  return `${blocks.filter((b) => b !== '').join('\n\n')}\n`;
}

/** Findings in order; with several sets of conditions those of each under its name, those of all first. */
function findingBlocks(alone: readonly StudyFinding[], study: Study, terminal: Terminal): readonly string[] {
  const notMet = alone.filter((f) => f.outcome === 'not met');
  const folded = foldedUnder(study.findings);
  const blocks = (all: readonly StudyFinding[]) => all.map((f) => findingBlock(f, folded.get(f.id) ?? [], terminal));
  const sets = study.codeSets ?? [];
  if (sets.length < 2) return blocks(notMet);
  const others = new Set(sets.slice(1));
  const first = sets[0]!;
  const shared = notMet.filter((f) => f.codeSet === 'any');
  const own = (set: string) =>
    notMet.filter((f) => f.codeSet !== 'any' && (set === first ? !others.has(f.codeSet) : f.codeSet === set));
  const heading = (name: string) => terminal.paint(say(checkWords.set, { name }, speechOf(study)), 'bold');
  return [
    ...(shared.length === 0 ? [] : [heading(checkWords.allSets), ...blocks(shared)]),
    ...sets.flatMap((set) => [
      heading(setName(set)),
      ...(own(set).length === 0 ? [checkWords.noneInSet] : blocks(own(set))),
    ]),
  ];
}

function title(study: Study, { paint }: Terminal): string {
  const state = study.state.id === 'as typed' ? '' : `, state ${study.state.id}`;
  return paint(plain(`${study.site.name ?? study.site.file}${state}`), 'bold');
}

function findingBlock(f: StudyFinding, folded: readonly StudyFinding[], { width, paint }: Terminal): string {
  const head = `${paint(severityMarks[f.severity], severityColours[f.severity])}  ${plain(f.title)}${f.agreed === null ? '' : ' (agreed to stand)'}`;
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
  if ((f.basis ?? '') !== '') return `[${agreedAs(f)}; ${plain(f.basis!)}${memory(f)}]`;
  const { document, edition, clause: number } = f.source;
  const cited = [document, edition, number].filter((part) => part !== null).join(', ');
  return `[${f.rule}; ${f.family}: ${cited}${memory(f)}]`;
}

function memory({ source }: StudyFinding): string {
  return source.provenance === 'memory' ? '; from memory, check against your copy' : '';
}

/** What to go and look at, what settles most first; a line each. */
function doubtBlock(study: Study, { width, paint }: Terminal): string {
  const looks = study.lookAt ?? lookAtList(study.findings);
  if (looks.length === 0) return '';
  const speech = speechOf(study);
  const lines = looks.map((look) => wrap(plain(`- ${lookText(look, speech)}`), width, 2, 2));
  return [paint('CANNOT TELL: go and look', 'bold'), ...lines].join('\n');
}

/** Why only where it is about one thing: else the look itself says what is not known. */
function lookText({ text, because, tool, settles }: StudyLook, speech: Speech): string {
  const bring = say(toolWords[tool as Tool] ?? '', {}, speech);
  const why = because.length === 1 && because[0] !== text ? [because[0]!] : [];
  const more = settles.length > 1 ? [say(checkWords.settles, { count: String(settles.length) }, speech)] : [];
  const bringing = bring === '' ? [] : [say(checkWords.bring, { bring }, speech)];
  return [...why, text, ...bringing, ...more].join(' ');
}

/** What is to be said of findings that were agreed to stand. */
function agreementBlock({ agreements = [] }: Study, { width, paint }: Terminal): string {
  const said = agreements.filter((a) => a.text !== '');
  if (said.length === 0) return '';
  const lines = said.map((a) => wrap(plain(`- ${a.text}`), width, 2, 2));
  return [paint(checkWords.agreed, 'bold'), ...lines].join('\n');
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

/** The last line's verdict: counts of each kind; with several sets of conditions those of each by itself. */
export function verdictLine({ verdict }: Study): string {
  const stand = verdict.agreed === 0 ? '' : ` ${verdict.agreed} agreed to stand.`;
  if (verdict.bySet === undefined) return `${countsText(verdict)}${stand === '' ? '.' : `,${stand}`}`;
  return `${verdict.bySet.map((set) => `${setName(set.codeSet)}: ${countsText(set)}.`).join(' ')}${stand}`;
}

function countsText({ hazards, defects, advices, cannotTell }: Omit<StudySetCounts, 'codeSet'>): string {
  return `${hazards} hazard, ${defects} defect, ${advices} advice, ${cannotTell} cannot tell`;
}
