import type { Interval } from '../../units/interval.ts';
import type { TypedPart } from '../reading/typed-site.ts';
import type { Electrode } from '../site.ts';
import type { Build } from './build.ts';
import { partBase } from './part-base.ts';
import { routeOf } from './route.ts';

/** Kinds whose `count` is that of their members, not of parts alike. */
const grouped = ['rods', 'radial'];
/** Kinds that are driven or stood from the surface: their upper end is at grade unless said. */
const upright = ['rod', 'rods', 'pipe', 'well casing', 'drilled rod'];
const atGrade: Interval = { low: 0, high: 0 };

export function buildElectrode(typed: TypedPart<'electrodes'>, { places }: Build): Electrode {
  const { values } = typed;
  const base = partBase('electrodes', typed, places);
  const isGroup = grouped.includes(typed.kind);
  const own: Omit<Electrode, Exclude<keyof typeof base, 'count'>> = {
    count: isGroup ? 1 : base.count,
    members: isGroup ? values.count : 1,
    metal: values.metal,
    topM: values.top ?? (takesTopAtGrade(typed) ? atGrade : null),
    lengthM: values.length,
    diameterM: values.diameter,
    angleDeg: values.angle,
    widthM: values.width,
    heightM: values.height,
    depthM: values.depth,
    layout: values.layout,
    spacingM: values.spacing,
    radiusM: values.radius,
    serves: values.serves ?? [],
    listed: values.listed ?? 'unknown',
    painted: values.painted ?? 'unknown',
    coatingM: values.coating,
    guarded: values.guarded ?? 'unknown',
    standsIn: values.stands_in,
    gravelM: values.gravel,
    surface: values.surface,
    inSoilM: values.in_soil,
    thicknessM: values.thickness,
    lattice: values.lattice ?? 'unknown',
    concreteM: values.concrete,
    membrane: values.membrane ?? 'unknown',
    continuous: values.continuous ?? 'unknown',
    joined: values.joined ?? 'unknown',
    wire: values.wire,
    route: routeOf(values.route, places),
    closed: values.closed ?? 'unknown',
    areaM2: values.area,
    stands: values.stands,
    cage: values.cage ?? 'unknown',
    holeM: values.hole,
    backfill: values.backfill,
    backfillOhmM: values.backfill_resistivity,
    cover: values.cover,
    resistance: values.resistance,
    measured: values.measured ?? (values.resistance === null ? null : 'alone'),
  };
  return Object.assign(base, own);
}

/** `top: unknown` stays unknown; left out it is at grade. */
export function takesTopAtGrade({ kind, typed }: Pick<TypedPart<'electrodes'>, 'kind' | 'typed'>): boolean {
  return upright.includes(kind) && !('top' in typed);
}
