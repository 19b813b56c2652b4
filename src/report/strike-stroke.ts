import type { StudyStroke } from '../study/study-strike.ts';
import { pageWords } from '../words/page.ts';
import { strikeReportWords } from '../words/strike-report-words.ts';
import { type Block, cell, row, tableIfAny } from './block.ts';
import { figure, partName, sayIn } from './page-context.ts';
import { captionOf, type StrikeView } from './strike-view.ts';

const words = strikeReportWords.stroke;

/** What was put in, with every figure used and where it is from. */
export function strokeBlocks(view: StrikeView, stroke: StudyStroke): readonly Block[] {
  const { page, strike, id } = view;
  const rows: readonly (readonly [string, string, string | null])[] = [
    [words.at, partName(page, strike.at), null],
    [words.name, stroke.name, null],
    [words.wave, stroke.wave, null],
    [words.peak, figure(page, stroke.peakA, 'current'), null],
    [words.front, figure(page, stroke.frontS, 'time'), null],
    [words.half, figure(page, stroke.halfValueS, 'time'), null],
    [words.steepest, figure(page, stroke.steepestAPerS, 'current rise'), null],
    [words.charge, figure(page, stroke.chargeC, 'charge'), null],
    [words.action, figure(page, stroke.actionA2s, 'action'), null],
    [words.source, documentOf(view, stroke), provenanceOf(stroke)],
  ];
  return tableIfAny({
    id: `${id}-stroke`,
    caption: captionOf(view, words.caption),
    head: [words.what, words.value],
    rows: rows.map(([what, value, more]) => row(cell(what), cell(value, more))),
  });
}

function documentOf({ page }: StrikeView, { source }: StudyStroke): string {
  const edition = source.edition;
  return edition === null
    ? source.document
    : `${source.document}, ${sayIn(page, pageWords.findings.edition, { edition })}`;
}

function provenanceOf({ source }: StudyStroke): string {
  const says: Readonly<Record<string, string>> = pageWords.findings.provenance;
  return Object.hasOwn(says, source.provenance) ? says[source.provenance]! : source.provenance;
}
