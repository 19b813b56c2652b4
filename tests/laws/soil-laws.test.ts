/** Laws of bodies in layered soil, for any metal in any layers: they hold whatever the figures are. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Body, SoilPoint } from '../../src/electrodes/body.ts';
import { type SolvedBodies, solveBodies } from '../../src/electrodes/solve-bodies.ts';
import { potentialAt } from '../../src/electrodes/surface-potential.ts';
import { soilImages } from '../../src/soil/layer-images.ts';
import { layeredSoil } from '../../src/soil/layered-soil.ts';

interface Layers {
  readonly ohmM: readonly number[];
  readonly thickM: readonly number[];
}

const figure = (least: number, greatest: number): fc.Arbitrary<number> =>
  fc.double({ min: Math.log(least), max: Math.log(greatest), noNaN: true }).map(Math.exp);

const layers: fc.Arbitrary<Layers> = fc
  .array(fc.tuple(figure(5, 5000), figure(0.1, 6)), { minLength: 1, maxLength: 4 })
  .map((all) => ({ ohmM: all.map(([ohmM]) => ohmM), thickM: all.slice(1).map(([, thickM]) => thickM) }));

const place = fc.tuple(
  fc.double({ min: 0, max: 3, noNaN: true }),
  fc.double({ min: 0, max: 3, noNaN: true }),
  fc.double({ min: 0, max: 1.5, noNaN: true }),
);

/** A rod, a wire or a slope, in a square of its own so that no two touch. */
const bodyAt = (square: number): fc.Arbitrary<Body> =>
  fc
    .tuple(place, figure(0.5, 6), figure(0.002, 0.03), fc.constantFrom('rod', 'wire', 'slope'), fc.boolean())
    .map(([[east, north, depth], lengthM, radiusM, kind, isAtGrade]) => {
      const from: SoilPoint = [east + 20 * square, north, isAtGrade ? 0 : depth];
      const along = { rod: [0, 0, 1], wire: [0.6, 0.8, 0], slope: [0.48, -0.6, 0.64] }[kind]!;
      const to = from.map((x, axis) => x + lengthM * along[axis]!) as unknown as SoilPoint;
      return { runs: [{ from, to, radiusM, sheath: null }] };
    });

const bodies: fc.Arbitrary<readonly Body[]> = fc
  .integer({ min: 2, max: 4 })
  .chain((count) => fc.tuple(...Array.from({ length: count }, (_, k) => bodyAt(k))));

const cut = { cutting: () => 5, errorShare: 10 } as const;

function solve(all: readonly Body[], { ohmM, thickM }: Layers): SolvedBodies {
  const answer = solveBodies(all, soilImages(layeredSoil(ohmM, thickM)), cut);
  if (!answer.ok) throw new Error(`${answer.reason}: ${JSON.stringify({ all, ohmM, thickM })}`);
  return answer;
}

function rows({ resistanceOhm, aloneOhm }: SolvedBodies): readonly (readonly number[])[] {
  const count = aloneOhm.length;
  return Array.from({ length: count }, (_, row) => [...resistanceOhm.slice(row * count, (row + 1) * count)]);
}

/** Least eigenvalue of a small symmetric matrix, by Jacobi's turns. */
function leastEigenvalue(symmetric: readonly (readonly number[])[]): number {
  const a = symmetric.map((row) => [...row]);
  for (let sweep = 0; sweep < 60; sweep++) {
    for (let p = 0; p < a.length; p++) {
      for (let q = p + 1; q < a.length; q++) {
        if (a[p]![q] === 0) continue;
        const angle = Math.atan2(2 * a[p]![q]!, a[q]![q]! - a[p]![p]!) / 2;
        const [c, s] = [Math.cos(angle), Math.sin(angle)];
        for (const row of a) [row[p], row[q]] = [c * row[p]! - s * row[q]!, s * row[p]! + c * row[q]!];
        const [rowP, rowQ] = [a[p]!, a[q]!];
        a[p] = rowP.map((x, k) => c * x - s * rowQ[k]!);
        a[q] = rowP.map((x, k) => s * x + c * rowQ[k]!);
      }
    }
  }
  return Math.min(...a.map((row, k) => row[k]!));
}

/** Of all bodies joined: 1 over the sum of what they give off at one volt. */
function joinedOhm({ leakage }: SolvedBodies): number {
  return 1 / leakage.reduce((sum, each) => sum + each, 0);
}

const largest = (matrix: readonly (readonly number[])[]): number => Math.max(...matrix.flat().map(Math.abs));

test('the matrix is symmetric and positive definite, every entry above 0', () => {
  fc.assert(
    fc.property(bodies, layers, (all, soil) => {
      const r = rows(solve(all, soil));
      r.forEach((row, i) => {
        row.forEach((ohm, j) => {
          expect(ohm).toBeGreaterThan(0);
          expect(ohm).toBe(r[j]![i]);
          expect(ohm).toBeLessThanOrEqual(row[i]!);
        });
      });
      expect(leastEigenvalue(r)).toBeGreaterThan(0);
    }),
    { numRuns: 60, endOnFailure: true },
  );
});

