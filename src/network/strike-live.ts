import type { BondingRun } from '../bonding/bonding-of.ts';
import type { Arrester, Line } from '../site/site.ts';
import type { SurgeDevice } from '../surge/device.ts';
import type { SurgeBranch } from '../surge/surge-network.ts';
import { middle } from '../units/interval.ts';
import { type CoreStrand, coreStrands } from './core-strands.ts';
import { lineCore } from './line-core.ts';
import { protectorDevice, stubInductance } from './protector-device.ts';
import type { StrikeBranch } from './strike-branches.ts';
import type { StrikeNetwork } from './strike-network.ts';

/** A strike's network with the cores of its lines, the conductors that come in from outside, and what fires between them and metal. */
export interface LiveNetwork {
  readonly network: StrikeNetwork;
  readonly devices: readonly LiveDevice[];
  /** Where a core ends at a box: surge nodes of both, by line. */
  readonly ends: ReadonlyMap<string, CoreEnd>;
  /** Surge node of the conductor of each line that comes in from the street without a shield, and what it was taken to have, ohm. */
  readonly outside: ReadonlyMap<string, { readonly node: number; readonly ohm: number }>;
}

export interface LiveDevice {
  readonly arrester: string;
  /** null: it stands between two points of metal. */
  readonly line: string | null;
  readonly device: SurgeDevice;
  /** Its ends by number of the graph's node. */
  readonly between: readonly [from: number, to: number];
}

export interface CoreEnd {
  readonly box: string;
  readonly core: number;
  readonly case: number;
}

/** What a line that leads away shows a surge until its far end answers, ohm: overhead, or nobody knows; buried. Ours. */
export const outsideOhm = { overhead: 400, buried: 100 } as const;

/**
 * The core of a shielded line lies within its shield: what couples into the one couples into the other, less what leaks, and
 * both make a loop of their own. It is tied to the shield at its outer end. The conductors of a line from the street are one
 * node that remote earth holds by the surge impedance of the line.
 */
export function liveNetwork(
  run: Pick<BondingRun, 'graph' | 'site' | 'metal'>,
  quiet: StrikeNetwork,
  caseOf: (part: string) => number | null,
): LiveNetwork {
  const indexOf = new Map(quiet.nodes.map((id, i) => [id, i]));
  const growing: Growing = {
    quiet,
    indexOf,
    at: quiet.at.slice(),
    nodeCount: quiet.surge.nodeCount,
    cores: [],
    earths: [],
  };
  const ends = new Map<string, CoreEnd>();
  const outside = new Map<string, { readonly node: number; readonly ohm: number }>();
  for (const strand of coreStrands(run)) {
    const isShielded = strand.stops[0]!.shields.length > 0;
    if (!isShielded && !strand.isFromStreet) continue;
    if (isShielded) layCore(growing, strand);
    else outside.set(strand.line.id, holdOutside(growing, strand));
    const end = endOf(growing, strand, caseOf);
    if (end !== null) ends.set(strand.line.id, end);
  }
  const devices = devicesOf(run, growing);
  return { network: grown(growing), devices, ends, outside };
}

interface Growing {
  readonly quiet: StrikeNetwork;
  readonly indexOf: ReadonlyMap<string, number>;
  readonly at: Int32Array;
  nodeCount: number;
  readonly cores: CoreBranch[];
  readonly earths: { readonly node: number; readonly ohm: number; readonly line: string; readonly graphNode: number }[];
}

interface CoreBranch {
  readonly branch: StrikeBranch;
  readonly ends: SurgeBranch;
  /** The branch of the shield about it; null: a stub, coupled to nothing. */
  readonly within: number | null;
  readonly leakageH: number;
}

function numberOf({ at, indexOf }: Growing, nodes: readonly string[]): number | null {
  for (const id of nodes) {
    const index = indexOf.get(id);
    if (index !== undefined && at[index]! >= 0) return at[index]!;
  }
  return null;
}

function setNumber({ at, indexOf }: Growing, nodes: readonly string[], number: number): void {
  for (const id of nodes) {
    const index = indexOf.get(id);
    if (index !== undefined) at[index] = number;
  }
}

