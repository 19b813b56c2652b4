import { describe, expect, test } from 'vitest';
import { bondingOf } from '../../src/bonding/bonding-of.ts';
import { wayBetween } from '../../src/bonding/way-between.ts';
import { pointOfText } from '../../src/site/point-text.ts';
import { readSite } from '../../src/site/read-site.ts';

/** R1 ── main, 10 m ── panel; spur from R2 lands on it. */
const siteWith = (point: string, more = '') =>
  readSite(
    `
site: {name: Tap, region: iec, units: m, service: panel}
electrodes:
  R1: {kind: rod}
  R2: {kind: rod}
bars: {bar: {kind: entry panel}}
equipment: {panel: {kind: service panel}}
conductors:
  main: {from: R1, to: panel, wire: 16 mm2 copper, length: 10 m${more}}
  spur: {from: R2, to: ${point}, wire: 16 mm2 copper, length: 2 m}
`,
    'tap.site.yaml',
  ).site!;

const groupsOf = (site: ReturnType<typeof siteWith>) =>
  bondingOf(site, null).bonding.groups.map((g) => g.parts.join(' '));

describe('a wire that lands on another wire', () => {
  test.each(['main', "'main@4 m'"])('is bonded to it at %s', (point) => {
    expect(groupsOf(siteWith(point))).toEqual(['R1 R2 panel', 'bar']);
    expect(bondingOf(siteWith(point), null).bonding.unbondedElectrodes).toEqual([]);
  });

  test('at a known place: the lengths of both sides are known', () => {
    const way = (to: string) => {
      const answer = wayBetween(siteWith("'main@4 m'"), null, pointOfText('R2')!, pointOfText(to)!);
      return answer.ok ? answer.between.way?.lengthM : null;
    };
    // 2 m of spur, then 4 m back to R1 or 6 m on to the panel.
    expect(way('R1')).toEqual({ low: 6, high: 6 });
    expect(way('panel')).toEqual({ low: 8, high: 8 });
  });

  test('at an unknown place: no length is made up', () => {
    const answer = wayBetween(siteWith('main'), null, pointOfText('R2')!, pointOfText('panel')!);
    expect(answer.ok && answer.between.way?.lengthM).toBeNull();
    expect(answer.ok && answer.between.way?.lengthAtLeastM).toBe(2);
  });

  test('beside a clamp that the wire passes: all hang together', () => {
    expect(groupsOf(siteWith('main', ', passes: [bar]'))).toEqual(['R1 R2 bar panel']);
  });

  test('the wire and each end of it are weak points for what hangs behind', () => {
    const weak = bondingOf(siteWith("'main@4 m'"), null).bonding.weakPoints;
    const losing = (id: string) => weak.filter(({ losesService }) => losesService.includes(id)).map(({ at }) => at);
    expect(losing('R2')).toEqual(['main', 'main:panel', 'spur', 'spur:R2', 'spur:main']);
    expect(losing('R1')).toEqual(['main', 'main:R1', 'main:panel']);
  });

  test('a wire that is gone holds nothing', () => {
    expect(groupsOf(siteWith('main', ', present: no'))).toEqual(['R1', 'R2', 'bar', 'panel']);
    expect(groupsOf(siteWith('main', ', condition: open'))).toEqual(['R1', 'R2', 'bar', 'panel']);
  });
});
