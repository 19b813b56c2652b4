import type { Electrode } from '../../site/site.ts';
import { type Interval, isAtLeast, mul } from '../../units/interval.ts';
import { leastAsPrinted } from '../as-printed.ts';
import type { Verdict } from '../rule.ts';
import { routeLength } from './route-length.ts';
import { howToSize, sizeFields } from './size-fields.ts';
import { type Figure, figureKeys, type LeastFigure, type SizeRow } from './size-row.ts';

interface Asked {
  readonly figure: Figure;
  readonly limit: number;
  readonly value: Interval | null;
  readonly is: 'yes' | 'no' | 'unknown';
}

/** One electrode against the rows of a clause. A metal that no row names is not met: the clause lists what it admits. */
export function sizeVerdict(e: Electrode, rows: readonly SizeRow[]): Verdict {
  const at = [e.id];
  const metal = (e.metal ?? e.wire?.metal)?.name ?? null;
  const mine = rows.filter((r) => r.metals === 'any' || metal === null || r.metals.includes(metal));
  if (mine.length === 0) {
    return { is: 'not met', at, because: { key: 'metal not listed', values: { metal: metal! } } };
  }
  const asked = mine.map((r) => r.least.map((l): Asked => ask(e, l)));
  const open = asked.filter((row) => row.every((a) => a.is !== 'no'));
  if (open.length === 0) return tooSmall(at, asked);
  const isListed = metal !== null || mine.every((r) => r.metals === 'any');
  const met = isListed ? asked.find((row) => row.every((a) => a.is === 'yes')) : undefined;
  if (met !== undefined) return { is: 'met', at, because: { key: 'as asked' }, ...measuredOf(met[0]) };
  const figures = [
    ...new Set(
      open
        .flat()
        .filter((a) => a.is === 'unknown')
        .map((a) => a.figure),
    ),
  ];
  if (figures.length === 0)
    return { is: 'cannot tell', at, because: { key: 'metal unknown' }, settle: { key: 'look at it' } };
  const fields = sizeFields(figures, e);
  return {
    is: 'cannot tell',
    at,
    because: { key: 'figure unknown', values: { figures } },
    settle: { key: howToSize(fields, e), values: { fields } },
  };
}

/** By the row that asks least of the figure that fails. */
function tooSmall(at: readonly string[], asked: readonly (readonly Asked[])[]): Verdict {
  const failing = asked.map((row) => row.find((a) => a.is === 'no')!);
  const least = failing.reduce((a, b) => (b.figure === a.figure && b.limit < a.limit ? b : a));
  return { is: 'not met', at, because: { key: 'less', values: { figure: least.figure } }, ...measuredOf(least) };
}

function measuredOf(a: Asked | undefined) {
  if (a === undefined || a.value === null) return {};
  return { measured: { key: figureKeys[a.figure], value: a.value, limit: a.limit, sense: 'least' } as const };
}

function ask(e: Electrode, { figure, limit, printed = limit }: LeastFigure): Asked {
  const value = figureOf(e, figure);
  const is = value === null ? 'unknown' : isAtLeast(value, leastAsPrinted(limit, printed));
  return { figure, limit, value, is };
}

function figureOf(e: Electrode, figure: Figure): Interval | null {
  if (figure === 'length') return e.lengthM ?? routeLength(e);
  if (figure === 'wire') return e.wire?.areaM2 ?? null;
  if (figure === 'wire diameter') return e.wire?.diameterM ?? null;
  if (figure === 'area') return e.widthM === null || e.heightM === null ? null : mul(e.widthM, e.heightM);
  const own = {
    diameter: e.diameterM,
    coating: e.coatingM,
    depth: e.depthM,
    thickness: e.thicknessM ?? e.wire?.thicknessM ?? null,
    width: e.widthM,
    height: e.heightM,
    concrete: e.concreteM,
  };
  return own[figure];
}
