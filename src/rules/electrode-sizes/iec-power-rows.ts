import type { SizeRow } from './size-row.ts';

const copper = ['copper', 'tinned copper', 'hard-drawn copper'];
const steels = ['galvanised steel', 'stainless steel'];

/** IEC 60364-5-54:2011 Table 54.1, rods: from memory; thickness of the copper second-hand. */
export const powerRods: readonly SizeRow[] = [
  { metals: steels, least: [{ figure: 'diameter', limit: 0.016 }] },
  {
    metals: ['copper-clad steel'],
    least: [
      { figure: 'diameter', limit: 0.014 },
      { figure: 'coating', limit: 250e-6 },
    ],
  },
  { metals: copper, least: [{ figure: 'diameter', limit: 0.012 }] },
];

/** The same table, wires: from memory. */
export const powerWires: readonly SizeRow[] = [
  { metals: copper, least: [{ figure: 'wire', limit: 25e-6 }] },
  { metals: steels, least: [{ figure: 'wire diameter', limit: 0.01 }] },
];

/** The same table, tapes: from memory. */
export const powerTapes: readonly SizeRow[] = [
  {
    metals: copper,
    least: [
      { figure: 'wire', limit: 50e-6 },
      { figure: 'thickness', limit: 0.002 },
    ],
  },
  {
    metals: steels,
    least: [
      { figure: 'wire', limit: 90e-6 },
      { figure: 'thickness', limit: 0.003 },
    ],
  },
];
