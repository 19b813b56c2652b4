import { type ImageSet, type SoilImages, soilImages } from '../soil/layer-images.ts';
import type { LayeredSoil } from '../soil/layered-soil.ts';
import type { Body } from './body.ts';
import { type SolvedBodies, type SolveOptions, solveBodies, type UnsolvedBodies } from './solve-bodies.ts';

/**
 * A soil as `factor` times one whose first layer is of 1 ohm metre: all resistances are proportional to all resistivities,
 * so that soils that differ by a factor alone are solved once.
 */
export interface ScaledSoil {
  readonly factor: number;
  readonly images: SoilImages;
}

/** Soils of one shape share their images. Those are coarse: 1e-4, beside 5e-3 of the elements. */
export function scaledSoils(): (soil: LayeredSoil) => ScaledSoil {
  const made = new Map<string, SoilImages>();
  return ({ resistivityOhmM, thicknessM }) => {
    const factor = resistivityOhmM[0]!;
    const unit = { resistivityOhmM: resistivityOhmM.map((ohmM) => ohmM / factor), thicknessM };
    const key = JSON.stringify(unit);
    const images = made.get(key) ?? soilImages(unit, 'coarse');
    made.set(key, images);
    return { factor, images };
  };
}

/** Solves bodies in soils; what differs by a factor alone is solved once. One set of bodies, one solver. */
export function scaledSolver(bodies: readonly Body[], options: SolveOptions = {}) {
  const isSheathed = bodies.some((body) => body.runs.some((run) => run.sheath !== null));
  const solved = new Map<SoilImages, SolvedBodies | UnsolvedBodies>();
  return ({ factor, images }: ScaledSoil): SolvedBodies | UnsolvedBodies => {
    if (isSheathed)
      return scaled(
        solveBodies(
          bodies.map((b) => unitSheaths(b, factor)),
          images,
          options,
        ),
        factor,
      );
    const unit = solved.get(images) ?? solveBodies(bodies, images, options);
    solved.set(images, unit);
    return scaled(unit, factor);
  };
}

function unitSheaths({ runs }: Body, factor: number): Body {
  return {
    runs: runs.map((run) => {
      if (run.sheath === null) return run;
      return { ...run, sheath: { ...run.sheath, resistivityOhmM: run.sheath.resistivityOhmM / factor } };
    }),
  };
}

function scaled(unit: SolvedBodies | UnsolvedBodies, factor: number): SolvedBodies | UnsolvedBodies {
  if (!unit.ok || factor === 1) return unit;
  return {
    ...unit,
    images: scaledImages(unit.images, factor),
    resistanceOhm: unit.resistanceOhm.map((ohm) => ohm * factor),
    aloneOhm: unit.aloneOhm.map((ohm) => ohm * factor),
    leakage: unit.leakage.map((ampere) => ampere / factor),
  };
}

function scaledImages({ soil, between }: SoilImages, factor: number): SoilImages {
  const resistivityOhmM = soil.resistivityOhmM.map((ohmM) => ohmM * factor);
  const layers = resistivityOhmM.length;
  const kept = new Array<ImageSet | undefined>(layers * layers);
  const scaledBetween: SoilImages['between'] = (source, receiver) => {
    const at = source * layers + receiver;
    kept[at] ??= scaledSet(between(source, receiver), factor);
    return kept[at];
  };
  return { soil: { ...soil, resistivityOhmM }, between: scaledBetween };
}

function scaledSet(set: ImageSet, factor: number): ImageSet {
  return { ...set, strengthOhmM: set.strengthOhmM.map((ohmM) => ohmM * factor) };
}
