import type { ConductorFacts, Facts } from '../../facts/facts.ts';
import type { Arrester, Site } from '../../site/site.ts';

const fromStreet: ReadonlySet<string> = new Set(['telephone', 'cable tv', 'network', 'fibre']);

/** Protectors of telephone, cable and network lines that come in from the street; those of dishes and masts are not. */
export function communicationsProtectors(site: Site): ReadonlySet<string> {
  return new Set(site.arresters.filter((a) => isOfCommunications(a, site)).map((a) => a.id));
}

function isOfCommunications(a: Arrester, site: Site): boolean {
  if (a.kind === 'telephone protector') return true;
  const lines = site.lines.filter((l) => l.path.some((s) => s.is === 'part' && s.at.part === a.id));
  return lines.length > 0 && lines.every((l) => fromStreet.has(l.kind) && l.path.some((s) => s.is === 'street'));
}

function meets(c: ConductorFacts, ids: ReadonlySet<string>): boolean {
  return [...c.ends, ...c.passes].some((id) => id !== null && ids.has(id));
}

/** Leads of the protectors of communications lines. */
export function communicationsLeads({ conductors, site }: Pick<Facts, 'conductors' | 'site'>) {
  const protectors = communicationsProtectors(site);
  return conductors.filter((c) => c.role === 'arrester lead' && meets(c, protectors));
}

/** Leads of masts, antennas and the arresters of lines that come from them; the protectors of services are left out. */
export function antennaLeads({ conductors, site }: Pick<Facts, 'conductors' | 'site'>) {
  const mains = site.arresters.filter((a) => a.kind === 'mains protector').map((a) => a.id);
  const others = new Set([...communicationsProtectors(site), ...mains]);
  return conductors.filter((c) => c.role === 'mast lead' || (c.role === 'arrester lead' && !meets(c, others)));
}
