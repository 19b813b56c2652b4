import type { StudyPart } from '../study/study.ts';
import { pageWords } from '../words/page.ts';
import { scheduleWords } from '../words/schedule-words.ts';
import { type Block, cell, type Row, row, tableIfAny } from './block.ts';
import { kindName, numberOf, type PageContext, partName, sayIn } from './page-context.ts';
import { typedDetails } from './typed-details.ts';

const words = scheduleWords.schedules;
const common = pageWords.page;

/** Schedules of the parts that are described by what was typed: electrodes, supports, bars, equipment, other metal. */
export function electrodeSchedule(page: PageContext): readonly Block[] {
  return schedule(page, ['electrodes'], words.electrodes, words.details);
}

export function supportSchedule(page: PageContext): readonly Block[] {
  return schedule(page, ['supports', 'antennas'], words.supports, words.typed);
}

export function barSchedule(page: PageContext): readonly Block[] {
  return schedule(page, ['bars'], words.bars, words.typed);
}

export function equipmentSchedule(page: PageContext): readonly Block[] {
  return schedule(page, ['equipment'], words.equipment, words.typed);
}

/** Other metal, and parts of sections that this page does not know. */
export function metalworkSchedule(page: PageContext): readonly Block[] {
  const known = [
    'electrodes',
    'supports',
    'antennas',
    'bars',
    'arresters',
    'equipment',
    'lines',
    'conductors',
    'joints',
  ];
  const others = [...new Set(page.study.parts.map((p) => p.section))].filter((s) => !known.includes(s));
  return schedule(page, others, words.metalwork, words.typed);
}

function schedule(page: PageContext, sections: readonly string[], caption: string, details: string): readonly Block[] {
  const parts = byNumber(
    page,
    page.study.parts.filter((p) => sections.includes(p.section)),
  );
  const head = [common.number, common.name, common.kind, details, words.known, common.where, common.group];
  return tableIfAny({
    id: `schedule-${sections[0] ?? 'none'}`,
    look: 'wide',
    caption: sayIn(page, caption),
    head,
    rows: parts.map((p) => partRow(page, p)),
  });
}

function partRow(page: PageContext, part: StudyPart): Row {
  const count = part.count > 1 ? sayIn(page, words.count, { n: String(part.count) }) : null;
  return row(
    cell(numberOf(page, part.id)),
    cell(part.id, part.note),
    cell(kindName(page, part.kind), count, part.owner),
    cell(typedDetails(page, part) || '–'),
    cell(standing(part)),
    cell(whereText(page, part)),
    cell(groupText(page, part)),
  );
}

/** A part that nothing joins to another is a group of its own. */
function groupText(page: PageContext, { group }: StudyPart): string {
  if (group === null) return '–';
  const alone = page.study.bonding.groups.find((g) => g.id === group)?.parts.length === 1;
  return alone ? words.alone : partName(page, group);
}

/** How it is known, its condition where somebody said, and whether it is there at all. */
function standing(part: StudyPart): string {
  const odd = [
    part.condition === 'unknown' ? '' : part.condition,
    part.present === 'yes' ? '' : presence(part.present),
  ];
  return [part.known, ...odd].filter((t) => t !== '').join(', ');
}

function presence(present: string): string {
  return present === 'no' ? words.notThere : words.perhapsThere;
}

function whereText(page: PageContext, part: StudyPart): string {
  if (part.on !== null) return `${words.on.toLowerCase()} ${partName(page, part.on)}`;
  return part.where ?? common.unknown;
}

/** In the order of their numbers. */
export function byNumber<P extends { readonly id: string }>(page: PageContext, parts: readonly P[]): readonly P[] {
  const places = new Map([...page.numbers.keys()].map((id, place) => [id, place]));
  return [...parts].sort((a, b) => (places.get(a.id) ?? Infinity) - (places.get(b.id) ?? Infinity) || 0);
}
