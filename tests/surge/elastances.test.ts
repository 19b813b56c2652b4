import { describe, expect, it } from 'vitest';
import { factorLu, solveFactored } from '../../src/math/dense.ts';
import { chargedRun } from '../../src/surge/chain-run.ts';
import { elastances } from '../../src/surge/elastances.ts';
import { inductanceMatrix, type StraightPiece } from '../../src/surge/inductance-matrix.ts';
import { overTime, potentialFigure } from '../../src/surge/surge-figure.ts';
import { surgeRun } from '../../src/surge/surge-run.ts';
import { wave1x200 } from '../../src/surge/wave-presets.ts';
import { modesOf } from './modes-of.ts';

const lightMPerS = 299_792_458;
const epsilon0 = 1 / (4e-7 * Math.PI * lightMPerS ** 2);
const upright = (fromM: number, toM: number, eastM = 0): StraightPiece => ({
  from: [eastM, 0, toM],
  to: [eastM, 0, fromM],
  radiusM: 0.01,
});
const cut = (lengthM: number, cells: number, eastM = 0) =>
  Array.from({ length: cells }, (_, i) => [upright((i * lengthM) / cells, ((i + 1) * lengthM) / cells, eastM)]);

describe('coefficients of potential', () => {
  it('of parallel pieces are their inductances times the square of the speed of light', () => {
    const pieces = [upright(0, 3), upright(1, 2, 0.4), upright(5, 9, 0.4)];
    const [volts, henry] = [elastances(pieces.map((piece) => [piece])), inductanceMatrix(pieces)];
    const lengths = [3, 1, 4];
    for (const [at, value] of volts.entries()) {
      const product = lengths[Math.floor(at / 3)]! * lengths[at % 3]!;
      expect(((value * product) / (lightMPerS ** 2 * henry[at]!)) as number).toBeCloseTo(1, 9);
    }
  });

  it('of pieces at right angles are those of far points', () => {
    const [, between] = elastances([[upright(0, 0.1)], [{ from: [50, 0, 0], to: [50.1, 0, 0], radiusM: 0.01 }]]);
    expect(between! * 4 * Math.PI * epsilon0 * 50.05).toBeCloseTo(1, 4);
  });

  // 2 pi epsilon0 l / (ln(2 l / a) - 1) with an even charge; a charge free to spread has a little more. E. B. Rosa's
  // integral, from memory
  it('make the capacitance of a lone wire, more of it the freer its charge', () => {
    const capacitance = (cells: number) => {
      const matrix = elastances(cut(10, cells));
      const factor = factorLu(matrix, cells);
      if (!factor.ok) throw new Error('singular');
      return solveFactored(factor, new Float64Array(cells).fill(1)).solution.reduce((sum, q) => sum + q, 0);
    };
    const even = (2 * Math.PI * epsilon0 * 10) / (Math.log(20 / 0.01) - 1);
    expect(capacitance(1) / even).toBeCloseTo(1, 2);
    expect(capacitance(20)).toBeGreaterThan(capacitance(1));
    expect(capacitance(20) / capacitance(1)).toBeLessThan(1.06);
  });
});

describe('a wire of 60 m cut into 30 sections', () => {
  const [lengthM, sections] = [60, 30];
  const pieces = Array.from({ length: sections }, (_, i) =>
    upright(lengthM - ((i + 1) * lengthM) / sections, lengthM - (i * lengthM) / sections),
  );
  const mutualH = inductanceMatrix(pieces);
  const network = {
    nodeCount: sections + 1,
    branches: pieces.map((_, i) => ({
      from: i,
      to: i + 1,
      resistanceOhm: 0,
      inductanceH: mutualH[i * (sections + 1)]!,
    })),
    mutualH,
    earth: { nodes: [sections], resistanceOhm: [10] },
  };
  const half = lengthM / sections / 2;
  const cells = Array.from({ length: sections + 1 }, (_, node) => {
    const at = lengthM - 2 * half * node;
    return [upright(Math.max(0, at - half), Math.min(lengthM, at + half))];
  });

  it('passes a front on at the speed of light', () => {
    const run = surgeRun(modesOf(network), { node: 0, wave: wave1x200(1e3), channelH: null }, { untilS: 4e-6 });
    const nodes = cells.map((_, node) => node);
    const course = chargedRun(run, { nodes, elastance: elastances(cells) });
    const passed = (node: number) => {
      const volts = overTime(course, potentialFigure(course, node));
      const level = 2e3;
      const at = volts.findIndex((volt) => volt > level);
      const [before, after] = [volts[at - 1]!, volts[at]!];
      const { timesS } = course.wave;
      return timesS[at - 1]! + ((level - before) / (after - before)) * (timesS[at]! - timesS[at - 1]!);
    };
    // from 10 m to 30 m below the top, before anything has come back from the earth
    const delayS = passed(15) - passed(5);
    expect((delayS * lightMPerS) / 20).toBeGreaterThan(0.9);
    expect((delayS * lightMPerS) / 20).toBeLessThan(1.15);
  });
});
