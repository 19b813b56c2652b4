import { type SurgeDrive, surgeDrive } from './surge-drive.ts';
import { along, type SurgeModes } from './surge-modes.ts';
import type { SurgeSource } from './surge-network.ts';
import type { SurgeStates } from './surge-states.ts';
import type { SampledWave } from './surge-steps.ts';

/** What is known of a run when its energies are asked for. */
export interface EnergyAsked {
  readonly modes: SurgeModes;
  readonly source: SurgeSource;
  readonly drive: SurgeDrive;
  readonly wave: SampledWave;
  readonly states: SurgeStates;
}

/**
 * What went in at the struck node, less heat in all resistances, energy of the field and what the channel's own field took, over
 * what went in. Simpson's rule over pairs of steps.
 */
export function energyShare(asked: EnergyAsked): number {
  const { stepS, timesS } = asked.wave;
  const at = powersOf(asked);
  const sums = { put: 0, heat: 0, channel: 0 };
  const first = at(0);
  let field = 0;
  for (let t = 2; t < timesS.length; t += 2) {
    const [a, b, c] = [at(t - 2), at(t - 1), at(t)];
    const third = stepS[t]! / 3;
    sums.put += third * (a.put + 4 * b.put + c.put);
    sums.heat += third * (a.heat + 4 * b.heat + c.heat);
    sums.channel += third * (a.channel + 4 * b.channel + c.channel);
    field = c.field - first.field;
  }
  return sums.put === 0 ? 0 : Math.abs(sums.put - sums.heat - field - sums.channel) / sums.put;
}

interface Powers {
  readonly put: number;
  readonly heat: number;
  readonly channel: number;
  /** Joule, not watt. */
  readonly field: number;
}

/** By the source's own way through the tree, by the modes, and by both together. */
function powersOf({ modes, source, drive, wave, states }: EnergyAsked): (t: number) => Powers {
  const { count, stored, lost } = modes;
  const metal = surgeDrive(modes, { node: source.node, channelH: null });
  const way = modes.loops.toEarth[source.node]!;
  const [ohm, henry, all] = [along(way, metal.ohm), along(way, metal.henry), along(way, drive.henry)];
  return (t) => {
    const [i, rise] = [wave.currentA[t]!, wave.slopeAPerS[t]!];
    const row = t * count;
    let [byOhm, byHenry, held, byChannel, heat, field] = [0, 0, 0, 0, 0, 0];
    for (let k = 0; k < count; k++) {
      const [z, slope] = [states.z[row + k]!, states.slope[row + k]!];
      byOhm += metal.byCurrent[k]! * z;
      byHenry += metal.bySlope[k]! * slope;
      held += metal.bySlope[k]! * z;
      byChannel += (drive.bySlope[k]! - metal.bySlope[k]!) * z;
      heat += lost[k]! * z * z;
      field += stored[k]! * z * z;
    }
    return {
      put: i * (ohm * i + all * rise + byOhm + byHenry),
      heat: ohm * i * i + 2 * i * byOhm + heat,
      channel: rise * ((all - henry) * i + byChannel),
      field: (henry * i * i + field) / 2 + i * held,
    };
  };
}
