import type { Wire } from '../../materials/wire.ts';

/** Greatest section of the service conductor for which a grounding electrode conductor is enough, square metres. */
interface TableRow {
  readonly upToCopper: number;
  readonly upToAluminium: number;
  readonly copper: number;
  readonly aluminium: number;
}

const kcmil = 0.5067e-6;

/** NFPA 70 table 250.66, from memory: service conductors of copper or aluminium, grounding electrode conductor of either. */
const rows: readonly TableRow[] = [
  { upToCopper: 33.6e-6, upToAluminium: 53.5e-6, copper: 8.37e-6, aluminium: 13.3e-6 },
  { upToCopper: 53.5e-6, upToAluminium: 85e-6, copper: 13.3e-6, aluminium: 21.2e-6 },
  { upToCopper: 85e-6, upToAluminium: 250 * kcmil, copper: 21.2e-6, aluminium: 33.6e-6 },
  { upToCopper: 350 * kcmil, upToAluminium: 500 * kcmil, copper: 33.6e-6, aluminium: 53.5e-6 },
  { upToCopper: 600 * kcmil, upToAluminium: 900 * kcmil, copper: 53.5e-6, aluminium: 85e-6 },
  { upToCopper: 1100 * kcmil, upToAluminium: 1750 * kcmil, copper: 67.4e-6, aluminium: 107e-6 },
  { upToCopper: Infinity, upToAluminium: Infinity, copper: 85e-6, aluminium: 250 * kcmil },
];

/** A size as printed belongs to the row that prints it. */
const printedShare = 1 + 5e-3;

/** What the table asks at the least and at the most, whatever the service. */
export const tableEnds = { least: rows[0]!, most: rows.at(-1)! } as const;

/** The row of a service conductor, by the least or the greatest size that it may have; null where size or metal is not known or not in the table. */
export function tableRow(service: Wire | null, end: 'low' | 'high'): Pick<TableRow, 'copper' | 'aluminium'> | null {
  const metal = service?.metal?.name ?? '';
  const area = service?.areaM2?.[end] ?? null;
  if (area === null) return null;
  if (/aluminium/.test(metal)) return rows.find((r) => area <= r.upToAluminium * printedShare) ?? null;
  return /copper/.test(metal) ? (rows.find((r) => area <= r.upToCopper * printedShare) ?? null) : null;
}
