import type { Fields, ValuesOf } from '../format/field.ts';
import { type PartFields, partFormats, type SectionFormat, sections } from '../format/format.ts';
import type { buildingFields, placeFields, soilFields } from '../format/ground.ts';
import type { headerFields } from '../format/header.ts';
import { isUnknown } from '../format/read-value.ts';
import type { readingFields } from '../format/readings.ts';
import type { stateFields } from '../format/states.ts';
import type { PartSection, SectionName } from '../site.ts';
import { meantName } from './meant-name.ts';
import { readFields, readMembers, type SectionState } from './read-members.ts';
import { below, type Report, refuse, type Spot } from './report.ts';
import { childOf, type MapNode, sayNode, type TreeNode } from './tree.ts';
import type { TypedMember } from './typed-part.ts';

export type TypedPart<S extends PartSection> = TypedMember<PartFields<S>>;
type Members<F extends Fields> = readonly TypedMember<F>[];

/** The whole file read by the table; nothing looked up yet. */
export interface TypedSite {
  readonly header: ValuesOf<typeof headerFields>;
  readonly headerNode: MapNode | null;
  readonly soil: { readonly values: ValuesOf<typeof soilFields>; readonly node: MapNode } | null;
  readonly buildings: Members<typeof buildingFields>;
  readonly places: Members<typeof placeFields>;
  readonly parts: { readonly [S in PartSection]: readonly TypedPart<S>[] };
  readonly states: Members<typeof stateFields>;
  readonly readings: Members<typeof readingFields>;
  readonly prices: MapNode | null;
  readonly sections: Readonly<Record<SectionName, SectionState>>;
}

/** Reads the tree by the table of the format. */
export function readTypedSite(root: MapNode, report: Report): TypedSite {
  const spot: Spot = { path: '', report };
  refuseOtherSections(root, spot);
  const headerNode = groupNode(root, 'site', spot);
  const unitsNode = headerNode === null ? null : childOf(headerNode, 'units');
  const units = unitsNode?.is === 'text' ? unitsNode.text.trim() : null;
  report.bareUnit = units === 'ft' || units === 'm' ? units : null;
  const states: [string, SectionState][] = [];
  const members = <F extends Fields>(name: SectionName) => {
    const read = readMembers<F>(formatOf(name), childOf(root, name), below(spot, name));
    states.push([name, read.state]);
    return read.members;
  };
  const header = readFields<typeof headerFields>(formatOf('site'), headerNode, 'unknown', below(spot, 'site'));
  const soilNode = groupNode(root, 'soil', spot);
  const soil = readFields<typeof soilFields>(formatOf('soil'), soilNode, 'unknown', below(spot, 'soil'));
  const pricesNode = groupNode(root, 'prices', spot);
  refusePriceGroups(pricesNode, below(spot, 'prices'));
  states.push(
    ['soil', soilNode === null ? 'missing' : 'listed'],
    ['prices', pricesNode === null ? 'missing' : 'listed'],
  );
  const read = {
    header: header.values,
    headerNode,
    soil: soilNode === null ? null : { values: soil.values, node: soilNode },
    buildings: members<typeof buildingFields>('buildings'),
    places: members<typeof placeFields>('places'),
    parts: Object.fromEntries(Object.keys(partFormats).map((name) => [name, members(name as PartSection)])),
    states: members<typeof stateFields>('states'),
    readings: members<typeof readingFields>('readings'),
    prices: pricesNode,
  };
  return { ...read, sections: Object.fromEntries(states) } as unknown as TypedSite;
}

export function formatOf(name: SectionName | 'site'): SectionFormat {
  return sections.find((s) => s.name === name)!;
}

function refuseOtherSections(root: MapNode, spot: Spot): void {
  const names = sections.map((s) => s.name);
  for (const { key, keyAt } of root.entries) {
    if ((names as readonly string[]).includes(key)) continue;
    refuse(below(spot, key), keyAt, 'section-unknown', { key, sections: names.join(', ') }, meantName(key, names));
  }
}

function refusePriceGroups(prices: MapNode | null, spot: Spot): void {
  for (const { key, value } of prices?.entries ?? []) {
    if (value.is === 'text' || value.is === 'blank') continue;
    refuse(below(spot, key), value.at, 'not-text', { found: sayNode(value), expects: 'a price such as 4.5' });
  }
}

function groupNode(root: MapNode, name: 'site' | 'soil' | 'prices', spot: Spot): MapNode | null {
  const node: TreeNode | null = childOf(root, name);
  if (node === null || isUnknown(node)) return null;
  if (node.is === 'map') return node;
  const keys = Object.keys(formatOf(name).fields).slice(0, 6).join(', ');
  return refuse(below(spot, name), node.at, 'not-a-group', { found: sayNode(node), keys });
}
