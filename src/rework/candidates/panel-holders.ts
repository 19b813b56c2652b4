import { byCodeUnit } from '../../units/by-code-unit.ts';
import { carriedBy, wiresOf } from './panel-shift.ts';
import { ownerOf, type Scene } from './scene.ts';

/**
 * Parts by which nobody can say what the site is like with a panel at another place: what is typed to be near it or within
 * reach of it, boxes that hang on it, wires that are clamped to it on their way or run in a pipe, an arrester beside fuel, one
 * indoors whose distance is counted from where its line comes in. By id; [] where the panel can be moved on paper.
 */
export function holdersOf(scene: Scene, panel: string): readonly string[] {
  const carried = carriedBy(scene, panel);
  const wires = new Set(wiresOf(scene, carried).map((w) => w.row.id));
  const lines = new Set(scene.study.lines.filter((l) => l.stops.some((s) => carried.has(ownerOf(s)))).map((l) => l.id));
  const indoors = scene.study.arresters.filter((a) => !carried.has(a.id) && a.lines.some((l) => lines.has(l)));
  const counted = new Set(indoors.map((a) => a.id));
  const holders = scene.study.parts.filter(({ id, section, on, typed }) => {
    const says = (field: string) => names(typed[field]).some((name) => carried.has(name));
    if (says('near') || says('within_reach') || says('passes') || says('along')) return true;
    if (carried.has(id))
      return ['near', 'within_reach'].some((f) => typed[f] !== undefined) || typed.near_fuel === 'yes';
    if (counted.has(id) && typed.from_entry !== undefined) return true;
    if (wires.has(id)) return (typed.enclosure ?? 'none') !== 'none' || typed.passes !== undefined;
    return section !== 'arresters' && on !== null && ownerOf(on) === panel;
  });
  return holders.map((p) => p.id).sort(byCodeUnit);
}

/** Names in what the owner typed: `[{part: entry, distance: 4 in}]`. */
function names(typed: string | undefined): readonly string[] {
  return (typed ?? '').split(/[^\p{L}\p{M}\p{N}_-]+/u);
}
