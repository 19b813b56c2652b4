import type { RangedBranch } from '../currents/bounds.ts';
import { middle, scale } from '../units/interval.ts';
import { lazily } from '../units/lazily.ts';
import type { AloneOhm } from './alone-ohm.ts';
import type { Side } from './certain.ts';
import type { GroupNetwork } from './dc-network.ts';
import type { EarthPoint } from './earth-ranges.ts';
import type { Ground } from './ground.ts';
import type { LeakingConductor } from './leaking-conductors.ts';
import { type LeakingLine, pieceId } from './leaking-line.ts';

/** A group's network whose long electrodes and buried bare conductors are cut into pieces that leak at their middles. */
export interface LeakingNetwork {
  /** As it was, but branches and their parts; new nodes have numbers beyond those of `network.nodes`. */
  readonly network: GroupNetwork;
  /** Of each branch, the one of the whole that it is (a part of); null: an electrode's own metal. */
  readonly sources: readonly (number | null)[];
  /** Of each branch, the stretch of a line in the soil that it is; null: of none. */
  readonly stretches: readonly (Stretch | null)[];
  readonly nodeCount: number;
  readonly points: readonly EarthPoint[];
  /** New nodes at which something lands on a long electrode, and that electrode. */
  readonly landings: ReadonlyMap<number, string>;
  /** Electrodes that are cut. */
  readonly cut: ReadonlySet<string>;
}

/** From `fromM` to `toM` along a line; round its end where it is closed and `toM` is beyond its length. */
export interface Stretch {
  readonly line: LeakingLine;
  readonly fromM: number;
  readonly toM: number;
}

interface Growing {
  readonly whole: GroupNetwork;
  readonly ground: Ground;
  readonly branches: RangedBranch[];
  readonly parts: string[];
  readonly spans: (number | null)[];
  readonly sources: (number | null)[];
  readonly stretches: (Stretch | null)[];
  readonly points: EarthPoint[];
  readonly landings: Map<number, string>;
  nodeCount: number;
}

/**
 * Cuts each line of metal of the network into its pieces, with the node where a piece leaks at its middle, and hangs what
 * lands on a long electrode where it lands. A conductor without a known place leaks whole at one of its ends, perhaps.
 */
export function leakingNetwork(whole: GroupNetwork, ground: Ground): LeakingNetwork {
  const growing: Growing = {
    whole,
    ground,
    branches: [],
    parts: [],
    spans: [],
    sources: [],
    stretches: [],
    points: [],
    landings: new Map(),
    nodeCount: whole.nodes.length,
  };
  const electrodes = ground.lines.filter(({ part, span }) => span === null && whole.indexOf.has(part));
  const hung = new Map(electrodes.map((line) => [whole.indexOf.get(line.part)!, layElectrode(growing, line)] as const));
  const spans = new Map(ground.lines.map((line) => [`${line.part}/${line.span}`, line]));
  const unplaced = new Map(ground.leaking.flatMap((c) => (c.spans === null ? [[c.id, c] as const] : [])));
  for (const [at, branch] of whole.branches.entries()) {
    const [part, span] = [whole.parts[at]!, whole.spans[at]!];
    const end = (node: number): number => hung.get(node)?.(part) ?? node;
    const moved = { ...branch, from: end(branch.from), to: end(branch.to) };
    const conductor = span === null ? undefined : unplaced.get(part);
    if (conductor !== undefined) leakWhole(growing, conductor, branch.from);
    if (conductor !== undefined) unplaced.delete(part);
    laySpan(
      growing,
      moved,
      { part, span, bonded: whole.bonded[branch.from]!, source: at },
      spans.get(`${part}/${span}`),
    );
  }
  const { branches, parts, spans: spanOf, sources, stretches, points, landings, nodeCount } = growing;
  const cut = new Set(electrodes.map((line) => line.part));
  return {
    network: { ...whole, branches, parts, spans: spanOf },
    sources,
    stretches,
    nodeCount,
    points,
    landings,
    cut,
  };
}

/** A node along a line, metres from its start. */
interface Station {
  readonly atM: number;
  readonly node: number;
}

/** Gives the node at which what belongs to a part (a joint, a conductor) lands on the electrode. */
function layElectrode(growing: Growing, line: LeakingLine): (part: string) => number {
  const { whole } = growing;
  const main = whole.indexOf.get(line.part)!;
  const landing = (part: string): number => line.landingM.get(part) ?? 0;
  const touching = whole.branches.flatMap(({ from, to }, i) => (from === main || to === main ? [whole.parts[i]!] : []));
  const places = [...new Set(touching.map(landing))].sort((a, b) => a - b);
  // the node of the electrode itself is where the first one lands
  const stations = (places.length === 0 ? [0] : places).map((atM, i): Station => {
    if (i === 0) return { atM, node: main };
    growing.landings.set(growing.nodeCount, line.part);
    return { atM, node: growing.nodeCount++ };
  });
  const ohmPerM = line.ohmPerM!;
  const figure = (lengthM: number) => ({
    resistanceOhm: scale(ohmPerM, lengthM),
    nominalOhm: middle(ohmPerM)! * lengthM,
  });
  layMetal(growing, line, stations, { part: line.part, span: null, bonded: whole.bonded[main]!, source: null }, figure);
  const nodeAt = new Map(stations.map(({ atM, node }) => [atM, node]));
  return (part) => nodeAt.get(landing(part)) ?? main;
}

