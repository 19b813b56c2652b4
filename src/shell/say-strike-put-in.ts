import type { StudyStroke } from '../study/study-strike.ts';
import { strikeCommandWords as words } from '../words/strike-command-words.ts';
import { headed, paragraph } from './page-blocks.ts';
import { figureIn, type StrikePage } from './strike-page.ts';

const { put } = words;

/** The stroke with its source, and how high the struck point and the service rise. */
export function putInBlock(page: StrikePage): string {
  const { stroke } = page.strike;
  if (stroke === null) return '';
  return headed(page, words.headings.put, [
    paragraph(page, strokeSentence(page, stroke)),
    page.terminal.paint(paragraph(page, sourceSentence(page, stroke)), 'dim'),
    ...riseLines(page),
  ]);
}

function strokeSentence(page: StrikePage, stroke: StudyStroke): string {
  const { name, wave, peakA, steepestAPerS, chargeC, actionA2s } = stroke;
  return page.sentence(put.stroke, {
    name: name.charAt(0).toUpperCase() + name.slice(1),
    wave,
    peak: figureIn(page, peakA, 'current', 3),
    steepest: figureIn(page, steepestAPerS, 'current rise', 3),
    charge: figureIn(page, chargeC, 'charge', 3),
    action: figureIn(page, actionA2s, 'energy', 3),
  });
}

function sourceSentence({ sentence }: StrikePage, { source }: StudyStroke): string {
  const { document, edition, provenance } = source;
  const checks: Readonly<Record<string, string>> = put.check;
  return sentence(put.source, {
    document,
    edition: edition === null ? '' : sentence(put.edition, { edition }),
    check: checks[provenance] ?? '',
  });
}

function riseLines(page: StrikePage): readonly string[] {
  const { peakV, at } = page.strike;
  const told = [...new Set([at, page.site.header.service])].filter((id) => Object.hasOwn(peakV, id));
  if (told.length === 0) return [];
  const list = told.map((part) =>
    page.sentence(put.riseOf, { part, volt: figureIn(page, Math.abs(peakV[part]!), 'voltage') }),
  );
  return [paragraph(page, page.sentence(put.rise, { list }))];
}
