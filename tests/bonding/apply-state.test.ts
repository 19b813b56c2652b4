import { describe, expect, test } from 'vitest';
import { bondingOf } from '../../src/bonding/bonding-of.ts';
import { readSite } from '../../src/site/read-site.ts';

/** Panel, rod and bar in a row: panel - c1 - E1 - c2 - bar; the bar holds an arrester and guy-1 is tied to it. */
const text = `
site: {name: Row, region: us, units: ft, service: panel}
electrodes:
  E1: {kind: rod, length: 8 ft}
supports:
  tower: {kind: mast, height: 30 ft, guys: {guy-1: {anchor: [10, 0], metal: galvanised steel, insulators: no}}}
bars:
  bar: {kind: entry panel}
arresters:
  a1: {kind: gas tube, on: bar}
equipment:
  panel: {kind: service panel}
lines:
  feed: {kind: coax, path: [a1, {plug: j1}, panel]}
conductors:
  c1: {from: panel, to: E1, wire: 6 AWG copper, length: 5 ft, joints: [bolted lug, twist, clamp1]}
  c2: {from: E1, to: bar, wire: 6 AWG copper, length: 5 ft, joints: [clamp1, bolted lug]}
  c3: {from: guy-1@tower, to: bar, wire: 6 AWG copper, length: 2 ft}
joints:
  clamp1: {kind: acorn clamp, on: E1}
states:
  end: {lost: ["c1:panel"]}
  splice: {lost: ["c1:splice1"]}
  alias: {lost: ["c2:to"]}
  clamp: {lost: [clamp1]}
  clamp-by-wire: {lost: ["c2:E1"]}
  mount: {lost: ["a1:bar"]}
  wire: {lost: [c2]}
  guy: {lost: [guy-1]}
  plug: {lost: [j1]}
  loose: {set: {a1.bonded: no}}
  other: {says: all in place, set: {panel.rating: 60 A}}
`;

const { site } = readSite(text, 'row.site.yaml');
const groupsIn = (state: string | null) =>
  bondingOf(site!, state)
    .bonding.groups.map(({ parts }) => parts.join(' '))
    .filter((parts) => parts !== 'tower');

describe('what a state loses or sets is gone from the metal', () => {
  test.each([
    [null, ['E1 a1 bar panel']],
    ['end', ['E1 a1 bar', 'panel']],
    ['splice', ['E1 a1 bar', 'panel']],
    ['alias', ['E1 panel', 'a1 bar']],
    // One clamp holds both wires on the rod: without it, three pieces.
    ['clamp', ['E1', 'a1 bar', 'panel']],
    ['clamp-by-wire', ['E1', 'a1 bar', 'panel']],
    ['mount', ['E1 bar panel', 'a1']],
    ['wire', ['E1 panel', 'a1 bar']],
    ['guy', ['E1 a1 bar panel']],
    ['loose', ['E1 bar panel', 'a1']],
    ['other', ['E1 a1 bar panel']],
  ])('%s', (state, groups) => {
    expect(groupsIn(state)).toEqual(groups);
  });

  test('a lost plug parts the shield as a pulled one does', () => {
    const { graph } = bondingOf(site!, 'plug');
    const gaps = graph.filterEdges((_key, { kind, part }) => kind === 'gap' && part === 'feed');
    expect(gaps.length).toBeGreaterThan(0);
    expect(
      bondingOf(site!, null).graph.filterEdges((_key, { kind, part }) => kind === 'gap' && part === 'feed'),
    ).toEqual([]);
  });

  test('a lost guy leaves the wire that hung on it in the air', () => {
    expect(bondingOf(site!, null).graph.hasNode('guy-1@tower')).toBe(true);
    expect(bondingOf(site!, 'guy').graph.hasNode('guy-1@tower')).toBe(false);
  });
});
