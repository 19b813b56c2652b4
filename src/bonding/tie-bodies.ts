import type { Electrode, Part, Support } from '../site/site.ts';
import { addLanding, addNode, addTie, type GraphBuilder, tieOf } from './graph-builder.ts';
import { bodyOf } from './node-of-point.ts';

/** Every part that is there has a node, whether or not anything meets it. */
export function addBodies(builder: GraphBuilder): void {
  const { site } = builder.index;
  const parts: readonly Exclude<Part, Support>[] = [
    ...site.electrodes,
    ...site.antennas,
    ...site.bars,
    ...site.arresters,
    ...site.equipment,
    ...site.metalwork.filter((m) => m.kind !== 'property line'),
  ];
  for (const part of parts) if (part.present !== 'no') bodyOf(builder, part);
  for (const rods of site.electrodes) if (rods.kind === 'rods' && rods.joined === 'no') addRods(builder, rods);
}

/** Rods that nothing joins: each an electrode of its own. The group's node stands for rods that nobody counted. */
function addRods(builder: GraphBuilder, rods: Electrode): void {
  for (let n = 1; n <= (rods.members ?? 0); n++) {
    const rod = `${rods.id}.${n}`;
    addLanding(builder, rods.id, addNode(builder, rod, 'electrode', rods.id, { noticed: 'buried' }));
  }
}

/** Joins what lands on cases and metalwork that pass no bond on: it conducts, but is no bond. */
export function joinLandings(builder: GraphBuilder): void {
  const { equipment, arresters, metalwork } = builder.index.site;
  for (const part of [...equipment, ...arresters]) {
    for (const node of builder.landings.get(part.id) ?? []) addTie(builder, part.id, node, tieOf('case', part.id));
  }
  for (const part of metalwork) {
    const decidedBy = `metalwork.${part.id}.continuous`;
    for (const node of builder.landings.get(part.id) ?? []) {
      addTie(builder, part.id, node, tieOf('loose-metal', part.id, { lengthM: null }));
      const unknown = { is: 'unknown' as const, decidedBy, lengthM: null };
      if (part.continuous === 'unknown') addTie(builder, part.id, node, tieOf('metal', part.id, unknown));
    }
  }
  for (const rods of builder.index.site.electrodes) joinRods(builder, rods);
}

/** A wire that lands on a group of separate rods lands on one of them; nobody says on which. */
function joinRods(builder: GraphBuilder, rods: Electrode): void {
  if (rods.kind !== 'rods' || rods.joined !== 'no' || !builder.graph.hasNode(rods.id)) return;
  const landed = builder.graph.degree(rods.id) > 0;
  const members = builder.landings.get(rods.id) ?? [];
  if (!landed && members.length > 0) builder.graph.dropNode(rods.id);
  if (!landed) return;
  const unknown = { is: 'unknown' as const, decidedBy: `electrodes.${rods.id}` };
  for (const rod of members) addTie(builder, rods.id, rod, tieOf('metal', rods.id, unknown));
}
