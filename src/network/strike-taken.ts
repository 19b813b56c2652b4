import type { BondingRun } from '../bonding/bonding-of.ts';
import type { TieKind } from '../bonding/tie.ts';
import type { StrikeNetwork } from './strike-network.ts';

/** What was taken because nobody typed it, or left out; ids in order. */
export interface StrikeTaken {
  /** Of which neither length nor place is known, by the length that was taken. */
  readonly lengths: readonly { readonly lengthM: number; readonly parts: readonly string[] }[];
  /** Supports that something meets, or that end, at a height that nobody knows: at the foot, without a length. */
  readonly heights: readonly string[];
  /** Taken by length alone, coupled to nothing. */
  readonly lengthOnly: readonly string[];
  readonly wires: readonly { readonly diameterM: number; readonly parts: readonly string[] }[];
  readonly towers: readonly { readonly part: string; readonly diameterM: number }[];
  /** Boxes, bars, supports, antennas and protectors without a way to the soil by metal: nothing is said of them. */
  readonly hangFree: readonly string[];
  /** That carry nothing here, and that do. */
  readonly guys: readonly string[];
  readonly guysIn: readonly string[];
  readonly cores: readonly string[];
  readonly perhaps: readonly string[];
  readonly outside: readonly string[];
  readonly protectors: readonly string[];
  /** Of them those of which nobody typed at what level they fire. */
  readonly levels: readonly string[];
  readonly laidApart: readonly string[];
  /** Lines along a support: they are taken to run down its face. */
  readonly onFace: readonly string[];
  readonly unknownElectrodes: readonly string[];
}

export function strikeTaken(run: Pick<BondingRun, 'graph' | 'site' | 'metal'>, network: StrikeNetwork): StrikeTaken {
  const { branches, notCounted, laidApart: apart, unknownElectrodes } = network;
  const { site } = run;
  const metal = branches.filter((b) => b.lengthM > 0);
  const supports = new Set(site.supports.map((s) => s.id));
  const assumed = metal.filter((b) => b.lengthFrom === 'assumed');
  const wires = metal.filter((b) => b.radiusFrom === 'assumed' && !supports.has(b.part));
  const lines = site.lines.filter((l) => l.present === 'yes');
  const hasShield = new Set(branches.filter((b) => b.kind === 'shield').map((b) => b.part));
  const guys = site.supports.flatMap((s) => s.guys.filter((g) => g.metal !== 'none').map((g) => g.id)).sort();
  const carrying = new Set(branches.filter((b) => b.kind === 'guy').map((b) => b.part));
  return {
    lengths: grouped(assumed, (b) => b.lengthM).map(([lengthM, parts]) => ({ lengthM, parts })),
    heights: heightless(run),
    lengthOnly: idsOf(
      metal.filter((b) => b.way === null && b.lengthFrom !== 'assumed' && b.statedH === null && b.lengthM > 1),
    ),
    wires: grouped(wires, (b) => 2 * b.radiusM).map(([diameterM, parts]) => ({ diameterM, parts })),
    towers: [...new Map(metal.filter((b) => supports.has(b.part)).map((b) => [b.part, 2 * b.radiusM]))]
      .map(([part, diameterM]) => ({ part, diameterM }))
      .sort((a, b) => (a.part < b.part ? -1 : 1)),
    hangFree: hangFree(run, network),
    guys: guys.filter((id) => !carrying.has(id)),
    guysIn: guys.filter((id) => carrying.has(id)),
    cores: lines.flatMap(({ id }) => (hasShield.has(id) ? [id] : [])).sort(),
    perhaps: notCounted,
    outside: lines
      .filter((l) => l.path.some((stop) => stop.is === 'street'))
      .map((l) => l.id)
      .sort(),
    laidApart: apart,
    onFace: idsOf(branches.filter((b) => b.kind === 'shield' && b.lengthM > leastRunM && isUpright(b))),
    unknownElectrodes,
    levels: site.arresters
      .filter((a) => a.present === 'yes' && a.sparkoverV === null && a.kind !== 'quarter-wave stub')
      .map((a) => a.id)
      .sort(),
    protectors: site.arresters
      .filter((a) => a.present === 'yes')
      .map((a) => a.id)
      .sort(),
  };
}

const named: ReadonlySet<string> = new Set(['supports', 'antennas', 'bars', 'arresters', 'equipment']);

function hangFree({ metal }: Pick<BondingRun, 'metal'>, { nodes, at }: StrikeNetwork): readonly string[] {
  const numberOf = new Map(nodes.map((id, i) => [id, at[i]!]));
  return [...metal.index.parts.values()]
    .filter(({ id, section, present }) => {
      const own = [id, `${id}@base`, `${id}@top`].flatMap((node) => numberOf.get(node) ?? []);
      return named.has(section) && present === 'yes' && own.length > 0 && own.every((number) => number < 0);
    })
    .map(({ id }) => id)
    .sort();
}

/** Shorter than this it is a jumper. */
const leastRunM = 1;

function isUpright({ way }: StrikeNetwork['branches'][number]): boolean {
  const [first] = way ?? [];
  return first !== undefined && way!.every(([east, north]) => east === first[0] && north === first[1]);
}

/** A point of no known height that only guys meet says nothing. */
function heightless({ graph, site, metal }: Pick<BondingRun, 'graph' | 'site' | 'metal'>): readonly string[] {
  const isMet = (node: string, support: string) =>
    graph.someEdge(node, (_key, { part, kind }) => part !== support && !carriesNothing.has(kind));
  const of = site.supports.filter(({ id }) =>
    [id, `${id}@top`].some(
      (node) => graph.hasNode(node) && !metal.heights.has(node) && (node !== id || isMet(node, id)),
    ),
  );
  return of.map(({ id }) => id).sort();
}

const carriesNothing: ReadonlySet<TieKind> = new Set(['guy', 'core', 'gap', 'drain']);

function idsOf(branches: readonly { readonly part: string }[]): readonly string[] {
  return [...new Set(branches.map((b) => b.part))].sort();
}

function grouped<T extends { readonly part: string }>(branches: readonly T[], figure: (branch: T) => number) {
  const parts = new Map<number, T[]>();
  for (const branch of branches) parts.set(figure(branch), [...(parts.get(figure(branch)) ?? []), branch]);
  return [...parts].sort(([a], [b]) => a - b).map(([value, of]) => [value, idsOf(of)] as const);
}
