import type { Study } from '../../study/study.ts';
import type { Work } from '../work.ts';
import { layConductor } from './lay-conductor.ts';
import { each, newWork } from './new-work.ts';
import { ownerOf, type Scene } from './scene.ts';
import { apartM, spotsOf } from './way-to-lay.ts';

/** Rings that are not closed: the ends of a buried wire joined, or the conductor laid that is missing between two electrodes. */
export function ringWorks(scene: Scene): readonly Work[] {
  return scene.findings('ring-is-closed').flatMap((f) => {
    const [ring] = f.at;
    const part = ring === undefined ? undefined : scene.part(ring);
    if (ring === undefined || part === undefined) return [];
    if (part.section === 'electrodes') return closeWire(scene, ring, f.id);
    return part.section === 'conductors' ? closeRound(scene, ring, f.id) : [];
  });
}

/** A wire in the soil that ends short of its start, or whose joint is open. */
function closeWire(scene: Scene, ring: string, finding: string): readonly Work[] {
  const spots = spotsOf(scene.part(ring));
  const gapM = spots.length > 2 ? apartM(spots[0]!, spots.at(-1)!) : 0;
  const wire = scene.study.electrodes?.find((e) => e.id === ring)?.wire ?? null;
  const openJoints = scene.study.joints.filter(
    (j) => j.on === ring && j.condition === 'open' && scene.part(j.id) !== undefined,
  );
  const fixed = openJoints.map(
    (j) => ({ is: 'set', section: 'joints', id: j.id, field: 'condition', value: 'sound' }) as const,
  );
  const isOpen = scene.part(ring)?.condition === 'open';
  return [
    newWork({
      kind: 'close-ring',
      subject: ring,
      at: [ring],
      answers: [finding],
      changes: [
        { is: 'set', section: 'electrodes', id: ring, field: 'closed', value: 'yes' },
        ...(isOpen
          ? [{ is: 'set', section: 'electrodes', id: ring, field: 'condition', value: 'sound' } as const]
          : []),
        ...fixed,
      ],
      materials: [
        ...(gapM > 0.1 && wire !== null ? [{ name: wire, unit: 'm' as const, count: { low: gapM, high: gapM } }] : []),
        each('exothermic weld', gapM > 0.1 ? 2 : 1),
      ],
      values: { ring, lengthM: gapM > 0.1 ? gapM : null, wire },
    }),
  ];
}

/** Conductors that go round from electrode to electrode and lack one: it is laid between the two that have only one. */
function closeRound(scene: Scene, start: string, finding: string): readonly Work[] {
  const ties = scene.study.conductors.filter((c) => isTie(scene, c));
  const first = ties.find((c) => c.id === start);
  if (first === undefined) return [];
  const met = new Set([ownerOf(first.from), ownerOf(first.to)]);
  for (let before = 0; before !== met.size; ) {
    before = met.size;
    for (const c of ties) if (met.has(ownerOf(c.from)) || met.has(ownerOf(c.to))) addBoth(met, c);
  }
  const count = (id: string) => ties.filter((c) => ownerOf(c.from) === id || ownerOf(c.to) === id).length;
  const [a, b, ...more] = [...met].filter((id) => count(id) === 1).sort();
  if (a === undefined || b === undefined || more.length > 0) return [];
  const laid = layConductor(scene, {
    id: scene.newId(`ring-${a}-${b}`),
    from: a,
    to: b,
    duty: 'in soil',
    wire: first.wire ?? undefined,
  });
  return [
    newWork({
      kind: 'close-ring',
      subject: start,
      at: [a, b],
      answers: [finding],
      laid: [laid],
      values: { ring: `${a}, ${b}`, lengthM: laid.run.lengthM, wire: laid.wire },
    }),
  ];
}

function addBoth(met: Set<string>, { from, to }: Study['conductors'][number]): void {
  met.add(ownerOf(from));
  met.add(ownerOf(to));
}

function isTie(scene: Scene, { from, to }: Study['conductors'][number]): boolean {
  return [from, to].every((p) => scene.part(ownerOf(p))?.section === 'electrodes');
}
