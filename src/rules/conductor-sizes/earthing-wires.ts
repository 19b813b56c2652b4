import type { ConductorFacts } from '../../facts/facts.ts';
import type { Site } from '../../site/site.ts';

/** Earthing conductors: from the main bar or the service to an electrode. */
export function earthingWires(conductors: readonly ConductorFacts[], site: Site): readonly ConductorFacts[] {
  const electrodes = new Set(site.electrodes.map((e) => e.id));
  const main = new Set(site.bars.filter((b) => b.kind === 'main earthing bar').map((b) => b.id));
  main.add(site.header.service);
  const has = (c: ConductorFacts, ids: ReadonlySet<string>) =>
    [...c.ends, ...c.passes].some((id) => id !== null && ids.has(id));
  return conductors.filter(
    (c) => c.role === 'service electrode wire' || (c.role === 'bond' && has(c, electrodes) && has(c, main)),
  );
}
