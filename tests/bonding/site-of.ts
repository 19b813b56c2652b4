/** A site from the few fields that a test cares about: all others are what the format takes when nothing is typed. */
import { readMetal } from '../../src/materials/metals.ts';
import { readWire, type Wire } from '../../src/materials/wire.ts';
import type {
  Conductor,
  JointUse,
  Line,
  Part,
  PartBase,
  PartSection,
  PointRef,
  Site,
  SiteHeader,
  State,
  Stop,
} from '../../src/site/site.ts';
import type { Interval } from '../../src/units/interval.ts';

type OpeningText = Pick<State['open'][number], 'at'> & Partial<State['open'][number]>;
type Loose = Readonly<Record<string, unknown>>;
type StopText =
  | string
  | { readonly bond: string }
  | { readonly plug: string }
  | { readonly bend: string | null; readonly where?: string };

export interface Few {
  readonly service?: string;
  readonly header?: Partial<SiteHeader>;
  readonly electrodes?: Readonly<Record<string, Loose>>;
  readonly supports?: Readonly<Record<string, Loose>>;
  readonly antennas?: Readonly<Record<string, Loose>>;
  readonly bars?: Readonly<Record<string, Loose>>;
  readonly arresters?: Readonly<Record<string, Loose>>;
  readonly equipment?: Readonly<Record<string, Loose>>;
  readonly lines?: Readonly<Record<string, Omit<Loose, 'path'> & { readonly path: readonly StopText[] }>>;
  readonly conductors?: Readonly<Record<string, Loose & { readonly from: string; readonly to: string }>>;
  readonly joints?: Readonly<Record<string, Loose>>;
  readonly metalwork?: Readonly<Record<string, Loose>>;
  readonly states?: Readonly<Record<string, Loose>>;
  readonly readings?: Site['readings'];
}

const source = { line: 1, column: 1 };

export const exactly = (value: number): Interval => ({ low: value, high: value });

/** `tower@12` is a height in metres; `tower@top`, `rods.2`, `guy-1@anchor`, `unknown`. */
export function pointOf(text: string): PointRef {
  const [, part, member, place] = /^([^.@]+)(?:\.([^@]+))?(?:@(.+))?$/.exec(text)!;
  const mark = place === 'top' || place === 'base' || place === 'tower' || place === 'anchor' ? place : null;
  return {
    text,
    part: part === 'unknown' ? null : part!,
    member: member ?? null,
    mark,
    atM: place !== undefined && mark === null ? exactly(Number(place)) : null,
  };
}

export function wireOf(text: string): Wire {
  const read = readWire(text);
  if (!read.ok) throw new Error(`no wire: ${text}`);
  return read.wire;
}

export function jointUse(more: Partial<JointUse> = {}): JointUse {
  return {
    named: null,
    kind: null,
    metal: null,
    resistance: null,
    condition: 'unknown',
    listed: 'unknown',
    forBurial: 'unknown',
    accessible: 'unknown',
    source,
    ...more,
  };
}

const useOf = (typed: unknown): JointUse =>
  typeof typed === 'string' ? jointUse({ kind: typed }) : jointUse((typed ?? {}) as Partial<JointUse>);

function base(section: PartSection, id: string): PartBase {
  return {
    id,
    section,
    kind: 'unknown',
    present: 'yes',
    known: 'told',
    fieldKnown: {},
    condition: 'unknown',
    position: null,
    place: null,
    where: section === 'electrodes' || section === 'supports' || section === 'antennas' ? 'outside' : null,
    on: null,
    bonded: null,
    near: [],
    withinReach: [],
    owner: null,
    count: 1,
    note: null,
    photo: [],
    source,
    typed: {},
  };
}

const defaults: Readonly<Record<PartSection, Loose>> = {
  electrodes: {
    ...nulls('metal topM lengthM diameterM angleDeg widthM heightM depthM layout spacingM radiusM members wire route'),
    ...nulls('areaM2 stands holeM backfill backfillOhmM cover resistance measured'),
    joined: 'unknown',
    closed: 'unknown',
    cage: 'unknown',
  },
  supports: { ...nulls('heightM legs faceM metal sections base reach'), jumpers: 'unknown', guys: [] },
  antennas: { ...nulls('bandHz heightM lengthM base'), dcPath: 'unknown', touchesSupport: 'unknown' },
  bars: { ...nulls('terminals areaM2 joint'), onCover: 'unknown' },
  arresters: {
    ...nulls('sparkoverV ratedPowerW arcV clamping bandHz leadM series covers between joint'),
    bleed: 'unknown',
    listed: 'unknown',
  },
  equipment: {
    ...nulls('powerW swr ratingA phases supply serviceWire electrodeWire serial joint'),
    neutralBonded: 'unknown',
  },
  lines: {
    ...nulls('lengthM cable impedanceOhm wires enclosure along runs'),
    lengthsM: [],
    buried: 'unknown',
    overhead: 'unknown',
    protectiveConductor: 'unknown',
    metalInside: 'unknown',
  },
  conductors: {
    ...nulls('wire lengthM route resistance inductanceH buriedM role along runs enclosure'),
    passes: [],
    lengthsM: [],
    bends: [],
    onePiece: false,
    splices: [],
  },
  joints: {
    ...nulls('metal resistance bolts'),
    listed: 'unknown',
    forBurial: 'unknown',
    accessible: 'unknown',
  },
  metalwork: { ...nulls('route metal depthM joints sizeM'), buried: 'unknown', continuous: 'unknown' },
};

