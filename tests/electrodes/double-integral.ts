import { gaussLegendre } from '../../src/math/quadrature.ts';

export interface Line {
  readonly middle: readonly [number, number, number];
  readonly along: readonly [number, number, number];
  readonly length: number;
}

const rule = gaussLegendre(10);

/** A line between two points. */
export function line(from: readonly [number, number, number], to: readonly [number, number, number]): Line {
  const way = [to[0] - from[0], to[1] - from[1], to[2] - from[2]] as const;
  const length = Math.hypot(...way);
  return {
    middle: [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2, (from[2] + to[2]) / 2],
    along: [way[0] / length, way[1] / length, way[2] / length],
    length,
  };
}

/**
 * Mean of 1 / sqrt(distance^2 + width^2) over two lines, by ten by ten Gauss points on ever shorter pieces until each pair is
 * three of its lengths (distance and width taken together) apart: to about 1e-12, with no closed form in it.
 */
export function doubleIntegral(a: Line, b: Line, width: number): number {
  return integral(a, b, width) / (a.length * b.length);
}

function integral(a: Line, b: Line, width: number): number {
  const apart = Math.hypot(...a.middle.map((x, axis) => x - b.middle[axis]!), width);
  const longer = Math.max(a.length, b.length);
  if (apart >= 2 * longer || longer < width / 2) return gauss(a, b, width);
  const [first, second] = a.length >= b.length ? halves(a) : halves(b);
  return a.length >= b.length
    ? integral(first, b, width) + integral(second, b, width)
    : integral(a, first, width) + integral(a, second, width);
}

function halves({ middle, along, length }: Line): readonly [Line, Line] {
  const at = (side: number): Line => ({
    middle: [
      middle[0] + (side * length * along[0]) / 4,
      middle[1] + (side * length * along[1]) / 4,
      middle[2] + (side * length * along[2]) / 4,
    ],
    along,
    length: length / 2,
  });
  return [at(-1), at(1)];
}

function gauss(a: Line, b: Line, width: number): number {
  let sum = 0;
  rule.points.forEach((s, i) => {
    rule.points.forEach((t, j) => {
      const way = [0, 1, 2].map(
        (axis) =>
          a.middle[axis]! + (s * a.length * a.along[axis]!) / 2 - b.middle[axis]! - (t * b.length * b.along[axis]!) / 2,
      );
      sum += (rule.weights[i]! * rule.weights[j]!) / Math.hypot(...way, width);
    });
  });
  return (sum * a.length * b.length) / 4;
}
