import type { Between } from '../bonding/way-between.ts';
import type { ResistanceBounds } from '../currents/bounds.ts';
import type { DcBetween } from '../network/dc-between.ts';
import { dcWords as words } from '../words/way-words.ts';
import type { Sentence } from './say-path.ts';
import { type Terminal, wrap } from './terminal.ts';

/** Shares below this are left out of the page; JSON has them all. */
const leastShare = 0.005;

/** What an instrument reads between the two points, each to remote earth, and where a current put in at the first goes. */
export function sayDcBetween({ from, to }: Between, dc: DcBetween, sentence: Sentence, { width }: Terminal): string {
  const rows: readonly (readonly [string, string])[] = [
    [words.rows.between, boundsOf(dc.betweenOhm, sentence)],
    ...earthRow(from, dc.fromEarthOhm, sentence),
    ...earthRow(to, dc.toEarthOhm, sentence),
  ];
  const column = Math.max(...rows.map(([name]) => name.length)) + 2;
  const lines = rows.map(([name, text]) => `${name.padEnd(column)}${wrap(text, width, column, 0).trimStart()}`);
  return [...lines, wrap(sharesOf(from, to, dc, sentence), width)].join('\n');
}

function earthRow(point: string, ohm: ResistanceBounds | null, sentence: Sentence): (readonly [string, string])[] {
  return ohm === null ? [] : [[sentence(words.rows.earth, { point }), boundsOf(ohm, sentence)]];
}

function boundsOf({ low, value, high }: ResistanceBounds, sentence: Sentence): string {
  const resistanceOhm = { low, high };
  const range = Number.isFinite(high)
    ? sentence(words.range, { resistanceOhm })
    : sentence(words.atLeast, { resistanceOhm: low });
  return value === null || low === high ? range : `${sentence(words.likely, { resistanceOhm: value })}; ${range}`;
}

function sharesOf(from: string, to: string, dc: DcBetween, sentence: Sentence): string {
  const large = dc.shares.filter(({ part, share }) => share >= leastShare && !part.includes(':'));
  if (large.length === 0) return sentence(words.sharesUnknown, { from });
  const ordered = [...large].sort((a, b) => b.share - a.share || (a.part < b.part ? -1 : 1));
  const list = ordered.map(({ part, share }) => `${part} ${Math.round(share * 100)} %`);
  return sentence(dc.leaves === 'by the electrodes' ? words.shares : words.sharesBetween, { from, to, list });
}
