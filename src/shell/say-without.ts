import type { Without } from '../bonding/without.ts';
import type { LineLoss, WhatFails } from '../compare/what-fails.ts';
import type { Study, StudyFinding } from '../study/study.ts';
import { earthOhmText } from '../words/earth-ohm.ts';
import { type Speech, say, type Values } from '../words/say.ts';
import { pathWords, withoutWords as words } from '../words/way-words.ts';
import { severityMarks } from './severity-marks.ts';
import { plain, type Terminal, wrap } from './terminal.ts';

/** What a failure takes away, from the studies before and after it. */
export interface Failure {
  readonly lost: readonly string[];
  readonly bonding: Without;
  readonly fails: WhatFails;
  readonly before: Study;
  readonly after: Study;
}

interface Page {
  readonly sentence: (template: string, values?: Values) => string;
  readonly terminal: Terminal;
}

/** The terminal's page of a failure: what is cut off, groups before and after, lines, conditions that fail then. */
export function sayWithout(failure: Failure, file: string, speech: Speech, terminal: Terminal): string {
  const page: Page = { sentence: (template, values = {}) => plain(say(template, values, speech)), terminal };
  const { sentence } = page;
  const blocks = [
    terminal.paint(titleOf(failure, page), 'bold'),
    block(words.headings.lost, lostLines(failure, page), page),
    block(words.headings.groups, groupLines(failure, page), page),
    block(
      words.headings.lines,
      failure.fails.lines.map((line) => lineText(line, page)),
      page,
    ),
    block(words.headings.notMet, findingLines(failure.fails.notMet), page),
    block(words.headings.cannotTell, doubtLines(failure, page), page),
    failure.fails.notMet.length + failure.fails.cannotTell.length === 0 ? sentence(words.noneFails) : '',
    terminal.paint(wrap(sentence(words.caution), terminal.width), 'dim'),
    sentence(words.next, { file }),
  ];
  return `${blocks.filter((text) => text !== '').join('\n\n')}\n`;
}

function titleOf({ lost, before }: Failure, { sentence, terminal }: Page): string {
  const state = before.state.id === 'as typed' ? '' : sentence(pathWords.inState, { state: before.state.id });
  const site = `${before.site.name ?? pathWords.unnamed}${state}`;
  return wrap(sentence(words.title, { site, list: lost }), terminal.width);
}

function block(heading: string, lines: readonly string[], { terminal }: Page): string {
  if (lines.length === 0) return '';
  return [terminal.paint(heading, 'bold'), ...lines.map((line) => wrap(line, terminal.width, 2, 2))].join('\n');
}

function lostLines(failure: Failure, page: Page): readonly string[] {
  const { losesService, losesEarth, electrodesLost, perhapsHeld } = failure.bonding;
  const list = (template: string, ids: readonly string[]) =>
    ids.length === 0 ? [] : [page.sentence(template, { list: ids })];
  return [
    ...list(words.losesService, losesService ?? []),
    ...list(words.losesEarth, losesEarth),
    ...list(words.electrodesLost, electrodesLost),
    ...list(words.perhapsHeld, perhapsHeld),
    ...unaskedLines(failure, page),
    ...resistanceLines(failure, page),
    ...noticedLines(failure, page),
  ];
}

/** Where nothing is cut off, or nobody can tell. */
function unaskedLines({ bonding, before }: Failure, { sentence }: Page): readonly string[] {
  const { losesService, losesEarth } = bonding;
  if (losesService !== null) return losesService.length + losesEarth.length === 0 ? [sentence(words.nothing)] : [];
  const service = sentence(before.site.service === 'none' ? words.serviceNone : words.serviceUnknown);
  return losesEarth.length === 0 ? [service, sentence(words.nothingEarth)] : [service];
}

/** A bound that is only that of the metal is none: then nothing is said of what was not known before. */
function resistanceLines({ before, after, bonding }: Failure, { sentence }: Page): readonly string[] {
  const [beforeOhm, afterOhm] = [earthOhmText(before.earth.resistanceOhm), earthOhmText(after.earth.resistanceOhm)];
  if (beforeOhm === null) return [];
  if (afterOhm !== null) return beforeOhm === afterOhm ? [] : [sentence(words.resistance, { beforeOhm, afterOhm })];
  const isLeftBare = after.earth.resistanceOhm === null && bonding.losesEarth.includes(before.site.service);
  return isLeftBare ? [sentence(words.resistanceNone, { beforeOhm })] : [];
}

function noticedLines({ lost, before }: Failure, { sentence }: Page): readonly string[] {
  const hows: Readonly<Record<string, string>> = words.noticedHow;
  return before.bonding.weakPoints
    .filter(({ at }) => lost.includes(at))
    .map(({ at, noticed }) => sentence(words.noticed, { at, how: hows[noticed] ?? noticed }));
}

function groupLines({ bonding }: Failure, { sentence }: Page): readonly string[] {
  const { groupsBefore, groupsAfter, splits } = bonding;
  const counts = sentence(words.count, { before: groupsBefore.length, after: groupsAfter.length });
  return [
    counts,
    ...splits.flatMap(({ group, into }) => [
      sentence(words.split, { group, count: into.length }),
      ...into.map((list) => `- ${sentence(words.piece, { list })}`),
    ]),
  ];
}

function lineText(
  { line, which, bondedAt, protectedBy, drainedBy, unprotected }: LineLoss,
  { sentence }: Page,
): string {
  const whiches: Readonly<Record<string, string>> = words.which;
  const { before, after } = unprotected;
  const list = (template: string, ids: readonly string[]) =>
    ids.length === 0 ? [] : [sentence(template, { list: ids })];
  const count = (n: number | null) => (n === null ? words.unknownCount : String(n));
  const losses = [
    ...list(words.bondedAt, bondedAt),
    ...list(words.protectedBy, protectedBy),
    ...list(words.drainedBy, drainedBy),
    ...(before === after ? [] : [sentence(words.unprotected, { before: count(before), after: count(after) })]),
  ];
  return sentence(words.line, { line, which: sentence(whiches[which] ?? which), losses: losses.join('; ') });
}

/** Without the service itself every condition that asks for it cannot be told; they are not listed one by one. */
function doubtLines({ lost, before, fails }: Failure, { sentence }: Page): readonly string[] {
  if (lost.includes(before.site.service)) return [sentence(words.serviceLost)];
  return aloneOf(fails.cannotTell).map((f) => plain(`- ${f.title}: ${f.because.text}`));
}

function findingLines(findings: readonly StudyFinding[]): readonly string[] {
  return aloneOf(findings).map((f) => plain(`${severityMarks[f.severity]} ${f.title}: ${f.because.text}`));
}

/** One that another new one causes is not said again. */
function aloneOf(findings: readonly StudyFinding[]): readonly StudyFinding[] {
  const ids = new Set(findings.map(({ id }) => id));
  return findings.filter(({ under }) => under === null || !ids.has(under));
}
