import { readCable } from '../materials/cables.ts';
import { readMetal } from '../materials/metals.ts';
import type { Wire } from '../materials/wire.ts';
import type { Line, Site, Support } from '../site/site.ts';
import type { MeltingMetal } from '../surge/melting.ts';
import { middle } from '../units/interval.ts';

/** The metal of a part that a current heats. */
export interface HeatedPart {
  readonly metal: MeltingMetal;
  readonly areaM2: number;
  /** typed: by the owner, or as a table has the class of cable; taken: the least that such a thing has, since nobody typed it. */
  readonly from: 'typed' | 'taken';
}

/**
 * What is heated of each part by its id: a wire by its likely section, a shield as copper of its resistance, a support as the
 * least that legs or tubes of its kind have. null: metal or section is not known, or nobody gives its constants.
 */
export function heatedParts(site: Site): (part: string) => HeatedPart | null {
  const wires = new Map([...site.conductors, ...site.electrodes].map((p) => [p.id, p.wire]));
  const supports = new Map(site.supports.map((s) => [s.id, s]));
  const lines = new Map(site.lines.map((l) => [l.id, l]));
  return (part) => {
    const support = supports.get(part);
    if (support !== undefined) return ofSupport(support);
    const line = lines.get(part);
    return line === undefined ? heatedWire(wires.get(part) ?? null) : ofShield(line);
  };
}

/** A wire by its likely section. */
export function heatedWire(wire: Wire | null): HeatedPart | null {
  const areaM2 = wire?.areaM2 == null ? null : middle(wire.areaM2);
  const metal = wire?.metal?.heating ?? null;
  return areaM2 === null || metal === null || !(areaM2 > 0) ? null : { metal, areaM2, from: 'typed' };
}

/** Resistance of the braid of RG-58 (trade tables, from memory): a hard line's tube has less. */
const poorestOhmPerM = 13.5e-3;

/** As much copper as has its resistance; foil and thin braid whose resistance no table gives: not known. */
function ofShield({ cable }: Line): HeatedPart | null {
  const known = cable === null ? null : readCable(cable);
  const metal = readMetal('copper')?.heating ?? null;
  if (known === null || metal === null) return null;
  const ohmPerM = known.shieldOhmPerM === null ? null : middle(known.shieldOhmPerM);
  if (ohmPerM !== null) return { metal, areaM2: metal.resistivityOhmM / ohmPerM, from: 'typed' };
  if (!known.name.endsWith('hard line')) return null;
  return { metal, areaM2: metal.resistivityOhmM / poorestOhmPerM, from: 'taken' };
}

/** Ours, thin ones: a leg of 3/4 in tube (19 mm) and a mast of 1 1/4 in tube (32 mm), with walls of 1.2 mm. */
const legM2 = tubeM2(19e-3);
const mastM2 = tubeM2(32e-3);

function tubeM2(outsideM: number): number {
  const wallM = 1.2e-3;
  return Math.PI * wallM * (outsideM - wallM);
}

/** All legs together: their bracing makes one of them. Of unknown metal, mild steel: of the usual ones it warms most but stainless. */
function ofSupport({ kind, legs, metal }: Support): HeatedPart | null {
  if (metal === 'none') return null;
  const constants = metal === null ? (readMetal('mild steel')?.heating ?? null) : metal.heating;
  if (constants === null) return null;
  const isLattice = kind.includes('tower') || (legs ?? 0) > 2;
  return { metal: constants, areaM2: isLattice ? (legs ?? 3) * legM2 : mastM2, from: 'taken' };
}
