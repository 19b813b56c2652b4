import type { Facts } from '../../facts/facts.ts';
import type { Metalwork } from '../../site/site.ts';
import { isAtMost } from '../../units/interval.ts';
import { nothingThere } from '../looked-at.ts';
import { rule, type Verdict } from '../rule.ts';
import { antennaGrounds, antennaSide } from './antenna-grounds.ts';

/** Farthest from its entry at which a water pipe is a point to ground at, metres (5 ft as printed). */
const farthestM = 1.524;

export const waterPipe5Ft = rule({
  id: 'water-pipe-5-ft',
  family: 'code',
  severity: 'defect',
  codeSets: ['us'],
  source: { document: 'NFPA 70', edition: null, clause: '250.68(C)(1), 810.21(F)(2)', provenance: 'second-hand' },
  limits: [{ key: 'clampLengthM', value: farthestM, sense: 'most' }],
  needs: ['sections', 'masts', 'arresters', 'conductors', 'site'],
  check(facts) {
    const pipes = facts.site.metalwork.filter((m) => m.kind === 'water pipe' && m.present !== 'no');
    if (pipes.length === 0) return nothingThere(facts, 'metalwork');
    const ids = new Set(antennaGrounds(facts).map((g) => g.lands.id));
    const own = antennaSide(facts);
    const hung = electrodesWithEnds(facts);
    const used = pipes.filter((p) => ids.has(p.id) || joinsElectrode(p.id, hung, own));
    return used.length === 0 ? [{ is: 'not applicable', because: { key: 'not used' } }] : used.map(ofPipe);
  },
});

/** Of each electrode that a conductor ends on, what their other ends land on. */
function electrodesWithEnds({ conductors, site }: Pick<Facts, 'conductors' | 'site'>) {
  const electrodes = new Map(site.electrodes.map((e) => [e.id, [] as (string | null)[]]));
  for (const { ends } of conductors) {
    for (const id of new Set(ends)) electrodes.get(id ?? '')?.push(ends.find((end) => end !== id) ?? null);
  }
  return [...electrodes.values()].filter((others) => others.length > 0);
}

/** The pipe is all that an electrode hangs on; a bond of the pipe to one that is tied otherwise is another thing. */
function joinsElectrode(
  pipe: string,
  electrodes: readonly (readonly (string | null)[])[],
  own: ReadonlySet<string>,
): boolean {
  const isBeside = (id: string | null) => id === pipe || (id !== null && own.has(id));
  return electrodes.some((others) => others.includes(pipe) && others.every(isBeside));
}

function ofPipe({ id, clampFromEntryM: clamp }: Metalwork): Verdict {
  const at = [id];
  const near = clamp == null ? 'unknown' : isAtMost(clamp, farthestM);
  if (near === 'unknown') return { is: 'cannot tell', at, because: { key: 'unknown' }, settle: { key: 'tape' } };
  const measured = { key: 'clampLengthM', value: clamp!, limit: farthestM, sense: 'most' } as const;
  if (near === 'yes') return { is: 'met', at, because: { key: 'near' }, measured };
  return { is: 'not met', at, because: { key: 'far' }, measured };
}
