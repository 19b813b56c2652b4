import fc from 'fast-check';
import { apparentResistivity } from '../../src/soil/apparent-resistivity.ts';
import { wennerPins } from '../../src/soil/sounding-pins.ts';
import type { SoundingReading } from '../../src/soil/sounding-reading.ts';

/** Three invented soils of three layers: resistivities (ohm m) from the surface down, then two thicknesses (m). */
export const trialModels = [
  { name: 'sand over silt over clay', figures: [1000, 200, 30, 1, 5] },
  { name: 'loam over gravel over clay', figures: [100, 600, 50, 1.5, 6] },
  { name: 'dry crust over loam over rock', figures: [400, 60, 500, 1, 4] },
] as const;

/** Twelve even spaces from 0.5 to 60 m. */
const spacingsM = Array.from({ length: 12 }, (_, at) => 0.5 * 120 ** (at / 11));

/** Seed of all examples: FC_SEED, as `tests/seed.ts` has it. */
export function trialSeed(): number {
  return fc.readConfigureGlobal()!.seed!;
}

/** Readings over a model, each off by a normal number of 5 %; for each model a chance of its own. */
export function noisyReadings(position: number, trials: number): readonly (readonly SoundingReading[])[] {
  const [top, middle, last, first, second] = trialModels[position]!.figures;
  const pins = spacingsM.map((aM) => wennerPins(aM));
  const soil = { resistivityOhmM: [top, middle, last], thicknessM: [first, second] };
  const ohmM = apparentResistivity(soil, pins);
  const normal = normals(trialSeed() + position);
  return Array.from({ length: trials }, () =>
    pins.map((p, at) => ({
      pins: p,
      resistanceOhm: (ohmM[at]! * (1 + 0.05 * normal())) / (2 * Math.PI * spacingsM[at]!),
    })),
  );
}

/** mulberry32 (public domain, from memory) and the cosine half of Box and Muller. */
function normals(seed: number): () => number {
  let state = seed >>> 0;
  const uniform = (): number => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = Math.imul(state ^ (state >>> 15), state | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
  return () => {
    const [a, b] = [uniform(), uniform()];
    return Math.sqrt(-2 * Math.log(1 - a)) * Math.cos(2 * Math.PI * b);
  };
}
