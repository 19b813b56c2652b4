import type { WeakPoint } from './bonding.ts';
import type { ContractedMetal } from './contracted-metal.ts';
import type { Csr } from './csr.ts';
import { type LostMembers, lostMembers } from './lost-members.ts';
import { narrowed } from './metal-net.ts';
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
  const { net } = question.metal;
  const known = lossesOf(
    question,
    narrowed(net, ({ is }) => is === 'there'),
  );
  const possible = lossesOf(question, net);
  const ties = new Map(net.keys.map((key, e) => [key, net.ties[e]!] as const));
  const members = { service: new Set(question.service), electrodes: new Set(question.electrodes) };
  const worst = new Map<string, { readonly point: WeakPoint; readonly size: number }>();
  for (const place of [...new Set([...known.service.keys(), ...known.earth.keys()])].sort()) {
    const failure = failureAt(question, ties, place);
    if (failure === null) continue;
    const point = weakPoint(members, failure, known, possible);
    const size = point.losesService.length + point.losesEarth.length;
    const before = worst.get(failure.at);
    if (size > 0 && (before === undefined || size > before.size)) worst.set(failure.at, { point, size });
  }
  return [...worst.values()].map(({ point }) => point).sort((a, b) => (a.at < b.at ? -1 : 1));
}

function lossesOf({ metal, electrodes, service }: WeakQuestion, bonds: Csr): Losses {
  return { service: lostMembers(metal, bonds, service), earth: lostMembers(metal, bonds, electrodes) };
}

/** What the owner would name as failing; null for what cannot fail by itself, such as a clamp's contact apart from the clamp. */
function failureAt({ metal, index }: WeakQuestion, ties: ReadonlyMap<string, Tie>, place: string): Failure | null {
  const [of, ...rest] = place.split(' ');
  const id = rest.join(' ');
  if (of === 'edge') {
    const { part, body, kind, noticed } = ties.get(id)!;
    const section = index.parts.get(part)?.section;
    const isWire = (section === 'conductors' && body === 'span') || kind === 'feeder';
    return isWire ? { at: part, kind: 'conductor', noticed, place } : null;
  }
  const { kind, noticed } = metal.net.nodes[metal.net.numberOf.get(id)!]!;
  if (kind === 'joint') return { at: id, kind: 'joint', noticed, place };
  const member = metal.memberOf.get(id);
  const isPart = member !== undefined && kind !== 'landing' && member === id;
  return isPart ? { at: member, kind: 'part', noticed, place } : null;
}

function weakPoint(
  { service, electrodes }: { readonly service: ReadonlySet<string>; readonly electrodes: ReadonlySet<string> },
  { at, kind, noticed, place }: Failure,
  known: Losses,
  possible: Losses,
): WeakPoint {
  const losesService = service.has(at) ? [] : (known.service.get(place) ?? []);
  const losesEarth = known.earth.get(place) ?? [];
  const stays = (lost: readonly string[], anyhow: readonly string[] | undefined) => {
    const also = new Set(anyhow);
    return lost.every((id) => also.has(id));
  };
  return {
    at,
    kind,
    losesService,
    losesEarth,
    electrodesLost: losesService.filter((id) => electrodes.has(id)),
    noticed,
    certain: stays(losesService, possible.service.get(place)) && stays(losesEarth, possible.earth.get(place)),
  };
}
