import type { Facts } from '../../facts/facts.ts';
import type { Electrode } from '../../site/site.ts';
import { purposesOf } from '../electrodes/purposes-of.ts';
import { nothingThere } from '../looked-at.ts';
import { rule } from '../rule.ts';
import { isEarthedBySupplier } from '../supplier-earth.ts';
import { powerRods, powerTapes, powerWires } from './iec-power-rows.ts';
import { sizeVerdict } from './least-sizes.ts';

const kinds: readonly string[] = ['rod', 'rods', 'buried wire'];

export const iecPowerElectrodeDimensions = rule({
  id: 'iec-power-electrode-dimensions',
  family: 'code',
  severity: 'defect',
  codeSets: ['iec'],
  source: { document: 'IEC 60364-5-54', edition: '2011', clause: 'Table 54.1', provenance: 'memory' },
  limits: [
    { key: 'areaM2', value: 25e-6, sense: 'least', of: 'copper wire' },
    { key: 'areaM2', value: 50e-6, sense: 'least', of: 'copper tape' },
    { key: 'diameterM', value: 0.016, sense: 'least', of: 'galvanised rod' },
    { key: 'diameterM', value: 0.014, sense: 'least', of: 'copper-clad rod' },
    { key: 'coatingM', value: 250e-6, sense: 'least', of: 'copper on steel' },
  ],
  needs: ['header', 'sections', 'electrodes', 'conductors', 'site'],
  check(facts) {
    const asked = facts.electrodes.filter((e) => kinds.includes(e.part.kind) && e.part.owner !== 'utility');
    const power = asked.filter((e) => isOfSupply(e.part, facts));
    return power.length === 0
      ? nothingThere(facts, 'electrodes')
      : power.map(({ part }) => sizeVerdict(part, rowsFor(part)));
  },
});

/** What serves the supply; with nothing said of an electrode it is taken to, unless the supply brings its own along. */
function isOfSupply(e: Electrode, facts: Pick<Facts, 'header' | 'site' | 'conductors'>): boolean {
  const purposes = purposesOf(e, facts);
  return purposes.has('service') || (purposes.size === 0 && !isEarthedBySupplier(facts));
}

function rowsFor({ kind, wire }: Electrode) {
  if (kind !== 'buried wire') return powerRods;
  return wire?.form === 'strap' ? powerTapes : powerWires;
}