test('a body more never raises what another has, nor what all joined have', () => {
  fc.assert(
    fc.property(bodies, layers, (all, soil) => {
      const [without, withIt] = [solve(all.slice(0, -1), soil), solve(all, soil)];
      const [before, after] = [rows(without), rows(withIt)];
      before.forEach((row, i) => {
        expect(after[i]![i]).toBeLessThanOrEqual(row[i]! * (1 + 1e-9));
      });
      expect(joinedOhm(withIt)).toBeLessThan(joinedOhm(without));
      withIt.aloneOhm.forEach((ohm, i) => {
        expect(after[i]![i]).toBeLessThanOrEqual(ohm * (1 + 1e-9));
      });
    }),
    { numRuns: 60, endOnFailure: true },
  );
});

test('resistivity that rises in any layer raises the resistance of every combination of currents', () => {
  const rises = fc.array(fc.oneof(fc.constant(1), figure(1, 50)), { minLength: 4, maxLength: 4 });
  fc.assert(
    fc.property(bodies, layers, rises, (all, soil, times) => {
      const higher = { ...soil, ohmM: soil.ohmM.map((ohmM, k) => ohmM * times[k]!) };
      const [low, high] = [rows(solve(all, soil)), rows(solve(all, higher))];
      const rise = high.map((row, i) => row.map((ohm, j) => ohm - low[i]![j]!));
      expect(leastEigenvalue(rise)).toBeGreaterThan(-1e-5 * largest(high));
      expect(joinedOhm(solve(all, higher))).toBeGreaterThan(joinedOhm(solve(all, soil)) * (1 - 1e-5));
    }),
    { numRuns: 60, endOnFailure: true },
  );
});

test('all resistivities times k: all resistances times k', () => {
  fc.assert(
    fc.property(bodies, layers, figure(0.1, 10), (all, soil, k) => {
      const [one, other] = [solve(all, soil), solve(all, { ...soil, ohmM: soil.ohmM.map((ohmM) => k * ohmM) })];
      one.resistanceOhm.forEach((ohm, i) => {
        expect(other.resistanceOhm[i]! / ohm / k).toBeCloseTo(1, 9);
      });
    }),
    { numRuns: 30, endOnFailure: true },
  );
});

test('all lengths times k: all resistances over k', () => {
  const times = (point: SoilPoint, k: number): SoilPoint => [k * point[0], k * point[1], k * point[2]];
  fc.assert(
    fc.property(bodies, layers, figure(0.2, 5), (all, soil, k) => {
      const scaled = all.map(({ runs }) => ({
        runs: runs.map((r) => ({ ...r, from: times(r.from, k), to: times(r.to, k), radiusM: k * r.radiusM })),
      }));
      const [one, other] = [
        solve(all, soil),
        solve(scaled, { ...soil, thickM: soil.thickM.map((thick) => k * thick) }),
      ];
      one.resistanceOhm.forEach((ohm, i) => {
        expect((other.resistanceOhm[i]! / ohm) * k).toBeCloseTo(1, 7);
      });
    }),
    { numRuns: 30, endOnFailure: true },
  );
});

test('where a site lies and which way it is turned changes nothing', () => {
  fc.assert(
    fc.property(bodies, layers, fc.double({ min: 0, max: 6, noNaN: true }), (all, soil, angle) => {
      const [c, s] = [Math.cos(angle), Math.sin(angle)];
      const moved = ([x, y, z]: SoilPoint): SoilPoint => [c * x - s * y + 300, s * x + c * y - 70, z];
      const turned = all.map(({ runs }) => ({
        runs: runs.map((r) => ({ ...r, from: moved(r.from), to: moved(r.to) })),
      }));
      const [one, other] = [solve(all, soil), solve(turned, soil)];
      one.resistanceOhm.forEach((ohm, i) => {
        expect(other.resistanceOhm[i]! / ohm).toBeCloseTo(1, 7);
      });
    }),
    { numRuns: 30, endOnFailure: true },
  );
});

test('the surface is nowhere above the highest body nor below 0 when all are lifted together, and falls off outwards', () => {
  fc.assert(
    fc.property(bodies, layers, fc.double({ min: 0, max: 6, noNaN: true }), (all, soil, angle) => {
      const answer = solve(all, soil);
      const ways = [60, 120, 500, 3000].flatMap((d) => [30 + d * Math.cos(angle), d * Math.sin(angle), 0]);
      const near = [-1, 1, 4, 10, 25].flatMap((x) => [x, 1.3, 0]);
      const lifted = all.map(() => 1);
      for (const share of potentialAt(answer, lifted, Float64Array.from(near))) {
        expect(share).toBeGreaterThan(0);
        // five pieces to a run: at its ends a little above
        expect(share).toBeLessThan(1.2);
      }
      const outward = potentialAt(answer, lifted, Float64Array.from(ways));
      for (let k = 1; k < outward.length; k++) expect(outward[k]).toBeLessThan(outward[k - 1]!);
    }),
    { numRuns: 40, endOnFailure: true },
  );
});

test('a current between two points is the same seen from either: mutual resistances do not depend on which is lifted', () => {
  fc.assert(
    fc.property(bodies, layers, (all, soil) => {
      const answer = solve(all, soil);
      const count = answer.aloneOhm.length;
      const ampere = (from: number, lifted: number): number => {
        let sum = 0;
        answer.segments.body.forEach((body, i) => {
          if (body === from) sum += answer.leakage[i * count + lifted]!;
        });
        return sum;
      };
      expect(ampere(0, 1) / ampere(1, 0)).toBeCloseTo(1, 6);
      // current flows into what is held at 0
      expect(ampere(0, 1)).toBeLessThan(0);
    }),
    { numRuns: 40, endOnFailure: true },
  );
});
