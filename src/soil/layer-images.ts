import { type ExponentialBasis, exponentialBasis, fitError } from '../math/exponential-fit.ts';
import { boundariesM, type LayeredSoil } from './layered-soil.ts';
import { reflections } from './reflection.ts';

/**
 * The images of a source in one layer that make up the potential in another (or the same) layer: for an ampere that
 * enters the soil at depth z',
 *
 *   V = sum over k of strengthOhmM[k] / distance(receiver, image k),  image k at depth offsetM[k] + sign[k] z'.
 *
 * The first one is the source itself, where both are in one layer. A straight source has straight images.
 */
export interface ImageSet {
  readonly count: number;
  readonly strengthOhmM: Float64Array;
  /** 1: as deep below its offset as the source below the surface; -1: mirrored. */
  readonly sign: Int8Array;
  readonly offsetM: Float64Array;
}

/** Images for every pair of layers of one soil, each worked out when it is first asked for. */
export interface SoilImages {
  readonly soil: LayeredSoil;
  readonly between: (sourceLayer: number, receiverLayer: number) => ImageSet;
}

/**
 * Images of a soil. Between two boundaries a potential goes up and down; what returns after all its reflections depends
 * on the wavenumber smoothly. The part of it that stays at large wavenumbers is an exact image; the rest is met by a sum of
 * exponentials, each the transform of one more image.
 *
 * Error of the potential of a point, at worst (source in a layer that resists far more than its neighbour, receiver as far
 * away as ten times its thickness): `fine` 1e-6 for resistivities up to 1e5 apart, 1e-5 up to 1e6; `coarse` 1e-3 up to 1e5,
 * 5e-3 up to 1e6, in little more than half the images. Resistances of electrodes: a hundredth of that.
 *
 * Source: E. D. Sunde, Earth Conduction Effects in Transmission Systems (1949), chapter 2 (from memory), for the layers;
 * integral of exp(-lambda u) J0(lambda r) over lambda = 1 / sqrt(r^2 + u^2) for the images.
 */
export function soilImages(soil: LayeredSoil, fineness: Fineness = 'fine'): SoilImages {
  const layers = soil.resistivityOhmM.length;
  const basis = basisOf(soil, fineness);
  const samples = basis === null ? [] : Array.from(basis.lambdas, (lambda) => reflections(soil, lambda));
  const far = reflections(soil, Number.POSITIVE_INFINITY);
  const waves: Waves = { soil, basis, samples, far };
  const kept = new Array<ImageSet | undefined>(layers * layers);
  const between = (source: number, receiver: number): ImageSet => {
    const at = source * layers + receiver;
    kept[at] ??= imagesBetween(waves, source, receiver);
    return kept[at];
  };
  return { soil, between };
}

type Reflections = ReturnType<typeof reflections>;

interface Waves {
  readonly soil: LayeredSoil;
  /** null: one layer. */
  readonly basis: ExponentialBasis | null;
  /** One per wavenumber of the basis. */
  readonly samples: readonly Reflections[];
  /** At an endless wavenumber: what each boundary does by itself. */
  readonly far: Reflections;
}

/** Images that share one dependence on the wavenumber; `away`: 1 where they move down with their exponent, else -1. */
interface Family {
  readonly coefficient: (at: Reflections, lambda: number) => number;
  readonly places: readonly { readonly sign: 1 | -1; readonly offsetM: number; readonly away: 1 | -1 }[];
}

/** Depths reach this many times the total thickness times the greatest contrast: there the soil is its last layer. */
const reach = 20;

function basisOf({ resistivityOhmM, thicknessM }: LayeredSoil, fineness: Fineness): ExponentialBasis | null {
  if (thicknessM.length === 0) return null;
  const totalM = thicknessM.reduce((sum, thick) => sum + thick, 0);
  const contrast = Math.max(...resistivityOhmM) / Math.min(...resistivityOhmM);
  const depthRatio = depthRatioFor(contrast, aims[fineness]);
  return exponentialBasis(2 * Math.min(...thicknessM), reach * totalM * contrast, depthRatio);
}

/** How far the potential of a point may be out. */
const aims = { fine: 1e-6, coarse: 1e-3 } as const;
export type Fineness = keyof typeof aims;

/** Few, so that soils share their bases. */
const depthRatios = [1.6, 1.45, 1.3, 1.25, 1.2] as const;

/** What is left where two layers cancel each other is by as much smaller than each as they are apart. */
function depthRatioFor(contrast: number, aim: number): number {
  return depthRatios.find((ratio) => contrast * fitError(ratio) <= aim) ?? depthRatios.at(-1)!;
}

function imagesBetween(waves: Waves, source: number, receiver: number): ImageSet {
  const ohmM = waves.soil.resistivityOhmM[source]! / (4 * Math.PI);
  const images: Image[] = [];
  if (source === receiver) images.push({ strengthOhmM: ohmM, sign: 1, offsetM: 0 });
  for (const family of familiesOf(waves.soil, source, receiver)) addFamily(images, waves, ohmM, family);
  return {
    count: images.length,
    strengthOhmM: Float64Array.from(images, (i) => i.strengthOhmM),
    sign: Int8Array.from(images, (i) => i.sign),
    offsetM: Float64Array.from(images, (i) => i.offsetM),
  };
}

interface Image {
  readonly strengthOhmM: number;
  readonly sign: 1 | -1;
  readonly offsetM: number;
}

/** An image weaker than this, relative to the source, is left out. */
const weakest = 1e-13;

