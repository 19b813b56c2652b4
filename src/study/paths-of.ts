import type { Bonding, Way } from '../bonding/bonding.ts';
import type { StudyPath } from './study.ts';

/** The way of each part to its nearest electrode and to the service; null stands where there is none. */
export function pathsOf(bonding: Bonding): readonly StudyPath[] {
  return bonding.ways.flatMap((w) => [
    ...(w.toElectrode === null ? [] : [pathOf(w.toElectrode, 'electrode')]),
    ...(w.toService === null ? [] : [pathOf(w.toService, 'service')]),
  ]);
}

export function pathOf(way: Way, aim: StudyPath['aim']): StudyPath {
  const { from, to, lengthM, lengthAtLeastM, resistanceOhm, inductanceH, bendsDeg, through, weakest } = way;
  const pieces = way.pieces.map((piece) => ({ ...piece, body: String(piece.body) }));
  const { separatePaths, separatePathsStrict, byFeeder } = way;
  return {
    from,
    to,
    aim,
    lengthM,
    lengthAtLeastM,
    resistanceOhm,
    inductanceH,
    bendsDeg,
    through,
    pieces,
    weakest,
    separatePaths,
    separatePathsStrict,
    byFeeder,
  };
}
