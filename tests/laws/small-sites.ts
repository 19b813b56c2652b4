/** Small sites at random, as text that an owner could have typed: JSON is YAML too. */
import fc from 'fast-check';
import { readSite } from '../../src/site/read-site.ts';
import type { Site } from '../../src/site/site.ts';

type Fields = Readonly<Record<string, unknown>>;
export type Members = Readonly<Record<string, Fields>>;
/** Section → members. */
export type Doc = Readonly<Record<string, Members>>;

export interface Wire {
  readonly from: string;
  readonly to: string;
  readonly lengthM: number | null;
  readonly joints: 'none' | 'two' | 'splice' | 'clamp' | 'unsaid';
  readonly passes: string | null;
  readonly state: 'there' | 'there' | 'perhaps' | 'open';
}

const three = fc.constantFrom('yes', 'no', 'unknown');
const mostly = <T>(usual: T, ...others: readonly T[]) =>
  fc.oneof({ weight: 4, arbitrary: fc.constant(usual) }, { weight: 1, arbitrary: fc.constantFrom(...others) });

/** Points on which wires land (`c0`: another wire); doubled where they should be frequent. */
const points = [
  ...['R1', 'R1', 'R2', 'R2', 'R3', 'rods', 'rods.1', 'rods.2', 'bar', 'bar', 'bar2', 'panel', 'panel', 'sub', 'box'],
  ...['mast@base', 'mast@base', 'mast@top', 'mast@3 m', 'crank@base', 'crank@2 m', 'beam', 'pipe', 'a1', 'c0'],
];

const wire: fc.Arbitrary<Wire> = fc
  .record({
    from: fc.constantFrom(...points),
    to: fc.constantFrom(...points),
    lengthM: fc.option(fc.integer({ min: 1, max: 9 }), { nil: null, freq: 4 }),
    joints: fc.constantFrom('none' as const, 'two' as const, 'splice' as const, 'clamp' as const, 'unsaid' as const),
    passes: fc.option(fc.constantFrom('R2', 'R3', 'bar2'), { nil: null, freq: 1 }),
    state: fc.constantFrom('there' as const, 'there' as const, 'there' as const, 'perhaps' as const, 'open' as const),
  })
  .filter(({ from, to, passes }) => from !== to && passes !== from && passes !== to);

/** What differs from site to site. */
export interface Spec {
  readonly service: string;
  /** Electrodes by their size in soil at places near one another; else by stated figures alone. */
  readonly buried: boolean;
  readonly ohms: readonly number[];
  readonly joined: string;
  readonly rod3: string;
  readonly crank: Fields;
  readonly touches: string;
  readonly bolted: string;
  readonly barOn: string | null;
  readonly continuous: string;
  readonly gasBonded: string;
  readonly clampThere: string;
  readonly wires: readonly Wire[];
}

export const specs: fc.Arbitrary<Spec> = fc.record({
  service: mostly('panel', 'R1', 'bar', 'unknown', 'none'),
  buried: fc.boolean(),
  ohms: fc.array(fc.integer({ min: 5, max: 90 }), { minLength: 4, maxLength: 4 }),
  joined: three,
  rod3: mostly('yes', 'unknown'),
  crank: fc.constantFrom<Fields>({ sections: 'sliding', jumpers: 'yes' }, { sections: 'sliding', jumpers: 'no' }, {}),
  touches: three,
  bolted: mostly('yes', 'no', 'unknown'),
  barOn: fc.constantFrom(null, 'bar'),
  continuous: three,
  gasBonded: fc.constantFrom('no', 'unknown'),
  clampThere: mostly('yes', 'unknown'),
  wires: fc.array(wire, { minLength: 1, maxLength: 8 }).filter(([first]) => first!.from !== 'c0' && first!.to !== 'c0'),
});

