import type { Arrester, Line, Site } from '../site/site.ts';
import { currentFigure, overTime, potentialFigure, type SurgeFigure } from '../surge/surge-figure.ts';
import type { SurgeRun } from '../surge/surge-run.ts';
import { middle } from '../units/interval.ts';
import type { StrikeNetwork } from './strike-network.ts';
import type { StrikePlaces } from './strike-result.ts';

/** A protector whose level is passed, and when. */
export interface StrikeFired {
  readonly arrester: string;
  readonly atS: number;
}

/**
 * Protectors whose spark-over (the likely one, as for a slow rise) is passed while they are taken as open: on a shielded line by
 * what its shield's spans up to it bring over to the core, on a line from outside by the rise of what it is tied to. In order of
 * time. One of unknown level is taken to fire at `unknownLevelV`.
 */
export function strikeFired(
  site: Site,
  network: StrikeNetwork,
  run: SurgeRun,
  places: StrikePlaces,
): readonly StrikeFired[] {
  const arresters = new Map(site.arresters.filter((a) => a.present === 'yes').map((a) => [a.id, a]));
  const all = site.lines.flatMap((line) =>
    line.path.flatMap((stop, index) => {
      const arrester = stop.is === 'part' ? arresters.get(stop.at.part ?? '') : undefined;
      const figure = arrester === undefined ? null : voltsOver(line, index, arrester, { network, run, places });
      const atS = figure === null ? null : passedAt(run, figure, levelOf(arrester!));
      return atS === null ? [] : [{ arrester: arrester!.id, atS }];
    }),
  );
  const first = new Map<string, number>();
  for (const { arrester, atS } of all) first.set(arrester, Math.min(atS, first.get(arrester) ?? atS));
  return [...first]
    .map(([arrester, atS]) => ({ arrester, atS }))
    .sort((a, b) => a.atS - b.atS || (a.arrester < b.arrester ? -1 : 1));
}

/** Ours: what a usual protector of a telephone or a mains line stands at most on a steep rise. */
export const unknownLevelV = 1000;

function levelOf({ sparkoverV }: Arrester): number {
  return (sparkoverV === null ? null : middle(sparkoverV)) ?? unknownLevelV;
}

interface Solved {
  readonly network: StrikeNetwork;
  readonly run: SurgeRun;
  readonly places: StrikePlaces;
}

/** Between the protector's line and its body; null: nothing can be said. */
function voltsOver(
  line: Line,
  index: number,
  arrester: Arrester,
  { network, run, places }: Solved,
): SurgeFigure | null {
  const { branches, points } = network;
  const isShielded = branches.some(({ part, kind }) => part === line.id && kind === 'shield');
  if (!isShielded) {
    const body = places.nodeOf(arrester.id);
    return body === null || !line.path.some((stop) => stop.is === 'street') ? null : potentialFigure(run, body);
  }
  const weights = new Float64Array(branches.length + points.length);
  let stops = 0;
  const spans = branches.flatMap(({ part, kind, lengthM }, i) =>
    part === line.id && kind === 'shield' && lengthM > 0 ? [i] : [],
  );
  const before = line.path.slice(0, index).filter((stop) => stop.is !== 'bend').length;
  for (const branch of spans) if (stops++ < before) weights[branch] = branches[branch]!.resistanceOhm;
  return currentFigure(run, weights);
}

function passedAt(run: SurgeRun, figure: SurgeFigure, levelV: number): number | null {
  const at = overTime(run, figure).findIndex((volt) => Math.abs(volt) >= levelV);
  return at < 0 ? null : run.wave.timesS[at]!;
}
