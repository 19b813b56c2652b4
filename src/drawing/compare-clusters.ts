import { fates as allFates, drawSign, type Fate, fateInk, fateSign } from './compare-fate.ts';
import type { PlacedLabel } from './place-labels.ts';
import { type Cluster, entryMm, labelRoom, labelSize, symbolMm } from './plan-clusters.ts';
import { circle, element, group, type Point, type Svg, text } from './svg.ts';
import { soft, symbol } from './symbols.ts';

const badgeMm = 1.7;
/** Corners of a symbol for the signs of what stands there. */
const corners: Readonly<Record<Exclude<Fate, 'same'>, Point>> = { added: [1, -1], removed: [-1, -1], changed: [1, 1] };

/** Places with the sign of each entry before its number; `isShown` says which entries are named at all. */
export function withSigns(
  clusters: readonly Cluster[],
  fates: ReadonlyMap<string, Fate>,
  isShown: (id: string) => boolean,
): readonly Cluster[] {
  return clusters.map((c) => ({
    at: c.at,
    entries: c.entries
      .filter((e) => isShown(e.id))
      .map((e) => ({ ...e, text: `${fateSign[fates.get(e.id) ?? 'same']}${e.text}` })),
  }));
}

const perLine = 4;

/** The same place with the numbers alone, a line or more for each of what became of them. */
export function fateNumbers({ at, entries }: Cluster, fates: ReadonlyMap<string, Fate>): Cluster {
  const lines = allFates.flatMap((fate) => {
    const own = entries.filter((e) => (fates.get(e.id) ?? 'same') === fate);
    const numbers = own.map((e) => e.text.split(' ', 1)[0]!);
    return Array.from({ length: Math.ceil(own.length / perLine) }, (_, i) => ({
      ...own[i * perLine]!,
      text: numbers.slice(i * perLine, (i + 1) * perLine).join(', '),
    }));
  });
  return { at, entries: lines };
}

const boldWidth = 1.08;

/** Room that a label needs: bold letters are wider. */
export function fateLabelRoom(cluster: Cluster): { readonly width: number; readonly height: number } {
  const { width, height } = labelRoom(cluster);
  return { width: width * boldWidth, height };
}

/** The symbol of a place, pale where all of it stayed, with the signs of what became of what stands there at its corners. */
export function drawFateCluster(cluster: Cluster, fates: ReadonlyMap<string, Fate>): readonly Svg[] {
  const [first] = cluster.entries;
  if (first === undefined) return [];
  const there = new Set(cluster.entries.map((e) => fates.get(e.id) ?? 'same'));
  const allStayed = there.size === 1 && there.has('same');
  const [x, y] = cluster.at;
  const reach = symbolMm / 2 + 0.3;
  const badges = (['added', 'removed', 'changed'] as const)
    .filter((fate) => there.has(fate))
    .flatMap((fate) => drawBadge(fate, [x + corners[fate][0] * reach, y + corners[fate][1] * reach]));
  return [group(allStayed ? { opacity: 0.5 } : {}, [symbol(first.symbol, cluster.at, symbolMm)]), ...badges];
}

function drawBadge(fate: Fate, at: Point): readonly Svg[] {
  return [circle(at, badgeMm * 0.62, { fill: '#ffffff' }), ...drawSign(fate, at, badgeMm)];
}

/** Signs, numbers and names of a place, one a line, bold where something became of it; nothing where it has no place. */
export function drawFateLabel(
  cluster: Cluster,
  place: PlacedLabel | null,
  fates: ReadonlyMap<string, Fate>,
): readonly Svg[] {
  if (place === null) return [];
  const { rect } = place;
  const several = cluster.entries.length > 1;
  const entries = cluster.entries.flatMap((e, i) => {
    const fate = fates.get(e.id) ?? 'same';
    const y = rect.y + 0.3 + (i + 0.5) * entryMm;
    const x = rect.x + 0.7 + (several ? entryMm : 0);
    const look = { 'font-size': labelSize, 'font-weight': fate === 'same' ? 'normal' : 'bold', fill: fateInk[fate] };
    const sign = several ? [symbol(e.symbol, [rect.x + 0.5 + entryMm / 2, y], 2.4)] : [];
    return [...sign, text(e.text, { x, y: y + 0.85, ...look })];
  });
  const paper = { ...rect, fill: '#ffffff', 'fill-opacity': 0.88, stroke: soft, 'stroke-width': several ? 0.15 : 0 };
  return [element('rect', paper), ...entries];
}
