import type { StudyStrikeConductor } from '../study/study-strike.ts';
import { strikeCommandWords as words } from '../words/strike-command-words.ts';
import { headed, paragraph } from './page-blocks.ts';
import { byLargest, kilo, percentOf, type StrikePage } from './strike-page.ts';
import { type TextRow, textTable } from './text-table.ts';

const { currents: said, headings } = words;
/** More than this is a wall of figures. */
const mostTold = 15;
/** Less than this share of the stroke is told by name alone. */
const leastShare = 0.01;
/** So many names fit in a line or two. */
const mostNamed = 12;

/** What each conductor, line, support and electrode carries, how warm it gets and whether it melts. */
export function currentsBlock(page: StrikePage): string {
  const { conductors, electrodes } = page.strike;
  const large = [...conductors].filter((c) => c.shareOfPeak >= leastShare || c.melts === true).sort(byPeak);
  const told = large.slice(0, mostTold);
  const soil = [...electrodes].filter((e) => e.shareOfPeak >= leastShare).sort(byPeak);
  if (told.length + soil.length === 0) return headed(page, headings.currents, [page.sentence(said.none)]);
  const { kiloampere, share, rise, melts } = said.head;
  const rows: TextRow[] = [
    ...(told.length === 0 ? [] : [{ label: page.sentence(said.metal), cells: [] }]),
    ...told.map((c) => conductorRow(page, c)),
    ...(soil.length === 0 ? [] : [{ label: page.sentence(said.soil), cells: [] }]),
    ...soil.slice(0, mostTold).map(({ id, peakA, shareOfPeak }) => ({
      label: `  ${id}`,
      cells: [kilo(peakA, 3), percentOf(shareOfPeak), '', ''],
    })),
  ];
  return headed(page, headings.currents, [
    ...textTable({ corner: '', head: [kiloampere, share, rise, melts], rows }, page.terminal.width),
    ...moreLines(page, large, told),
    ...notes(page, told),
  ]);
}

const byPeak = byLargest<{ readonly peakA: number; readonly id: string }>(
  (one) => one.peakA,
  (one) => one.id,
);

function conductorRow(page: StrikePage, conductor: StudyStrikeConductor): TextRow {
  const { id, peakA, shareOfPeak } = conductor;
  const what = whatIs(page, id);
  return {
    label: `  ${what === null ? id : page.sentence(said.label, { id, what })}`,
    cells: [kilo(peakA, 3), percentOf(shareOfPeak), riseCell(page, conductor), meltsOf(page, conductor)],
  };
}

/** Its wire, or its kind of line. */
function whatIs({ site }: StrikePage, id: string): string | null {
  const wire = site.conductors.find((c) => c.id === id)?.typed.wire ?? null;
  return wire ?? site.lines.find((l) => l.id === id)?.kind ?? null;
}

function riseCell(page: StrikePage, { id, melts, riseK, sectionFrom }: StudyStrikeConductor): string {
  if (melts === true) return '';
  if (riseK === null) return notKnown(page, id);
  const rise = riseOf(page, riseK);
  return sectionFrom === 'taken' ? page.sentence(said.atMost, { rise }) : rise;
}

/** One system is enough in a column. */
function riseOf({ site }: StrikePage, riseK: number): string {
  const isUs = site.header.units === 'ft';
  const degrees = isUs ? riseK * 1.8 : riseK;
  const figure = degrees < 1 ? 'under 1' : String(Number(degrees.toPrecision(2)));
  return `${figure} ${isUs ? '°F' : 'K'}`;
}

function meltsOf(page: StrikePage, { id, melts, levels }: StudyStrikeConductor): string {
  if (melts === true) return said.yes;
  const at = levels.filter((l) => l.melts).map((l) => l.level);
  if (at.length > 0) return page.sentence(said.levels, { list: at });
  return melts === null ? notKnown(page, id) : said.no;
}

/** A wire of which somebody could tell more; of other metal a dash. */
function notKnown({ site }: StrikePage, id: string): string {
  return site.conductors.some((c) => c.id === id) ? said.unknown : said.left;
}

function moreLines(
  page: StrikePage,
  large: readonly StudyStrikeConductor[],
  told: readonly StudyStrikeConductor[],
): readonly string[] {
  const small = page.strike.conductors.filter((c) => !large.includes(c)).map((c) => c.id);
  const share = percentOf(leastShare);
  const rest = large.length - told.length;
  const less = small.length > mostNamed ? said.notMuchMore : said.notMuch;
  return [
    ...(rest > 0 ? [page.sentence(said.more, { count: rest })] : []),
    ...(small.length > 0 ? [page.sentence(less, { share, list: small, count: small.length })] : []),
  ].map((text) => paragraph(page, text));
}

function notes(page: StrikePage, told: readonly StudyStrikeConductor[]): readonly string[] {
  const lines = told.filter(({ id }) => page.site.lines.some((l) => l.id === id)).map(({ id }) => id);
  const isHot = told.some((c) => c.melts !== true && c.levels.some((l) => l.melts));
  const isLeft = told.some((c) => c.melts === null && notKnown(page, c.id) === said.left);
  return [
    ...(lines.length > 0 ? [page.sentence(said.cords, { list: lines })] : []),
    ...(told.some((c) => c.melts === true) ? [said.meltsNote] : []),
    ...(isHot ? [said.levelNote] : []),
    ...(isLeft ? [said.leftNote] : []),
    ...(told.some((c) => c.sectionFrom === 'taken' && c.riseK !== null) ? [said.takenNote] : []),
    said.sum,
  ].map((text) => page.terminal.paint(paragraph(page, text, 0, 2), 'dim'));
}
