import type { Metal } from './metals.ts';
import { type Citation, cite } from './source.ts';

/** One row: how far a surface lies from gold on the anodic scale. The greater the figure, the sooner it is eaten. */
export interface GalvanicRow {
  readonly surface: string;
  readonly anodicIndexV: number;
  readonly source: Citation;
}

const quoted = cite(
  'anodic index table of MIL-F-14072, finishes for ground electronic equipment',
  null,
  null,
  'second-hand',
);
const recalled = cite(
  'anodic index table of MIL-F-14072, finishes for ground electronic equipment',
  null,
  null,
  'memory',
);

/** From the noblest down. */
export const galvanicSeries: readonly GalvanicRow[] = [
  row('gold', 0.0, quoted),
  row('rhodium', 0.05, quoted),
  row('silver', 0.15, quoted),
  row('nickel and titanium', 0.3, quoted),
  row('copper', 0.35, quoted),
  row('low brass and bronze', 0.4, quoted),
  row('high brass', 0.45, quoted),
  row('stainless steel 18 % Cr', 0.5, quoted),
  row('tin plate', 0.6, quoted),
  row('stainless steel 12 % Cr', 0.6, quoted),
  row('tin-lead solder', 0.65, quoted),
  row('lead', 0.7, quoted),
  row('aluminium 2000 series', 0.75, quoted),
  row('iron and plain steel', 0.85, recalled),
  row('wrought aluminium', 0.9, recalled),
  row('cast aluminium', 0.95, recalled),
  row('galvanised steel', 1.2, recalled),
  row('zinc', 1.25, recalled),
  row('magnesium', 1.75, recalled),
];

/** Greatest difference that goes well, by surroundings. Harsh: outdoors, salt, high humidity. Normal: indoors, not controlled. */
export const galvanicLimits = { harshV: 0.15, normalV: 0.25, controlledV: 0.5, source: quoted } as const;

/** Position of a metal's surface on the scale; null where the series has no row for it. */
export function anodicIndexV(metal: Metal): number | null {
  return galvanicSeries.find((r) => r.surface === metal.surface)?.anodicIndexV ?? null;
}

/** Difference of two metals in contact, volts, to the hundredth that the table carries; null where one is not in it. */
export function galvanicDifferenceV(a: Metal, b: Metal): number | null {
  const [first, second] = [anodicIndexV(a), anodicIndexV(b)];
  return first === null || second === null ? null : Math.round(Math.abs(first - second) * 100) / 100;
}

/** The metal of the two that is eaten; null where they are alike or one is not in the series. */
export function eatenOf(a: Metal, b: Metal): Metal | null {
  const difference = galvanicDifferenceV(a, b);
  if (difference === null || difference === 0) return null;
  return anodicIndexV(a)! > anodicIndexV(b)! ? a : b;
}

function row(surface: string, indexV: number, source: Citation): GalvanicRow {
  return { surface, anodicIndexV: indexV, source };
}
