import { type IdSection, placeOf, type Report, refuse, type Spot } from '../reading/report.ts';
import type { Span } from '../reading/tree.ts';
import type { TypedSite } from '../reading/typed-site.ts';
import type { SourcePlace } from '../site.ts';

/** Something of the file that has an id. */
export interface Known {
  readonly id: string;
  readonly section: IdSection;
  readonly kind: string;
  readonly spot: Spot;
  readonly at: Span;
}

export type Ids = ReadonlyMap<string, Known>;

/** Every id of the file; one that stands twice is noted at its second place. */
export function collectIds(site: TypedSite, report: Report): Ids {
  const ids = new Map<string, Known>();
  const all = [...namedMembers(site), ...guysOf(site, report), ...plugsOf(report)];
  for (const known of all.sort((a, b) => a.at.start - b.at.start)) {
    const first = ids.get(known.id);
    if (first === undefined) ids.set(known.id, known);
    else refuseTwice(first, known);
  }
  return ids;
}

function refuseTwice(first: Known, second: Known): void {
  const { line }: SourcePlace = placeOf(first.spot, first.at);
  refuse(second.spot, second.at, 'id-twice', { id: second.id, firstLine: line, section: first.section });
}

function namedMembers(site: TypedSite): readonly Known[] {
  const { buildings, places, states, readings } = site;
  const sections: readonly (readonly [IdSection, readonly Omit<Known, 'section'>[]])[] = [
    ['buildings', buildings],
    ['places', places],
    ...(Object.entries(site.parts) as [IdSection, readonly Omit<Known, 'section'>[]][]),
    ['states', states],
    ['readings', readings],
  ];
  return sections.flatMap(([section, members]) =>
    members.map(({ id, kind, spot, at }) => ({ id, section, kind, spot, at })),
  );
}

function guysOf(site: TypedSite, report: Report): readonly Known[] {
  return site.parts.supports.flatMap((support) =>
    (support.values.guys ?? []).map(
      ({ id, path, at }): Known => ({ id, section: 'guys', kind: 'guy', spot: { path, report }, at }),
    ),
  );
}

function plugsOf(report: Report): readonly Known[] {
  return report.plugs.map(({ id, spot, at }) => ({ id, section: 'plugs', kind: 'plug', spot, at }));
}
