import { rodDepthReadings } from '../electrodes/rod-depth-readings.ts';
import { scaledSoils } from '../electrodes/scaled-soil.ts';
import { type EnclosingSoils, solvedResistance } from '../electrodes/solved-resistance.ts';
import type { Electrode, Reading, Site } from '../site/site.ts';
import { layeredSoil } from '../soil/layered-soil.ts';
import { type Interval, middle } from '../units/interval.ts';
import { electrodeShape } from './electrode-shape.ts';
import { enclosingSoils } from './enclosing-soils.ts';
import type { Ground } from './ground.ts';
import { groundSoil } from './ground-soil.ts';

/** What a measured electrode says of the soil it stands in, were that uniform. */
export interface SoilOfElectrode {
  readonly electrode: string;
  readonly measuredOhm: Interval;
  /** Resistivity that gives that resistance. */
  readonly uniformOhmM: Interval;
}

/** Readings that do not go together, or not with the soil as it is taken. */
export type SoilContradiction =
  | {
      readonly is: 'no uniform soil';
      readonly at: readonly string[];
      readonly readings: readonly { readonly lengthM: number; readonly ohm: number }[];
      /** Depths of a boundary between two layers that has all readings; null: none has. */
      readonly boundaryM: Interval | null;
      /** Lower layer with the boundary at its least and at its greatest depth. */
      readonly lowerOhmM: readonly [number, number] | null;
      readonly drop: { readonly depthM: number; readonly lowerOhmM: number } | null;
    }
  | {
      readonly is: 'not the soil taken';
      readonly at: readonly string[];
      readonly measuredOhm: Interval;
      readonly computedOhm: Interval;
    };

export interface MeasuredSoil {
  readonly ofElectrodes: readonly SoilOfElectrode[];
  readonly contradictions: readonly SoilContradiction[];
}

/** What readings of single electrodes may be off by: as far as three of a fall of potential may differ. */
const readingShare = 0.05;

/**
 * What electrodes measured alone say of the soil, and where they contradict each other or the soil that was taken: that as it
 * is, whatever the condition of the ground.
 */
export function measuredSoil(site: Site, { soil, images }: Ground): MeasuredSoil {
  const asIs = soil === null || soil.condition === null ? images : enclosingSoils(groundSoil(site, null));
  const there = site.electrodes.filter((e) => e.present !== 'no');
  const measured = there.flatMap((electrode) => {
    const ohm = measuredAlone(electrode, site);
    return ohm === null ? [] : [{ electrode, ohm }];
  });
  const ofElectrodes = measured.flatMap(({ electrode, ohm }) => soilOf(electrode, ohm));
  const againstSoil = measured.flatMap(({ electrode, ohm }) => notTaken(electrode, ohm, asIs));
  return { ofElectrodes, contradictions: [...rodContradictions(there, site), ...againstSoil] };
}

/** Stated as measured alone, else by readings at its full length. */
function measuredAlone(e: Electrode, site: Site): Interval | null {
  if (e.resistance !== null && e.measured !== 'bonded') return e.resistance.overRange ? null : e.resistance.ohm;
  const all = readingsOf(e, site)
    .filter((r) => r.drivenM === null)
    .flatMap((r) => r.resistance);
  if (all.length === 0 || all.some((r) => r.overRange)) return null;
  return { low: Math.min(...all.map((r) => r.ohm.low)), high: Math.max(...all.map((r) => r.ohm.high)) };
}

function readingsOf(e: Electrode, site: Site): readonly Reading[] {
  return site.readings.filter((r) => r.kind === 'fall of potential' && r.on?.part === e.id && r.on.member === null);
}

