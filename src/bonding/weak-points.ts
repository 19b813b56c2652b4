import { isBond, knownBonds, possibleBonds } from './bond-choice.ts';
import type { WeakPoint } from './bonding.ts';
import type { ContractedMetal } from './contracted-metal.ts';
import { type LostMembers, lostMembers } from './lost-members.ts';
import type { SiteIndex } from './site-index.ts';
import type { Tie } from './tie.ts';

/** What one failure of a joint, conductor or part takes away. */
interface Failure {
  readonly at: string;
  readonly kind: WeakPoint['kind'];
  readonly noticed: Tie['noticed'];
  /** Node or edge of the graph that fails. */
  readonly place: string;
}

interface Losses {
  readonly service: LostMembers;
  readonly earth: LostMembers;
}

export interface WeakQuestion {
  readonly metal: ContractedMetal;
  readonly index: SiteIndex;
  readonly electrodes: readonly string[];
  /** Members that are the service; none: nobody knows, or there is none. */
  readonly service: readonly string[];
}

/**
 * Joints, conductors and parts whose single loss takes something off the service or off every electrode, by the bonds that are
 * known; `certain` where all of it would be lost even if every unknown tie were there. A conductor is tried span by span and reported once, with
 * the losses of its worst span. That the service itself fails is no loss of the service.
 */
export function weakPoints(question: WeakQuestion): readonly WeakPoint[] {
  const { graph } = question.metal;
  const known = lossesOf(question, knownBonds(graph), (tie) => tie.is === 'there' && isBond(tie));
  const possible = lossesOf(question, possibleBonds(graph), isBond);
  const worst = new Map<string, { readonly point: WeakPoint; readonly size: number }>();
  for (const place of [...new Set([...known.service.keys(), ...known.earth.keys()])].sort()) {
    const failure = failureAt(question, place);
    if (failure === null) continue;
    const point = weakPoint(question, failure, known, possible);
    const size = point.losesService.length + point.losesEarth.length;
    const before = worst.get(failure.at);
    if (size > 0 && (before === undefined || size > before.size)) worst.set(failure.at, { point, size });
  }
  return [...worst.values()].map(({ point }) => point).sort((a, b) => (a.at < b.at ? -1 : 1));
}

function lossesOf(
  { metal, electrodes, service }: WeakQuestion,
  choice: ReturnType<typeof knownBonds>,
  counts: (tie: Tie) => boolean,
): Losses {
  return {
    service: lostMembers(metal, service, choice, counts),
    earth: lostMembers(metal, electrodes, choice, counts),
  };
}

/** What the owner would name as failing; null for what cannot fail by itself, such as a clamp's contact apart from the clamp. */
function failureAt({ metal, index }: WeakQuestion, place: string): Failure | null {
  const [of, ...rest] = place.split(' ');
  const id = rest.join(' ');
  if (of === 'edge') {
    const { part, body, kind, noticed } = metal.graph.getEdgeAttributes(id);
    const section = index.parts.get(part)?.section;
    const isWire = (section === 'conductors' && body === 'span') || kind === 'feeder';
    return isWire ? { at: part, kind: 'conductor', noticed, place } : null;
  }
  const { kind, noticed } = metal.graph.getNodeAttributes(id);
  if (kind === 'joint') return { at: id, kind: 'joint', noticed, place };
  const member = metal.memberOf.get(id);
  const isPart = member !== undefined && kind !== 'landing' && member === id;
  return isPart ? { at: member, kind: 'part', noticed, place } : null;
}

function weakPoint(question: WeakQuestion, failure: Failure, known: Losses, possible: Losses): WeakPoint {
  const { at, kind, noticed, place } = failure;
  const losesService = question.service.includes(at) ? [] : (known.service.get(place) ?? []);
  const losesEarth = known.earth.get(place) ?? [];
  const stays = (lost: readonly string[], anyhow: readonly string[] | undefined) =>
    lost.every((id) => anyhow?.includes(id) ?? false);
  return {
    at,
    kind,
    losesService,
    losesEarth,
    electrodesLost: losesService.filter((id) => question.electrodes.includes(id)),
    noticed,
    certain: stays(losesService, possible.service.get(place)) && stays(losesEarth, possible.earth.get(place)),
  };
}
