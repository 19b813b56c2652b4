import { unsaidJoint } from '../format/joint-uses.ts';
import { unknownPoint } from '../format/points.ts';
import type { TypedPart } from '../reading/typed-site.ts';
import type {
  Antenna,
  Arrester,
  Bar,
  Conductor,
  Electrode,
  Equipment,
  Joint,
  Line,
  Metalwork,
  Part,
  PartSection,
  Support,
} from '../site.ts';
import { alongOf } from './along.ts';
import type { Build } from './build.ts';
import { buildElectrode } from './electrode.ts';
import { buildLine } from './line.ts';
import { partBase } from './part-base.ts';
import { routeOf } from './route.ts';

/** How a typed part of each section becomes a part of the site. */
export const builders: { readonly [S in PartSection]: (typed: TypedPart<S>, build: Build) => Part & { section: S } } = {
  electrodes: (typed, build): Electrode => buildElectrode(typed, build),
  supports: buildSupport,
  antennas: buildAntenna,
  bars: buildBar,
  arresters: buildArrester,
  equipment: buildEquipment,
  lines: (typed, build): Line => buildLine(typed, build),
  conductors: buildConductor,
  joints: buildJoint,
  metalwork: buildMetalwork,
};

function buildSupport(typed: TypedPart<'supports'>, { places }: Build): Support {
  const { height, legs, face, metal, sections, jumpers, base, reach, insulating_surface, wall, guys } = typed.values;
  return Object.assign(partBase('supports', typed, places), {
    heightM: height,
    legs,
    faceM: face,
    metal,
    sections,
    jumpers: jumpers ?? 'unknown',
    base,
    reach,
    insulatingSurface: insulating_surface ?? 'unknown',
    wallM: wall,
    guys: (guys ?? []).map(({ id, values, typed: text, source }) => ({
      id,
      anchor: places.position(values.anchor) ?? places.name(values.anchor),
      metal: values.metal,
      turnbuckle: values.turnbuckle ?? 'unknown',
      bypass: values.bypass ?? 'unknown',
      insulators: values.insulators ?? 'unknown',
      note: values.note,
      typed: text,
      source,
    })),
  });
}

function buildAntenna(typed: TypedPart<'antennas'>, { places }: Build): Antenna {
  const { dc_path, touches_support, band, height, length, wire, base, below_roof, from_wall } = typed.values;
  return Object.assign(partBase('antennas', typed, places), {
    dcPath: dc_path ?? 'unknown',
    touchesSupport: touches_support ?? 'unknown',
    bandHz: band,
    heightM: height,
    lengthM: length,
    wire,
    base,
    belowRoofM: below_roof,
    fromWallM: from_wall,
  });
}

function buildBar(typed: TypedPart<'bars'>, { places }: Build): Bar {
  const { terminals, on_cover, area, section, metal, joint } = typed.values;
  return Object.assign(partBase('bars', typed, places), {
    terminals,
    onCover: on_cover ?? 'unknown',
    areaM2: area,
    sectionM2: section,
    metal,
    joint,
  });
}

function buildArrester(typed: TypedPart<'arresters'>, { places }: Build): Arrester {
  const { values } = typed;
  return Object.assign(partBase('arresters', typed, places), {
    sparkoverV: values.sparkover,
    ratedPowerW: values.rated_power,
    arcV: values.arc,
    clamping: values.clamping,
    bandHz: values.band,
    bleed: values.bleed ?? 'unknown',
    leadM: values.lead,
    lineLeadM: values.line_lead,
    fromEntryM: values.from_entry,
    nearFuel: values.near_fuel ?? 'unknown',
    listed: values.listed ?? 'unknown',
    series: values.position,
    covers: values.covers,
    testClass: values.test_class,
    between: values.between,
    joint: values.joint,
  });
}

function buildEquipment(typed: TypedPart<'equipment'>, { places }: Build): Equipment {
  const { values } = typed;
  return Object.assign(partBase('equipment', typed, places), {
    powerW: values.power,
    swr: values.swr,
    neutralBonded: values.neutral_bonded ?? 'unknown',
    neutralSwitched: values.neutral_switched ?? 'unknown',
    ratingA: values.rating,
    phases: values.phases,
    supply: values.supply,
    serviceWire: values.service_wire,
    electrodeWire: values.electrode_wire,
    serial: values.serial,
    joint: values.joint,
    unusedPorts: values.unused_ports,
  });
}

function buildConductor(typed: TypedPart<'conductors'>, { places }: Build): Conductor {
  const { values, source } = typed;
  const unsaid = unsaidJoint(source);
  const uses = values.joints?.uses ?? [];
  return Object.assign(partBase('conductors', typed, places), {
    from: values.from ?? unknownPoint,
    to: values.to ?? unknownPoint,
    passes: values.passes ?? [],
    wire: values.wire,
    lengthM: values.length,
    lengthsM: values.lengths ?? [],
    route: routeOf(values.route, places),
    resistance: values.resistance,
    inductanceH: values.inductance,
    buriedM: values.buried,
    bends: (values.bends ?? []).map((bend) => ({ angleDeg: bend?.angle ?? null, radiusM: bend?.radius ?? null })),
    onePiece: values.joints?.onePiece ?? false,
    fromJoint: uses[0] ?? unsaid,
    toJoint: uses[uses.length - 1] ?? unsaid,
    splices: uses.slice(1, -1),
    role: values.role,
    along: alongOf(values.along),
    runs: values.runs,
    labelled: values.labelled ?? 'unknown',
    enclosure: values.enclosure,
    enclosureBonded: values.enclosure_bonded,
    guarded: values.guarded ?? 'unknown',
    rises: values.rises ?? 'unknown',
    loop: values.loop === null ? null : { openingM: values.loop.opening, lengthM: values.loop.length },
    fixingsM: values.fixings,
    aboveSoilM: values.above_soil,
  });
}

function buildJoint(typed: TypedPart<'joints'>, { places }: Build): Joint {
  const {
    metal,
    listed,
    for_burial,
    accessible,
    resistance,
    bolts,
    shim,
    cleaned,
    contact,
    sealed,
    for_test,
    for_wires,
  } = typed.values;
  return Object.assign(partBase('joints', typed, places), {
    metal,
    listed: listed ?? 'unknown',
    forBurial: for_burial ?? 'unknown',
    accessible: accessible ?? 'unknown',
    resistance,
    bolts,
    forWires: for_wires,
    shim,
    cleaned: cleaned ?? 'unknown',
    contactM2: contact,
    sealed: sealed ?? 'unknown',
    forTest: for_test ?? 'unknown',
  });
}

function buildMetalwork(typed: TypedPart<'metalwork'>, { places }: Build): Metalwork {
  const { route, metal, buried, depth, continuous, joints, size, clearance, voltage, clamp_from_entry } = typed.values;
  return Object.assign(partBase('metalwork', typed, places), {
    route: routeOf(route, places),
    metal,
    buried: buried ?? 'unknown',
    depthM: depth,
    continuous: continuous ?? 'unknown',
    joints,
    sizeM: size,
    clearanceM: clearance,
    voltageV: voltage,
    clampFromEntryM: clamp_from_entry,
  });
}
