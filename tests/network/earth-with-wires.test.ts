import { describe, expect, it } from 'vitest';
import { bondingOf } from '../../src/bonding/bonding-of.ts';
import { dcOf, groundOfRun } from '../../src/network/dc-of.ts';
import { earthOhmWithWires } from '../../src/network/earth-with-wires.ts';
import { changeText, type SiteChange } from '../../src/site/change.ts';
import { readSite } from '../../src/site/read-site.ts';
import type { Site } from '../../src/site/site.ts';
import { type Chance, chance } from '../site/chance.ts';

function siteOf(text: string): Site {
  const { site, problems } = readSite(text, 'wires.site.yaml');
  if (site === null) throw new Error(JSON.stringify(problems));
  return site;
}

const wires = ['6 AWG copper', '2 AWG copper', 'strap 3 in x 0.022 in copper', '10 AWG copper'];
const joints = ['bolted lug', 'exothermic weld', 'rod clamp', 'hose clamp', 'none'];

/** Groups of rods, each on a bar of its own; the first has the service. */
function randomSite(random: Chance): { readonly text: string; readonly ends: readonly string[] } {
  const groups = 2 + random.below(4);
  const bars = Array.from({ length: groups }, (_, g) => (g === 0 ? 'panel' : `bar${g}`));
  const electrodes: string[] = [];
  const leads: string[] = [];
  for (const [g, bar] of bars.entries()) {
    for (let n = 0; n <= random.below(3); n++) {
      const id = `rod${g}-${n}`;
      const at = `[${random.below(80)}.${g}, ${random.below(80)}.${n}]`;
      electrodes.push(`  ${id}: {kind: rod, at: ${at}, length: ${4 + random.below(12)} ft, diameter: 5/8 in}`);
      leads.push(lead(`lead${g}-${n}`, bar, id, random));
    }
  }
  const text = [
    'site: {name: Wires, region: us, units: ft, service: panel}',
    `soil: {layers: [{resistivity: ${50 + random.below(400)} ohm m, thickness: 2 m}, {resistivity: ${50 + random.below(400)} ohm m}]}`,
    'electrodes:',
    ...electrodes,
    'bars:',
    ...bars.slice(1).map((bar) => `  ${bar}: {kind: station ground bar}`),
    '  lone-bar: {kind: station ground bar}',
    'equipment: {panel: {kind: service panel}}',
    'conductors:',
    ...leads,
    '',
  ].join('\n');
  const rods = electrodes.map((e) => e.trim().split(':')[0]!);
  return { text, ends: [...bars, ...rods, 'lone-bar'] };
}

function lead(id: string, from: string, to: string, random: Chance): string {
  return `  ${id}: {from: ${from}, to: ${to}, wire: ${random.pick(wires)}, length: ${1 + random.below(90)} ft, buried: no, joints: [${random.pick(joints)}, ${random.pick(joints)}]}`;
}

function randomWire(id: string, ends: readonly string[], random: Chance): SiteChange {
  const from = random.pick(ends);
  const to = random.pick(ends.filter((end) => end !== from));
  const fields = {
    from,
    to,
    wire: random.pick(wires),
    length: `${1 + random.below(200)} ft`,
    buried: 'no',
    joints: [random.pick(joints), random.pick(joints)],
  };
  return { is: 'add', section: 'conductors', id, fields };
}

function withChanges(text: string, changes: readonly SiteChange[]): Site {
  const changed = changeText(text, changes);
  if ('problem' in changed) throw new Error(changed.problem.key);
  return siteOf(changed.text);
}

describe('resistance to earth with wires added', () => {
  it('comes out by an update as by full recomputation, on random sites and works', () => {
    const random = chance(11);
    let updated = 0;
    let changed = 0;
    for (let round = 0; round < 36; round++) {
      const { text, ends } = randomSite(random);
      const run = bondingOf(siteOf(text), null);
      const ground = groundOfRun(run);
      const before = dcOf(run, ground).earth.resistanceOhm?.value;
      const works = Array.from({ length: 1 + random.below(3) }, (_, i) => randomWire(`new${i}`, ends, random));
      const more = withChanges(text, works);
      const whole = dcOf(bondingOf(more, null)).earth.resistanceOhm?.value;
      const quick = earthOhmWithWires(run, ground, more);
      if (quick === null) continue;
      updated++;
      if (Math.abs(whole! - before!) > 1e-3 * before!) changed++;
      expect(Math.abs(quick - whole!) / whole!).toBeLessThan(1e-6);
    }
    // most works can be had so, and many of them change the figure
    expect(updated).toBeGreaterThan(24);
    expect(changed).toBeGreaterThan(9);
  });

  it('is not given where more than wires in the air was added, or a resistance is not known', () => {
    const { text } = randomSite(chance(3));
    const run = bondingOf(siteOf(text), null);
    const ground = groundOfRun(run);
    const wire = (fields: Record<string, string>): SiteChange => ({
      is: 'add',
      section: 'conductors',
      id: 'new',
      fields: { from: 'panel', to: 'rod1-0', wire: '6 AWG copper', length: '10 ft', ...fields },
    });
    expect(earthOhmWithWires(run, ground, withChanges(text, [wire({ buried: '18 in' })]))).toBeNull();
    expect(earthOhmWithWires(run, ground, withChanges(text, [wire({ buried: 'no', length: 'unknown' })]))).toBeNull();
    const rod: SiteChange = { is: 'add', section: 'electrodes', id: 'more', fields: { kind: 'rod', length: '8 ft' } };
    expect(earthOhmWithWires(run, ground, withChanges(text, [rod]))).toBeNull();
  });
});
