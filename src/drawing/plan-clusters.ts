import type { Study } from '../study/study.ts';
import type { Ground, PlanScale } from './plan-scale.ts';
import { type Rect, rectAbout } from './rect.ts';
import type { Point } from './svg.ts';
import { type SymbolName, symbolOf } from './symbols.ts';
import { textWidth } from './text-width.ts';

/** Parts that stand so close together on paper that they share one label; the first gives the symbol. */
export interface Cluster {
  readonly at: Point;
  readonly entries: readonly ClusterEntry[];
}

export interface ClusterEntry {
  readonly id: string;
  readonly symbol: SymbolName;
  readonly text: string;
}

export const symbolMm = 3.6;
export const labelSize = 2.4;
export const entryMm = 3.3;
const closeMm = 4.8;
/** Which symbol is drawn where several parts stand at one place. */
const rank = ['supports', 'electrodes', 'bars', 'equipment', 'arresters', 'antennas', 'metalwork', 'guys', 'joints'];

/** Parts with a position, gathered place by place, each with its number and name; `!` where a finding is serious. */
export function clustersOf(study: Study, numbers: ReadonlyMap<string, string>, scale: PlanScale): readonly Cluster[] {
  const flagged = flaggedParts(study);
  const clusters: { at: Point; entries: ClusterEntry[] }[] = [];
  for (const part of placedParts(study)) {
    const at = scale.toPaper(part.ground);
    const number = numbers.get(part.id) ?? '';
    const text = `${number} ${part.id}${part.count > 1 ? ` ×${part.count}` : ''}${flagged.has(part.id) ? ' !' : ''}`;
    const entry = { id: part.id, symbol: part.symbol, text };
    const near = clusters.find((c) => Math.hypot(c.at[0] - at[0], c.at[1] - at[1]) < closeMm);
    if (near === undefined) clusters.push({ at, entries: [entry] });
    else near.entries.push(entry);
  }
  return clusters;
}

/** Something that the plan shows as a symbol. */
export interface PlacedPart {
  readonly id: string;
  readonly section: string;
  readonly symbol: SymbolName;
  readonly count: number;
  readonly ground: Ground;
}

/** Those that the plan shows as a symbol: long things are drawn as runs, and joints have the place of what they are on. */
export function placedParts(study: Study): readonly PlacedPart[] {
  return [...partsWithPlace(study), ...anchors(study)]
    .map((part, place) => ({ part, place }))
    .sort((a, b) => rank.indexOf(a.part.section) - rank.indexOf(b.part.section) || a.place - b.place)
    .map(({ part }) => part);
}

function partsWithPlace(study: Study): readonly PlacedPart[] {
  return study.parts
    .filter((p) => p.positionM !== null && rank.includes(p.section) && !(p.section === 'joints' && p.on !== null))
    .filter((p) => !(p.routeM.length > 1 && p.section !== 'electrodes'))
    .map((p) => ({
      id: p.id,
      section: p.section,
      symbol: symbolOf(p),
      count: p.count,
      ground: [p.positionM![0], p.positionM![1]],
    }));
}

/** A guy has its symbol and its number where its anchor is. */
function anchors(study: Study): readonly PlacedPart[] {
  return study.guys.flatMap(({ id, anchorM }) =>
    anchorM === null
      ? []
      : [{ id, section: 'guys', symbol: 'guyAnchor' as const, count: 1, ground: [anchorM[0], anchorM[1]] as const }],
  );
}

function flaggedParts(study: Study): ReadonlySet<string> {
  const serious = study.findings.filter((f) => f.outcome === 'not met' && f.severity !== 'advice' && f.agreed === null);
  return new Set(serious.flatMap((f) => f.at));
}

/** Room that the label of a cluster needs: a line for each part, with a small symbol where there are several. */
export function labelRoom(cluster: Cluster): { readonly width: number; readonly height: number } {
  const widest = Math.max(...cluster.entries.map((e) => textWidth(e.text, labelSize)));
  const symbols = cluster.entries.length > 1 ? entryMm : 0;
  return { width: widest + symbols + 1.4, height: cluster.entries.length * entryMm + 0.6 };
}

const perLine = 4;

/** The same place with the numbers alone, four to a line. */
export function numbersOnly({ at, entries }: Cluster): Cluster {
  const numbers = entries.map((e) => e.text.split(' ', 1)[0]!);
  const lines = Array.from({ length: Math.ceil(numbers.length / perLine) }, (_, i) =>
    numbers.slice(i * perLine, (i + 1) * perLine).join(', '),
  );
  return { at, entries: lines.map((text, i) => ({ ...entries[i]!, text })) };
}

export function symbolRoom(cluster: Cluster): Rect {
  return rectAbout(cluster.at, symbolMm + 0.6, symbolMm + 0.6);
}
