import { describe, expect, test } from 'vitest';
import { bondingOf } from '../../src/bonding/bonding-of.ts';
import { dcOf } from '../../src/network/dc-of.ts';
import { readSite } from '../../src/site/read-site.ts';

/** Two rods of 40 ohm each, wired to the panel one by one by wires of no resistance. */
function earthWith(joined: string, wires: readonly string[]) {
  const conductors = wires.map((to, i) => `  c${i}: {from: panel, to: ${to}, resistance: 0 ohm, joints: none}`);
  const { site } = readSite(
    `
site: {name: Rods, region: iec, units: m, service: panel}
electrodes: {rods: {kind: rods, count: 2, joined: ${joined}, resistance: 40 ohm}}
equipment: {panel: {kind: service panel}}
conductors:
${conductors.join('\n')}
`,
    'rods.site.yaml',
  );
  return dcOf(bondingOf(site!, null)).earth;
}

describe('rods that nothing joins', () => {
  test('one of them is one electrode', () => {
    const earth = earthWith('no', ['rods.1']);
    expect(earth.resistanceOhm?.value).toBeCloseTo(40, 9);
    // The other one stands in a group of its own.
    expect(earth.groups.map((g) => g.resistanceOhm?.value)).toEqual([expect.closeTo(40, 9), expect.closeTo(40, 9)]);
  });

  test('both are two in parallel, and take all of the current between them', () => {
    const earth = earthWith('no', ['rods.1', 'rods.2']);
    expect(earth.resistanceOhm?.value).toBeCloseTo(20, 9);
    expect(earth.currentShare.get('rods')).toBeCloseTo(1, 9);
    // Stated figures without places are plain resistors: nothing is left out.
    expect(earth.couplingLeftOut).toEqual([]);
  });

  test('joined ones are one electrode, by whichever rod they are reached', () => {
    expect(earthWith('yes', ['rods.1']).resistanceOhm?.value).toBeCloseTo(40, 9);
    expect(earthWith('yes', ['rods.1', 'rods.2']).resistanceOhm?.value).toBeCloseTo(40, 9);
  });
});
