import type { Facts } from '../../facts/facts.ts';
import type { Line } from '../../site/site.ts';
import { panels } from './cut-off-panels.ts';

/** Mains lines that join a panel to another one of the file. */
export function feedersOf(id: string, { site, boxes }: Pick<Facts, 'site' | 'boxes'>): readonly Line[] {
  const others = new Set(boxes.filter((b) => b.id !== id && panels.includes(b.part.kind)).map((b) => b.id));
  return site.lines.filter(
    (l) => l.kind === 'mains' && l.present !== 'no' && meets(l, (p) => p === id) && meets(l, (p) => others.has(p)),
  );
}

function meets({ path }: Line, test: (part: string) => boolean): boolean {
  return path.some((s) => s.is === 'part' && s.at.part !== null && test(s.at.part));
}
