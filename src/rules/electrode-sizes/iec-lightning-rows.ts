import type { SizeRow } from './size-row.ts';

const copper = ['copper', 'tinned copper', 'hard-drawn copper'];

/** IEC 62305-3:2010 Table 7, rods: from memory; thickness of the copper second-hand. */
export const lightningRods: readonly SizeRow[] = [
  { metals: copper, least: [{ figure: 'diameter', limit: 0.015 }] },
  {
    metals: ['copper-clad steel'],
    least: [
      { figure: 'diameter', limit: 0.014 },
      { figure: 'coating', limit: 250e-6 },
    ],
  },
  { metals: ['galvanised steel'], least: [{ figure: 'diameter', limit: 0.014 }] },
  { metals: ['stainless steel'], least: [{ figure: 'diameter', limit: 0.015 }] },
];

/** The same table, wires: from memory. Aluminium is not admitted in soil. */
export const lightningWires: readonly SizeRow[] = [
  { metals: copper, least: [{ figure: 'wire', limit: 50e-6 }] },
  { metals: ['galvanised steel', 'stainless steel'], least: [{ figure: 'wire', limit: 78e-6 }] },
];

/** The same table, tapes: from memory. */
export const lightningTapes: readonly SizeRow[] = [
  {
    metals: copper,
    least: [
      { figure: 'wire', limit: 50e-6 },
      { figure: 'thickness', limit: 0.002 },
    ],
  },
  {
    metals: ['galvanised steel'],
    least: [
      { figure: 'wire', limit: 90e-6 },
      { figure: 'thickness', limit: 0.003 },
    ],
  },
  { metals: ['stainless steel'], least: [{ figure: 'wire', limit: 100e-6 }] },
];