/** As far as its shield is in the network. */
function layCore(growing: Growing, { line, stops }: CoreStrand): void {
  let held = numberOf(growing, stops[0]!.shields);
  if (held === null) return;
  setNumber(growing, stops[0]!.nodes, held);
  const make = lineCore(line);
  for (const [i, stop] of stops.slice(1).entries()) {
    const span = shieldSpan(growing, line, stops[i]!.shields, stop.shields);
    if (span === 'none') return;
    if (span !== 'no length') {
      const { lengthM, kind: _kind, ...shield } = growing.quiet.branches[span]!;
      const resistanceOhm = lengthM * make.coreOhmPerM;
      const ownH = growing.quiet.surge.branches[span]!.inductanceH + lengthM * make.loopHPerM;
      const next: number = growing.nodeCount++;
      growing.cores.push({
        branch: { ...shield, lengthM, kind: 'core', resistanceOhm },
        ends: { from: held, to: next, resistanceOhm, inductanceH: ownH },
        within: span,
        leakageH: lengthM * make.leakageHPerM,
      });
      held = next;
    }
    setNumber(growing, stop.nodes, held);
  }
}

type ShieldSpan = number | 'no length' | 'none';

function shieldSpan(growing: Growing, line: Line, from: readonly string[], to: readonly string[]): ShieldSpan {
  const { quiet, indexOf } = growing;
  const indices = (ids: readonly string[]) => new Set(ids.map((id) => indexOf.get(id)));
  const [a, b] = [indices(from), indices(to)];
  const found = quiet.branches.findIndex(
    (branch) =>
      branch.part === line.id &&
      branch.kind === 'shield' &&
      ((a.has(branch.from) && b.has(branch.to)) || (a.has(branch.to) && b.has(branch.from))),
  );
  if (found >= 0) return found;
  const [start, end] = [numberOf(growing, from), numberOf(growing, to)];
  return start !== null && start === end ? 'no length' : 'none';
}

function holdOutside(growing: Growing, { line, stops }: CoreStrand) {
  const node = growing.nodeCount++;
  const ohm = line.buried === 'yes' ? outsideOhm.buried : outsideOhm.overhead;
  for (const stop of stops) setNumber(growing, stop.nodes, node);
  growing.earths.push({ node, ohm, line: line.id, graphNode: growing.indexOf.get(stops[0]!.nodes[0]!)! });
  return { node, ohm };
}

function endOf(growing: Growing, { stops }: CoreStrand, caseOf: (part: string) => number | null): CoreEnd | null {
  const last = [...stops].reverse().find(({ part }) => part !== null && caseOf(part) !== null);
  if (last === undefined) return null;
  const core = numberOf(growing, last.nodes);
  const own = caseOf(last.part!);
  return core === null || own === null ? null : { box: last.part!, core, case: own };
}

/** Gaps of protectors between what now has a number; a shorted stub is a wire. */
function devicesOf({ graph, site }: Pick<BondingRun, 'graph' | 'site'>, growing: Growing): readonly LiveDevice[] {
  const arresters = new Map(site.arresters.filter((a) => a.present === 'yes').map((a) => [a.id, a]));
  const lines = new Map(site.lines.map((l) => [l.id, l]));
  const devices: LiveDevice[] = [];
  for (const key of graph.edges().sort()) {
    const { kind, is, part } = graph.getEdgeAttributes(key);
    const arrester = arresters.get(part);
    if (arrester === undefined || is !== 'there' || (kind !== 'gap' && kind !== 'drain')) continue;
    const [a, b] = graph.extremities(key);
    const core = graph.getNodeAttribute(a, 'kind') === 'core' ? a : b;
    const body = core === a ? b : a;
    const [from, to] = [numberOf(growing, [core]), numberOf(growing, [body])];
    if (from === null || to === null || from === to) continue;
    const line = lines.get(graph.getNodeAttribute(core, 'part')) ?? null;
    if (kind === 'drain') stub(growing, arrester, line, from, to);
    else {
      const between = [growing.indexOf.get(core)!, growing.indexOf.get(body)!] as const;
      devices.push({
        arrester: part,
        line: line?.id ?? null,
        device: { ...protectorDevice(arrester), from, to },
        between,
      });
    }
  }
  return devices;
}

const stubOhm = 1e-3;

