import type { SheetFacts, SheetJoint } from '../rework/sheet/sheet-facts.ts';
import { sheetWords } from '../words/sheet-words.ts';
import { kindName, partName, partNames, sayIn } from './page-context.ts';
import type { WorksContext } from './works-context.ts';

const words = sheetWords.joints;

/** Kinds that cannot work loose; they may be buried where they are made for it. */
const permanent: readonly string[] = ['exothermic weld', 'irreversible crimp', 'brazed', 'welded'];

/** Joints to make, those alike in one line: how many, kind, the mark to look for, where each is and what it holds; then how many in all. */
export function jointLines(page: WorksContext, facts: SheetFacts): readonly string[] {
  if (facts.joints.length === 0) return [];
  const alike = new Map<string, string[]>();
  for (const j of facts.joints) {
    const key = JSON.stringify([kindOf(page, j, facts), sayIn(page, marksOf(j, facts))]);
    const place = j.on === null ? partName(page, j.id) : partName(page, j.on);
    const said = sayIn(page, words.place, { place, holds: partNames(page, j.holds) });
    alike.set(key, [...(alike.get(key) ?? []), said]);
  }
  const lines = [...alike].map(([key, places]) => {
    const [kind, marks] = JSON.parse(key) as [string, string];
    return sayIn(page, words.one, { n: String(places.length), kind, marks, places: places.join('; ') });
  });
  return [...lines, sayIn(page, words.total, { n: String(facts.joints.length) })];
}

/** A device that is mounted without a word of how is bolted by its own stud. */
function kindOf(page: WorksContext, { id, kind }: SheetJoint, { arresters }: SheetFacts): string {
  if (kind !== null) return kindName(page, kind);
  return arresters.some((a) => id.startsWith(`${a.id}:`)) ? words.mount : words.unknownKind;
}

function marksOf(joint: SheetJoint, { inSoil }: SheetFacts): string {
  if (joint.kind !== null && permanent.includes(joint.kind)) return words.permanent;
  if (joint.forBurial === 'yes') return words.mark.both;
  const buried = joint.buried === 'yes' || joint.holds.some((h) => inSoil.includes(h));
  return buried ? words.mark.buried : words.mark.reach;
}
