import { possibleBonds } from './bond-choice.ts';
import type { Bonding, PerhapsUnbonded } from './bonding.ts';
import type { MetalGraph } from './build-graph.ts';
import type { Members } from './members.ts';
import { threeWay } from './three-way.ts';

type Unbonded = Pick<Bonding, 'unbondedElectrodes' | 'perhapsUnbonded'>;

/** Electrodes that do not hang together with the service, and those of which nobody can tell. The supplier's own are never listed. */
export function unbondedElectrodes(
  metal: MetalGraph,
  members: Members,
  electrodes: readonly string[],
  service: readonly string[],
  is: Bonding['service']['is'],
  openEnds: (electrode: string) => readonly string[],
): Unbonded {
  if (is !== 'known') return { unbondedElectrodes: is === 'none' ? [] : null, perhapsUnbonded: [] };
  const targets = service.flatMap((id) => members.get(id) ?? []);
  const ask = threeWay(metal.graph, targets, possibleBonds(metal.graph));
  const unbonded: string[] = [];
  const perhaps: PerhapsUnbonded[] = [];
  for (const electrode of electrodes) {
    const part = partOf(metal, electrode);
    if (part?.owner === 'utility') continue;
    const answer = ask(members.get(electrode)![0]!);
    const doubt = [...doubtsOf(metal, part), ...openEnds(electrode)];
    if (answer.is === 'unknown' || (answer.is === 'no' && doubt.length > 0)) {
      perhaps.push({ electrode, decidedBy: decidingFields(metal, answer.decidedBy, doubt) });
    } else if (answer.is === 'no') unbonded.push(electrode);
  }
  return { unbondedElectrodes: unbonded, perhapsUnbonded: perhaps };
}

/** What else decides besides the ties: whether it is there, and whether anybody looked for conductors. */
function doubtsOf({ index }: MetalGraph, part: ReturnType<typeof partOf>): string[] {
  if (part?.bonded === 'no') return [];
  const { sections, header } = index.site;
  const looked = sections.conductors !== 'missing' && !header.incomplete.includes('conductors');
  return [...(looked ? [] : ['conductors']), ...(part?.present === 'unknown' ? [`electrodes.${part.id}.present`] : [])];
}

function partOf({ graph, index }: MetalGraph, electrode: string) {
  return index.parts.get(graph.getNodeAttribute(electrode, 'part'));
}

/** Fields that the ties depend on, each once, in order. */
export function decidingFields({ graph }: MetalGraph, keys: readonly string[], also: readonly string[] = []): string[] {
  const fields = keys.map((key) => graph.getEdgeAttribute(key, 'decidedBy')).filter((field) => field !== null);
  return [...new Set([...fields, ...also])].sort();
}
