import type { TypedStop } from '../format/stops.ts';
import type { TypedPart } from '../reading/typed-site.ts';
import type { Line, Stop } from '../site.ts';
import { alongOf } from './along.ts';
import type { Build } from './build.ts';
import { partBase } from './part-base.ts';

export function buildLine(typed: TypedPart<'lines'>, build: Build): Line {
  const { values } = typed;
  return Object.assign(partBase('lines', typed, build.places), {
    path: (values.path ?? []).map((stop) => buildStop(stop, build)),
    lengthsM: values.lengths ?? [],
    lengthM: values.length,
    cable: values.cable,
    impedanceOhm: values.impedance,
    wires: values.wires,
    buried: values.buried ?? 'unknown',
    overhead: values.overhead ?? 'unknown',
    enclosure: values.enclosure,
    protectiveConductor: values.protective_conductor ?? 'unknown',
    along: alongOf(values.along),
    runs: values.runs,
    metalInside: values.metal_inside ?? 'unknown',
    voltageV: values.voltage,
    standoffM: values.standoff,
    guarded: values.guarded ?? 'unknown',
    dripLoop: values.drip_loop ?? 'unknown',
  });
}

function buildStop(stop: TypedStop, { places, source }: Build): Stop {
  const at = source.placeOf(stop.node.at.start);
  if (stop.is === 'part') return { is: 'part', at: stop.at, source: at };
  if (stop.is === 'bond') return { is: 'bond', at: stop.at, source: at };
  if (stop.is === 'plug') return { is: 'plug', id: stop.id, where: places.where(stop.where, null, null), source: at };
  if (stop.is !== 'bend') return { is: stop.is, source: at };
  return {
    is: 'bend',
    at: stop.at,
    position: places.position(stop.placed),
    where: places.where(stop.where, stop.placed, null),
    source: at,
  };
}

/** How many pieces a line has: one less than its stops, bends left out. */
export function pieceCount(path: readonly TypedStop[]): number {
  return Math.max(0, path.filter((stop) => stop.is !== 'bend').length - 1);
}
