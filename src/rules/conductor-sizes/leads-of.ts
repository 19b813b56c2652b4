import type { ConductorFacts, Facts } from '../../facts/facts.ts';
import type { Line, Site } from '../../site/site.ts';
import { onceFor } from '../../units/once-for.ts';

const fromStreet: ReadonlySet<string> = new Set(['telephone', 'cable tv', 'network', 'fibre']);

/** Protectors of telephone, cable and network lines that come in from the street; those of dishes and masts are not. */
export const communicationsProtectors: (site: Site) => ReadonlySet<string> = onceFor((site) => {
  const [ofStreet, ofOthers] = [true, false].map((isOfStreet) => {
    const lines = site.lines.filter((l) => isCommunications(l) === isOfStreet);
    return new Set(lines.flatMap((l) => l.path.flatMap((s) => (s.is === 'part' ? [s.at.part] : []))));
  });
  const asked = site.arresters.filter(
    (a) => a.kind === 'telephone protector' || (ofStreet!.has(a.id) && !ofOthers!.has(a.id)),
  );
  return new Set(asked.map((a) => a.id));
});

/** Grounding blocks: bars through which lines of the street come in and no line of an antenna. */
export const communicationsBlocks: (site: Site) => ReadonlySet<string> = onceFor((site) => {
  const landing = (bar: string) =>
    site.lines.filter((l) => l.path.some((s) => (s.is === 'part' || s.is === 'bond') && s.at.part === bar));
  const isBlock = (bar: string) => landing(bar).length > 0 && landing(bar).every(isCommunications);
  const holds = new Set(site.arresters.flatMap((a) => a.on?.part ?? []));
  return new Set(site.bars.flatMap(({ id }) => (isBlock(id) && !holds.has(id) ? [id] : [])));
});

function isCommunications({ kind, path }: Line): boolean {
  return fromStreet.has(kind) && path.some((s) => s.is === 'street');
}

function meets(c: ConductorFacts, ids: ReadonlySet<string>): boolean {
  return [...c.ends, ...c.passes].some((id) => id !== null && ids.has(id));
}

/** Leads of the protectors and of the grounding blocks of communications lines. */
export function communicationsLeads({ conductors, site }: Pick<Facts, 'conductors' | 'site'>) {
  const protectors = communicationsProtectors(site);
  const blocks = communicationsBlocks(site);
  return conductors.filter(
    (c) => (c.role === 'arrester lead' && meets(c, protectors)) || (c.role === 'bond' && meets(c, blocks)),
  );
}

/** Leads of masts, antennas and the arresters of lines that come from them; the protectors of services are left out. */
export function antennaLeads({ conductors, site }: Pick<Facts, 'conductors' | 'site'>) {
  const mains = site.arresters.filter((a) => a.kind === 'mains protector').map((a) => a.id);
  const others = new Set([...communicationsProtectors(site), ...mains]);
  return conductors.filter((c) => c.role === 'mast lead' || (c.role === 'arrester lead' && !meets(c, others)));
}
