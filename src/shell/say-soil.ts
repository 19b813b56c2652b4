import type { Site } from '../site/site.ts';
import type { Study } from '../study/study.ts';
import { soilCommandWords as words } from '../words/soil-command-words.ts';
import { isSoilKnown, measureBlock, soilBlock } from './say-soil-ground.ts';
import { limitsBlock } from './say-soil-limits.ts';
import { readingsBlock } from './say-soil-readings.ts';
import { helpBlock } from './say-soil-remedies.ts';
import { outsideBlock, surfaceBlock } from './say-soil-surface.ts';
import { resistanceBlock } from './say-soil-table.ts';
import { paragraph, type SoilPage, soilPage } from './soil-page.ts';
import { plain, type Terminal, wrap } from './terminal.ts';

/** The terminal's page of soil and electrodes: what the soil is, what each electrode has in it now and in each season, what would help, what was left out. */
export function saySoil(study: Study, site: Site, file: string, terminal: Terminal): string {
  const page = soilPage(study, site, terminal);
  const blocks = [
    title(page),
    ...questions(page, file),
    soilBlock(page),
    measureBlock(page),
    readingsBlock(page),
    resistanceBlock(page),
    helpBlock(page),
    outsideBlock(page),
    surfaceBlock(page),
    limitsBlock(page),
    terminal.paint(paragraph(page, page.sentence(words.caution)), 'dim'),
    next(page, file),
  ];
  return `${blocks.filter((b) => b !== '').join('\n\n')}\n`;
}

function title({ study, sentence, terminal }: SoilPage): string {
  const state = study.state.id === 'as typed' ? '' : sentence(words.inState, { state: study.state.id });
  const head = sentence(words.title, { site: (study.site.name ?? words.unnamed) + state });
  return terminal.paint(wrap(head, terminal.width), 'bold');
}

/** Accepted, but strange: asked first, since all below rests on it. */
function questions({ study, terminal }: SoilPage, file: string): readonly string[] {
  return study.questions.map((q) => wrap(`${file}:${q.line}:${q.column}: ${plain(q.text)}`, terminal.width, 0, 2));
}

function next(page: SoilPage, file: string): string {
  const { electrodes } = page.study.earth;
  if (electrodes.length === 0) return page.sentence(words.next.check, { file });
  return page.sentence(isSoilKnown(page) ? words.next.report : words.next.again, { file });
}
