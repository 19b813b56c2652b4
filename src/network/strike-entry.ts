import { askedNodes } from '../bonding/asked-nodes.ts';
import type { BondingRun } from '../bonding/bonding-of.ts';
import type { Line, PointRef } from '../site/site.ts';
import type { StrikePoint } from './strike-point.ts';

/**
 * Where a strike that somebody asks for enters: a point of metal, a support at its top, or a line at its far end (where it comes
 * in from outside: at the first thing that it meets). null: nothing of it is metal.
 */
export function strikeEntry({ metal, site }: Pick<BondingRun, 'metal' | 'site'>, at: PointRef): StrikePoint | null {
  const line = lineOf(site.lines, at);
  if (line !== null) return lineEntry(line, metal);
  const found = askedNodes(metal, at);
  if (found.is !== 'found') return null;
  const top = found.nodes.find((node) => node.endsWith('@top'));
  const isSupport = metal.index.parts.get(at.part ?? '')?.section === 'supports' && at.atM === null && at.mark === null;
  return { node: isSupport ? (top ?? found.nodes[0]!) : found.nodes[0]!, text: at.text };
}

/** A line that is named as a whole; null: something else is meant. */
export function lineOf(lines: readonly Line[], { text }: PointRef): Line | null {
  return lines.find((l) => l.id === text && l.present !== 'no') ?? null;
}

/** Its shield where it begins, else the first part that it meets; what comes from the street begins there. */
function lineEntry(line: Line, { graph }: BondingRun['metal']): StrikePoint | null {
  const stops = line.path.at(-1)?.is === 'street' ? [...line.path].reverse() : line.path;
  const shields = graph.filterNodes((_node, { kind, part }) => kind === 'shield' && part === line.id).sort(byStop);
  const [first] = stops === line.path ? shields : shields.reverse();
  const part = stops.flatMap((stop) => (stop.is === 'part' && stop.at.part !== null ? [stop.at.part] : []))[0];
  const node = first ?? (part !== undefined && graph.hasNode(part) ? part : null);
  return node === null ? null : { node, text: line.id, channel: 'line' };
}

/** `feed.shield.2` before `feed.shield.10`. */
function byStop(a: string, b: string): number {
  const stop = (node: string) => Number(/\.(\d+)[-+]?$/.exec(node)?.[1] ?? 0);
  return stop(a) - stop(b) || (a < b ? -1 : 1);
}
