import { describe, expect, it } from 'vitest';
import { candidatesOf } from '../../../src/rework/candidates/candidates-of.ts';
import { sceneOf } from '../../../src/rework/candidates/scene.ts';
import { unanswered } from '../../../src/rework/candidates/unanswered.ts';
import { isOnWall } from '../../../src/rework/candidates/wall-of-panel.ts';
import { studyOfText } from '../plan/tried-site.ts';

interface Asked {
  readonly buildings?: string;
  readonly panel?: string;
  readonly main?: string;
  readonly pc?: string;
  readonly more?: string;
  readonly lines?: string;
}

/** A wire of a network from the house to the shack, bare at both walls; what is left out has no place. */
const site = ({
  buildings = '{house: {}, shack: {}}',
  panel = '',
  main = '',
  pc = '',
  more = '',
  lines = '',
}: Asked) => `
site: {name: Two houses, region: us, units: ft, service: main}
buildings: ${buildings}
electrodes:
  hr: {kind: rod, length: 8 ft, diameter: 5/8 in, metal: copper-clad steel}
  sr: {kind: rod, length: 8 ft, diameter: 5/8 in, metal: copper-clad steel}
bars:
  plate: {kind: entry panel, where: outside${panel}}
equipment:
  main: {kind: service panel, where: house${main}, neutral_bonded: yes}
  router: {kind: router, where: house}
  pc: {kind: computer, where: shack${pc}}
lines:
  net: {kind: network, path: [router, pc], length: 110 ft, buried: yes, wires: 8}
${lines}
conductors:
  h: {from: main, to: hr, wire: 6 AWG copper, length: 4 ft}
  tie: {from: hr, to: sr, wire: 6 AWG copper, length: 100 ft, buried: 18 in}
  b: {from: plate, to: sr, wire: 6 AWG copper, length: 2 ft}
${more}
`;

/** What the protectors of the network are bolted to, in the order of its walls. */
function mounts(text: string): readonly unknown[] | undefined {
  const work = candidatesOf(studyOfText(text)).find((w) => w.id === 'add-protector:net');
  return work?.changes.flatMap((c) => (c.is === 'add' && c.section === 'arresters' ? [c.fields.on] : []));
}

describe('one panel and two buildings', () => {
  const nearShack = { panel: ', at: [100, 1]', main: ', at: [1, 1]', pc: ', at: [102, 4]' };

  it('serves the building beside whose things it stands, and never both ends of a line', () => {
    expect(mounts(site(nearShack))).toEqual(['main', 'plate']);
  });

  it('serves the one into which lines go by it', () => {
    const lines = '  rope: {kind: coax, path: [v, gas, rig]}';
    const more = `
supports: {mast: {kind: mast, height: 30 ft, metal: galvanised steel}}
antennas: {v: {kind: vertical, on: mast@top, dc_path: yes}}
arresters: {gas: {kind: gas tube, on: plate}}`;
    const text = site({ lines, more }).replace('  pc: {', '  rig: {kind: transceiver, where: shack}\n  pc: {');
    expect(mounts(text)).toEqual(['main', 'plate']);
  });

  it('serves the one in which a short wire from it ends', () => {
    expect(mounts(site({ more: '  s: {from: plate, to: pc, wire: 6 AWG copper, length: 8 ft}' }))).toEqual([
      'main',
      'plate',
    ]);
  });

  it('is not proposed at either wall where nothing tells on which it hangs', () => {
    for (const asked of [
      {},
      { panel: ', at: [50, 0]', main: ', at: [1, 1]', pc: ', at: [102, 4]' },
      { panel: ', at: [100, 1]', pc: ', at: [102, 4]' },
    ]) {
      const study = studyOfText(site(asked));
      expect(isOnWall(sceneOf(study), 'plate', 'shack')).toBeNull();
      expect(mounts(site(asked))).toBeUndefined();
      const open = unanswered(study, candidatesOf(study)).map((f) => f.id);
      expect(open).toContain('arrester-on-every-control-line:net');
    }
  });

  it('hangs on the nearest wall where the corners of both are known', () => {
    const corners = (at: number) => `{corners: [[${at}, 0], [${at + 12}, 0], [${at + 12}, 10], [${at}, 10]]}`;
    const buildings = `{house: ${corners(0)}, shack: ${corners(100)}}`;
    expect(mounts(site({ buildings, panel: ', at: [99, 1]' }))).toEqual(['main', 'plate']);
  });
});

it('a site of one building has its panel at every wall, as before', () => {
  const text = site({ buildings: '{house: {}}' }).replace('where: shack', 'where: outside');
  expect(mounts(text)).toEqual(['plate']);
});
