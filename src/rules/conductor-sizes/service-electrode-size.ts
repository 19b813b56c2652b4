import type { ConductorFacts, Facts } from '../../facts/facts.ts';
import type { Electrode, Site } from '../../site/site.ts';
import { type LeastSections, sectionVerdict } from '../conductors/size-rule.ts';
import { nothingThere } from '../looked-at.ts';
import type { Verdict } from '../rule.ts';
import { tableEnds, tableRow } from './table-250-66.ts';

/** What an electrode asks of the wire that leads to it alone, least first. */
const classes = ['rod', 'concrete', 'ring', 'other'] as const;
export type ElectrodeClass = (typeof classes)[number];

const driven: readonly string[] = ['rod', 'rods', 'pipe', 'plate'];

export function classOf(e: Electrode): ElectrodeClass {
  if (driven.includes(e.kind)) return 'rod';
  if (e.kind === 'concrete-encased') return 'concrete';
  return e.kind === 'buried wire' && e.closed === 'yes' ? 'ring' : 'other';
}

type Cap = Pick<LeastSections, 'copper' | 'aluminium'>;
type Asked = Pick<Facts, 'sections' | 'conductors' | 'site'>;

/**
 * One verdict for each wire from the service to electrodes of this class and of none that asks for more: a wire that goes on
 * to another kind of electrode is judged by that. `cap`: the section that need not be exceeded, by the electrodes it meets.
 */
export function serviceElectrodeWires(
  { sections, conductors, site }: Asked,
  ofClass: ElectrodeClass,
  cap: (electrodes: readonly Electrode[]) => Cap,
): readonly Verdict[] {
  const wires = conductors.flatMap((c) => {
    if (c.role !== 'service electrode wire') return [];
    const electrodes = electrodesOn(c, site);
    return mostAsking(electrodes) === ofClass ? [{ c, electrodes }] : [];
  });
  if (wires.length === 0) return nothingThere({ sections }, 'conductors');
  return wires.map(({ c, electrodes }) => ofWire(c, cap(electrodes), site));
}

/** The electrodes that a wire lands on or passes. */
export function electrodesOn({ ends, passes }: ConductorFacts, site: Pick<Site, 'electrodes'>): readonly Electrode[] {
  return [...ends, ...passes].flatMap((id) => site.electrodes.find((e) => e.id === id) ?? []);
}

/** The class by which the wire to these electrodes is judged; undefined without any. */
export function mostAsking(electrodes: readonly Electrode[]): ElectrodeClass | undefined {
  return classes.findLast((name) => electrodes.some((e) => classOf(e) === name));
}

/** The table by the service conductor, but no more than the cap; without the service conductor the cap meets it, less may. */
function ofWire(c: ConductorFacts, cap: Cap, site: Site): Verdict {
  const service = serviceWire(c, site);
  const [most, fewest] = [tableRow(service, 'high'), tableRow(service, 'low')];
  if (most !== null && fewest !== null) {
    const v = byRow(c, most, cap);
    return v.is === 'not met' && byRow(c, fewest, cap).is !== 'not met' ? hangsOnService(c) : v;
  }
  const v = sectionVerdict(c, listed(cap.copper, cap.aluminium));
  if (v.is !== 'not met') return v;
  const least = sectionVerdict(
    c,
    listed(tableEnds.least.copper, cap.aluminium === null ? null : tableEnds.least.aluminium),
  );
  if (least.is === 'not met') return least;
  return hangsOnService(c);
}

function hangsOnService({ id }: ConductorFacts): Verdict {
  return { is: 'cannot tell', at: [id], because: { key: 'service unknown' }, settle: { key: 'read service' } };
}

function byRow(c: ConductorFacts, row: NonNullable<ReturnType<typeof tableRow>>, cap: Cap): Verdict {
  return sectionVerdict(c, listed(lesser(row.copper, cap.copper), lesser(row.aluminium, cap.aluminium)));
}

function listed(copper: number, aluminium: number | null): LeastSections {
  return { copper, aluminium, steel: null, cladSteel: null };
}

function lesser(asked: number, cap: number): number;
function lesser(asked: number, cap: number | null): number | null;
function lesser(asked: number, cap: number | null): number | null {
  return cap === null ? null : Math.min(asked, cap);
}

function serviceWire(c: ConductorFacts, site: Site) {
  const box = site.equipment.find((e) => c.ends.includes(e.id) && e.serviceWire !== null);
  return (box ?? site.equipment.find((e) => e.id === site.header.service))?.serviceWire ?? null;
}