interface Owner {
  readonly part: string;
  readonly span: number | null;
  readonly bonded: number;
  readonly source: number | null;
}

function laySpan(growing: Growing, branch: RangedBranch, owner: Owner, line: LeakingLine | undefined): void {
  if (owner.span === null || line === undefined) {
    push(growing, branch, owner, null);
    return;
  }
  const figure = (lengthM: number) => shareOf(branch, lengthM / line.lengthM);
  const ends = [
    { atM: 0, node: branch.from },
    { atM: line.lengthM, node: branch.to },
  ];
  layMetal(growing, line, ends, owner, figure);
}

type BranchFigure = Pick<RangedBranch, 'resistanceOhm' | 'nominalOhm'>;

/** Less than this apart along the metal, two nodes have nothing between them. */
const leastM = 1e-3;

/** Branches from station to station, the middles of the pieces among them. */
function layMetal(
  growing: Growing,
  line: LeakingLine,
  stations: readonly Station[],
  owner: Owner,
  figure: (lengthM: number) => BranchFigure,
): void {
  const ofPiece = figure(line.lengthM / line.pieces.length);
  const middles = line.pieces.flatMap(({ middleM }, piece): readonly Station[] => {
    const id = pieceId(line, piece);
    if (!growing.ground.indexOf.has(id)) return [];
    const node = growing.nodeCount++;
    growing.points.push(piecePoint(line, id, { node, bonded: owner.bonded, ofPiece }, growing.ground));
    return [{ atM: middleM, node }];
  });
  const all = [...stations, ...middles].sort((a, b) => a.atM - b.atM || a.node - b.node);
  const lay = (from: Station, to: Station, toM: number): void => {
    const lengthM = toM - from.atM;
    const branch = { from: from.node, to: to.node, ...figure(lengthM < leastM ? 0 : lengthM) };
    push(growing, branch, owner, { line, fromM: from.atM, toM });
  };
  for (const [i, to] of all.slice(1).entries()) lay(all[i]!, to, to.atM);
  if (line.isClosed && all.length > 1) lay(all.at(-1)!, all[0]!, line.lengthM + all[0]!.atM);
}

function push(growing: Growing, branch: RangedBranch, { part, span, source }: Owner, stretch: Stretch | null): void {
  growing.branches.push(branch);
  growing.parts.push(part);
  growing.spans.push(span);
  growing.sources.push(source);
  growing.stretches.push(stretch);
}

function shareOf({ resistanceOhm, nominalOhm }: RangedBranch, share: number): BranchFigure {
  return { resistanceOhm: scale(resistanceOhm, share), nominalOhm: nominalOhm === null ? null : nominalOhm * share };
}

interface PiecePlace extends Pick<EarthPoint, 'node' | 'bonded'> {
  /** Of its metal. */
  readonly ofPiece: BranchFigure;
}

function piecePoint(
  { part, span, certain, share }: LeakingLine,
  id: string,
  { node, bonded, ofPiece }: PiecePlace,
  { together, indexOf }: Ground,
): EarthPoint {
  const index = indexOf.get(id)!;
  const own = (side: Side) => together[side]?.aloneOhm[index] ?? null;
  // worked out side by side: a strike asks for one of them
  const ohm = lazily<NonNullable<AloneOhm['ohm']>>({
    value: () => own('likely'),
    low: () => (own('low') ?? 0) * share.low,
    high: () => (own('high') ?? Number.POSITIVE_INFINITY) * share.high,
  });
  const { resistanceOhm, nominalOhm } = ofPiece;
  const evenOhm = { low: sixth(resistanceOhm.low), likely: sixth(nominalOhm), high: sixth(resistanceOhm.high) };
  return {
    id,
    part,
    node,
    bonded,
    alone: { ohm, how: 'computed' },
    certain,
    line: { id: `${part}/${span}`, share, evenOhm },
  };
}

function sixth(ohm: number | null): number {
  return ohm !== null && Number.isFinite(ohm) ? ohm / 6 : 0;
}

function leakWhole({ whole, ground, points }: Growing, { id }: LeakingConductor, node: number): void {
  const ohm = ground.aloneOfLeaking.get(id);
  if (ohm === undefined) return;
  points.push({ id, part: id, node, bonded: whole.bonded[node]!, alone: { ohm, how: 'computed' }, certain: 'perhaps' });
}