function soilOf(electrode: Electrode, measuredOhm: Interval): readonly SoilOfElectrode[] {
  const shape = electrodeShape(electrode);
  if (shape === null || !Number.isFinite(measuredOhm.high)) return [];
  const one = scaledSoils()(layeredSoil([1]));
  const { ohm } = solvedResistance(shape, { low: one, likely: one, high: one });
  if (ohm === null || ohm.low <= 0 || !Number.isFinite(ohm.high)) return [];
  const uniformOhmM = { low: measuredOhm.low / ohm.high, high: measuredOhm.high / ohm.low };
  return [{ electrode: electrode.id, measuredOhm, uniformOhmM }];
}

function notTaken(e: Electrode, measuredOhm: Interval, images: EnclosingSoils | null): readonly SoilContradiction[] {
  const shape = electrodeShape(e);
  if (shape === null) return [];
  const { ohm } = solvedResistance(shape, images);
  if (ohm === null) return [];
  const isApart = measuredOhm.low * (1 - readingShare) > ohm.high || measuredOhm.high * (1 + readingShare) < ohm.low;
  if (!isApart) return [];
  const computedOhm = { low: ohm.low, high: ohm.high };
  return [{ is: 'not the soil taken', at: [e.id], measuredOhm, computedOhm }];
}

/** Rods in one soil, each read at one depth or at several on its way down. */
function rodContradictions(electrodes: readonly Electrode[], site: Site): readonly SoilContradiction[] {
  const rods = electrodes.filter((e) => e.kind === 'rod' && (e.topM === null || e.topM.high === 0));
  const read = rods.flatMap((e) => readingsOfRod(e, site));
  const at = [...new Set(read.map((r) => r.electrode))].sort();
  const lengths = new Set(read.map((r) => r.lengthM));
  if (lengths.size < 2) return [];
  const radiusM = (middle(rods.find((e) => e.id === at[0])?.diameterM ?? anyDiameterM) ?? anyDiameterM.low) / 2;
  const dropM = site.readings.find((r) => r.dropsAtM !== null && at.includes(r.on?.part ?? ''))?.dropsAtM ?? null;
  const readings = read.map(({ lengthM, ohm }) => ({ lengthM, ohm })).sort((a, b) => a.lengthM - b.lengthM);
  const answer = rodDepthReadings(readings, radiusM, { dropM: dropM === null ? null : middle(dropM) });
  if (answer.fitsUniform || answer.reason === 'one depth') return [];
  const [first, last] = [answer.layers[0], answer.layers.at(-1)];
  const { boundaryM, atDrop } = answer;
  return [
    {
      is: 'no uniform soil',
      at,
      readings,
      boundaryM,
      lowerOhmM: first === undefined ? null : [first.lowerOhmM, last!.lowerOhmM],
      drop: atDrop === null ? null : { depthM: atDrop.boundaryM, lowerOhmM: atDrop.lowerOhmM },
    },
  ];
}

/** 5/8 in: the usual rod. Common practice, no source; the resistance hardly depends on it. */
const anyDiameterM: Interval = { low: 0.0159, high: 0.0159 };

function readingsOfRod(e: Electrode, site: Site) {
  const atDepths = readingsOf(e, site).flatMap((r) => {
    const lengthM = r.drivenM === null ? lengthOf(e) : middle(r.drivenM);
    const ohms = r.resistance
      .filter((s) => !s.overRange)
      .map((s) => middle(s.ohm))
      .filter((ohm) => ohm !== null);
    if (lengthM === null || ohms.length === 0) return [];
    return [{ electrode: e.id, lengthM, ohm: ohms.reduce((sum, ohm) => sum + ohm, 0) / ohms.length }];
  });
  const isStated = e.resistance !== null && e.measured !== 'bonded' && !e.resistance.overRange;
  const own = isStated ? middle(e.resistance!.ohm) : null;
  const lengthM = lengthOf(e);
  return own === null || lengthM === null || own <= 0
    ? atDepths
    : [...atDepths, { electrode: e.id, lengthM, ohm: own }];
}

function lengthOf(e: Electrode): number | null {
  return e.lengthM === null ? null : middle(e.lengthM);
}
