import { positive } from './positive.ts';

/**
 * Conventional impedance of a buried wire so long that its far end does not matter, ohm, for a current that rises straight to
 * its peak in a front: 2 sqrt(L' / (pi G' T)), with its inductance L' (henry per metre) and leakage G' (siemens per metre),
 * its own resistance and the soil's capacitance left out, front in seconds. By hand: the line's impedance is sqrt(s L' / G'), a
 * ramp I t / T gives V = 2 I / T sqrt(L' t / (pi G')). The soil does not break down. No length of the wire has less.
 */
export function longWireImpedance(inductanceHPerM: number, leakageSPerM: number, frontS: number): number {
  const ratio = positive(inductanceHPerM, 'inductance') / positive(leakageSPerM, 'leakage');
  return 2 * Math.sqrt(ratio / (Math.PI * positive(frontS, 'front')));
}

/**
 * The length at which such a wire would have that impedance as a mere resistance 1 / (G' l), metres: sqrt(pi T / (L' G')) / 2.
 * A wire much longer has the long wire's impedance, one much shorter its resistance.
 */
export function longWireReach(inductanceHPerM: number, leakageSPerM: number, frontS: number): number {
  const perM2 = positive(inductanceHPerM, 'inductance') * positive(leakageSPerM, 'leakage');
  return Math.sqrt((Math.PI * positive(frontS, 'front')) / perM2) / 2;
}
