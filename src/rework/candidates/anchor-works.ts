import type { Study, StudyFinding } from '../../study/study.ts';
import type { Work } from '../work.ts';
import { each, newWork } from './new-work.ts';
import { forgetReading } from './old-reading.ts';
import { ownerOf, type Scene } from './scene.ts';

type Electrode = NonNullable<Study['electrodes']>[number];

/** Copper rods on zinc-coated steel in soil: ones of its metal in their place, where all that eats it can be replaced so. */
export function anchorWorks(scene: Scene): readonly Work[] {
  return scene.findings('galvanised-and-copper-in-soil').flatMap((f) => {
    const copper = copperOn(scene, f.at[0] ?? '');
    return copper.every((e) => driven(scene, e) !== null)
      ? copper.map((e) => inPlaceOf(scene, e, driven(scene, e)!, f))
      : [];
  });
}

/** Electrodes that a wire joins to it at once. */
function copperOn(scene: Scene, steel: string): readonly Electrode[] {
  const ends = scene.study.conductors.flatMap((c) => {
    if (ownerOf(c.from) === steel) return [ownerOf(c.to)];
    return ownerOf(c.to) === steel ? [ownerOf(c.from)] : [];
  });
  return (scene.study.electrodes ?? []).filter((e) => ends.includes(e.id) && isBareCopper(e.metal));
}

function isBareCopper(name: string | null): boolean {
  return name !== null && /copper/.test(name) && !/tinned/.test(name);
}

interface Driven {
  readonly thing: 'rod' | 'pipe';
  readonly count: number;
}

/**
 * What one of another metal can be driven in place of, and how many. null: wire, strap and plate are dug up, and rods that
 * nobody counted, or that copper wire joins in the soil, have to be looked at first: all that is for a person.
 */
function driven(scene: Scene, { id, kind, members, wire }: Electrode): Driven | null {
  if (isBareCopper(wire)) return null;
  if (kind === 'rods') return members === null ? null : { thing: 'rod', count: members };
  return kind === 'rod' || kind === 'pipe' ? { thing: kind, count: scene.part(id)?.count ?? 1 } : null;
}

function inPlaceOf(scene: Scene, { id }: Electrode, { thing, count }: Driven, f: StudyFinding): Work {
  return newWork({
    kind: 'put-right',
    words: thing === 'pipe' ? 'anchor-pipe' : 'anchor-rod',
    subject: id,
    at: [id],
    answers: [f.id],
    changes: [
      { is: 'set', section: 'electrodes', id, field: 'metal', value: 'galvanised steel' },
      ...forgetReading(scene, id),
    ],
    materials: [each(`galvanised ${thing}`, count), each('exothermic weld', count)],
    values: { part: id, guy: f.at[0], count },
  });
}
