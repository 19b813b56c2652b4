import { describe, expect, it } from 'vitest';
import { chainOf, chainRun } from '../../src/surge/chain-run.ts';
import { peakOf } from '../../src/surge/peak-of.ts';
import type { SurgeCourse } from '../../src/surge/surge-course.ts';
import { overTime, potentialFigure } from '../../src/surge/surge-figure.ts';
import type { SurgeNetwork } from '../../src/surge/surge-network.ts';
import { surgeRun } from '../../src/surge/surge-run.ts';
import { currentAt } from '../../src/surge/wave.ts';
import { wave1x200 } from '../../src/surge/wave-presets.ts';
import { modesOf } from './modes-of.ts';

const impedanceOhm = 280;
const earthOhm = 10;
const frontS = 1e-6;
const wave = wave1x200(30e3);

/** A line on an electrode, cut into sections, struck at its far end. */
function line(delayS: number, sections: number): SurgeNetwork {
  const section = (impedanceOhm * delayS) / sections;
  return {
    nodeCount: sections + 1,
    branches: Array.from({ length: sections }, (_, i) => ({
      from: i,
      to: i + 1,
      resistanceOhm: 0,
      inductanceH: section,
    })),
    mutualH: null,
    earth: { nodes: [sections], resistanceOhm: [earthOhm] },
  };
}

function peakV(course: SurgeCourse): number {
  return Math.abs(peakOf(course.wave.timesS, overTime(course, potentialFigure(course, 0))).value);
}

/**
 * The lossless line by its waves: open for the stroke's current at the struck end, the reflection (R - Z) / (R + Z) at the other:
 * v = Z (i(t) + 2 sum of the reflection to the k-th times i(t - 2 k T)). L. V. Bewley, Traveling Waves on Transmission Systems
 * (1951), from memory.
 */
function exactV(delayS: number): number {
  const back = (earthOhm - impedanceOhm) / (earthOhm + impedanceOhm);
  let most = 0;
  for (let t = 0; t < 6e-6; t += 5e-10) {
    let sum = currentAt(wave, t);
    for (let k = 1; 2 * k * delayS < t; k++) sum += 2 * back ** k * currentAt(wave, t - 2 * k * delayS);
    most = Math.max(most, Math.abs(impedanceOhm * sum));
  }
  return most;
}

describe('a line of 280 ohm on 10 ohm', () => {
  const run = (delayS: number, sections: number) =>
    surgeRun(modesOf(line(delayS, sections)), { node: 0, wave, channelH: null }, { untilS: 10e-6 });

  // the shares were worked out apart from this program, by the same waves on a fine grid: 6.4, 12.1 and 23.0 %
  it.each([
    [0.1, 0.064],
    [0.13, 0.121],
    [0.2, 0.23],
  ])('of %f of the front: lumped it is too low by %f, as a chain right', (share, low) => {
    const delayS = share * frontS;
    const exact = exactV(delayS);
    expect(1 - peakV(run(delayS, 1)) / exact).toBeCloseTo(low, 2);
    const whole = run(delayS, 12);
    const nodes = Array.from({ length: 13 }, (_, i) => i);
    const chain = chainRun(whole, chainOf(nodes, impedanceOhm * delayS, delayS));
    expect(Math.abs(peakV(chain) / exact - 1)).toBeLessThan(0.002);
    // without its capacitances the chain is the lumped line
    expect(peakV(whole) / peakV(run(delayS, 1))).toBeCloseTo(1, 6);
  });

  it('as a chain of a short line is the lumped line', () => {
    const whole = run(1e-9, 4);
    const chain = chainRun(whole, chainOf([0, 1, 2, 3, 4], impedanceOhm * 1e-9, 1e-9));
    expect(peakV(chain) / peakV(whole)).toBeCloseTo(1, 3);
  });

  it('as a chain ends as the lumped line, where the current changes slowly: at R i + L di/dt', () => {
    const nodes = Array.from({ length: 9 }, (_, i) => i);
    const chain = chainRun(run(100e-9, 8), chainOf(nodes, impedanceOhm * 100e-9, 100e-9));
    const volts = overTime(chain, potentialFigure(chain, 0));
    const last = chain.wave.timesS.length - 1;
    const { currentA, slopeAPerS } = chain.wave;
    const lumped = earthOhm * currentA[last]! + impedanceOhm * 100e-9 * slopeAPerS[last]!;
    expect(volts[last]! / lumped).toBeCloseTo(1, 2);
  });
});

describe('capacitances that cannot be', () => {
  it.each([0, -1e-12, Number.NaN])('are refused: %f', (farad) => {
    const run = surgeRun(modesOf(line(1e-7, 1)), { node: 0, wave, channelH: null }, { untilS: 1e-6 });
    expect(() => chainRun(run, [{ node: 0, farad }])).toThrow(RangeError);
  });
});
