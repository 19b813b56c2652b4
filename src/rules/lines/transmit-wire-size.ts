import type { Antenna } from '../../site/site.ts';
import { type Interval, isAtLeast, isAtMost } from '../../units/interval.ts';
import { nothingThere } from '../looked-at.ts';
import { rule, type Verdict } from '../rule.ts';
import { sends } from './outdoor-leads.ts';

/** Least section by metal and by span up to 45 m (150 ft) and beyond, square metres: 14, 10 and 12 AWG as printed. */
const least = { short: 2.08e-6, copperLong: 5.26e-6, steelLong: 3.31e-6 } as const;
/** 150 ft, metres. */
const shortSpanM = 45.72;
const wires: readonly string[] = ['half-wave dipole', 'long wire', 'loop', 'doublet', 'inverted V', 'end-fed wire'];

export const transmitWireSize = rule({
  id: 'transmit-wire-size',
  family: 'code',
  severity: 'advice',
  codeSets: ['us'],
  source: { document: 'NFPA 70', edition: null, clause: 'Table 810.52', provenance: 'memory' },
  limits: [
    { key: 'areaM2', value: least.short, sense: 'least', of: 'spans up to 150 ft' },
    { key: 'areaM2', value: least.copperLong, sense: 'least', of: 'hard-drawn copper, longer spans' },
    { key: 'areaM2', value: least.steelLong, sense: 'least', of: 'copper-clad steel or bronze, longer spans' },
  ],
  needs: ['sections', 'site'],
  check({ sections, site }) {
    const antennas = site.antennas.filter((a) => a.present !== 'no' && (a.where ?? 'outside') === 'outside');
    const asked = sends(site) ? antennas.filter((a) => wires.includes(a.kind) || a.wire != null) : [];
    if (asked.length === 0) return nothingThere({ sections }, 'antennas');
    if (asked.every((a) => a.wire == null)) return [{ is: 'not looked at', because: { key: 'not typed' } }];
    return asked.map(ofAntenna);
  },
});

function ofAntenna({ id, wire, lengthM }: Antenna): Verdict {
  const at = [id];
  const area = wire?.areaM2 ?? null;
  const limit = limitOf(lengthM, wire?.metal?.name ?? null);
  if (area === null || limit === null)
    return { is: 'cannot tell', at, because: { key: 'unknown' }, settle: { key: 'measure' } };
  const measured = { key: 'areaM2', value: area, limit, sense: 'least' } as const;
  const enough = isAtLeast(area, limit * (1 - 2e-3));
  if (enough === 'yes') return { is: 'met', at, because: { key: 'thick' }, measured };
  if (enough === 'no') return { is: 'not met', at, because: { key: 'thin' }, measured };
  return { is: 'cannot tell', at, because: { key: 'unknown' }, settle: { key: 'measure' } };
}

/** null: it hangs on a span or a metal that is not known. */
function limitOf(lengthM: Interval | null, metal: string | null): number | null {
  const isShort = lengthM === null ? 'unknown' : isAtMost(lengthM, shortSpanM);
  if (isShort === 'yes') return least.short;
  if (isShort === 'unknown' || metal === null) return null;
  return /steel|bronze/.test(metal) ? least.steelLong : least.copperLong;
}
