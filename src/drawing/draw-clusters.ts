import type { PlacedLabel } from './place-labels.ts';
import { type Cluster, entryMm, labelSize, symbolMm } from './plan-clusters.ts';
import { element, line, type Svg, text } from './svg.ts';
import { ink, soft, symbol } from './symbols.ts';

/** The symbol at a place: that of the first part there; its label holds the others. */
export function drawCluster(cluster: Cluster): readonly Svg[] {
  const [first] = cluster.entries;
  return first === undefined ? [] : [symbol(first.symbol, cluster.at, symbolMm)];
}

/** From the label to its place; drawn beneath the symbols. */
export function drawLeader(place: PlacedLabel | null): readonly Svg[] {
  return place === null ? [] : [line(place.leader[0], place.leader[1], { stroke: soft, 'stroke-width': 0.2 })];
}

/** Numbers and names of a place, one a line; nothing where it has no place. */
export function drawLabel(cluster: Cluster, place: PlacedLabel | null): readonly Svg[] {
  if (place === null) return [];
  const { rect } = place;
  const several = cluster.entries.length > 1;
  const entries = cluster.entries.flatMap((e, i) => {
    const y = rect.y + 0.3 + (i + 0.5) * entryMm;
    const x = rect.x + 0.7 + (several ? entryMm : 0);
    const sign = several ? [symbol(e.symbol, [rect.x + 0.5 + entryMm / 2, y], 2.4)] : [];
    return [...sign, text(e.text, { x, y: y + 0.85, 'font-size': labelSize, fill: ink })];
  });
  const paper = element('rect', {
    ...rect,
    fill: '#ffffff',
    'fill-opacity': 0.88,
    stroke: soft,
    'stroke-width': several ? 0.15 : 0,
  });
  return [paper, ...entries];
}
