import type { Study } from '../../study/study.ts';
import { byCodeUnit } from '../../units/by-code-unit.ts';
import type { Work } from '../work.ts';
import { arresterWorks } from './arrester-works.ts';
import { bondWorks, neededBonds } from './bond-works.ts';
import { conductorWorks } from './conductor-works.ts';
import { neededPanels } from './entry-panel.ts';
import { feederWorks, neededFeeders } from './feeder-works.ts';
import { guyWorks } from './guy-works.ts';
import { jointWorks } from './joint-works.ts';
import { lineWorks } from './line-works.ts';
import { panelMoveWorks } from './panel-move-works.ts';
import { protectorWorks } from './protector-works.ts';
import { deepenWorks, putRightWorks } from './put-right-works.ts';
import { ringWorks } from './ring-works.ts';
import { rodWorks, serviceRod } from './rod-works.ts';
import { type Scene, sceneOf } from './scene.ts';
import { secondPathWorks } from './second-path-works.ts';
import { serviceWorks } from './service-works.ts';
import { tieWorks } from './tie-works.ts';
import { joinsSupplies } from './two-supplies.ts';
import { withSections } from './with-sections.ts';

type Proposer = (scene: Scene) => readonly Work[];

/** Everybody who proposes, in the order in which one that answers the same keeps its place. */
const proposers: readonly Proposer[] = [
  bondWorks,
  tieWorks,
  arresterWorks,
  panelMoveWorks,
  protectorWorks,
  lineWorks,
  jointWorks,
  conductorWorks,
  rodWorks,
  guyWorks,
  secondPathWorks,
  ringWorks,
  serviceWorks,
  deepenWorks,
  feederWorks,
  putRightWorks,
];

/** Works that are proposed because another needs them. */
const suppliers: readonly ((scene: Scene, ids: readonly string[]) => readonly Work[])[] = [
  neededPanels,
  neededBonds,
  serviceRod,
  neededFeeders,
];

/**
 * Works that may put right what a study finds wrong: each with the edit of the owner's text, what has to be bought, and the
 * findings that it is proposed for. Whether one does what it is for is for who tries it. What a work needs is among them. By
 * id; the same for the same study.
 */
export function candidatesOf(study: Study): readonly Work[] {
  const scene = sceneOf(study);
  const works = new Map<string, Work>();
  const proposed = proposers.flatMap((propose) => propose(scene));
  for (const work of proposed) if (!joinsSupplies(scene, work)) addTo(works, work);
  supply(scene, works);
  dropUnsupplied(works);
  return [...works.values()].map((w) => withSections(scene, w)).sort((a, b) => byCodeUnit(a.id, b.id));
}

function addTo(works: Map<string, Work>, work: Work): void {
  const before = works.get(work.id);
  const answers = [...new Set([...(before?.answers ?? []), ...work.answers])].sort(byCodeUnit);
  works.set(work.id, { ...(before ?? work), answers });
}

/** Until every need is among the works, or nobody can supply it. */
function supply(scene: Scene, works: Map<string, Work>): void {
  for (;;) {
    const wanted = missingNeeds(works);
    const supplied = suppliers
      .flatMap((s) => s(scene, wanted))
      .filter((w) => !works.has(w.id) && !joinsSupplies(scene, w));
    if (supplied.length === 0) return;
    for (const work of supplied) works.set(work.id, work);
  }
}

/** A work whose need nobody can supply cannot be done. */
function dropUnsupplied(works: Map<string, Work>): void {
  for (;;) {
    const missing = new Set(missingNeeds(works));
    if (missing.size === 0) return;
    for (const work of [...works.values()]) if (work.needs.some((id) => missing.has(id))) works.delete(work.id);
  }
}

function missingNeeds(works: ReadonlyMap<string, Work>): readonly string[] {
  return [...new Set([...works.values()].flatMap((w) => w.needs))].filter((id) => !works.has(id)).sort(byCodeUnit);
}
