import { checkWave } from './check-wave.ts';
import type { SurgeBranch, SurgeNetwork, SurgeSource } from './surge-network.ts';

/** RangeError for what no site can lead to: a node that is not there, a negative or endless figure, a matrix of another size. */
export function checkSurgeNetwork({ nodeCount, branches, mutualH, earth }: SurgeNetwork): void {
  const isNode = (node: number) => Number.isInteger(node) && node >= 0 && node < nodeCount;
  for (const { from, to, resistanceOhm, inductanceH } of branches) {
    if (!isNode(from) || !isNode(to)) throw new RangeError(`no node ${isNode(from) ? to : from}`);
    if (!isFigure(resistanceOhm)) throw new RangeError(`${resistanceOhm} is no resistance in ohm`);
    if (!isFigure(inductanceH)) throw new RangeError(`${inductanceH} is no inductance in henry`);
    if (resistanceOhm === 0 && inductanceH === 0)
      throw new RangeError('a branch of nothing: its two ends are one node');
  }
  const wrong = earth.nodes.find((node) => !isNode(node));
  if (wrong !== undefined) throw new RangeError(`no node ${wrong}`);
  if (earth.resistanceOhm.length !== earth.nodes.length) throw new RangeError('one row for each electrode');
  checkEarth(earth.resistanceOhm);
  if (mutualH !== null) checkInductances(branches, mutualH);
}

/** Largest difference that counts as rounding, relative to the branches' own. */
const roundingShare = 1e-9;

function checkInductances(branches: readonly SurgeBranch[], mutualH: Float64Array): void {
  const size = branches.length;
  if (mutualH.length !== size ** 2) throw new RangeError('one row of inductances for each branch');
  if (mutualH.some((henry) => !Number.isFinite(henry))) throw new RangeError('an inductance is no number');
  branches.forEach(({ inductanceH }, i) => {
    const ownH = mutualH[i * (size + 1)]!;
    if (!(Math.abs(ownH - inductanceH) <= roundingShare * inductanceH))
      throw new RangeError(`branch ${i} has ${inductanceH} H of its own, the matrix has ${ownH}`);
    for (let j = 0; j < i; j++) {
      const most = roundingShare * Math.sqrt(inductanceH * branches[j]!.inductanceH);
      if (!(Math.abs(mutualH[i * size + j]! - mutualH[j * size + i]!) <= most))
        throw new RangeError(`inductances are lopsided at ${i}, ${j}`);
    }
  });
}

function isFigure(value: number): boolean {
  return Number.isFinite(value) && value >= 0;
}

function checkEarth(rows: SurgeNetwork['earth']['resistanceOhm']): void {
  rows.forEach((row, i) => {
    if (typeof row === 'number') return;
    if (row.length !== rows.length) throw new RangeError('one resistance for each two electrodes');
    for (let j = 0; j < i; j++) {
      const other = rows[j]!;
      const [below, above] = [row[j]!, typeof other === 'number' ? 0 : other[i]!];
      if (!(Math.abs(below - above) <= roundingShare * Math.abs(below)))
        throw new RangeError(`earth matrix is lopsided at ${i}, ${j}`);
    }
  });
}

/** Most of any stroke that was ever measured is half of this. Ours. */
const mostA = 1e6;

/** RangeError for a source that cannot be in a network, and for a time that is none. */
export function checkSurgeSource({ nodeCount, branches }: SurgeNetwork, source: SurgeSource, untilS: number): void {
  const { node, wave, channelH } = source;
  if (node !== null && !(Number.isInteger(node) && node >= 0 && node < nodeCount))
    throw new RangeError(`no node ${node} to strike`);
  checkWave(wave);
  if (wave.peakA > mostA) throw new RangeError(`a peak of ${wave.peakA} A is beyond any stroke (${mostA} A)`);
  if (!(untilS > 0 && Number.isFinite(untilS))) throw new RangeError(`${untilS} s is no time to run`);
  if (channelH !== null && channelH.length !== branches.length)
    throw new RangeError('one mutual inductance for each branch');
  if (node === null && channelH === null) throw new RangeError('a source that neither enters nor induces');
  if (channelH?.some((henry) => !Number.isFinite(henry))) throw new RangeError('an inductance is no number');
}