function addFamily(images: Image[], { basis, samples, far }: Waves, ohmM: number, family: Family): void {
  const lasting = family.coefficient(far, Number.POSITIVE_INFINITY);
  const add = (strength: number, depthM: number): void => {
    if (Math.abs(strength) < weakest) return;
    for (const { sign, offsetM, away } of family.places) {
      images.push({ strengthOhmM: ohmM * strength, sign, offsetM: offsetM + away * depthM });
    }
  };
  add(lasting, 0);
  if (basis === null) return;
  const rest = Float64Array.from(samples, (at, j) => family.coefficient(at, basis.lambdas[j]!) - lasting);
  basis.fit(rest).forEach((strength, k) => {
    add(strength, basis.depths[k]!);
  });
}

function familiesOf(soil: LayeredSoil, source: number, receiver: number): readonly Family[] {
  if (source === receiver) return familiesWithin(soil, source);
  return source < receiver ? familiesDown(soil, source, receiver) : familiesUp(soil, source, receiver);
}

/** Source and receiver in one layer: back from above, from below, and from both in turn. */
function familiesWithin(soil: LayeredSoil, layer: number): readonly Family[] {
  const { topM, footM } = spanOf(soil, layer);
  const thickM = footM - topM;
  const again = (at: Reflections, lambda: number): number =>
    1 / (1 - at.up[layer]! * at.down[layer]! * twice(thickM, lambda));
  const above: Family = {
    coefficient: (at, lambda) => at.up[layer]! * again(at, lambda),
    places: [{ sign: -1, offsetM: 2 * topM, away: -1 }],
  };
  if (footM === Number.POSITIVE_INFINITY) return [above];
  const below: Family = {
    coefficient: (at, lambda) => at.down[layer]! * again(at, lambda),
    places: [{ sign: -1, offsetM: 2 * footM, away: 1 }],
  };
  const both: Family = {
    coefficient: (at, lambda) => at.up[layer]! * at.down[layer]! * again(at, lambda),
    places: [
      { sign: 1, offsetM: -2 * thickM, away: -1 },
      { sign: 1, offsetM: 2 * thickM, away: 1 },
    ],
  };
  return [above, below, both];
}

/** Receiver in a deeper layer: straight down or by way of the layers above, then on, or back from the layers below it. */
function familiesDown(soil: LayeredSoil, source: number, receiver: number): readonly Family[] {
  const through = (at: Reflections, lambda: number): number => {
    let share = 1 / (1 - at.up[source]! * at.down[source]! * twice(thicknessAt(soil, source), lambda));
    for (let i = source; i < receiver; i++) {
      share *= (1 + at.down[i]!) / (1 + at.down[i + 1]! * twice(thicknessAt(soil, i + 1), lambda));
    }
    return share;
  };
  const topM = spanOf(soil, source).topM;
  const footM = spanOf(soil, receiver).footM;
  const onward: Family[] = [
    { coefficient: through, places: [{ sign: 1, offsetM: 0, away: -1 }] },
    {
      coefficient: (at, lambda) => through(at, lambda) * at.up[source]!,
      places: [{ sign: -1, offsetM: 2 * topM, away: -1 }],
    },
  ];
  if (footM === Number.POSITIVE_INFINITY) return onward;
  const back: Family[] = [
    {
      coefficient: (at, lambda) => through(at, lambda) * at.down[receiver]!,
      places: [{ sign: -1, offsetM: 2 * footM, away: 1 }],
    },
    {
      coefficient: (at, lambda) => through(at, lambda) * at.up[source]! * at.down[receiver]!,
      places: [{ sign: 1, offsetM: 2 * (footM - topM), away: 1 }],
    },
  ];
  return [...onward, ...back];
}

/** Receiver in a layer further up: the same, upside down. */
function familiesUp(soil: LayeredSoil, source: number, receiver: number): readonly Family[] {
  const through = (at: Reflections, lambda: number): number => {
    let share = 1 / (1 - at.up[source]! * at.down[source]! * twice(thicknessAt(soil, source), lambda));
    for (let i = source; i > receiver; i--) {
      share *= (1 + at.up[i]!) / (1 + at.up[i - 1]! * twice(thicknessAt(soil, i - 1), lambda));
    }
    return share;
  };
  const topM = spanOf(soil, receiver).topM;
  const footM = spanOf(soil, source).footM;
  const onward: Family[] = [
    { coefficient: through, places: [{ sign: 1, offsetM: 0, away: 1 }] },
    {
      coefficient: (at, lambda) => through(at, lambda) * at.up[receiver]!,
      places: [{ sign: -1, offsetM: 2 * topM, away: -1 }],
    },
  ];
  if (footM === Number.POSITIVE_INFINITY) return onward;
  const back: Family[] = [
    {
      coefficient: (at, lambda) => through(at, lambda) * at.down[source]!,
      places: [{ sign: -1, offsetM: 2 * footM, away: 1 }],
    },
    {
      coefficient: (at, lambda) => through(at, lambda) * at.down[source]! * at.up[receiver]!,
      places: [{ sign: 1, offsetM: -2 * (footM - topM), away: -1 }],
    },
  ];
  return [...onward, ...back];
}

/** exp(-2 lambda thickness): once down a layer and up again; nothing comes back from an endless depth. */
function twice(thickM: number, lambda: number): number {
  return thickM === Number.POSITIVE_INFINITY ? 0 : Math.exp(-2 * lambda * thickM);
}

function thicknessAt(soil: LayeredSoil, layer: number): number {
  return soil.thicknessM[layer] ?? Number.POSITIVE_INFINITY;
}

function spanOf(soil: LayeredSoil, layer: number): { readonly topM: number; readonly footM: number } {
  const boundaries = boundariesM(soil);
  return { topM: boundaries[layer - 1] ?? 0, footM: boundaries[layer] ?? Number.POSITIVE_INFINITY };
}
