import type { Run } from './body.ts';
import type { Figures } from './closed-form.ts';
import { rodRuns } from './rod-runs.ts';

/** A rod in a filled hole: as thick as the hole, the rod its core. In a hole no wider than the rod there is no filling. */
export function drilledRodRuns(f: Figures): readonly Run[] {
  const coreRadiusM = f.diameterM! / 2;
  const sheath = f.holeDiameterM === f.diameterM ? null : { resistivityOhmM: f.backfillOhmM!, coreRadiusM };
  return rodRuns(f).map((run) => ({ ...run, radiusM: f.holeDiameterM! / 2, sheath }));
}
