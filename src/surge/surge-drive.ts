import type { SignedWay } from './surge-loops.ts';
import { byModes, inductanceTimes, resistanceTimes, type SurgeModes } from './surge-modes.ts';
import type { SurgeSource } from './surge-network.ts';

/** What something from outside (a current into a node, a voltage over a branch) does to the modes and to the elements. */
export interface SurgeDrive {
  /** stored z' + lost z = -(byCurrent x + bySlope dx/dt), summed over all that drives. */
  readonly byCurrent: Float64Array;
  readonly bySlope: Float64Array;
  /** Share of it that each element carries by itself, the modes left out: 1, -1 or 0. */
  readonly way: Float64Array;
  /** Volts that it puts over each element by itself, and volts by its slope; null: none. */
  readonly ownOhm: Float64Array | null;
  readonly ownHenry: Float64Array | null;
}

/** Through no element. */
export const noWay: SignedWay = { elements: new Int32Array(0), signs: new Int8Array(0) };

/**
 * The current of a source runs by the tree from its node to earth; the loops take it from there. Of one that does not enter only
 * its channel counts. RangeError: no such node.
 */
export function surgeDrive(modes: SurgeModes, { node, channelH }: Pick<SurgeSource, 'node' | 'channelH'>): SurgeDrive {
  const way = node === null ? noWay : modes.loops.toEarth[node];
  if (way == null) throw new RangeError(`no node ${node} to strike`);
  const ohm = resistanceTimes(modes.network, way);
  const henry = inductanceTimes(modes.network, way);
  channelH?.forEach((mutual, branch) => {
    henry[branch] = henry[branch]! + mutual;
  });
  const onElements = new Float64Array(ohm.length);
  way.elements.forEach((element, i) => {
    onElements[element] = way.signs[i]!;
  });
  const ownHenry = channelH === null ? null : new Float64Array(ohm.length);
  ownHenry?.set(channelH!);
  return { byCurrent: byModes(modes, ohm), bySlope: byModes(modes, henry), way: onElements, ownOhm: null, ownHenry };
}

/** A current that something takes out of one node and brings to another (null: remote earth). RangeError: no such node. */
export function portDrive(modes: SurgeModes, from: number, to: number | null): SurgeDrive {
  const start = surgeDrive(modes, { node: from, channelH: null });
  if (to === null) return { ...start, ...negative(start) };
  const end = surgeDrive(modes, { node: to, channelH: null });
  const less = (of: Float64Array, other: Float64Array) => of.map((value, i) => value - other[i]!);
  return {
    byCurrent: less(end.byCurrent, start.byCurrent),
    bySlope: less(end.bySlope, start.bySlope),
    way: less(end.way, start.way),
    ownOhm: null,
    ownHenry: null,
  };
}

function negative({ byCurrent, bySlope, way }: SurgeDrive): Pick<SurgeDrive, 'byCurrent' | 'bySlope' | 'way'> {
  const turned = (of: Float64Array) => of.map((value) => -value);
  return { byCurrent: turned(byCurrent), bySlope: turned(bySlope), way: turned(way) };
}

/** Volts in one branch, positive where they hinder its current. */
export function voltsDrive(modes: SurgeModes, branch: number): SurgeDrive {
  const { network, count } = modes;
  const elements = network.branches.length + network.earth.nodes.length;
  const unit = new Float64Array(elements).fill(1, branch, branch + 1);
  return {
    byCurrent: byModes(modes, unit),
    bySlope: new Float64Array(count),
    way: new Float64Array(elements),
    ownOhm: unit,
    ownHenry: null,
  };
}
