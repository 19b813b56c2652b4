import type { StudyFinding } from '../../study/study.ts';
import { isAtLeast } from '../../units/interval.ts';
import { readQuantity } from '../../units/quantity.ts';
import type { Work } from '../work.ts';
import { newWork } from './new-work.ts';
import type { Units } from './owner-units.ts';
import type { Scene } from './scene.ts';
import { type TypedBend, typedBends } from './typed-bends.ts';

/** Bends that are too tight: each laid in a wider sweep, those beside it left as they are. */
export function bendWorks(scene: Scene): readonly Work[] {
  const wrong = scene.findings('bend-radius').filter((f) => scene.part(f.at[0] ?? '')?.section === 'conductors');
  return wrong.flatMap((f) => widened(scene, f) ?? []);
}

/** null: how each bend was typed cannot be told, so that nobody can say which of them changes. */
function widened(scene: Scene, f: StudyFinding): Work | null {
  const { units } = scene.study.site;
  const id = f.at[0]!;
  const limitM = f.measured?.limit ?? 0.2;
  const row = scene.study.conductors.find((c) => c.id === id);
  const bends = typedBends(scene.part(id)?.typed.bends ?? '', row?.bendsDeg ?? 0) ?? [];
  const tight = bends.flatMap((bend, i) => (isTight(bend, limitM, units) ? [i] : []));
  if (tight.length === 0) return null;
  const radius = plannedRadius(limitM, units);
  const value = bends.map((bend, i) => fieldsOf(tight.includes(i) ? { ...bend, radius } : bend));
  const others = bends.length - tight.length;
  const which = tight.map((i) => i + 1).join(', ');
  return newWork({
    kind: 'put-right',
    words: 'bend',
    subject: id,
    at: [id],
    answers: [f.id],
    changes: [{ is: 'set', section: 'conductors', id, field: 'bends', value }],
    values: { part: id, radius, count: tight.length, ...(others > 0 ? { which, others, from: row?.from ?? id } : {}) },
  });
}

function isTight({ radius }: TypedBend, limitM: number, units: Units): boolean {
  const read = radius === null ? null : readQuantity(radius, 'length', { bareUnit: units });
  return read?.ok === true && isAtLeast(read.interval, limitM) === 'no';
}

/** In whole inches, or in steps of 50 mm. */
function plannedRadius(limitM: number, units: Units): string {
  return units === 'ft' ? `${Math.ceil(limitM / 0.0254 - 1e-6)} in` : `${Math.ceil(limitM * 20 - 1e-6) * 50} mm`;
}

function fieldsOf({ angle, radius }: TypedBend): Readonly<Record<string, string>> {
  return { ...(angle === null ? {} : { angle }), ...(radius === null ? {} : { radius }) };
}
