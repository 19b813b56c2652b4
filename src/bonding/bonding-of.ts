import type { Site } from '../site/site.ts';
import { applyState, type SiteInState } from './apply-state.ts';
import type { Bonding } from './bonding.ts';
import { bridgesOf } from './bridges.ts';
import { buildGraph, type MetalGraph } from './build-graph.ts';
import { contractedMetal } from './contracted-metal.ts';
import { separateCounter } from './count-separate.ts';
import type { BondingGraph } from './graph-builder.ts';
import { groupsOf } from './groups.ts';
import { lineFacts } from './line-facts.ts';
import { membersOf } from './members.ts';
import { metalNet } from './metal-net.ts';
import { openEnds } from './open-ends.ts';
import { openRings } from './open-rings.ts';
import { partTies } from './part-ties.ts';
import { reachOf } from './reach.ts';
import { earthReach, serviceReach } from './reached-parts.ts';
import { membersOfId, serviceOf } from './service-of.ts';
import { siteIndex } from './site-index.ts';
import { unbondedElectrodes } from './unbonded-electrodes.ts';
import { waysOfParts } from './ways-of-parts.ts';
import { weakPoints } from './weak-points.ts';

export interface BondingRun {
  readonly bonding: Bonding;
  readonly graph: BondingGraph;
  /** The site as it is in the state. */
  readonly site: Site;
  readonly metal: MetalGraph;
}

/** What is tied to what in one state of a site (null: as typed). Throws RangeError for a state that the site has not. */
export function bondingOf(site: Site, stateId: string | null): BondingRun {
  return bondingIn(applyState(site, stateId), stateId ?? 'as typed');
}

/** The same for a site to which a state has been applied. */
export function bondingIn({ site, openings }: SiteInState, state: string): BondingRun {
  const index = siteIndex(site);
  const metal = buildGraph(index, openings);
  const net = metalNet(metal.graph);
  const members = membersOf(metal);
  const service = serviceOf(index);
  const home = membersOfId(members, service.part);
  const electrodes = [...members.keys()].filter((id) => sectionOf(metal, members.get(id)![0]!) === 'electrodes');
  const known = service.is === 'unknown' ? null : new Set(home);
  const grouping = groupsOf({ net, members, electrodes: new Set(electrodes), service: known });
  const open = openEnds(metal, net, grouping);
  const asked = [...members.keys()].filter((id) => askedForWays.has(sectionOf(metal, members.get(id)![0]!) ?? ''));
  const contracted = contractedMetal(index, net, members);
  const bonding: Bonding = {
    state,
    service,
    groups: grouping.groups,
    ...unbondedElectrodes(
      metal,
      members,
      electrodes,
      home,
      service.is,
      (id) => open.openEnds.get(grouping.groupOf.get(id)!) ?? [],
    ),
    ...open,
    bridges: bridgesOf(metal, net, grouping),
    weakPoints: weakPoints({ metal: contracted, index, electrodes, service: home }),
    ways: waysOfParts(metal, members, asked, electrodes, home, separateCounter(contracted)),
    lines: lineFacts(index),
    reach: reachOf(index, openings),
    ties: partTies(metal, net),
    openRings: openRings(index),
    tiedToNothing: grouping.alone,
    groupOf: grouping.groupOf,
    serviceBy: serviceReach(net, members, home),
    earthBy: earthReach(net, members, electrodes),
  };
  return { bonding, graph: metal.graph, site, metal };
}

const askedForWays: ReadonlySet<string> = new Set(['antennas', 'supports', 'arresters', 'bars', 'equipment']);

function sectionOf({ graph, index }: MetalGraph, node: string) {
  return index.parts.get(graph.getNodeAttribute(node, 'part'))?.section;
}
