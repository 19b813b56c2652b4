import type { Answer, Line } from '../site/site.ts';
import type { SiteIndex } from './site-index.ts';

/** Which conductors a line has. */
export interface LineMakeUp {
  readonly shield: boolean;
  /** Whether it has cores or other wires that carry current; unknown for a fibre of which nobody says what is in it. */
  readonly cores: Answer;
  /** How many wires; `counted` is false where it is only the least that such a line has. */
  readonly count: number;
  readonly counted: boolean;
  readonly protective: Answer;
  /** Its protective conductor is that of a fixed feeder between two panels. */
  readonly feeder: boolean;
}

const shielded: ReadonlySet<string> = new Set(['coax', 'cable tv']);
/** Wires of a line that nobody counted, where the kind fixes them. */
const wiresOf: Readonly<Record<string, number>> = { coax: 1, 'cable tv': 1, 'single wire': 1, 'open-wire': 2 };
const panels: ReadonlySet<string> = new Set(['service panel', 'sub-panel']);

export function lineMakeUp({ parts }: SiteIndex, line: Line): LineMakeUp {
  const shield = shielded.has(line.kind);
  const wires = shield ? wiresOf[line.kind]! : (line.wires ?? wiresOf[line.kind] ?? null);
  const ends = line.path.filter((s) => s.is !== 'bend' && s.is !== 'plug');
  const isPanel = (stop: (typeof ends)[number] | undefined) =>
    stop?.is === 'part' && panels.has(parts.get(stop.at.part ?? '')?.kind ?? '');
  return {
    shield,
    cores: coresOf(line),
    count: wires ?? 1,
    counted: wires !== null,
    protective: line.kind === 'mains' ? line.protectiveConductor : 'no',
    feeder: line.kind === 'mains' && ends.length > 1 && isPanel(ends[0]) && isPanel(ends.at(-1)),
  };
}

/** A waveguide is a tube and nothing else. */
function coresOf({ kind, cable, metalInside }: Line): Answer {
  if (kind === 'fibre') return metalInside;
  return kind === 'coax' && /waveguide/i.test(cable ?? '') ? 'no' : 'yes';
}
