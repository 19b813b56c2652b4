import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { bondingOf } from '../../src/bonding/bonding-of.ts';
import { dcOf, groundOfRun } from '../../src/network/dc-of.ts';
import { earthConditions } from '../../src/network/earth-conditions.ts';
import { readSite } from '../../src/site/read-site.ts';

const examples = join(dirname(fileURLToPath(import.meta.url)), '../../examples');
const files = readdirSync(examples, { recursive: true, encoding: 'utf8' })
  .filter((name) => name.endsWith('.site.yaml'))
  .sort();

/** Laws that hold for every site: nothing here is a figure of its own. */
describe.each(files)('%s', (file) => {
  const { site } = readSite(readFileSync(join(examples, file), 'utf8'), file);
  const run = bondingOf(site!, null);
  const ground = groundOfRun(run);
  const conditions = earthConditions(run, { ground, dc: dcOf(run, ground) }, true);

  it('encloses every likely figure by its low and its high one, in every condition', () => {
    for (const { dc } of conditions) {
      const figures = [
        dc.earth.resistanceOhm,
        ...dc.earth.groups.map((g) => g.resistanceOhm),
        ...dc.earth.ofPart.values(),
        ...[...dc.alone.values()].map((a) => a.ohm),
      ].flatMap((figure) => figure ?? []);
      for (const { low, value, high } of figures) {
        expect(low).toBeGreaterThanOrEqual(0);
        expect(low).toBeLessThanOrEqual(high);
        if (value === null) continue;
        expect(low).toBeLessThanOrEqual(value);
        expect(value).toBeLessThanOrEqual(high);
      }
    }
  });

  it('shares a current put into the service out among its group, to the last ampere', () => {
    const home = run.bonding.groups.find((group) => group.hasService === true);
    const giving = new Set([...(home?.electrodes ?? []), ...ground.lines.map((line) => line.part)]);
    for (const { dc } of conditions) {
      const { currentShare, resistanceOhm, residual } = dc.earth;
      if (resistanceOhm === null || currentShare.size === 0) continue;
      const all = [...currentShare.values()].reduce((sum, share) => sum + share, 0);
      // one that a tie of unknown resistance leaves open is left out
      const open = [...giving].filter((id) => home!.parts.includes(id) && !currentShare.has(id));
      if (open.length === 0) expect(all).toBeCloseTo(1, 9);
      else expect(all).toBeLessThan(1);
      for (const share of currentShare.values()) expect(share).toBeGreaterThan(-1e-9);
      expect(residual).toBeLessThan(1e-9);
    }
  });
});
