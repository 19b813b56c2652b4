import { describe, expect, test } from 'vitest';
import { routeBetween, type SiteRoute } from '../../../src/rework/routes/route-between.ts';
import { siteObstacles } from '../../../src/rework/routes/site-obstacles.ts';
import { readSite } from '../../../src/site/read-site.ts';
import { runStudy } from '../../../src/study/run-study.ts';
import type { Study } from '../../../src/study/study.ts';

function studyOf(text: string): Study {
  const { site, problems } = readSite(text, 'test.site.yaml');
  if (site === null) throw new Error(JSON.stringify(problems));
  return runStudy(site, { state: null, version: 'test', checksum: '', date: null }).study;
}

function route(study: Study, ...ids: readonly string[]): SiteRoute {
  const found = routeBetween(study, ids);
  if ('none' in found) throw new Error(`${found.none}: ${found.at}`);
  return found;
}

/** A house of 10 m by 8 m, the panel inside its west wall, a bar on its east wall, gas from the south-west. */
const house = studyOf(`
site: {name: route test, region: us, units: m, service: panel}
buildings:
  house: {corners: [[0, 0], [10, 0], [10, 8], [0, 8]], height: 4}
electrodes:
  E1: {kind: rod, at: [-1, 6], length: 2.4 m}
  E2: {kind: rod, at: [14, 6], length: 2.4 m}
  E3: {kind: rod, at: [-1, -6], length: 2.4 m}
  E4: {kind: rod, length: 2.4 m}
  wire: {kind: buried wire, route: [[12, -4], [20, -4]], depth: 0.6}
equipment:
  panel: {kind: service panel, at: [0.2, 5], where: house, neutral_bonded: yes}
bars:
  bar: {kind: entry panel, at: [10, 6], where: outside}
conductors:
  lead: {from: panel, to: E1, wire: 16 mm2 copper}
  run: {from: E1, to: E3, wire: 16 mm2 copper, buried: 0.5 m, route: [[-1, 6], [-1, -6]]}
  planned: {from: E1, to: E2, wire: 16 mm2 copper, buried: 0.5 m, route: [[-1, 6], [5, 20], [14, 6]], present: no}
metalwork:
  gas: {kind: gas pipe, route: [[0, 2], [-10, 2]], buried: yes}
  pool: {kind: pool, route: [[12, 7], [12, 16], [20, 16], [20, 7]]}
`);

describe('the ground of a site', () => {
  const { areas, barriers, trenches } = siteObstacles(house);

  test('buildings and pools are closed shapes, each with its clearance', () => {
    expect(areas.map((a) => [a.id, a.cornersM.length, a.clearanceM])).toEqual([
      ['house', 4, 0.3],
      ['pool', 4, 1.5],
    ]);
  });

  test('a gas pipe ends at the wall that it enters, and runs on where it was typed no farther', () => {
    const [gas] = barriers;
    expect(gas!.routeM.slice(0, 2)).toEqual([
      [0, 2],
      [-10, 2],
    ]);
    expect(gas!.routeM[2]![0]).toBeLessThan(-40);
    expect(gas!.routeM[2]![1]).toBeCloseTo(2, 9);
  });

  test('trenches are what is buried with a typed way, and there', () => {
    expect(trenches.map((t) => [t.id, t.routeM, t.factor])).toEqual([
      [
        'run',
        [
          [-1, 6],
          [-1, -6],
        ],
        0.5,
      ],
      [
        'wire',
        [
          [12, -4],
          [20, -4],
        ],
        0.5,
      ],
    ]);
  });
});

describe('routes between parts', () => {
  test('out of the wall, past the north side of the house, down to the bar', () => {
    const found = route(house, 'panel', 'bar');
    expect(found.around).toEqual(['house']);
    expect(found.routeM).toHaveLength(1);
    expect([found.routeM[0]![0], found.routeM[0]!.at(-1)]).toEqual([
      [0.2, 5],
      [10, 6],
    ]);
    // From 0.5 m outside up the wall, along the north side and down again, corners cut by at most the clearance.
    expect(found.lengthM).toBeGreaterThan(0.2 + 3 + 10 + 2);
    expect(found.lengthM).toBeLessThan(0.5 + 3.3 + 10.6 + 2.3 + 0.3);
  });

  test('never over the gas pipe, though its end is near: the other way round the house', () => {
    const found = route(house, 'E1', 'E3');
    expect(found.around).toEqual(['house']);
    expect(found.lengthM).toBeGreaterThan(11 + 10 + 8);
    expect(found.inTrenchM).toBeLessThan(8);
  });

  test('a buried wire is met at its near end, a point of a part is where the part is', () => {
    const found = route(house, 'E2', 'wire');
    expect(found.lengthM).toBeCloseTo(10, 9);
    expect(found.routeM[0]!.at(-1)).toEqual([14, -4]);
    expect(routeBetween(house, ['E2@base', 'wire'])).toMatchObject({ lengthM: found.lengthM });
  });

  test('three parts with one junction or none, all legs named', () => {
    const found = route(house, 'bar', 'E2', 'wire');
    expect(found.legs.flatMap((l) => [l.from, l.to])).toEqual(expect.arrayContaining(['bar', 'E2', 'wire']));
    expect(found.lengthM).toBeCloseTo(
      found.legs.reduce((s, l) => s + l.lengthM, 0),
      9,
    );
  });

  test('no places, unknown ids, too few', () => {
    expect(routeBetween(house, ['E1', 'E4'])).toEqual({ none: 'no places', at: ['E4'] });
    expect(routeBetween(house, ['E1', 'nothing'])).toEqual({ none: 'no places', at: ['nothing'] });
    expect(routeBetween(house, ['E1', 'E1'])).toEqual({ none: 'too few parts', at: ['E1'] });
    const bare = studyOf(`
site: {name: bare, region: us, units: m, service: unknown}
electrodes: {a: {kind: rod, length: 2.4 m}, b: {kind: rod, length: 2.4 m}}
`);
    expect(routeBetween(bare, ['a', 'b'])).toEqual({ none: 'no places', at: ['a', 'b'] });
  });

  test('a rod on the far side of a pipe that crosses the whole site', () => {
    const cut = studyOf(`
site: {name: cut, region: us, units: m, service: unknown}
electrodes: {a: {kind: rod, at: [0, 5], length: 2.4 m}, b: {kind: rod, at: [0, -5], length: 2.4 m}}
metalwork: {gas: {kind: gas pipe, route: [[-3, 0], [3, 0]], buried: yes}}
`);
    expect(routeBetween(cut, ['a', 'b'])).toEqual({ none: 'no way', at: ['b'] });
  });
});
