import type { Answer, Line, Site } from '../../site/site.ts';

/** Kinds of equipment whose case a supply begins on. */
export const supplySources: readonly string[] = ['service panel', 'meter box', 'generator'];

/**
 * Ids that the protective conductors of mains lines tie to a source or, where `subPanels` says so, to a sub-panel: at
 * once or from box to box. `answers` are those lines that count: with such a conductor, or also those of which nobody said.
 */
export function reachedByCord(site: Site, answers: readonly Answer[], subPanels: boolean): ReadonlySet<string> {
  const from = subPanels ? [...supplySources, 'sub-panel'] : supplySources;
  const cordsAt = new Map<string, (readonly string[])[]>();
  for (const line of site.lines) {
    if (line.kind !== 'mains' || line.present === 'no' || !answers.includes(line.protectiveConductor)) continue;
    const boxes = boxesOn(line);
    for (const id of boxes) push(cordsAt, id, boxes);
  }
  const roots = site.equipment.filter((e) => from.includes(e.kind) && e.present !== 'no').map((e) => e.id);
  const reached = new Set(roots);
  // A set goes on to what is added while it is walked.
  for (const id of reached) for (const boxes of cordsAt.get(id) ?? []) for (const other of boxes) reached.add(other);
  return reached;
}

const boxesOn = ({ path }: Line): readonly string[] =>
  path.flatMap((stop) => (stop.is === 'part' && stop.at.part !== null ? [stop.at.part] : []));

function push(map: Map<string, (readonly string[])[]>, id: string, boxes: readonly string[]): void {
  const list = map.get(id);
  if (list === undefined) map.set(id, [boxes]);
  else list.push(boxes);
}
