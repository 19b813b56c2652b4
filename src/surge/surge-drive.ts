import { along, inductanceTimes, resistanceTimes, type SurgeModes } from './surge-modes.ts';
import type { SurgeSource } from './surge-network.ts';

/** What a source does to the modes: stored z' + lost z = -(byCurrent i + bySlope di/dt). */
export interface SurgeDrive {
  readonly byCurrent: Float64Array;
  readonly bySlope: Float64Array;
  /** Volts over each element by the source's own way alone, per ampere and per ampere a second. */
  readonly ohm: Float64Array;
  readonly henry: Float64Array;
  /** The source's way over the elements: 1, -1 or 0. */
  readonly way: Int8Array;
}

/** The current of a source runs by the tree from its node to earth; the loops take it from there. RangeError: no such node. */
export function surgeDrive(
  { network, loops, count, shape }: SurgeModes,
  { node, channelH }: Pick<SurgeSource, 'node' | 'channelH'>,
): SurgeDrive {
  const way = loops.toEarth[node];
  if (way == null) throw new RangeError(`no node ${node} to strike`);
  const ohm = resistanceTimes(network, way);
  const henry = inductanceTimes(network, way);
  channelH?.forEach((mutual, branch) => {
    henry[branch] = henry[branch]! + mutual;
  });
  const onElements = new Int8Array(ohm.length);
  way.elements.forEach((element, i) => {
    onElements[element] = way.signs[i]!;
  });
  const [byCurrent, bySlope] = [ohm, henry].map((volts) => {
    const sum = new Float64Array(count);
    loops.loops.forEach((loop, row) => {
      const volt = along(loop, volts);
      for (let k = 0; k < count; k++) sum[k] = sum[k]! + shape[row * count + k]! * volt;
    });
    return sum;
  }) as [Float64Array, Float64Array];
  return { byCurrent, bySlope, ohm, henry, way: onElements };
}
