import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { fitSounding } from '../../src/soil/fit-sounding.ts';
import type { FittedFigure, SoundingFit } from '../../src/soil/sounding-fit.ts';
import { findPython } from '../reference/python.ts';
import { noisyReadings, trialModels, trialSeed } from './sounding-trials.ts';

/** A tenth of the long run, which is SOUNDING_TRIALS=100 (half a minute). */
const trials = Number(process.env.SOUNDING_TRIALS ?? 10);

interface Recorded {
  readonly by: string;
  readonly seed: number;
  /** log(high / low) of each range of each trial, by model. */
  readonly widths: Readonly<Record<string, readonly (readonly number[])[]>>;
}

/** Made by tests/reference/sounding-profile.py with scipy, on the same readings. */
const recorded = JSON.parse(readFileSync(new URL('sounding-profile.json', import.meta.url), 'utf8')) as Recorded;
const names = ['top ohm m', 'middle ohm m', 'last ohm m', 'first thickness', 'second thickness'];

function figuresOf({ layers }: SoundingFit): readonly FittedFigure[] {
  const thicknesses = layers.flatMap(({ thicknessM }) => thicknessM ?? []);
  return [...layers.map(({ resistivityOhmM }) => resistivityOhmM), ...thicknesses];
}

const holds = ({ low, high }: FittedFigure, truth: number): boolean =>
  (low === null || low <= truth) && (high === null || truth <= high);
const median = (all: readonly number[]): number => [...all].sort((a, b) => a - b)[Math.floor(all.length / 2)]!;

/** How many trials have to hold the truth: 88 to 99 of 100; of a few, seven of ten and more. */
const least = trials >= 100 ? Math.ceil(0.88 * trials) : Math.floor(0.7 * trials);
const most = trials >= 100 ? Math.floor(0.99 * trials) : trials;

/*
 * Long run of seed 20260711, 100 trials of each model; of each figure in how many the range held the truth, and its median
 * width over that of scipy (top, middle, last resistivity, first, second thickness):
 *   sand over silt over clay        93 97 96 96 98    1.01 1.01 1.01 1.00 1.01
 *   loam over gravel over clay      93 97 97 98 98    1.01 1.00 1.01 1.00 1.16
 *   dry crust over loam over rock   97 96 95 96 98    1.00 1.00 1.01 1.01 1.00
 * Three layers were chosen in at least 95 of each 100, as asserted below. (1.16: an end that is only there because resistivities are sought no further is no end
 * with us.) The middle layer of the second is not resolved in 92, that of the third in 59; its thickness times or over resistivity
 * held the truth in 90 and in 56 of those.
 */
describe(`three layers from readings with 5 % noise: ${trials} trials, seed ${trialSeed()}`, () => {
  describe.each(trialModels.map((model, position) => ({ ...model, position })))(
    '$name',
    ({ name, figures, position }) => {
      const fits = noisyReadings(position, trials).map((readings) => {
        const byChoice = fitSounding(readings);
        return {
          byChoice,
          figures: figuresOf(byChoice.chosen === 3 ? byChoice : fitSounding(readings, { layers: 3 })),
        };
      });
      const figureOf = (at: number): readonly FittedFigure[] => fits.flatMap((fit) => fit.figures[at] ?? []);

      it('three layers are chosen', () => {
        expect(fits.filter(({ byChoice }) => byChoice.chosen === 3).length).toBeGreaterThanOrEqual(0.95 * trials);
      });

      it.each(names.map((figure, at) => [figure, at] as const))('95 %% ranges hold the truth: %s', (_, at) => {
        const held = figureOf(at).filter((figure) => holds(figure, figures[at]!)).length;
        if (trials >= 100) process.stderr.write(`${name}, ${names[at]}: held in ${held}\n`);
        expect(held).toBeGreaterThanOrEqual(least);
        expect(held).toBeLessThanOrEqual(most);
      });

      it.each(names.map((figure, at) => [figure, at] as const))('are hardly wider than those of scipy: %s', (_, at) => {
        // the record is of the same readings; other readings are compared by many
        const isSame = recorded.seed === trialSeed();
        if (!isSame && trials < 100) {
          process.stderr.write(`SKIPPED: widths against scipy: the record is of seed ${recorded.seed}\n`);
          return;
        }
        const rows = recorded.widths[name]!;
        const theirs = median((isSame ? rows.slice(0, trials) : rows).map((row) => row[at]!));
        const ours = median(figureOf(at).map((figure, trial) => widthOf(figure, at, fits[trial]!.byChoice)));
        if (trials >= 100)
          process.stderr.write(`${name}, ${names[at]}: width ${(ours / theirs).toFixed(3)} of scipy's\n`);
        expect(ours / theirs).toBeLessThanOrEqual(1.3);
        // nor so much narrower that something must have been missed
        expect(ours / theirs).toBeGreaterThanOrEqual(0.9);
      });

      it('of a middle layer that is not resolved, its product or quotient is told, and holds the truth', () => {
        const [, middle, , , second] = figures;
        const truth = { 'thickness times resistivity': second * middle, 'thickness over resistivity': second / middle };
        const open = fits.filter((fit) => !fit.figures[1]!.resolved || !fit.figures[4]!.resolved);
        const told = open.filter(({ byChoice }) => {
          const tradeOff = byChoice.tradeOffs.find(({ layer }) => layer === 1);
          return tradeOff !== undefined && holds(tradeOff.range, truth[tradeOff.of]);
        });
        if (trials >= 100) process.stderr.write(`${name}: open in ${open.length}, told rightly in ${told.length}\n`);
        expect(open.length === 0).toBe(position === 0);
        expect(told.length).toBeGreaterThanOrEqual((open.length * least) / trials - 0.1);
      });

      it('a range without an end, or wider than one to ten, is not resolved; any other is', () => {
        for (const { figures: all } of fits) {
          for (const { low, high, resolved } of all) {
            expect(resolved).toBe(low !== null && high !== null && high / low <= 10);
          }
        }
      });
    },
  );
});

const python = findPython(['numpy', 'scipy'], 'whether the recorded ranges of noisy soundings are what scipy gives');

describe.skipIf(python === null)(
  `the record of scipy${python === null ? ' (SKIPPED: no python3 with scipy)' : ''}`,
  () => {
    it('is what its script gives: the first trial of each model anew', () => {
      const anew = python!.run('sounding-profile.py', { seed: recorded.seed, trials: 1 }) as Recorded;
      for (const { name } of trialModels) {
        expect(recorded.widths[name]).toHaveLength(100);
        anew.widths[name]![0]!.forEach((width, at) => {
          expect(Math.abs(width - recorded.widths[name]![0]![at]!), `${name}, ${names[at]}`).toBeLessThan(0.01);
        });
      }
    });
  },
);

/** Logarithm of high over low; a side without an end counts to where scipy was told to stop looking (head of its script). */
function widthOf({ low, high }: FittedFigure, at: number, { readings }: SoundingFit): number {
  const ohmM = readings.map(({ measuredOhmM }) => measuredOhmM!);
  const [least, greatest] = at < 3 ? [Math.min(...ohmM) / 200, Math.max(...ohmM) * 200] : [0.05 * 0.5, 5 * 60];
  return Math.log((high ?? greatest) / (low ?? least));
}
