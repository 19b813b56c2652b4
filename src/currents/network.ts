/**
 * A direct-current network: nodes 0 to nodeCount - 1 joined by resistances, some of them electrodes to remote earth.
 * Resistances are 0 (the two ends are one), 1e-30 to 1e30 ohm, or Infinity (not there).
 */
export interface Network {
  readonly nodeCount: number;
  readonly branches: readonly Branch[];
  readonly earth: Earth;
}

export interface Branch {
  readonly from: number;
  readonly to: number;
  readonly resistanceOhm: number;
}

/**
 * Electrodes: `nodes[i]` is the node of electrode i; a node may have several. `resistanceOhm` is the symmetric, positive
 * definite matrix R of V = R I; electrodes that do not feel each other through the soil may be given as their own
 * resistances in one list. An electrode of Infinity is not there, whatever its mutual ones.
 */
export interface Earth {
  readonly nodes: readonly number[];
  readonly resistanceOhm: ResistanceMatrix | readonly number[];
}

export type ResistanceMatrix = readonly (readonly number[])[];

/** A current put into a node; negative: taken out. */
export interface Injection {
  readonly node: number;
  readonly currentA: number;
}

/** Own resistance of each electrode. */
export function ownResistances({ resistanceOhm }: Earth): readonly number[] {
  return resistanceOhm.map((row, at) => (typeof row === 'number' ? row : row[at]!));
}

/** Resistance between two electrodes through the soil; 0 where none is given. */
export function mutualOhm({ resistanceOhm }: Earth, i: number, j: number): number {
  const row = resistanceOhm[i]!;
  return typeof row === 'number' ? 0 : row[j]!;
}

/** Refuses (RangeError) what no site can lead to: a node that is not there, a negative resistance, a lopsided matrix. */
export function checkNetwork({ nodeCount, branches, earth }: Network): void {
  for (const { from, to, resistanceOhm } of branches) {
    checkNode(from, nodeCount);
    checkNode(to, nodeCount);
    checkResistance(resistanceOhm);
  }
  for (const node of earth.nodes) checkNode(node, nodeCount);
  if (earth.resistanceOhm.length !== earth.nodes.length) throw new RangeError('one row per electrode');
  for (const own of ownResistances(earth)) checkResistance(own);
  for (const [i, row] of earth.resistanceOhm.entries()) if (typeof row !== 'number') checkRow(earth, i, row);
}

function checkNode(node: number, nodeCount: number): void {
  if (!Number.isInteger(node) || node < 0 || node >= nodeCount) throw new RangeError(`no node ${node}`);
}

function checkResistance(ohm: number): void {
  const usable = ohm === 0 || ohm === Number.POSITIVE_INFINITY || (ohm >= 1e-30 && ohm <= 1e30);
  if (!usable) throw new RangeError(`${ohm} is no resistance in ohm`);
}

/** Largest difference between R_ij and R_ji that counts as rounding, relative to the larger. */
const symmetryShare = 1e-12;

function checkRow(earth: Earth, i: number, row: readonly number[]): void {
  if (row.length !== earth.nodes.length)
    throw new RangeError(`row ${i} of the earth matrix is not as long as the rest`);
  for (let j = 0; j < i; j++) {
    if (row[i] === Infinity || mutualOhm(earth, j, j) === Infinity) continue;
    const [below, above] = [row[j]!, mutualOhm(earth, j, i)];
    const tolerance = symmetryShare * Math.max(Math.abs(below), Math.abs(above));
    if (!(Math.abs(below - above) <= tolerance)) throw new RangeError(`earth matrix is lopsided at ${i}, ${j}`);
  }
}
