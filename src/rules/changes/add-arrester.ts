import type { LineFacts } from '../../bonding/bonding.ts';
import type { SiteChange } from '../../site/change.ts';
import type { Site, Stop } from '../../site/site.ts';
import { crossingsOf } from '../lines/crossing-lines.ts';
import { freeId } from './free-id.ts';

/**
 * A gas tube in a feed line, outside where it comes in, bolted to an entry panel of the file. Nothing where there is no
 * panel, where the line has lengths piece by piece (nobody knows at which it would be cut), or a stop that is no plain part.
 */
export function addArrester(site: Site, facts: LineFacts): { readonly change?: readonly SiteChange[] } {
  const line = site.lines.find((l) => l.id === facts.id);
  const panel = site.bars.find((b) => b.kind === 'entry panel' && b.present !== 'no' && b.where === 'outside');
  const [crossing] = crossingsOf(facts, 'core');
  if (line === undefined || panel === undefined || crossing === undefined || line.lengthsM.length > 0) return {};
  const path = line.path.map(stopText);
  if (path.some((p) => p === null)) return {};
  const id = freeId(site, `arrester-${line.id}`);
  const at = path.indexOf(crossing.before ?? '');
  if (at < 0) return {};
  const stops = [...path.slice(0, at), id, ...path.slice(at)] as readonly string[];
  return {
    change: [
      { is: 'add', section: 'arresters', id, fields: { kind: 'gas tube', on: panel.id, known: 'planned' } },
      { is: 'set', section: 'lines', id: line.id, field: 'path', value: stops },
    ],
  };
}

/** A stop as typed; null for one that is more than the name of a part. */
function stopText(stop: Stop): string | null {
  if (stop.is === 'part') return stop.at.text;
  return stop.is === 'street' ? 'street' : null;
}
