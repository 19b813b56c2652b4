import type { ComparedStrike, CurrentRow, DifferenceRow, Sides } from '../compare/comparison.ts';
import { partOfPoint } from '../drawing/item-numbers.ts';
import { formatQuantity } from '../units/format.ts';
import { compareReportWords } from '../words/compare-report-words.ts';
import { strikeReportWords } from '../words/strike-report-words.ts';
import { type Block, cell, paragraph, row, type Section, tableIfAny } from './block.ts';
import type { CompareContext } from './compare-context.ts';
import { bothNames } from './compare-figures.ts';
import { sayIn } from './page-context.ts';
import { ampereOf, byGreatest, volt } from './strike-view.ts';

const words = compareReportWords.strike;
const mostRows = 24;

/** The same stroke on both sides: volts between things and currents that are not what they were, greatest first. */
export function compareStrikeSection(page: CompareContext): Section {
  const { strike } = page.comparison;
  const blocks =
    strike === null ? [] : [...strokeBlocks(page, strike), ...differences(page, strike), ...currents(page, strike)];
  return { id: 'strike', heading: words.heading, blocks: [...blocks, paragraph(words.note)] };
}

function strokeBlocks(page: CompareContext, strike: ComparedStrike): readonly Block[] {
  const { refused } = strike;
  const whys = [...new Set([refused.before, refused.after])].filter((w) => w !== null);
  const says = strike.sameStroke
    ? sayIn(page.after, words.stroke, strokeValues(page, strike, 'after'))
    : sayIn(page.after, words.otherStroke, {
        before: strokeName(page, strike, 'before'),
        after: strokeName(page, strike, 'after'),
      });
  return [paragraph(says), ...whys.map((why) => paragraph(sayIn(page.after, words.refused, { why })))];
}

function strokeValues(page: CompareContext, strike: ComparedStrike, side: 'before' | 'after') {
  const peakA = strike.peakA[side];
  return {
    peakA: peakA === null ? compareReportWords.figures.notKnown : (formatQuantity(peakA, 'current', 'si') ?? ''),
    wave: strike.wave[side] ?? '',
    at: endOf(page, strike.at, side),
  };
}

function strokeName(page: CompareContext, strike: ComparedStrike, side: 'before' | 'after'): string {
  return strike.at[side] === null ? words.noStroke : sayIn(page.after, words.one, strokeValues(page, strike, side));
}

function endOf(page: CompareContext, ids: Sides<string | null>, side: 'before' | 'after'): string {
  const id = ids[side];
  return id === null ? '' : endNames(page, { before: null, after: null, [side]: id });
}

/** The study calls distant soil `remote earth`; the page calls it as its region does. */
export function endNames(page: CompareContext, ids: Sides<string | null>): string {
  const isRemote = ids.after === 'remote earth' || (ids.after === null && ids.before === 'remote earth');
  return isRemote ? sayIn(page.after, strikeReportWords.remote) : bothNames(page, ids);
}

const greatest = (sides: Sides<number | null>) => Math.max(sides.before ?? 0, sides.after ?? 0);

function differences(page: CompareContext, strike: ComparedStrike): readonly Block[] {
  const all = byGreatest(
    strike.differences,
    (d) => greatest(d.peakV),
    (d) => JSON.stringify([d.a, d.b, d.why]),
  );
  const shown = all.slice(0, mostRows);
  return [
    ...tableIfAny({
      id: 'strike-differences-compare',
      caption: words.differences,
      head: [words.between, page.sides.before, page.sides.after],
      rows: shown.map((d) =>
        row(
          cell(`${endNames(page, d.a)}, ${endNames(page, d.b)}`),
          voltCell(page, d, 'before'),
          voltCell(page, d, 'after'),
        ),
      ),
    }),
    ...moreBlocks(page, all.length - shown.length),
  ];
}

/** Why a side has no figure for a pair: an end is not there, hangs on no electrode, or it was not worked out. */
export function noVolts(page: CompareContext, d: DifferenceRow, side: 'before' | 'after') {
  const other = side === 'before' ? 'after' : 'before';
  const ends = [d.a[other], d.b[other]].map((point) =>
    point === null ? null : onSide(page, partOfPoint(point), side),
  );
  if (ends.some((id) => id === null)) return 'not there';
  const { groups } = page[side].study.bonding;
  const hangsOnNone = (id: string) => groups.some((g) => g.parts.includes(id) && g.electrodes.length === 0);
  const loose = ends.filter((id): id is string => id !== null && hangsOnNone(id));
  return loose.length === 0 ? 'not worked out' : loose;
}

/** The same part by its name on a side, where it had the given name on the other; null where it was not there. */
function onSide({ comparison, before, after }: CompareContext, id: string, side: 'before' | 'after'): string | null {
  if (id === 'remote earth') return id;
  const { pairs } = comparison.parts;
  const name =
    side === 'before' ? pairs.find((p) => p.after === id)?.before : pairs.find((p) => p.before === id)?.after;
  const part = name === undefined ? undefined : (side === 'before' ? before : after).parts.get(name);
  return part === undefined || part.present === 'no' ? null : part.id;
}

/** The likely figure, and its range. */
function voltCell(page: CompareContext, d: DifferenceRow, side: 'before' | 'after') {
  const peakV = d.peakV[side];
  const range = d.rangeV[side];
  if (peakV === null)
    return cell(noVolts(page, d, side) === 'not there' ? compareReportWords.figures.notThere : words.notWorkedOut);
  if (range === null || range.low === range.high) return cell(volt(peakV));
  return cell(volt(peakV), formatQuantity({ low: range.low, high: range.high ?? Infinity }, 'voltage', 'si'));
}

function currents(page: CompareContext, strike: ComparedStrike): readonly Block[] {
  const both = [...strike.conductors, ...strike.electrodes].filter((c) => c.standing !== 'same');
  const all = byGreatest(
    both,
    (c) => greatest(c.peakA),
    (c) => JSON.stringify(c.id),
  );
  const shown = all.slice(0, mostRows);
  return [
    ...tableIfAny({
      id: 'strike-currents-compare',
      caption: words.conductors,
      head: [sayIn(page.after, words.conductor), page.sides.before, page.sides.after],
      rows: shown.map((c) => row(cell(bothNames(page, c.id)), ampereCell(c, 'before'), ampereCell(c, 'after'))),
    }),
    ...moreBlocks(page, all.length - shown.length),
  ];
}

function ampereCell(c: CurrentRow, side: 'before' | 'after') {
  const peakA = c.peakA[side];
  if (peakA === null) return cell(compareReportWords.figures.notThere);
  return cell(ampereOf(peakA), c.melts[side] === true ? words.melts : null);
}

function moreBlocks(page: CompareContext, count: number): readonly Block[] {
  return count <= 0 ? [] : [paragraph(sayIn(page.after, words.more, { n: String(count) }))];
}
