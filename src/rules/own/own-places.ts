import type { Facts } from '../../facts/facts.ts';
import type { OwnSubject } from '../../site/standard/owner-standard.ts';
import { exact, type Interval } from '../../units/interval.ts';
import { arresterLead } from '../lines/arrester-lead.ts';
import { sitePlaces } from './site-places.ts';

/** One part that an owner's limit looks at: what it has by the name of the field; null: not known. */
export interface OwnPlace {
  readonly at: readonly string[];
  readonly figures: Readonly<Record<string, Interval | null>>;
  readonly words: Readonly<Record<string, string | null>>;
  /** Left out: the part itself. Else the earth of the parts; of one of several systems; or none that the file tells of. */
  readonly of?: 'earth' | 'severalEarths' | 'noEarth';
}

export type OwnFacts = Pick<Facts, 'site' | 'conductors' | 'joints' | 'electrodes' | 'arresters' | 'earth' | 'bonding'>;

/** The parts of a subject, in the order of their facts. */
export function ownPlaces(subject: OwnSubject, facts: OwnFacts): readonly OwnPlace[] {
  if (subject === 'site') return sitePlaces(facts);
  if (subject === 'arresters') return ofArresters(facts);
  if (subject === 'electrodes' || subject === 'rods') return ofElectrodes(subject, facts);
  return subject.startsWith('joints') ? ofJoints(subject, facts) : ofConductors(subject, facts);
}

function ofConductors(subject: OwnSubject, { conductors, site }: OwnFacts): readonly OwnPlace[] {
  const bars = new Set(site.bars.map((b) => b.id));
  const electrodes = new Set(site.electrodes.map((e) => e.id));
  const ends = (ids: readonly (string | null)[], among: ReadonlySet<string>) =>
    ids.map((id) => id !== null && among.has(id));
  const fits = {
    'conductors between bars': (c: OwnFacts['conductors'][number]) => ends(c.ends, bars).every(Boolean),
    'conductors to electrodes': (c: OwnFacts['conductors'][number]) =>
      ends([...c.ends, ...c.passes], electrodes).some(Boolean),
    'mast leads': (c: OwnFacts['conductors'][number]) => c.role === 'mast lead',
  } as Partial<Record<OwnSubject, (c: OwnFacts['conductors'][number]) => boolean>>;
  return conductors
    .filter((c) => fits[subject]?.(c) ?? true)
    .map((c) => ({
      at: [c.id],
      figures: { wire: c.areaM2, length: c.lengthM },
      words: { metal: c.wire?.metal?.name ?? null },
    }));
}

function ofJoints(subject: OwnSubject, { joints, site }: OwnFacts): readonly OwnPlace[] {
  const among = subject === 'joints on bars' ? site.bars : subject === 'joints on electrodes' ? site.electrodes : null;
  const ids = among === null ? null : new Set<string>(among.map((p) => p.id));
  return joints
    .filter((j) => ids === null || (j.on !== null && ids.has(j.on)))
    .map((j) => ({
      at: [j.id],
      figures: { bolts: j.bolts === null ? null : exact(j.bolts), resistance: j.resistanceOhm },
      words: { kind: j.kind, listed: j.listed === 'unknown' ? null : j.listed },
    }));
}

function ofElectrodes(subject: OwnSubject, { electrodes }: OwnFacts): readonly OwnPlace[] {
  return electrodes
    .filter((e) => subject === 'electrodes' || /^rods?$/.test(e.part.kind))
    .map((e) => ({
      at: [e.id],
      figures: { length: e.part.lengthM, diameter: e.part.diameterM, resistance: e.aloneOhm },
      words: { kind: e.part.kind === 'unknown' ? null : e.part.kind, metal: e.part.metal?.name ?? null },
    }));
}

function ofArresters({ arresters, conductors, site }: OwnFacts): readonly OwnPlace[] {
  return arresters.map((a) => {
    const { kind, listed } = a.part;
    const lead = arresterLead(a, conductors, site);
    return {
      at: [a.id],
      figures: { lead: lead.bolted ? exact(0) : lead.lengthM },
      words: { kind: kind === 'unknown' ? null : kind, listed: listed === 'unknown' ? null : listed },
    };
  });
}
