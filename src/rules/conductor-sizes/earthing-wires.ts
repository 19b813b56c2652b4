import type { ConductorFacts } from '../../facts/facts.ts';
import type { Site } from '../../site/site.ts';

/** Earthing conductors: to an electrode from the main bar, from the service, or from the panel of a TT part. */
export function earthingWires(conductors: readonly ConductorFacts[], site: Site): readonly ConductorFacts[] {
  const electrodes = new Set(site.electrodes.map((e) => e.id));
  const main = new Set(site.bars.filter((b) => b.kind === 'main earthing bar').map((b) => b.id));
  main.add(site.header.service);
  for (const e of site.equipment) if (e.supply === 'tt') main.add(e.id);
  const has = (c: ConductorFacts, ids: ReadonlySet<string>) =>
    [...c.ends, ...c.passes].some((id) => id !== null && ids.has(id));
  return conductors.filter(
    (c) => c.role === 'service electrode wire' || (c.role === 'bond' && has(c, electrodes) && has(c, main)),
  );
}
