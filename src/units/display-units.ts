import type { Dimension } from './dimension.ts';
import { circularMilM2, footM, inchM, poundKg } from './unit-table.ts';

/** A unit that people are shown, used from a size on. */
export interface DisplayUnit {
  readonly name: string;
  readonly factor: number;
  readonly offset: number;
  /** Least size, in SI base units, that is shown in it. */
  readonly from: number;
  /** Shown for exactly 0. */
  readonly usual: boolean;
}

type Systems = { readonly us: readonly DisplayUnit[]; readonly si: readonly DisplayUnit[] };

/** Units by dimension and system, each list from the smallest unit up. */
export const displayUnits: Readonly<Record<Dimension, Systems>> = {
  length: {
    us: [unit('in', inchM, 0), usual('ft', footM, footM)],
    si: [unit('mm', 1e-3, 0), usual('m', 1, 0.3), unit('km', 1e3, 1e4)],
  },
  area: {
    us: [
      usual('kcmil', 1000 * circularMilM2, 0),
      unit('sq in', inchM ** 2, 0.5 * inchM ** 2),
      unit('sq ft', footM ** 2, footM ** 2),
    ],
    si: [usual('mm²', 1e-6, 0), unit('cm²', 1e-4, 1e-3), unit('m²', 1, 0.1)],
  },
  resistance: both(
    unit('microohm', 1e-6, 0),
    unit('milliohm', 1e-3, 1e-3),
    usual('ohm', 1, 0.1),
    unit('kilohm', 1e3, 1e4),
    unit('megohm', 1e6, 1e6),
  ),
  resistivity: both(unit('nanoohm m', 1e-9, 0), unit('microohm m', 1e-6, 1e-6), usual('ohm m', 1, 0.01)),
  power: both(unit('mW', 1e-3, 0), usual('W', 1, 0.1), unit('kW', 1e3, 1e4)),
  frequency: both(usual('Hz', 1, 0), unit('kHz', 1e3, 1e3), unit('MHz', 1e6, 1e6), unit('GHz', 1e9, 1e9)),
  voltage: both(unit('mV', 1e-3, 0), usual('V', 1, 0.1), unit('kV', 1e3, 1e3), unit('MV', 1e6, 1e6)),
  current: both(unit('mA', 1e-3, 0), usual('A', 1, 0.1), unit('kA', 1e3, 1e3)),
  angle: both(usual('°', 1, 0)),
  inductance: both(unit('nH', 1e-9, 0), usual('µH', 1e-6, 1e-6), unit('mH', 1e-3, 1e-3)),
  time: both(unit('ns', 1e-9, 0), usual('µs', 1e-6, 1e-7), unit('ms', 1e-3, 1e-3), unit('s', 1, 1)),
  temperature: { us: [usual('°F', 5 / 9, 0)], si: [usual('K', 1, 0)] },
  celsius: {
    us: [{ name: '°F', factor: 5 / 9, offset: -160 / 9, from: 0, usual: true }],
    si: [usual('°C', 1, 0)],
  },
  charge: both(unit('mC', 1e-3, 0), usual('C', 1, 0.1)),
  speed: both(usual('m/s', 1, 0), unit('m/µs', 1e6, 1e6)),
  action: both(usual('J/ohm', 1, 0), unit('kJ/ohm', 1e3, 1e3), unit('MJ/ohm', 1e6, 1e5)),
  energy: both(usual('J', 1, 0), unit('kJ', 1e3, 1e3), unit('MJ', 1e6, 1e6)),
  mass: { us: [usual('lb', poundKg, 0)], si: [usual('kg', 1, 0)] },
  'current rise': both(usual('A/µs', 1e6, 0), unit('kA/µs', 1e9, 1e9)),
  field: both(usual('V/m', 1, 0), unit('kV/m', 1e3, 1e3), unit('MV/m', 1e6, 1e6)),
  'resistance per length': { us: [usual('ohm/1000 ft', 1 / (1000 * footM), 0)], si: [usual('ohm/km', 1e-3, 0)] },
  'inductance per length': both(usual('µH/m', 1e-6, 0)),
  number: both(usual('', 1, 0)),
};

function unit(name: string, factor: number, from: number): DisplayUnit {
  return { name, factor, offset: 0, from, usual: false };
}

function usual(name: string, factor: number, from: number): DisplayUnit {
  return { name, factor, offset: 0, from, usual: true };
}

function both(...units: readonly DisplayUnit[]): Systems {
  return { us: units, si: units };
}
