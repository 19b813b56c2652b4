import type { Site } from '../site/site.ts';
import type { StudyStrike, StudyStrikeDifference } from '../study/study-strike.ts';
import { sayQuestion } from '../words/say-problem.ts';
import { strikeCommandWords as words } from '../words/strike-command-words.ts';
import { paragraph } from './page-blocks.ts';
import { besideBlocks } from './say-strike-beside.ts';
import { currentsBlock } from './say-strike-currents.ts';
import { differenceBlocks, marksOf, nameOf, worstOf } from './say-strike-differences.ts';
import { failuresBlock, raisingFailures } from './say-strike-failures.ts';
import { assumedBlock, exactBlock } from './say-strike-limits.ts';
import { coresBlock, firedBlock, jointsBlock } from './say-strike-parts.ts';
import { putInBlock } from './say-strike-put-in.ts';
import { digitsOf, figureIn, type StrikePage, strikePage } from './strike-page.ts';
import { plain, type Terminal, wrap } from './terminal.ts';

/** What was asked beside the strike itself. */
export interface StrikeAsked {
  readonly file: string;
  /** null: as typed. */
  readonly state: string | null;
  readonly between: readonly (readonly [string, string])[];
}

/**
 * The terminal's page of a strike that could be worked out: what was put in, volts between things, the way of the current,
 * joints, cores, protectors, one failure at a time, what was taken, how exact.
 */
export function sayStrike(strike: StudyStrike, site: Site, asked: StrikeAsked, terminal: Terminal): string {
  const page = strikePage(strike, site, terminal);
  const blocks = [
    title(page, asked),
    ...site.questions.map((q) =>
      wrap(`${asked.file}:${q.source.line}:${q.source.column}: ${plain(sayQuestion(q))}`, terminal.width, 0, 2),
    ),
    putInBlock(page),
    ...differenceBlocks(page, asked.between),
    currentsBlock(page),
    jointsBlock(page),
    coresBlock(page),
    firedBlock(page),
    ...besideBlocks(page),
    failuresBlock(page),
    assumedBlock(page),
    exactBlock(page),
    terminal.paint(paragraph(page, page.sentence(words.caution)), 'dim'),
    [...verdict(page), next(page, asked.file)].join('\n'),
  ];
  return `${blocks.filter((b) => b !== '').join('\n\n')}\n`;
}

function title({ site, strike, sentence, terminal }: StrikePage, { state }: StrikeAsked): string {
  const stated = state === null ? '' : sentence(words.inState, { state });
  const titles = { struck: words.title, line: words.titleLine, nearby: words.titleNearby } as const;
  const head = sentence(titles[strike.how], { site: (site.header.name ?? words.unnamed) + stated, at: strike.at });
  return terminal.paint(wrap(head, terminal.width), 'bold');
}

/** So many names fit in a line. */
const mostNamed = 5;

/** In a sentence or two: the worst difference, what melts, of how many nobody can tell. */
function verdict(page: StrikePage): readonly string[] {
  const { strike, site, sentence } = page;
  const worst = worstOf(strike.differences);
  const melting = strike.conductors.filter((c) => c.melts === true).map((c) => c.id);
  const open = strike.conductors.filter((c) => c.melts === null && site.conductors.some((o) => o.id === c.id));
  const values = { list: open.map((c) => c.id), count: open.length };
  const { verdict: said } = words;
  const text = [
    ...(worst === null ? [] : [worstSentence(page, worst)]),
    ...(melting.length === 0 ? [] : [sentence(said.melts, { list: melting })]),
    ...(open.length === 0 ? [] : [sentence(open.length > mostNamed ? said.meltsUnknownOf : said.meltsUnknown, values)]),
  ];
  return text.length === 0 ? [] : [paragraph(page, text.join(' '))];
}

function worstSentence(page: StrikePage, worst: StudyStrikeDifference): string {
  const { a, b, peakV, rangeV } = worst;
  const volt = figureIn(page, Math.abs(peakV), 'voltage', digitsOf(peakV, rangeV)) + marksOf(worst);
  return page.sentence(words.verdict.worst, { a: nameOf(page, a), b: nameOf(page, b), volt });
}

/** What would grow most by one failure is worth a look; else all that is wrong. */
function next({ strike, sentence }: StrikePage, file: string): string {
  const [worst] = raisingFailures(strike.failures);
  return worst === undefined
    ? sentence(words.next.check, { file })
    : sentence(words.next.without, { file, lost: worst.lost });
}
