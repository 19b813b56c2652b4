import type { Interval } from '../units/interval.ts';
import type { FigureSource } from './figure-source.ts';
import { positive } from './positive.ts';
import type { ProtectionLevel } from './stroke-levels.ts';

/** A row of the table: ohm at a resistivity, of an external buried line and of a building's own electrodes by level. */
interface ImpedanceRow {
  readonly resistivityOhmM: number;
  readonly externalOhm: number;
  readonly ownOhm: Readonly<Record<ProtectionLevel, number>>;
}

export const conventionalImpedanceSource: FigureSource = {
  document: 'IEC 62305-1',
  edition: '2010',
  clause: 'annex E, conventional earthing impedance',
  provenance: 'memory',
};

/** The first row holds for anything less too. */
const rows: readonly ImpedanceRow[] = [
  row(100, 8, 4, 4, 4),
  row(200, 11, 6, 6, 6),
  row(500, 16, 10, 10, 10),
  row(1000, 22, 10, 15, 20),
  row(2000, 28, 10, 15, 40),
  row(3000, 35, 10, 15, 60),
];

/** What an impedance is asked of. */
export type ImpedanceOf = 'external line' | ProtectionLevel;

/**
 * Conventional impedance (peak potential over peak current of a 10/350) that the standard takes, ohm: of electrodes that meet
 * its lengths, by level, and of a buried external line. The table has rows; between two of them the answer is from the one to
 * the other. null beyond 3000 ohm metre: it says nothing there.
 */
export function conventionalImpedance(of: ImpedanceOf, resistivityOhmM: number): Interval | null {
  const resistivity = positive(resistivityOhmM, 'resistivity');
  const next = rows.findIndex((r) => r.resistivityOhmM >= resistivity);
  if (next < 0) return null;
  const high = ohm(rows[next]!, of);
  const exact = next === 0 || rows[next]!.resistivityOhmM === resistivity;
  return { low: exact ? high : ohm(rows[next - 1]!, of), high };
}

/**
 * Least length of an electrode, metres, by level: 5 m; level I beyond 500 ohm metre 0.03 rho - 10, level II beyond 800 0.02 rho
 * - 11. A vertical one counts double; none is asked where 10 ohm are met. IEC 62305-3:2010, Figure 3, its straight lines up
 * to 3000 ohm metre (from memory); null beyond.
 */
export function leastElectrodeLength(level: ProtectionLevel, resistivityOhmM: number): number | null {
  const resistivity = positive(resistivityOhmM, 'resistivity');
  if (resistivity > 3000) return null;
  if (level === 'I') return Math.max(5, 0.03 * resistivity - 10);
  return level === 'II' ? Math.max(5, 0.02 * resistivity - 11) : 5;
}

function ohm(of: ImpedanceRow, what: ImpedanceOf): number {
  return what === 'external line' ? of.externalOhm : of.ownOhm[what];
}

function row(resistivityOhmM: number, externalOhm: number, I: number, II: number, III: number): ImpedanceRow {
  return { resistivityOhmM, externalOhm, ownOhm: { I, II, III, IV: III } };
}