/** A bleed resistor or a choke drains static and no more; a shorted stub is metal. */
function stub(growing: Growing, arrester: Arrester, line: Line | null, from: number, to: number): void {
  if (arrester.kind !== 'quarter-wave stub') return;
  const impedanceOhm = line === null || line.impedanceOhm === null ? null : middle(line.impedanceOhm);
  const inductanceH = stubInductance(impedanceOhm ?? 50, arrester.bandHz);
  growing.cores.push({
    branch: {
      from: -1,
      to: -1,
      part: arrester.id,
      kind: 'drain',
      span: null,
      resistanceOhm: stubOhm,
      lengthM: 0,
      lengthFrom: 'typed',
      way: null,
      statedH: inductanceH,
      inRun: 1,
      radiusM: 0,
      ohmPerM: 0,
      radiusFrom: 'typed',
    },
    ends: { from, to, resistanceOhm: stubOhm, inductanceH },
    within: null,
    leakageH: 0,
  });
}

function grown(growing: Growing): StrikeNetwork {
  const { quiet, at, nodeCount, cores, earths } = growing;
  const { surge } = quiet;
  const owners = new Map<number, number[]>();
  quiet.branchOfPiece.forEach((branch, piece) => {
    owners.set(branch, [...(owners.get(branch) ?? []), piece]);
  });
  const within = cores.flatMap(({ within }, c) =>
    within === null ? [] : (owners.get(within) ?? []).map((p) => ({ p, c })),
  );
  const first = surge.branches.length;
  const matrix = surge.earth.nodes.map((_, i) => [
    ...surge.earth.nodes.map((_, j) => mutualOhm(surge.earth.resistanceOhm, i, j)),
    ...earths.map(() => 0),
  ]);
  earths.forEach(({ ohm }, e) => {
    matrix.push([...surge.earth.nodes.map(() => 0), ...earths.map((_, other) => (other === e ? ohm : 0))]);
  });
  return {
    ...quiet,
    at,
    branches: [...quiet.branches, ...cores.map(({ branch }) => branch)],
    points: [
      ...quiet.points,
      ...earths.map(({ line, graphNode, ohm }) => ({
        id: line,
        part: line,
        node: graphNode,
        bonded: -1,
        alone: { ohm: { value: ohm, low: ohm, high: ohm }, how: 'unknown' as const },
        certain: 'likely' as const,
      })),
    ],
    pieces: [...quiet.pieces, ...within.map(({ p }) => quiet.pieces[p]!)],
    branchOfPiece: Int32Array.from([...quiet.branchOfPiece, ...within.map(({ c }) => first + c)]),
    surge: {
      nodeCount,
      branches: [...surge.branches, ...cores.map(({ ends }) => ends)],
      mutualH: coupled(growing),
      earth: { nodes: [...surge.earth.nodes, ...earths.map(({ node }) => node)], resistanceOhm: matrix },
    },
  };
}

function mutualOhm(rows: StrikeNetwork['surge']['earth']['resistanceOhm'], i: number, j: number): number {
  const row = rows[i]!;
  return typeof row === 'number' ? (i === j ? row : 0) : row[j]!;
}

/** A core has the couplings of its shield; to that shield itself, the shield's own less what leaks. */
function coupled({ quiet, cores }: Growing): Float64Array {
  const { branches, mutualH } = quiet.surge;
  const [old, size] = [branches.length, branches.length + cores.length];
  const matrix = new Float64Array(size * size);
  const between = (i: number, j: number) =>
    mutualH === null ? (i === j ? branches[i]!.inductanceH : 0) : mutualH[i * old + j]!;
  const shieldOf = (e: number) => (e < old ? e : cores[e - old]!.within);
  for (let i = 0; i < size; i++) {
    for (let j = 0; j < size; j++) {
      const [a, b] = [shieldOf(i), shieldOf(j)];
      if (i === j) matrix[i * size + j] = i < old ? between(i, i) : cores[i - old]!.ends.inductanceH;
      else if (a !== null && b !== null) {
        const leak =
          a === b ? Math.max(i < old ? 0 : cores[i - old]!.leakageH, j < old ? 0 : cores[j - old]!.leakageH) : 0;
        matrix[i * size + j] = between(a, b) - leak;
      }
    }
  }
  return matrix;
}
