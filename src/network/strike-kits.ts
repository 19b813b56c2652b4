import { filament } from '../materials/straight-inductance.ts';
import type { Site } from '../site/site.ts';
import { type Peak, peakOf } from '../surge/peak-of.ts';
import type { SurgeCourse } from '../surge/surge-course.ts';
import { currentFigure, overTime } from '../surge/surge-figure.ts';
import { middle } from '../units/interval.ts';
import type { StrikeNetwork } from './strike-network.ts';

/** The lead by which a line's shield is bonded at one place. */
export interface StrikeKit {
  readonly line: string;
  /** As typed: the point of a support, the protector. */
  readonly at: string;
  readonly leadM: number;
  readonly isTyped: boolean;
  /** What the lead carries, and its volts: they stand between shield and metal there, beside what the core sees. */
  readonly current: Peak;
  readonly volts: Peak;
}

/** Lead of a ground kit of which nobody types the length: what kits come with. Ours. */
export const usualKitM = 0.6;
/** 6 AWG, metres. */
const leadRadiusM = 2.06e-3;

/** Where a shield is bonded on its way, and at protectors with a lead of known length. Volts: L di/dt of a straight lead. */
export function strikeKits(site: Site, network: StrikeNetwork, course: SurgeCourse): readonly StrikeKit[] {
  const leads = new Map(site.arresters.flatMap((a) => (a.leadM === null ? [] : [[a.id, middle(a.leadM)] as const])));
  return site.lines.flatMap((line) =>
    line.path.flatMap((stop, index): StrikeKit[] => {
      if (stop.is !== 'bond' && stop.is !== 'part') return [];
      const typedM = stop.is === 'bond' ? null : (leads.get(stop.at.part ?? '') ?? null);
      if (stop.is === 'part' && !(typedM !== null && typedM > 0)) return [];
      const weights = intoLead(network, line.id, `${line.id}.shield.${index + 1}`);
      if (weights === null) return [];
      const leadM = typedM ?? usualKitM;
      const henry = filament(leadM, leadRadiusM);
      const volts = currentFigure(
        course,
        weights.map((weight) => weight * henry),
        true,
      );
      return [
        {
          line: line.id,
          at: stop.at.text,
          leadM,
          isTyped: typedM !== null,
          current: peakIn(course, overTime(course, currentFigure(course, weights))),
          volts: peakIn(course, overTime(course, volts)),
        },
      ];
    }),
  );
}

function peakIn({ wave }: SurgeCourse, figures: Float64Array): Peak {
  return peakOf(wave.timesS, figures);
}

/** What comes in by the spans of the shield less what goes on by them; null: none of them is in the network. */
function intoLead({ nodes, branches, points }: StrikeNetwork, line: string, node: string): Float64Array | null {
  const at = nodes.indexOf(node);
  const weights = new Float64Array(branches.length + points.length);
  let isMet = false;
  branches.forEach((branch, b) => {
    if (branch.part !== line || branch.kind !== 'shield' || branch.lengthM === 0) return;
    if (branch.from !== at && branch.to !== at) return;
    weights[b] = branch.to === at ? 1 : -1;
    isMet = true;
  });
  return isMet ? weights : null;
}
