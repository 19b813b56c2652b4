import type { TieKind } from '../bonding/tie.ts';
import { readCable } from '../materials/cables.ts';
import { resistancePerMetre } from '../materials/conductor-resistance.ts';
import type { Wire } from '../materials/wire.ts';
import type { Site, Support } from '../site/site.ts';
import { type Interval, middle } from '../units/interval.ts';

/** What a strike's network takes of a branch's metal. */
export interface MetalFigure {
  /** Radius of the thin tube of the same inductance. */
  readonly radiusM: number;
  readonly ohmPerM: number;
  /** Whether the radius is the owner's, or taken because nobody typed it. */
  readonly radiusFrom: 'typed' | 'assumed';
}

/** Figures of a part's metal by its id, of the kind of tie that it makes. */
export function strikeMetal(site: Site): (part: string, kind: TieKind) => MetalFigure {
  const conductors = new Map(site.conductors.map((c) => [c.id, c.wire]));
  const electrodes = new Map(site.electrodes.map((e) => [e.id, e.wire]));
  const supports = new Map(site.supports.map((s) => [s.id, s]));
  const lines = new Map(site.lines.map((l) => [l.id, l]));
  return (part, kind) => {
    const support = supports.get(part);
    if (support !== undefined) return ofSupport(support);
    const line = lines.get(part);
    if (kind === 'guy') return guyWire;
    if (line !== undefined) return kind === 'shield' ? ofShield(line.cable) : protective;
    return ofWire(conductors.get(part) ?? electrodes.get(part) ?? null);
  };
}

/** 6 AWG: what US and Canadian codes ask of a bond between electrodes (from memory). */
const usualWireM = 2.06e-3;
/** Copper of 6 AWG at 20 degrees, ohm per metre. */
const usualOhmPerM = 1.3e-3;

/** Round wire and tube by their radius; strap and braid as wide as w, thick as t: radius (w + t) / e^1.5. */
function ofWire(wire: Wire | null): MetalFigure {
  const perMetre = wire === null ? null : resistancePerMetre(wire);
  const ohmPerM = (perMetre === null ? null : middle(perMetre)) ?? usualOhmPerM;
  const widthM = wire === null ? null : likely(wire.widthM);
  if (widthM !== null) {
    const girthM = widthM + (likely(wire!.thicknessM) ?? 0);
    return { radiusM: girthM * Math.exp(-1.5), ohmPerM, radiusFrom: 'typed' };
  }
  const diameterM = wire === null ? null : likely(wire.diameterM);
  return { radiusM: (diameterM ?? 2 * usualWireM) / 2, ohmPerM, radiusFrom: diameterM === null ? 'assumed' : 'typed' };
}

/** A coax that nobody named: as thick as the 8 mm shield of RG-213, and as poor as the braid of RG-58 at least. */
const usualShield: MetalFigure = { radiusM: 4e-3, ohmPerM: 10e-3, radiusFrom: 'assumed' };

function ofShield(cable: string | null): MetalFigure {
  const known = cable === null ? null : readCable(cable);
  if (known === null) return usualShield;
  const acrossM = likely(known.shieldDiameterM) ?? likely(known.outsideM);
  const ohmPerM = likely(known.shieldOhmPerM) ?? usualShield.ohmPerM;
  return acrossM === null ? { ...usualShield, ohmPerM } : { radiusM: acrossM / 2, ohmPerM, radiusFrom: 'typed' };
}

/** A guy: strand of steel, 1/4 in across, of 0.17 uohm m over four fifths of that circle (from memory of trade tables). */
const guyWire: MetalFigure = { radiusM: 3.2e-3, ohmPerM: 6.6e-3, radiusFrom: 'assumed' };

/** The protective conductor of a cord or a feeder: copper of 12 AWG or 2.5 mm2 at least. */
const protective: MetalFigure = { radiusM: 1e-3, ohmPerM: 5.2e-3, radiusFrom: 'assumed' };

/** Where nobody measured: the face of a small lattice, the radius of a mast's tube. */
const usualFaceM = 0.3;
const usualTubeM = 0.025;

/** A tube of the mean distance of the legs; see `supportInductance`. Its metal's own resistance counts for nothing in a strike. */
function ofSupport({ kind, legs, faceM }: Support): MetalFigure {
  const face = likely(faceM);
  const isLattice = kind === 'lattice tower' || kind === 'tower' || (legs ?? 0) > 2;
  const radiusFrom = face === null ? 'assumed' : 'typed';
  if (!isLattice) return { radiusM: face === null ? usualTubeM : face / 2, ohmPerM: steelOhmPerM, radiusFrom };
  return { radiusM: meanRadius(legM, face ?? usualFaceM, Math.max(3, legs ?? 3)), ohmPerM: steelOhmPerM, radiusFrom };
}

/** 120 nohm m over 10 cm2 of legs. */
const steelOhmPerM = 0.12e-3;
/** Radius of one leg: ours, tubes of 3/4 in to 3 in. */
const legM = 0.02;

/** Of equal legs at the corners of a regular figure of that face. F. W. Grover, Inductance Calculations (1946), from memory. */
function meanRadius(ownM: number, faceM: number, legs: number): number {
  const ring = faceM / (2 * Math.sin(Math.PI / legs));
  let product = ownM;
  for (let k = 1; k < legs; k++) product *= 2 * ring * Math.sin((Math.PI * k) / legs);
  return product ** (1 / legs);
}

function likely(figure: Interval | null): number | null {
  return figure === null ? null : middle(figure);
}
