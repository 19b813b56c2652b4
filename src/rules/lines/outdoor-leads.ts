import { partIndex } from '../../facts/part-index.ts';
import type { Line, Site } from '../../site/site.ts';
import { feedLines } from './crossing-lines.ts';

const sending: readonly string[] = ['transceiver', 'amplifier', 'transmitter', 'tuner'];

/** Feed lines that come from something outdoors, such as an antenna (which is outdoors unless its owner says otherwise). */
export function outdoorLeads(site: Site): readonly Line[] {
  const { whereOf } = partIndex(site);
  return site.lines.filter(
    (l) =>
      l.present !== 'no' &&
      feedLines.includes(l.kind) &&
      l.path.some((s) => s.is === 'part' && whereOf(s.at.part) === 'outside'),
  );
}

/** Whether a line feeds something that sends: what it ends on says so; where no box is typed, whether the station sends at all. */
export function isSending(line: Line, site: Site): boolean {
  const stops = new Set(line.path.flatMap((s) => (s.is === 'part' && s.at.part !== null ? [s.at.part] : [])));
  const boxes = site.equipment.filter((e) => stops.has(e.id));
  return areSending(boxes.length > 0 ? boxes : site.equipment);
}

/** Whether anything at the station sends; where no receiver is typed it is taken to. */
export function sends({ equipment }: Pick<Site, 'equipment'>): boolean {
  return areSending(equipment.filter((e) => e.present !== 'no'));
}

function areSending(boxes: Site['equipment']): boolean {
  return boxes.some((e) => sending.includes(e.kind)) || boxes.every((e) => e.kind !== 'receiver');
}
