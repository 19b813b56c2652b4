import { foldedUnder } from '../study/folded-under.ts';
import type { Study, StudyFinding } from '../study/study.ts';
import { agreedAs } from '../words/agreement-words.ts';
import { setName } from '../words/code-set-words.ts';
import { pageWords } from '../words/page.ts';
import { type Block, type FindingGroup, type FindingView, paragraph, type Section, subheading } from './block.ts';
import { clauseName, hasDocument, type PageContext, partNames, provenanceName, sayIn } from './page-context.ts';

const words = pageWords.findings;
const severities = ['hazard', 'defect', 'advice'] as const;

/** The page, and what stands under each finding. */
interface Shown {
  readonly page: PageContext;
  readonly folded: ReturnType<typeof foldedUnder>;
}

/** What is not met, by severity; what the owner agreed to last; a folded finding stands under its cause. */
export function findingsSection(page: PageContext): Section {
  const notMet = page.study.findings.filter((f) => f.outcome === 'not met');
  const causes = new Set(notMet.map((f) => f.id));
  // one whose cause is itself met or cannot be told has nothing to stand under
  const alone = notMet.filter((f) => f.under === null || !causes.has(f.under));
  const shown: Shown = { page, folded: foldedUnder(notMet) };
  const open = bySet(page, alone).flatMap(({ heading, own }) => [
    ...(heading === '' ? [] : [subheading(heading)]),
    ...severities.flatMap((s) => groupOf(shown, s, own)),
  ]);
  const agreed = alone.filter((f) => f.agreed !== null);
  const blocks = [
    ...(alone.length === 0 ? [paragraph(words.none)] : [paragraph(words.intro), ...open]),
    ...agreedBlocks(shown, agreed),
  ];
  return { id: 'findings', heading: words.heading, blocks };
}

/** What somebody agreed to, and what is to be said of that: a reason that is missing, a finding that is gone. */
function agreedBlocks(shown: Shown, agreed: readonly StudyFinding[]): readonly Block[] {
  const said = (shown.page.study.agreements ?? []).map((a) => a.text).filter((t) => t !== '');
  if (agreed.length + said.length === 0) return [];
  return [
    subheading(words.agreedHeading),
    ...(agreed.length === 0 ? [] : [views(shown, agreed)]),
    ...(said.length === 0 ? [] : [{ is: 'list', ordered: false, items: said } as const]),
  ];
}

/** All in one, or with several sets of conditions those that all ask first, then those of each. */
function bySet({ study }: PageContext, alone: readonly StudyFinding[]) {
  const sets = study.codeSets ?? [];
  if (sets.length < 2) return [{ heading: '', own: alone }];
  const shared = alone.filter((f) => f.codeSet === 'any');
  const ofSet = (set: string) => alone.filter((f) => f.codeSet === set);
  return [
    { heading: words.allSets, own: shared },
    ...sets.map((set) => ({ heading: setName(set), own: ofSet(set) })),
  ].filter(({ own }) => own.some((f) => f.agreed === null));
}

function groupOf(
  shown: Shown,
  severity: (typeof severities)[number],
  alone: readonly StudyFinding[],
): readonly Block[] {
  const own = alone.filter((f) => f.severity === severity && f.agreed === null);
  if (own.length === 0) return [];
  return [subheading(`${pageWords.verdict[severity]} (${own.length})`), views(shown, own)];
}

/** Neighbours of one rule stand together, with their source once. */
function views(shown: Shown, findings: readonly StudyFinding[]): Block {
  const runs: StudyFinding[][] = [];
  for (const f of findings) {
    const last = runs.at(-1);
    if (last !== undefined && saysSameSource(last[0]!, f)) last.push(f);
    else runs.push([f]);
  }
  return { is: 'findings', groups: runs.map((run) => group(shown, run)) };
}

function saysSameSource(a: StudyFinding, b: StudyFinding): boolean {
  return a.rule === b.rule && a.codeSet === b.codeSet && a.family === b.family;
}

function group(shown: Shown, run: readonly StudyFinding[]): FindingGroup {
  const [first] = run;
  return { mark: first!.severity, findings: run.map((f) => view(shown, f)), source: sourceText(shown.page, first!) };
}

function view({ page, folded }: Shown, f: StudyFinding): FindingView {
  return {
    id: f.id,
    severity: pageWords.verdict[f.severity],
    title: f.title,
    place: partNames(page, f.at),
    lines: linesOf(page, f).filter((l) => l.text !== ''),
    foldedLabel: words.folded,
    folded: (folded.get(f.id) ?? []).map((x) => ({
      id: x.id,
      title: x.title,
      text: `${x.because.text} ${x.remedy}`.trim(),
    })),
  };
}

function linesOf(page: PageContext, f: StudyFinding): FindingView['lines'] {
  return [
    { label: words.why, text: f.because.text },
    { label: words.measured, text: f.measured?.text ?? '' },
    { label: words.remedy, text: f.remedy },
    { label: words.agreedHeading, text: agreedText(page, f.agreed) },
  ];
}

function sourceText(page: PageContext, f: StudyFinding): string {
  const kind = `${words.family[f.family]}; ${provenanceName(f.source)} (${agreedAs(f)}).`;
  const sentence = `${kind.charAt(0).toUpperCase()}${kind.slice(1)}`;
  if ((f.basis ?? '') !== '') return `${f.basis} ${sentence}`;
  if (!hasDocument(f.source)) return sentence;
  const clause = clauseName(page, f.source);
  if (f.family !== 'code') return `${clause}. ${sentence}`;
  return `${sayIn(page, words.condition, { clause })} ${sentence}`;
}

function agreedText(page: PageContext, agreed: Study['findings'][number]['agreed']): string {
  if (agreed === null) return '';
  const by = agreed.by === null ? '' : sayIn(page, words.agreedBy, { by: agreed.by });
  const date = agreed.date === null ? '' : `, ${agreed.date}`;
  return sayIn(page, words.agreed, { by, date, reason: agreed.reason ?? words.noReason });
}
