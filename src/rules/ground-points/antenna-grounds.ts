import type { ConductorFacts, Facts } from '../../facts/facts.ts';
import { partIndex } from '../../facts/part-index.ts';
import type { Part } from '../../site/site.ts';
import { antennaUnits } from '../lines/antenna-units.ts';

/** A conductor from the antenna's side, and a part that it lands on. */
export interface AntennaGround {
  readonly from: string;
  readonly conductor: ConductorFacts;
  readonly lands: Part;
}

type Asked = Pick<Facts, 'masts' | 'arresters' | 'conductors' | 'site'>;

/** Masts of metal, antennas, entry panels, bars at towers, and the protectors of lead-ins. */
export function antennaSide({ masts, arresters, site }: Asked): ReadonlySet<string> {
  const bars = site.bars.filter((b) => b.kind === 'entry panel' || b.kind === 'tower bar');
  const metal = masts.filter((m) => m.metal !== 'no');
  const present = [...bars, ...site.antennas].filter((p) => p.present !== 'no');
  return new Set([...metal, ...present, ...antennaUnits(arresters)].map((p) => p.id));
}

/** Every landing of a conductor from the antenna's side on something that is not of it. */
export function antennaGrounds(facts: Asked): readonly AntennaGround[] {
  const own = antennaSide(facts);
  const index = partIndex(facts.site);
  return facts.conductors.flatMap((conductor) => {
    const ids = [...conductor.ends, ...conductor.passes].filter((id) => id !== null);
    const froms = ids.filter((id) => own.has(id));
    const lands = ids.flatMap((id) => (own.has(id) ? [] : (index.get(id) ?? [])));
    return froms.flatMap((from) => lands.map((part) => ({ from, conductor, lands: part })));
  });
}
