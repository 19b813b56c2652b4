import type { StudyFinding } from '../../study/study.ts';
import type { WrittenBend } from '../../study/written-lists.ts';
import { isAtLeast } from '../../units/interval.ts';
import { readQuantity } from '../../units/quantity.ts';
import type { Work } from '../work.ts';
import { newWork } from './new-work.ts';
import type { Units } from './owner-units.ts';
import type { Scene } from './scene.ts';

/** Bends that are too tight: each laid in a wider sweep, those beside it left as they are. */
export function bendWorks(scene: Scene): readonly Work[] {
  const wrong = scene.findings('bend-radius').filter((f) => scene.part(f.at[0] ?? '')?.section === 'conductors');
  return wrong.flatMap((f) => widened(scene, f) ?? []);
}

/** null: none of them is too tight for certain, or a comment of the owner's would go with the list. */
function widened(scene: Scene, f: StudyFinding): Work | null {
  const { study } = scene;
  const id = f.at[0]!;
  if (scene.part(id)?.typed.bends?.includes('#')) return null;
  const limitM = f.measured?.limit ?? 0.2;
  const bends = study.written?.conductors.find((c) => c.id === id)?.bends ?? [];
  const tight = bends.flatMap((bend, i) => (isTight(bend, limitM) ? [i] : []));
  if (tight.length === 0) return null;
  const radius = plannedRadius(limitM, study.site.units);
  const value = bends.map((bend, i) => ({ ...bend, ...(tight.includes(i) ? { radius } : {}) }));
  const others = bends.length - tight.length;
  const which = tight.map((i) => i + 1).join(', ');
  const from = study.conductors.find((c) => c.id === id)?.from ?? id;
  return newWork({
    kind: 'put-right',
    words: 'bend',
    subject: id,
    at: [id],
    answers: [f.id],
    changes: [{ is: 'set', section: 'conductors', id, field: 'bends', value }],
    values: { part: id, radius, count: tight.length, ...(others > 0 ? { which, others, from } : {}) },
  });
}

function isTight({ radius }: WrittenBend, limitM: number): boolean {
  const read = radius === undefined ? null : readQuantity(radius, 'length');
  return read?.ok === true && isAtLeast(read.interval, limitM) === 'no';
}

/** In whole inches, or in steps of 50 mm. */
function plannedRadius(limitM: number, units: Units): string {
  return units === 'ft' ? `${Math.ceil(limitM / 0.0254 - 1e-6)} in` : `${Math.ceil(limitM * 20 - 1e-6) * 50} mm`;
}
