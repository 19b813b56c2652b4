import type { ConductanceEdge, Elimination, ExtendedNumber } from '../math/conductance-graph.ts';
import { DoubleDouble } from '../math/double-double.ts';
import { eliminate } from '../math/eliminate.ts';
import { type Contraction, contract, groundCluster } from './contraction.ts';
import { conductance, type EarthBlock, earthBlocks, type RefusedEarth } from './earth-conductance.ts';
import { checkNetwork, type Network } from './network.ts';

/** A network taken apart once, ready for any question: see `flow`, `resistanceToEarth`, `resistanceBetween`. */
export interface SolvedNetwork {
  readonly ok: true;
  readonly network: Network;
  readonly contraction: Contraction;
  /** Conductance of each branch; null where it is 0 or Infinity. */
  readonly branchConductance: readonly (ExtendedNumber | null)[];
  readonly earthBlocks: readonly EarthBlock[];
  readonly elimination: Elimination;
}

/**
 * Takes a network apart for direct current (nodal equations, star-mesh elimination in double-double arithmetic). Joints of
 * 10 micro-ohms beside rock of 5 megohms leave differences between neighbouring nodes right to the last digit. Throws
 * RangeError for a network that makes no sense; refuses an earth matrix that is not positive definite.
 */
export function solveNetwork(network: Network): SolvedNetwork | RefusedEarth {
  checkNetwork(network);
  const earth = earthBlocks(network.earth);
  if (!earth.ok) return earth;
  const contraction = contract(network);
  const branchConductance = network.branches.map(({ resistanceOhm }) =>
    resistanceOhm === 0 || resistanceOhm === Infinity ? null : conductance(resistanceOhm),
  );
  const gathered = new Gathered(contraction);
  for (const [at, { from, to }] of network.branches.entries()) {
    const known = branchConductance[at]!;
    if (known !== null) gathered.join(contraction.clusterOf[from]!, contraction.clusterOf[to]!, known.high, known.low);
  }
  for (const block of earth.blocks) gatherBlock(gathered, network, contraction, block);
  const result = eliminate({ nodeCount: contraction.clusterCount, edges: gathered.edges, toGround: gathered.toGround });
  if (!result.ok) throw new Error('a network of positive resistances was not positive definite');
  const { elimination } = result;
  return { ok: true, network, contraction, branchConductance, earthBlocks: earth.blocks, elimination };
}

class Gathered {
  readonly edges: ConductanceEdge[] = [];
  readonly toGround: ExtendedNumber[];
  private readonly sum = new DoubleDouble();

  constructor({ clusterCount }: Contraction) {
    this.toGround = Array.from({ length: clusterCount }, () => ({ high: 0, low: 0 }));
  }

  join(a: number, b: number, high: number, low: number): void {
    if (a === b) return;
    if (a === groundCluster) this.leak(b, high, low);
    else if (b === groundCluster) this.leak(a, high, low);
    else this.edges.push({ a, b, conductance: { high, low } });
  }

  leak(cluster: number, high: number, low: number): void {
    if (cluster === groundCluster) return;
    const before = this.toGround[cluster]!;
    const sum = this.sum.set(before.high, before.low).add(high, low);
    this.toGround[cluster] = { high: sum.high, low: sum.low };
  }
}

/** I = G V as a star: -G_ij between electrodes i and j, the sum of row i from electrode i to remote earth. */
function gatherBlock(gathered: Gathered, { earth }: Network, { clusterOf }: Contraction, block: EarthBlock): void {
  const { electrodes, high, low } = block;
  const size = electrodes.length;
  const rowSum = new DoubleDouble();
  for (let row = 0; row < size; row++) {
    const own = clusterOf[earth.nodes[electrodes[row]!]!]!;
    rowSum.set(0);
    for (let column = 0; column < size; column++) {
      const at = row * size + column;
      rowSum.add(high[at]!, low[at]!);
      const other = clusterOf[earth.nodes[electrodes[column]!]!]!;
      if (column < row) gathered.join(own, other, -high[at]!, -low[at]!);
    }
    gathered.leak(own, rowSum.high, rowSum.low);
  }
}
