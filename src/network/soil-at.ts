import type { Electrode, Site } from '../site/site.ts';
import type { LayeredSoil } from '../soil/layered-soil.ts';
import { type Interval, middle } from '../units/interval.ts';

/** Depth of a wire that nobody typed, metres. Ours. */
const usualM = 0.5;

/** Resistivity of a soil about the middle of each electrode (or bare wire), ohm metre. */
export function soilAt(site: Pick<Site, 'electrodes'>, soil: LayeredSoil): (part: string) => number {
  const electrodes = new Map(site.electrodes.map((e) => [e.id, e]));
  return (part) => {
    const electrode = electrodes.get(part);
    return resistivityAt(soil, electrode === undefined ? usualM : depthOf(electrode));
  };
}

/** Of its middle. */
function depthOf({ kind, topM, lengthM, depthM }: Electrode): number {
  const isUpright = kind === 'rod' || kind === 'rods' || kind === 'drilled rod' || kind === 'well casing';
  if (isUpright) return (likely(topM) ?? 0) + (likely(lengthM) ?? 0) / 2;
  return likely(depthM) ?? usualM;
}

function resistivityAt({ resistivityOhmM, thicknessM }: LayeredSoil, depthM: number): number {
  let footM = 0;
  for (const [i, thick] of thicknessM.entries()) {
    footM += thick;
    if (depthM <= footM) return resistivityOhmM[i]!;
  }
  return resistivityOhmM.at(-1)!;
}

function likely(figure: Interval | null): number | null {
  return figure === null ? null : middle(figure);
}
