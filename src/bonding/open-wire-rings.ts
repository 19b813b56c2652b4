import { MultiUndirectedGraph } from 'graphology';
import type { Conductor } from '../site/site.ts';
import type { OpenRing } from './bonding.ts';
import { components } from './components.ts';
import { cutPoints } from './cut-points.ts';
import { meetingsOf } from './joint-id.ts';
import { isJointOpen } from './joint-open.ts';
import type { SiteIndex } from './site-index.ts';

type Is = 'there' | 'unknown' | 'missing';

/** A stretch of a conductor between two electrodes. */
interface Span {
  readonly at: string;
  readonly ends: readonly [string, string];
  readonly is: Is;
}

/**
 * Conductors that were typed to go round from electrode to electrode and leave the ring open: missing, broken, or with an end
 * that no joint holds. One that is missing between electrodes that a ring joins without it leaves nothing open. Two wires side by side are no
 * ring. Near linear time.
 */
export function openWireRings(index: SiteIndex): readonly OpenRing[] {
  const { conductors } = index.site;
  const loops = conductors.flatMap((c) => openLoop(index, c));
  const spans = strongestOfEach(conductors.flatMap((c) => spansOf(index, c)));
  const drawn = onRings(spans);
  const perhaps = onRings(spans.filter((s) => s.is !== 'missing'));
  const closed = ringNumbers(spans.filter((s) => s.is === 'there'));
  const open = spans.filter((s) => {
    const [a, b] = s.ends.map((end) => closed.get(end));
    if (s.is === 'there' || (a !== undefined && a === b)) return false;
    return (s.is === 'missing' ? drawn : perhaps).has(s);
  });
  const found = open.map((s): OpenRing => ({ at: s.at, why: s.is === 'missing' ? 'not closed' : 'unknown' }));
  return [...new Map([...found, ...loops].map((ring) => [`${ring.at} ${ring.why}`, ring])).values()];
}

/** One wire that comes back to the point at which it began. */
function openLoop(index: SiteIndex, c: Conductor): readonly OpenRing[] {
  if (c.from.part === null || c.from.text !== c.to.text || c.present === 'no') return [];
  const { from, splices, to } = meetingsOf(c);
  const isOpen = c.condition === 'open' || [from, ...splices, to].some((meeting) => isJointOpen(index, meeting));
  if (isOpen) return [{ at: c.id, why: 'not closed' }];
  return c.present === 'unknown' ? [{ at: c.id, why: 'unknown' }] : [];
}

function spansOf(index: SiteIndex, c: Conductor): readonly Span[] {
  const { from, passes, splices, to } = meetingsOf(c);
  const stops = [from, ...passes, to];
  // Between two stops a wire is whole; it may be loose at its ends and parted in its splices, which stand before the last stop.
  const parted = splices.some((splice) => isJointOpen(index, splice));
  const looseAt = (meeting: typeof from) =>
    isJointOpen(index, meeting) || index.parts.get(meeting.at?.part ?? '')?.present === 'no';
  return stops.slice(1).flatMap((stop, i): readonly Span[] => {
    const [a, b] = [stops[i]!.at?.part ?? '', stop.at?.part ?? ''].sort() as [string, string];
    const isLast = i === stops.length - 2;
    const broken = (i === 0 && looseAt(from)) || (isLast && (parted || looseAt(to)));
    const missing = broken || c.present === 'no' || c.condition === 'open';
    const is = missing ? 'missing' : c.present === 'unknown' ? 'unknown' : 'there';
    const inGround = [a, b].every((id) => index.parts.get(id)?.section === 'electrodes');
    return inGround && a !== b ? [{ at: c.id, ends: [a, b], is }] : [];
  });
}

/** Of wires side by side the one that is surest to be there, the first of equals. */
function strongestOfEach(spans: readonly Span[]): readonly Span[] {
  const order: readonly Is[] = ['there', 'unknown', 'missing'];
  const best = new Map<string, Span>();
  const sorted = [...spans].sort((a, b) => order.indexOf(a.is) - order.indexOf(b.is) || (a.at < b.at ? -1 : 1));
  for (const span of sorted) {
    const pair = span.ends.join(' ');
    if (!best.has(pair)) best.set(pair, span);
  }
  return [...best.values()];
}

/** The spans that lie on a way round. */
function onRings(spans: readonly Span[]): ReadonlySet<Span> {
  const cut = new Set(cutPoints(graphOf(spans)).edges);
  return new Set(spans.filter((s) => !cut.has(s.ends.join(' '))));
}

/** For each electrode on a ring a number that it shares with all that rings join to it. */
function ringNumbers(spans: readonly Span[]): ReadonlyMap<string, number> {
  const rings = components(graphOf([...onRings(spans)]));
  return new Map(rings.flatMap((ids, i) => ids.map((id) => [id, i] as const)));
}

function graphOf(spans: readonly Span[]): MultiUndirectedGraph {
  const graph = new MultiUndirectedGraph();
  for (const { ends } of spans) {
    for (const end of ends) graph.mergeNode(end);
    graph.addUndirectedEdgeWithKey(ends.join(' '), ends[0], ends[1]);
  }
  return graph;
}
