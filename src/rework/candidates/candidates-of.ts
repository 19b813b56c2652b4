import type { Study } from '../../study/study.ts';
import { byCodeUnit } from '../../units/by-code-unit.ts';
import type { Work } from '../work.ts';
import { bondWorks } from './bond-works.ts';
import { panelWorks } from './entry-panel.ts';
import { protectorWorks } from './protector-works.ts';
import { type Scene, sceneOf } from './scene.ts';
import { tieWorks } from './tie-works.ts';

/** Everybody who proposes, in the order in which one that answers the same keeps its place. */
const proposers: readonly ((scene: Scene) => readonly Work[])[] = [bondWorks, tieWorks, protectorWorks];

/**
 * Works that may put right what a study finds wrong: each with the edit of the owner's text, what has to be bought, and the
 * findings that it is proposed for. Whether one does what it is for is for who tries it. By id; the same for the same study.
 */
export function candidatesOf(study: Study): readonly Work[] {
  const scene = sceneOf(study);
  const byId = new Map<string, Work>();
  const proposed = proposers.flatMap((propose) => propose(scene));
  for (const work of [...proposed, ...panelWorks(scene, proposed)]) {
    const before = byId.get(work.id);
    byId.set(work.id, before === undefined ? work : withAnswers(before, work.answers));
  }
  return [...byId.values()].sort((a, b) => byCodeUnit(a.id, b.id));
}

function withAnswers(work: Work, more: readonly string[]): Work {
  return { ...work, answers: [...new Set([...work.answers, ...more])].sort(byCodeUnit) };
}
