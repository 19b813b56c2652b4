import { possibleBonds } from './bond-choice.ts';
import type { Bonding, PerhapsUnbonded } from './bonding.ts';
import type { MetalGraph } from './build-graph.ts';
import { decidingFields, fieldsOfTie } from './deciding-fields.ts';
import type { Members } from './members.ts';
import { fieldPath } from './site-index.ts';
import { type ThreeWay, threeWay } from './three-way.ts';

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
  const ask = asker(metal, members, targets);
  const unbonded: string[] = [];
  const perhaps: PerhapsUnbonded[] = [];
  for (const electrode of electrodes) {
    const part = partOf(metal, electrode);
    if (part?.owner === 'utility') continue;
    const answer = ask(electrode);
    const doubt = [...doubtsOf(metal, part), ...openEnds(electrode)];
    if (answer.is === 'unknown' || (answer.is === 'no' && doubt.length > 0)) {
      perhaps.push({ electrode, decidedBy: decidingFields(metal, answer.decidedBy, doubt) });
    } else if (answer.is === 'no') unbonded.push(electrode);
  }
  return { unbondedElectrodes: unbonded, perhapsUnbonded: perhaps };
}

/** Whether an electrode hangs together with a target, supposing that it is there at all: one that is not there is not unbonded. */
function asker(metal: MetalGraph, members: Members, targets: readonly string[]): (electrode: string) => ThreeWay {
  const { graph } = metal;
  const bonds = possibleBonds(graph);
  const ask = threeWay(graph, targets, bonds);
  return (electrode) => {
    const node = members.get(electrode)![0]!;
    const part = partOf(metal, electrode);
    if (part?.present !== 'unknown') return ask(node);
    const own = fieldPath(part, 'present');
    const isThere = (key: string) => fieldsOfTie(metal, key).every((field) => field === own);
    return threeWay(graph, targets, { ...bonds, isThere })(node);
  };
}

/** What else decides besides the ties: whether it is there, and whether anybody looked for conductors. */
function doubtsOf({ index }: MetalGraph, part: ReturnType<typeof partOf>): string[] {
  const { sections, header } = index.site;
  const looked = sections.conductors !== 'missing' && !header.incomplete.includes('conductors');
  return [
    ...(looked || part?.bonded === 'no' ? [] : ['conductors']),
    ...(part?.present === 'unknown' ? [fieldPath(part, 'present')] : []),
  ];
}

function partOf({ graph, index }: MetalGraph, electrode: string) {
  return index.parts.get(graph.getNodeAttribute(electrode, 'part'));
}
