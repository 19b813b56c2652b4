import type { Antenna, Line, Site } from '../../site/site.ts';
import { nothingThere } from '../looked-at.ts';
import { rule, type Verdict } from '../rule.ts';

export const notOnServiceMast = rule({
  id: 'not-on-service-mast',
  family: 'code',
  severity: 'hazard',
  codeSets: ['us'],
  source: { document: 'NFPA 70', edition: '2008', clause: '810.12', provenance: 'read' },
  needs: ['sections', 'site'],
  check({ sections, site }) {
    const power = ofThePowerSupplier(site);
    if (power.size === 0) return nothingThere({ sections }, 'metalwork');
    const antennas = site.antennas.filter((a) => a.present !== 'no' && (a.where ?? 'outside') === 'outside');
    const lines = site.lines.filter((l) => l.present !== 'no' && feed.includes(l.kind));
    const verdicts = [...antennas.map((a) => ofAntenna(a, power)), ...lines.flatMap((l) => ofLine(l, power))];
    return verdicts.length > 0 ? verdicts : nothingThere({ sections }, 'antennas');
  },
});

const feed: readonly string[] = ['coax', 'open-wire', 'single wire'];

/** The mast of the power service, and poles that are the supplier's. */
function ofThePowerSupplier({ metalwork, supports }: Site): ReadonlySet<string> {
  const masts = metalwork.filter((m) => m.kind === 'service mast');
  const poles = supports.filter((s) => s.owner?.toLowerCase() === 'utility');
  const ids = new Set([...masts, ...poles].filter((p) => p.present !== 'no').map((p) => p.id));
  // A mast that is clamped to one hangs on it too; each round finds those that hang on what the round before found.
  for (const _ of supports) for (const s of supports) if (ids.has(s.on?.part ?? '')) ids.add(s.id);
  return ids;
}

function ofAntenna(antenna: Antenna, power: ReadonlySet<string>): Verdict {
  const at = [antenna.id];
  const on = antenna.on?.part ?? null;
  if (on === null) return { is: 'cannot tell', at, because: { key: 'nobody said' }, settle: { key: 'look' } };
  if (power.has(on)) return { is: 'not met', at, because: { key: 'attached', values: { on } } };
  return { is: 'met', at, because: { key: 'elsewhere', values: { on } } };
}

/** A line is held where it is tied to: only what is typed can be found wrong. */
function ofLine(line: Line, power: ReadonlySet<string>): readonly Verdict[] {
  const met = line.path.flatMap((s) => ('at' in s && s.at?.part != null && power.has(s.at.part) ? [s.at.part] : []));
  if (met.length === 0) return [];
  return [{ is: 'not met', at: [line.id], because: { key: 'attached', values: { on: met[0]! } } }];
}