/** The file of a spec: sections, members and their fields. */
export function docOf(spec: Spec): Doc {
  const stated = (i: number) => ({ resistance: `${spec.ohms[i]} ohm` });
  const sized = (i: number) => ({ length: '2 m', diameter: '16 mm', at: [spec.ohms[i]! / 10, 2 * i] });
  const rod = (i: number, more: Fields = {}) => ({ kind: 'rod', ...(spec.buried ? sized(i) : stated(i)), ...more });
  return {
    electrodes: {
      R1: rod(0),
      R2: rod(1),
      R3: rod(2, { present: spec.rod3 }),
      rods: rod(3, { kind: 'rods', count: 2, joined: spec.joined, layout: 'line', spacing: '3 m' }),
    },
    supports: {
      mast: { kind: 'mast', height: '9 m', metal: 'galvanised steel', sections: 'one piece' },
      crank: { kind: 'crank-up tower', height: '12 m', metal: 'galvanised steel', ...spec.crank },
    },
    antennas: { beam: { kind: 'yagi', on: 'mast@top', touches_support: spec.touches } },
    bars: { bar: { kind: 'entry panel' }, bar2: { kind: 'entry panel', ...(spec.barOn && { on: spec.barOn }) } },
    arresters: { a1: { kind: 'gas tube', on: 'bar', bonded: spec.bolted } },
    equipment: {
      panel: { kind: 'service panel' },
      sub: { kind: 'sub-panel' },
      box: { kind: 'transceiver' },
    },
    lines: {
      feeder: {
        kind: 'mains',
        path: ['panel', 'sub'],
        protective_conductor: spec.gasBonded === 'no' ? 'yes' : 'unknown',
      },
      coax: { kind: 'coax', path: ['beam', 'a1', 'box'] },
    },
    conductors: Object.fromEntries(spec.wires.map((w, i) => [`c${i}`, wireFields(w)])),
    joints: { clamp: { kind: 'acorn clamp', on: 'R1', present: spec.clampThere } },
    metalwork: {
      pipe: { kind: 'water pipe', continuous: spec.continuous },
      gas: { kind: 'gas pipe', bonded: spec.gasBonded },
    },
  };
}

export function wireFields({ from, to, lengthM, joints, passes, state }: Wire): Fields {
  const second = joints === 'clamp' && to === 'R1' ? 'clamp' : 'rod clamp';
  const first = joints === 'clamp' && from === 'R1' ? 'clamp' : 'bolted lug';
  const list = {
    none: 'none',
    two: [first, second],
    splice: [first, 'twist', second],
    clamp: [first, second],
    unsaid: null,
  };
  return {
    from,
    to,
    ...(lengthM === null ? {} : { length: `${lengthM} m`, wire: '16 mm2 copper' }),
    ...(list[joints] === null ? {} : { joints: list[joints] }),
    ...(passes === null ? {} : { passes: [passes] }),
    ...(state === 'perhaps' ? { present: 'unknown' } : state === 'open' ? { condition: 'open' } : {}),
  };
}

/** The text of the file; `edit` may change it as text. */
export function textOf(service: string, doc: Doc): string {
  const site = { name: 'Small', region: 'iec', units: 'm', service };
  const soil = { layers: [{ resistivity: '100 ohm m' }] };
  return JSON.stringify({ site, soil, ...doc }, null, 1);
}

/** Reads it; a text that the reader refuses is a fault of the test. */
export function siteOfText(text: string): Site {
  const { site, problems } = readSite(text, 'small.site.yaml');
  if (site === null) throw new Error(`refused: ${JSON.stringify(problems)}\n${text}`);
  return site;
}

export function siteOfSpec(spec: Spec): Site {
  return siteOfText(textOf(spec.service, docOf(spec)));
}

/** The same file with these wires too. */
export function withWires(doc: Doc, more: Members): Doc {
  return { ...doc, conductors: { ...doc.conductors, ...more } };
}

/** A wire off which something branches is tried span by span. */
export function isSpanBySpan(spec: Spec, at: string): boolean {
  const wire = /^c\d$/.test(at) ? spec.wires[Number(at.slice(1))] : undefined;
  return (wire !== undefined && wire.passes !== null) || (at === 'c0' && isTapped(spec));
}

export const isTapped = ({ wires }: Spec) => wires.some(({ from, to }) => from === 'c0' || to === 'c0');

/** How often a law is tried: each try reads and works out several sites. */
export const runs = { numRuns: Number(process.env.LAW_RUNS ?? 50) };
/** The same for a law that works out dozens of them. */
export const few = { numRuns: Number(process.env.LAW_RUNS ?? 20) };
