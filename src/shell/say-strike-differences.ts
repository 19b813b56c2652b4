import { pointOfText } from '../site/point-text.ts';
import type { StudyStrikeDifference } from '../study/study-strike.ts';
import { formatQuantity } from '../units/format.ts';
import { strikeCommandWords as words } from '../words/strike-command-words.ts';
import { bullet, headed, paragraph } from './page-blocks.ts';
import { byLargest, digitsOf, figureIn, kilo, kiloRange, type StrikePage } from './strike-page.ts';
import { textTable } from './text-table.ts';

const { differences: said, headings } = words;
/** The study's name for it. */
export const remoteEarth = 'remote earth';
/** More than this is a wall of figures. */
const mostTold = 10;

/** Pairs that were asked for, then the worst of what a person or a cable joins, then lines from outside; then what the marks mean. */
export function differenceBlocks(page: StrikePage, asked: readonly (readonly [string, string])[]): readonly string[] {
  const all = [...page.strike.differences].sort(byPeak);
  const wanted = asked.map((pair) => ({
    pair,
    one: all.find((d) => d.why === 'asked' && isOf(d, pair)) ?? all.find((d) => isOf(d, pair)) ?? null,
  }));
  const named = wanted.flatMap(({ one }) => (one === null ? [] : [one]));
  const missing = wanted.filter(({ one }) => one === null).map(({ pair }) => pair);
  const others = all.filter(isJoined);
  const outside = all.filter((d) => d.why === 'outside');
  const told = [...named, ...[others, outside].flatMap((list) => list.slice(0, mostTold))];
  return [
    askedBlock(page, named, missing),
    headed(
      page,
      headings.worst,
      others.length === 0 ? [paragraph(page, page.sentence(said.none))] : rows(page, others),
    ),
    outside.length === 0
      ? ''
      : headed(page, headings.outside, [...rows(page, outside), paragraph(page, page.sentence(said.outside))]),
    notes(page, told).join('\n'),
  ];
}

/** Of what a person or a cable joins; null: nothing is. */
export function worstOf(differences: readonly StudyStrikeDifference[]): StudyStrikeDifference | null {
  return differences.filter(isJoined).sort(byPeak)[0] ?? null;
}

function isJoined({ why }: StudyStrikeDifference): boolean {
  return why !== 'asked' && why !== 'outside';
}

function askedBlock(
  page: StrikePage,
  named: readonly StudyStrikeDifference[],
  missing: readonly (readonly [string, string])[],
): string {
  const none = missing.map(([a, b]) => bullet(page, page.sentence(said.notAsked, { a, b })));
  return headed(page, headings.asked, [...tableOf(page, named), ...none]);
}

function rows(page: StrikePage, all: readonly StudyStrikeDifference[]): readonly string[] {
  return [...tableOf(page, all.slice(0, mostTold)), ...restOf(page, all)];
}

const byPeak = byLargest<StudyStrikeDifference>(
  (d) => d.peakV,
  (d) => `${d.a} ${d.b}`,
);

/** Whether it is that of a pair, either way round; the study may answer for the part of a point that was asked about. */
function isOf({ a, b }: StudyStrikeDifference, [one, other]: readonly [string, string]): boolean {
  const is = (id: string, asked: string) => id === asked || id === pointOfText(asked)?.part;
  return (is(a, one) && is(b, other)) || (is(a, other) && is(b, one));
}

function tableOf(page: StrikePage, told: readonly StudyStrikeDifference[]): readonly string[] {
  if (told.length === 0) return [];
  const { kilovolt, range, perKiloampere, perSteepness } = said.head;
  // a column of marks only where there are any, so that figures stay under each other
  const isMarked = told.some((d) => marksOf(d) !== '');
  const width = Math.max(...told.map((d) => marksOf(d).length));
  const marked = (text: string, marks: string) => (isMarked ? text + marks.padEnd(width) : text);
  return textTable(
    {
      corner: '',
      head: [marked(kilovolt, ''), range, perKiloampere, perSteepness],
      rows: told.map((d) => ({
        label: labelOf(page, d),
        cells: [
          marked(kilo(d.peakV, digitsOf(d.peakV, d.rangeV)), marksOf(d)),
          kiloRange(d.rangeV),
          volts(d.voltPerKiloampere),
          volts(d.voltPerKiloamperePerMicrosecond),
        ],
      })),
    },
    page.terminal.width,
  );
}

/** `*`: ways too long for the front; `^`: an upper estimate; `~`: a range of couplings; `+`: with travel time. */
export function marksOf(difference: StudyStrikeDifference): string {
  return `${difference.isBeyond ? '*' : ''}${isUpper(difference) ? '^' : ''}${difference.isBracketed ? '~' : ''}${isChain(difference) ? '+' : ''}`;
}

function isChain({ lumpedV }: StudyStrikeDifference): boolean {
  return lumpedV != null;
}

/** To remote earth no cable leads; of that nothing is an estimate by lengths. */
function isUpper({ route, b }: StudyStrikeDifference): boolean {
  return route === null && b !== remoteEarth;
}

function volts(value: number): string {
  const size = Math.abs(value);
  if (size > 0 && size < leastVolt) return `under ${leastVolt}`;
  return formatQuantity(size, 'number', 'si', { digits: 2 }) ?? '';
}
/** For each kiloampere nobody asks how little. */
const leastVolt = 1;

function labelOf(page: StrikePage, { a, b, why, by }: StudyStrikeDifference): string {
  const { sentence } = page;
  if (why === 'outside' && by !== null && b === remoteEarth) return sentence(said.comesIn, { by, a });
  const pair = sentence(said.pair, { a: nameOf(page, a), b: nameOf(page, b) });
  const isNamed = by === null || by === a || by === b;
  if (!isNamed) return pair + sentence(said.line, { by });
  return why === 'reach' ? pair + said.reach : pair;
}

/** The study's name for remote earth in the words of the region; others as typed. */
export function nameOf({ sentence }: StrikePage, id: string): string {
  return id === remoteEarth ? sentence(said.remote) : id;
}

function restOf(page: StrikePage, all: readonly StudyStrikeDifference[]): readonly string[] {
  const rest = all.length - mostTold;
  return rest > 0 ? [paragraph(page, page.sentence(said.more, { count: rest }))] : [];
}

/** What the marks mean, and the ranges. */
function notes(page: StrikePage, told: readonly StudyStrikeDifference[]): readonly string[] {
  const some = (is: (d: StudyStrikeDifference) => boolean, text: () => string) => (told.some(is) ? [text()] : []);
  return [
    ...some(
      (d) => d.route !== null,
      () => said.route,
    ),
    ...some(
      (d) => kiloRange(d.rangeV) !== '',
      () => said.ranges,
    ),
    ...some(
      (d) => d.isBeyond,
      () => beyond(page),
    ),
    ...some(isChain, () => said.chain),
    ...some(isUpper, () => said.upper),
    ...some(
      (d) => d.isBracketed,
      () => said.bracketed,
    ),
  ].map((text) => page.terminal.paint(paragraph(page, text, 0, 2), 'dim'));
}

function beyond(page: StrikePage): string {
  const { solve } = page.strike;
  if (solve === null) return said.beyondUnknown;
  return page.sentence(said.beyond, {
    longest: figureIn(page, solve.longestWayM, 'length'),
    most: figureIn(page, solve.mostWayM, 'length'),
  });
}
