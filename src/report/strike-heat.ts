import type { StudyStrikeConductor } from '../study/study-strike.ts';
import { formatQuantity } from '../units/format.ts';
import { strikeReportWords } from '../words/strike-report-words.ts';
import { type Block, type Cell, cell, loudCell, minor, paragraph, row, tableIfAny } from './block.ts';
import { type PageContext, partName, sayIn } from './page-context.ts';
import { byGreatest, captionOf, restBlocks, type StrikeView, someNames } from './strike-view.ts';

const words = strikeReportWords.heat;
/** A smaller rise is none to a reader. */
const leastK = 1;
/** The rest, cooler or of less current, stands in the study file. */
const mostRows = 14;
const levels = ['I', 'II', 'III', 'IV'] as const;

/** How warm each wire of known metal and section becomes, those first that melt, in this stroke and at each protection level. */
export function heatBlocks(view: StrikeView): readonly Block[] {
  const { page, strike } = view;
  const all = byGreatest(
    strike.conductors,
    (c) => c.peakA,
    (c) => c.id,
  );
  const known = all.filter((c) => c.melts !== null || c.levels.length > 0).sort((x, y) => meltings(y) - meltings(x));
  const warm = known.filter(isWarmed);
  const count = known.length - warm.length;
  if (all.length === 0) return [];
  const unknown = all.filter((c) => !known.includes(c)).map((c) => c.id);
  const list = someNames(view, unknown);
  return [
    minor(words.heading),
    ...(known.length === 0 ? [] : meltSentences(view, known).map(paragraph)),
    ...tableIfAny({
      id: `${view.id}-heat`,
      caption: captionOf(view, words.caption),
      head: [words.name, words.now, ...levels.map((level) => sayIn(page, words.level, { level }))],
      rows: warm
        .slice(0, mostRows)
        .map((c) =>
          row(cell(partName(page, c.id)), riseCell(page, c, c), ...levels.map((l) => riseCell(page, c, atLevel(c, l)))),
        ),
    }),
    ...restBlocks(view, warm.length, mostRows),
    ...(count === 0 ? [] : [paragraph(sayIn(page, words.cool, { count }))]),
    ...(known.length === 0 ? [] : [paragraph(words.levels)]),
    ...(warm.some((c) => c.sectionFrom === 'taken') ? [paragraph(words.taken)] : []),
    ...(unknown.length === 0 ? [] : [paragraph(sayIn(page, words.unknown, { list }))]),
  ];
}

interface Rise {
  readonly riseK: number | null;
  readonly melts: boolean | null;
}

/** In this stroke or at a level by as much as a reader is told. */
function isWarmed(c: StudyStrikeConductor): boolean {
  return [c, ...c.levels].some((r) => r.melts === true || (r.riseK ?? 0) >= leastK);
}

/** In how many of the columns it melts. */
function meltings(c: StudyStrikeConductor): number {
  return [c, ...c.levels].filter((r) => r.melts === true).length;
}

function atLevel(c: StudyStrikeConductor, level: string): Rise {
  return c.levels.find((l) => l.level === level) ?? { riseK: null, melts: null };
}

/** In the site's own unit, the other below it. */
function riseCell(page: PageContext, { sectionFrom }: StudyStrikeConductor, { riseK, melts }: Rise): Cell {
  if (melts === true) return loudCell(words.melts);
  if (riseK === null) return cell('–');
  const shown = riseK < leastK ? { low: 0, high: leastK } : riseK;
  const says = (system: 'us' | 'si') => formatQuantity(shown, 'temperature', system, { digits: 2 });
  const [first, second] = page.speech.unitsFirst === 'us' ? (['us', 'si'] as const) : (['si', 'us'] as const);
  const rise = says(first) ?? '';
  return cell(sectionFrom === 'taken' ? sayIn(page, words.atMost, { rise }) : rise, says(second));
}

function meltSentences(view: StrikeView, known: readonly StudyStrikeConductor[]): readonly string[] {
  const { page } = view;
  const now = known.filter((c) => c.melts === true).map((c) => c.id);
  const later = known.flatMap((c) => {
    const melting = levels.filter((l) => atLevel(c, l).melts === true);
    if (melting.length === 0) return [];
    return [sayIn(page, words.atLevels, { part: partName(page, c.id), levels: melting })];
  });
  if (now.length === 0 && later.length === 0) return [words.noneMelts];
  return [
    ...(now.length === 0 ? [] : [sayIn(page, words.meltsNow, { list: someNames(view, now) })]),
    ...(later.length === 0 ? [] : [sayIn(page, words.meltsAt, { list: later.join('; ') })]),
  ];
}
