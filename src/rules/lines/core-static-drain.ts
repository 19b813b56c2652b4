import type { LineFacts } from '../../bonding/bonding.ts';
import type { Antenna, Site } from '../../site/site.ts';
import { onceFor } from '../../units/once-for.ts';
import { nothingThere } from '../looked-at.ts';
import { rule, type Verdict } from '../rule.ts';
import { feedLines } from './crossing-lines.ts';

export const coreStaticDrain = rule({
  id: 'core-static-drain',
  family: 'practice',
  severity: 'advice',
  codeSets: ['any'],
  source: { document: 'NFPA 70', edition: '2008', clause: '810.57 (means that drain static)', provenance: 'read' },
  needs: ['sections', 'bonding', 'site'],
  check({ sections, bonding, site }) {
    const lines = bonding.lines.filter((l) => feedLines.includes(l.kind) && isOutdoors(antennaOf(l.id, site)));
    if (lines.length === 0) return nothingThere({ sections }, 'lines');
    return lines.map((l) => ofLine(l, site));
  },
});

/** Rain and wind charge an antenna outdoors; indoors is only what its owner says is. */
const isOutdoors = (antenna: Antenna | null) => antenna !== null && (antenna.where ?? 'outside') === 'outside';

function ofLine(line: LineFacts, site: Site): Verdict {
  const at = [line.id];
  const cores = line.conductors.filter((c) => c.which === 'core');
  const by = [...new Set(cores.flatMap((c) => c.drainedBy))];
  if (by.length > 0) return { is: 'met', at, because: { key: 'drained', values: { by } } };
  if (antennaOf(line.id, site)?.dcPath === 'unknown') {
    return { is: 'cannot tell', at, because: { key: 'antenna unknown' }, settle: { key: 'measure it' } };
  }
  return { is: 'not met', at, because: { key: 'floating' } };
}

function antennaOf(lineId: string, site: Site) {
  return antennasOf(site).get(lineId) ?? null;
}

/** Of each line the antenna that it stops at; of several the one that the file has first. */
const antennasOf = onceFor(({ lines, antennas }: Site) => {
  const order = new Map(antennas.map((a, i) => [a.id, i]));
  const firstOf = (path: Site['lines'][number]['path']) =>
    path.reduce(
      (first, s) => Math.min(first, (s.is === 'part' ? order.get(s.at.part ?? '') : undefined) ?? first),
      Infinity,
    );
  return new Map(lines.map((l) => [l.id, antennas[firstOf(l.path)] ?? null]));
});
