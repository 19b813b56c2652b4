/** Heidler wave, IEC 62305-1 annex B: (I/k) x / (1 + x) e^(-t/tau2), x = (t/tau1)^10. */
export interface Heidler {
  readonly peakA: number;
  readonly k: number;
  readonly tau1S: number;
  readonly tau2S: number;
}

/** The subsequent stroke of the same annex, 0.25/100. */
export const subsequent = (peakA: number): Heidler => ({ peakA, k: 0.993, tau1S: 0.454e-6, tau2S: 143e-6 });

export function heidlerA({ peakA, k, tau1S, tau2S }: Heidler, timeS: number): number {
  const x = (timeS / tau1S) ** 10;
  return ((peakA / k) * x * Math.exp(-timeS / tau2S)) / (1 + x);
}

/** By a central difference. */
export function heidlerSlope(wave: Heidler, timeS: number): number {
  const h = 1e-12;
  return (heidlerA(wave, timeS + h) - heidlerA(wave, timeS - h)) / (2 * h);
}

/** Greatest of a figure over time, on a fine grid. */
export function greatest(figure: (timeS: number) => number, untilS = 3e-6, stepS = 1e-10): number {
  let most = 0;
  for (let t = stepS; t < untilS; t += stepS) most = Math.max(most, Math.abs(figure(t)));
  return most;
}

/** Currents over time by the classic rule of Runge and Kutta from rest; `rates` gives their slopes. Calls `seen` at each step. */
export function rungeKutta(
  count: number,
  rates: (timeS: number, at: readonly number[]) => readonly number[],
  seen: (timeS: number, at: readonly number[]) => void,
  untilS = 12e-6,
  stepS = 2e-9,
): void {
  let at: readonly number[] = new Array<number>(count).fill(0);
  const moved = (by: readonly number[], share: number) => at.map((a, i) => a + share * stepS * by[i]!);
  for (let t = 0; t < untilS; t += stepS) {
    const k1 = rates(t, at);
    const k2 = rates(t + stepS / 2, moved(k1, 0.5));
    const k3 = rates(t + stepS / 2, moved(k2, 0.5));
    const k4 = rates(t + stepS, moved(k3, 1));
    at = at.map((a, i) => a + (stepS / 6) * (k1[i]! + 2 * k2[i]! + 2 * k3[i]! + k4[i]!));
    seen(t + stepS, at);
  }
}
