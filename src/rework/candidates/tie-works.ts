import type { Work } from '../work.ts';
import { tieOf } from './bond-works.ts';
import { landingsOf } from './landings.ts';
import type { Scene } from './scene.ts';
import { shortestPair } from './shortest-pair.ts';

/** Things within reach of one person of which none, or all, belong to the service's group: tied to one another. */
export function tieWorks(scene: Scene): readonly Work[] {
  return scene.findings('shelters-within-reach-bonded').flatMap((f) => {
    const [a, b] = f.at;
    if (a === undefined || b === undefined) return [];
    const groups = [a, b].map((id) => scene.groupOf(id));
    if (groups.filter((g) => g !== null && g.id === scene.main?.id).length === 1) return [];
    const [from, to] = [a, b].map((id, i) => pointsOf(scene, id, groups[i] ?? null));
    const pair = shortestPair(scene, from!, to!);
    return pair === null ? [] : [tieOf(scene, { kind: 'tie-metalwork', subject: `${a}+${b}`, pair, answers: [f] })];
  });
}

/** The thing itself; of a mast its foot. */
function pointsOf(scene: Scene, id: string, group: ReturnType<Scene['groupOf']>): readonly string[] {
  const section = scene.part(id)?.section;
  if (section === 'supports') return [`${id}@base`];
  return section === undefined && group !== null ? landingsOf(scene, group) : [id];
}
