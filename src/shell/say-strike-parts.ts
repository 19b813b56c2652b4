import type { StudyStrikeFired, StudyStrikeJoint } from '../study/study-strike.ts';
import { strikeCommandWords as words } from '../words/strike-command-words.ts';
import { bullet, headed, paragraph } from './page-blocks.ts';
import { byLargest, figureIn, kilo, type StrikePage } from './strike-page.ts';
import { textTable } from './text-table.ts';

const { joints: ofJoints, cores: ofCores, fired: ofFired, headings } = words;
/** More than this is a wall of figures. */
const mostTold = 8;

/** Joints with the most heat in them; those of unknown resistance after them, by current. */
export function jointsBlock(page: StrikePage): string {
  const all = [...page.strike.joints].sort(byHeat);
  if (all.length === 0) return '';
  const rest = all.length - mostTold;
  const { kiloampere, volt, energy } = ofJoints.head;
  const table = textTable(
    {
      corner: '',
      head: [kiloampere, volt, energy],
      rows: all.slice(0, mostTold).map(({ id, peakA, peakV, energyJ }) => ({
        label: id,
        cells: [
          kilo(peakA, 3),
          peakV === null ? ofJoints.unknown : figureIn(page, peakV, 'voltage'),
          energyJ === null ? ofJoints.unknown : figureIn(page, energyJ, 'energy'),
        ],
      })),
    },
    page.terminal.width,
  );
  return headed(page, headings.joints, [
    ...table,
    ...(rest > 0 ? [paragraph(page, page.sentence(ofJoints.more, { count: rest }))] : []),
    page.terminal.paint(paragraph(page, ofJoints.likely), 'dim'),
  ]);
}

function byHeat(a: StudyStrikeJoint, b: StudyStrikeJoint): number {
  return (b.energyJ ?? -1) - (a.energyJ ?? -1) || b.peakA - a.peakA || (a.id < b.id ? -1 : 1);
}

/** Core against shield at the far end of each line. */
export function coresBlock(page: StrikePage): string {
  const all = [...page.strike.cores].sort(
    byLargest(
      (c) => c.peakV,
      (c) => `${c.line} ${c.at}`,
    ),
  );
  if (all.length === 0) return '';
  const rest = all.length - mostTold;
  const rows = all.slice(0, mostTold).map(({ line, at, peakV }) => ({
    label: page.sentence(ofCores.label, { line, at }),
    cells: [kilo(peakV)],
  }));
  return headed(page, headings.cores, [
    paragraph(page, page.sentence(ofCores.intro)),
    ...textTable({ corner: '', head: [ofCores.head.kilovolt], rows }, page.terminal.width),
    ...(rest > 0 ? [paragraph(page, page.sentence(ofCores.more, { count: rest }))] : []),
  ]);
}

/** Which protectors fired and when, and which did not; '' for a site without any. */
export function firedBlock(page: StrikePage): string {
  const { fired, mayFire = [] } = page.strike;
  const there = page.site.arresters.filter((a) => a.present !== 'no').map((a) => a.id);
  const others = there.filter((id) => !fired.some((f) => f.arrester === id));
  if (there.length === 0 && fired.length === 0) return '';
  const inTime = [...fired].sort((a, b) => a.atS - b.atS || (a.arrester < b.arrester ? -1 : 1));
  return headed(page, headings.fired, [
    ...inTime.map((one) => bullet(page, firedSentence(page, one))),
    ...(mayFire.length === 0 ? [] : [bullet(page, page.sentence(ofFired.may, { list: mayFire }))]),
    ...(others.length === 0
      ? []
      : [bullet(page, page.sentence(fired.length === 0 ? ofFired.none : ofFired.others, { list: others }))]),
    ...(fired.length === 0 ? [] : [page.terminal.paint(paragraph(page, ofFired.note), 'dim')]),
  ]);
}

/** A study of an earlier edition knows no more than when. */
function firedSentence(page: StrikePage, { arrester, atS, line, levelV, peakA, passes }: StudyStrikeFired): string {
  const after = figureIn(page, atS, 'time');
  if (line == null || levelV === undefined || peakA === undefined) {
    return page.sentence(ofFired.one, { arrester, after });
  }
  const volts = (figure: number) => figureIn(page, figure, 'voltage');
  const values = { arrester, after, line, level: volts(levelV), peak: figureIn(page, peakA, 'current') };
  if (passes == null) return page.sentence(ofFired.on, values);
  return page.sentence(ofFired.passes, {
    ...values,
    at: passes.at,
    before: volts(passes.beforeV),
    later: volts(passes.afterV),
    open: volts(passes.openV),
  });
}
