import type { Line, Metalwork, Site } from '../../site/site.ts';

/** A power line overhead: one of the metalwork, or a mains line (a service drop) that hangs free. */
export interface OverheadLine {
  readonly id: string;
  readonly part: Metalwork | Line;
  /** false: somebody typed that they do not know whether it hangs overhead. */
  readonly certain: boolean;
}

/** Power lines overhead, by id; of a mains line only its own word counts. */
export function overheadLines(site: Site): readonly OverheadLine[] {
  const lines = site.metalwork.filter((m) => m.kind === 'overhead power line' && m.present !== 'no');
  const drops = site.lines.filter((l) => l.kind === 'mains' && l.present !== 'no' && mayHang(l));
  const all = [
    ...lines.map((part) => ({ id: part.id, part, certain: true })),
    ...drops.map((part) => ({ id: part.id, part, certain: part.overhead === 'yes' })),
  ];
  return all.sort((a, b) => (a.id < b.id ? -1 : 1));
}

const mayHang = (line: Line) => line.overhead === 'yes' || (line.overhead === 'unknown' && 'overhead' in line.typed);
