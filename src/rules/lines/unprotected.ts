import type { LineFacts } from '../../bonding/bonding.ts';
import type { Site } from '../../site/site.ts';
import type { Verdict } from '../rule.ts';
import { crossingsOf } from './crossing-lines.ts';

/**
 * For a line whose cores come in from outside: is every core covered by a protector somewhere on its way. A protector is a
 * stop of the line, so a path typed to its end without one says that there is none.
 */
export function coresProtected(line: LineFacts, site: Site): readonly Verdict[] {
  const crossings = crossingsOf(line, 'core');
  if (crossings.length === 0) return [];
  const at = [line.id];
  const cores = line.conductors.filter((c) => c.which === 'core');
  const open = cores.reduce<number | null>(
    (sum, c) => (sum === null || c.unprotected === null ? null : sum + c.unprotected),
    0,
  );
  if (open === 0) {
    const by = [...new Set(cores.flatMap((c) => c.protectedBy))];
    // one stands at one wall, wherever that is
    const buildings = crossings.length > by.length ? buildingsOf(line, site) : [];
    if (buildings.length > by.length)
      return [{ is: 'not met', at, because: { key: 'one for two', values: { by, buildings } } }];
    return [{ is: 'met', at, because: { key: 'protected', values: { by } } }];
  }
  if (open === null)
    return [{ is: 'cannot tell', at, because: { key: 'count unknown' }, settle: { key: 'count wires' } }];
  if (crossings.every((c) => !c.certain)) {
    return [{ is: 'cannot tell', at, because: { key: 'place unknown' }, settle: { key: 'follow it' } }];
  }
  const protectors = cores.flatMap((c) => c.protectedBy);
  if (protectors.length === 0) return [{ is: 'not met', at, because: { key: 'bare' } }];
  return [{ is: 'not met', at, because: { key: 'partly', values: { count: open } } }];
}

/** Buildings that the line certainly goes into, and in which it meets a box. */
function buildingsOf(line: LineFacts, { lines, equipment }: Site): readonly string[] {
  const stops = lines.find((l) => l.id === line.id)!.path.flatMap((s) => (s.is === 'part' ? [s.at.part] : []));
  const wheres = equipment.flatMap((e) => (stops.includes(e.id) ? [e.where] : []));
  const into = crossingsOf(line, 'core').flatMap((c) => (c.certain && wheres.includes(c.building) ? [c.building] : []));
  return [...new Set(into)].sort();
}
