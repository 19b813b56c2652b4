import type { Conductor, PointRef, Site } from '../../site/site.ts';
import { wiresOn } from '../wires-on.ts';

/** A conductor that lands on a mast, at which point, and what its other ends land on. */
export interface MastLead {
  readonly conductor: Conductor;
  readonly at: PointRef;
  readonly others: readonly PointRef[];
}

/** Higher landings on a mast are bonds of something up there, not leads of its foot, metres. Ours. */
const footM = 3;

/** Conductors at the foot of a mast: clamped no higher than 3 m, or at a height that nobody typed; an open one is none. */
export function leadsOf(mast: string, site: Site): readonly MastLead[] {
  const wires = wiresOn(site.conductors).get(mast) ?? [];
  return wires.flatMap((conductor) => {
    if (conductor.present === 'no' || conductor.condition === 'open') return [];
    const points = [conductor.from, conductor.to, ...conductor.passes.map((p) => p.at)];
    const own = points.filter((p) => p.part === mast && isAtFoot(p));
    return own.map((at) => ({ conductor, at, others: points.filter((p) => p.part !== mast) }));
  });
}

const isAtFoot = ({ atM, mark }: PointRef) => mark !== 'top' && (atM === null || atM.low <= footM);
