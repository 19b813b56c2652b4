import type { Study, StudyFinding } from '../study/study.ts';
import { byCodeUnit } from '../units/by-code-unit.ts';
import { comparisonFormat } from './comparison.ts';
import { openFindings, placesOf } from './findings/finding-units.ts';
import { isSameBounded } from './same-figure.ts';
import type { StateColumn, StateGap, StateRow, StateTable } from './state-table.ts';

/** All states of one site side by side, and what differs between them. At least one study, all of one file. */
export function tabulateStates(studies: readonly Study[]): StateTable {
  const columns = studies.map(columnOf);
  const { site, tool } = studies[0]!;
  const { name, file, checksum, revision, region } = site;
  return {
    format: comparisonFormat,
    site: { name, file, checksum, revision, date: site.prepared.date, region, tool },
    columns,
    rows: [
      ...countRows(columns),
      ...earthRow(columns),
      ...electrodeRows(studies, columns),
      ...gapRows(columns),
      ...reachRows(columns),
      ...weakRows(columns),
      ...findingRows(studies),
    ],
  };
}

function columnOf(study: Study): StateColumn {
  const { state, verdict, bonding, earth, reach, gaps } = study;
  const { hazards, defects, advices, cannotTell, agreed } = verdict;
  return {
    id: state.id,
    says: state.says,
    ground: state.ground ?? null,
    lost: state.lost ?? [],
    set: state.set ?? {},
    counts: { hazards, defects, advices, cannotTell, agreed },
    unbondedElectrodes: bonding.unbondedElectrodes,
    perhapsUnbonded: bonding.perhapsUnbonded.map((p) => p.electrode),
    groups: bonding.groups.length,
    earthOhm: earth.resistanceOhm,
    reach,
    weakPoints: bonding.weakPoints,
    gaps: gaps ?? [],
  };
}

const isAlike = <T>(cells: readonly T[], same: (a: T, b: T) => boolean) => cells.every((cell) => same(cell, cells[0]!));
const isSame = <T>(a: T, b: T) => a === b;
const isSameJson = <T>(a: T, b: T) => JSON.stringify(a) === JSON.stringify(b);

function countRows(columns: readonly StateColumn[]): readonly StateRow[] {
  const counts = (['hazards', 'defects', 'advices', 'cannotTell', 'agreed'] as const).map((what) => ({
    what,
    cells: columns.map((c) => c.counts[what]),
  }));
  const groups = { what: 'groups' as const, cells: columns.map((c) => c.groups) };
  return [...counts, groups].filter((row) => !isAlike(row.cells, isSame));
}

function earthRow(columns: readonly StateColumn[]): readonly StateRow[] {
  const cells = columns.map((c) => c.earthOhm);
  return isAlike(cells, isSameBounded) ? [] : [{ what: 'earthOhm', cells }];
}

/** null in a state in which the electrode is lost, or nobody knows where the service is. */
function electrodeRows(studies: readonly Study[], columns: readonly StateColumn[]): readonly StateRow[] {
  const there = studies.map((s) => new Set(s.earth.electrodes.map((e) => e.id)));
  const cellOf = (id: string, i: number) => {
    const { unbondedElectrodes, perhapsUnbonded } = columns[i]!;
    if (perhapsUnbonded.includes(id)) return 'perhaps' as const;
    if (unbondedElectrodes === null || !there[i]!.has(id)) return null;
    return unbondedElectrodes.includes(id) ? ('unbonded' as const) : ('bonded' as const);
  };
  return idsOf(there.flatMap((ids) => [...ids])).flatMap((at): readonly StateRow[] => {
    const cells = columns.map((_, i) => cellOf(at, i));
    return isAlike(cells, isSame) ? [] : [{ what: 'electrode', at, cells }];
  });
}

/** Each opening of any state; null in a state that does not open it. */
function gapRows(columns: readonly StateColumn[]): readonly StateRow[] {
  const openings = new Map(columns.flatMap((c) => c.gaps.map((g) => [JSON.stringify([g.at, g.line]), g] as const)));
  return [...openings]
    .sort(([a], [b]) => byCodeUnit(a, b))
    .map(([, { at, line }]) => ({
      what: 'gap',
      at,
      line,
      cells: columns.map((c) => cellOfGap(c.gaps.find((g) => g.at === at && g.line === line))),
    }));
}

function cellOfGap(gap: StateGap | undefined) {
  if (gap === undefined) return null;
  const { gapM, end, withstandV, peakV } = gap;
  return { gapM, end, withstandV, peakV };
}

/** Boxes that are not reached by the same in every state: what still reaches each of them, state by state. */
function reachRows(columns: readonly StateColumn[]): readonly StateRow[] {
  const boxes = idsOf(columns.flatMap((c) => c.reach.map((r) => r.part)));
  return boxes.flatMap((at): readonly StateRow[] => {
    const cells = columns.map((c) => c.reach.find((r) => r.part === at)?.by ?? []);
    return isAlike(cells, isSameJson) ? [] : [{ what: 'reach', at, cells }];
  });
}

function weakRows(columns: readonly StateColumn[]): readonly StateRow[] {
  const points = idsOf(columns.flatMap((c) => c.weakPoints.map((w) => w.at)));
  return points.flatMap((at): readonly StateRow[] => {
    const cells = columns.map((c) => c.weakPoints.some((w) => w.at === at));
    return isAlike(cells, isSame) ? [] : [{ what: 'weakPoint', at, cells }];
  });
}

/** Conditions that are not met, or cannot be told, in some states and not in others; place by place. */
function findingRows(studies: readonly Study[]): readonly StateRow[] {
  const open = studies.map((s) => new Map(openPlaces(s.findings)));
  const first = new Map<string, Placed>();
  for (const [key, placed] of open.flatMap((found) => [...found])) if (!first.has(key)) first.set(key, placed);
  return [...first].flatMap(([key, { finding, at }]): readonly StateRow[] => {
    const cells = open.map((found) => found.get(key)?.finding.outcome ?? null);
    if (isAlike(cells, isSame)) return [];
    const { rule, severity, title } = finding;
    return [{ what: 'finding', rule, severity, title, at, cells }];
  });
}

interface Placed {
  readonly finding: StudyFinding;
  readonly at: readonly string[];
}

function openPlaces(findings: readonly StudyFinding[]): readonly (readonly [string, Placed])[] {
  return openFindings(findings).flatMap((finding) =>
    placesOf(finding).map((at) => [JSON.stringify([finding.rule, finding.codeSet, at]), { finding, at }] as const),
  );
}

const idsOf = (ids: readonly string[]): readonly string[] => [...new Set(ids)].sort(byCodeUnit);