function nulls(names: string): Loose {
  return Object.fromEntries(names.split(' ').map((name) => [name, null]));
}

function partsOf<P extends Part>(section: PartSection, few: Readonly<Record<string, Loose>> | undefined): readonly P[] {
  return Object.entries(few ?? {}).map(([id, typed]) => {
    const on = typeof typed.on === 'string' ? { on: pointOf(typed.on) } : {};
    const metal = typeof typed.metal === 'string' && typed.metal !== 'none' ? { metal: readMetal(typed.metal) } : {};
    return {
      ...base(section, id),
      ...defaults[section],
      ...typed,
      ...on,
      ...metal,
      ...special(section, typed),
    } as unknown as P;
  });
}

function special(section: PartSection, typed: Loose): Loose {
  if (section === 'conductors') return conductor(typed);
  if (section === 'lines') return { path: (typed.path as readonly StopText[]).map(stopOf) };
  if (section === 'arresters' && Array.isArray(typed.between)) return { between: typed.between.map(pointOf) };
  return {};
}

/** `joints: ['bolted lug', {named: 'clamp1'}]`, `passes: ['R1', {at: 'R2', joint: {...}}]`, `length` in metres, `wire` as text. */
function conductor(typed: Loose): Loose {
  const uses = (Array.isArray(typed.joints) ? typed.joints : []) as readonly unknown[];
  const passes = (typed.passes ?? []) as readonly (string | { readonly at: string; readonly joint?: unknown })[];
  const length = typed.length as number | Interval | undefined;
  return {
    from: pointOf(typed.from as string),
    to: pointOf(typed.to as string),
    fromJoint: useOf(uses[0]),
    toJoint: useOf(uses.length > 1 ? uses.at(-1) : undefined),
    splices: uses.slice(1, -1).map(useOf),
    onePiece: typed.joints === 'none',
    passes: passes.map((p) =>
      typeof p === 'string' ? { at: pointOf(p), joint: jointUse() } : { at: pointOf(p.at), joint: useOf(p.joint) },
    ),
    wire: typeof typed.wire === 'string' ? wireOf(typed.wire) : null,
    lengthM: typeof length === 'number' ? exactly(length) : (length ?? null),
    lengthsM: ((typed.lengths ?? []) as readonly (number | null)[]).map((l) => (l === null ? null : exactly(l))),
  } satisfies Partial<Conductor>;
}

function stopOf(typed: StopText): Stop {
  if (typeof typed === 'string') {
    return typed === 'street' || typed === 'unknown'
      ? { is: typed, source }
      : { is: 'part', at: pointOf(typed), source };
  }
  if ('bond' in typed) return { is: 'bond', at: pointOf(typed.bond), source };
  if ('plug' in typed) return { is: 'plug', id: typed.plug, source };
  const at = typed.bend === null ? null : pointOf(typed.bend);
  return { is: 'bend', at, position: null, where: typed.where ?? null, source };
}

function stateOf(id: string, typed: Loose): State {
  const open = ((typed.open ?? []) as readonly (string | OpeningText)[]).map((o) => ({
    side: null,
    gapM: null,
    end: 'unknown' as const,
    ...(typeof o === 'string' ? { at: o } : o),
  }));
  const rest = { says: null, set: {}, lost: [], frozen: 'unknown', dry: 'unknown', wet: 'unknown', source };
  return { ...rest, ...typed, id, open } as State;
}

const header: SiteHeader = {
  name: null,
  region: 'unknown',
  units: 'm',
  service: 'unknown',
  supply: 'unknown',
  codes: [],
  prepared: { by: null, for: null, date: null },
  address: null,
  owner: null,
  permit: null,
  revision: null,
  northDeg: null,
  claims: null,
  standard: null,
  incomplete: [],
  without: [],
  temporary: 'unknown',
  agreed: [],
};

export function siteOf(few: Few): Site {
  const sections = {} as Site['sections'];
  return {
    file: 'test.site.yaml',
    header: { ...header, service: few.service ?? 'unknown', ...few.header },
    soil: null,
    buildings: [],
    places: [],
    electrodes: partsOf('electrodes', few.electrodes),
    supports: partsOf('supports', few.supports),
    antennas: partsOf('antennas', few.antennas),
    bars: partsOf('bars', few.bars),
    arresters: partsOf('arresters', few.arresters),
    equipment: partsOf('equipment', few.equipment),
    lines: partsOf<Line>('lines', few.lines),
    conductors: partsOf<Conductor>('conductors', few.conductors),
    joints: partsOf('joints', few.joints),
    metalwork: partsOf('metalwork', few.metalwork),
    states: Object.entries(few.states ?? {}).map(([id, typed]) => stateOf(id, typed)),
    readings: few.readings ?? [],
    prices: null,
    sections,
    questions: [],
    defaults: [],
  };
}
