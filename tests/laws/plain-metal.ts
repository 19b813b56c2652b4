/** Who hangs together with whom, worked out the plain way: follow the edges until nothing is new. */
import type { WeakPoint } from '../../src/bonding/bonding.ts';
import { type BondingRun, bondingOf } from '../../src/bonding/bonding-of.ts';
import { membersOf } from '../../src/bonding/members.ts';
import type { Tie } from '../../src/bonding/tie.ts';
import type { Site } from '../../src/site/site.ts';

export interface Plain {
  readonly run: BondingRun;
  /** Member → its nodes. */
  readonly members: ReadonlyMap<string, readonly string[]>;
  readonly edges: readonly (readonly [key: string, a: string, b: string, tie: Tie])[];
}

export function plainOf(site: Site, state: string | null = null): Plain {
  const run = bondingOf(site, state);
  const edges = run.graph.mapEdges((key, tie, a, b) => [key, a, b, tie] as const);
  return { run, members: membersOf(run.metal), edges };
}

const isBond = ({ kind }: Tie) => kind === 'metal' || kind === 'feeder';

export interface Gone {
  readonly nodes?: ReadonlySet<string>;
  readonly edge?: string;
  /** Ties that may be there count as there. */
  readonly possible?: boolean;
}

/** Nodes that bonds lead to from any of `starts`. */
export function follow({ edges }: Plain, starts: Iterable<string>, { nodes, edge, possible }: Gone = {}): Set<string> {
  const found = new Set([...starts].filter((id) => nodes?.has(id) !== true));
  const left = edges.filter(
    ([key, a, b, tie]) =>
      isBond(tie) && (possible === true || tie.is === 'there') && key !== edge && !nodes?.has(a) && !nodes?.has(b),
  );
  for (let before = -1; before < found.size; ) {
    before = found.size;
    for (const [, a, b] of left) if (found.has(a) || found.has(b)) found.add(a).add(b);
  }
  return found;
}

export function nodesOf({ members }: Plain, ids: readonly string[]): readonly string[] {
  return ids.flatMap((id) => members.get(id) ?? []);
}

/** Members of which any node is among these. */
export function membersAmong({ members }: Plain, nodes: ReadonlySet<string>): readonly string[] {
  return [...members]
    .filter(([, own]) => own.some((node) => nodes.has(node)))
    .map(([id]) => id)
    .sort();
}

/** Members that are the service, and electrodes. */
export function serviceOf({ run, members }: Plain): readonly string[] {
  const { part } = run.bonding.service;
  return part === null
    ? []
    : [...members.keys()].filter((id) => id === part || (/^[.@]/.test(id.slice(part.length)) && id.startsWith(part)));
}

export function electrodesOf({ run, members }: Plain): readonly string[] {
  const electrodes = new Set(run.site.electrodes.map(({ id }) => id));
  return [...members.keys()].filter((id) => electrodes.has(id.split('.')[0]!));
}

export type Losses = Pick<WeakPoint, 'losesService' | 'losesEarth'>;

export const sizeOf = ({ losesService, losesEarth }: Losses) => losesService.length + losesEarth.length;
