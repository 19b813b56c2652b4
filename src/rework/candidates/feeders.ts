import type { Study } from '../../study/study.ts';
import type { Scene } from './scene.ts';

type Line = Study['lines'][number];

/** Works without which a panel hangs on nothing once its neutral bond is out: of feeders that have no conductor, or of which nobody said. */
export function feedersFirst(scene: Scene, panel: string): readonly string[] {
  return feedersOf(scene, panel).flatMap((line) => (hasConductor(scene, line) === 'yes' ? [] : [feederWorkId(line)]));
}

/** Whether a feeder of a panel is known to have no protective conductor: a wire of its own to the service is no way for a fault. */
export function lacksConductor(scene: Scene, panel: string): boolean {
  return feedersOf(scene, panel).some((line) => hasConductor(scene, line) === 'no');
}

export function feederWorkId({ id }: Line): string {
  return `put-right:${id}`;
}

/** Where a supply begins; what comes from the street is the supplier's. */
const sources: readonly string[] = ['service panel', 'meter box', 'generator'];

/** Mains lines by which a box is fed: those that come to it from where the supply is without passing it. */
export function feedersOf(scene: Scene, panel: string): readonly Line[] {
  const mains = scene.study.lines.filter((l) => l.kind === 'mains' && scene.part(l.id)?.present !== 'no');
  const roots = scene.parts('equipment').filter((e) => sources.includes(e.kind));
  const fed = new Set([scene.study.site.service, ...roots.map((e) => e.id)].filter((id) => id !== panel));
  for (let before = 0; before !== fed.size; ) {
    before = fed.size;
    for (const l of mains) {
      const boxes = upTo(l, panel).filter((s) => scene.part(s)?.section === 'equipment');
      if (boxes.some((s) => fed.has(s))) for (const s of boxes) fed.add(s);
    }
  }
  return mains.filter((l) => l.stops.includes(panel) && upTo(l, panel).some((s) => fed.has(s)));
}

/** Stops of a line on the side of the supply; all where it does not come to the panel. */
function upTo({ stops }: Line, panel: string): readonly string[] {
  const at = stops.indexOf(panel);
  return at <= 0 ? stops.filter((s) => s !== panel) : stops.slice(0, at);
}

/** As typed; left out is unknown. */
export function hasConductor(scene: Scene, { id }: Line): 'yes' | 'no' | 'unknown' {
  const typed = scene.part(id)?.typed.protective_conductor ?? '';
  if (/\b(?:yes|true)\b/i.test(typed)) return 'yes';
  return /\b(?:no|false)\b/i.test(typed) ? 'no' : 'unknown';
}
