import type { SheetFacts, SheetJoint } from '../rework/sheet/sheet-facts.ts';
import { sheetWords } from '../words/sheet-words.ts';
import { kindName, partName, partNames, sayIn } from './page-context.ts';
import type { WorksContext } from './works-context.ts';

const words = sheetWords.joints;

/** Kinds that cannot work loose; they may be buried where they are made for it. */
const permanent: readonly string[] = ['exothermic weld', 'irreversible crimp', 'brazed', 'welded'];

/** Joints to make, those alike in one line: how many, kind, the mark to look for, where each is and what it holds; then how many in all. */
export function jointLines(page: WorksContext, facts: SheetFacts): readonly string[] {
  const alike = new Map<string, string[]>();
  const put = (kind: string, marks: string, place: string, holds: string) => {
    const key = JSON.stringify([kind, sayIn(page, marks)]);
    alike.set(key, [...(alike.get(key) ?? []), sayIn(page, words.place, { place, holds })]);
  };
  for (const j of facts.joints) {
    const place = j.on === null ? partName(page, j.id) : partName(page, j.on);
    put(kindOf(page, j, facts), marksOf(j, facts), place, partNames(page, j.holds));
  }
  const mounted = mountsWithout(facts);
  for (const a of mounted) put(words.mount, words.mark.reach, partName(page, a.on!), partName(page, a.id));
  const count = facts.joints.length + mounted.length;
  if (count === 0) return [];
  const lines = [...alike].map(([key, places]) => {
    const [kind, marks] = JSON.parse(key) as [string, string];
    return sayIn(page, words.one, { n: String(places.length), kind, marks, places: places.join('; ') });
  });
  return [...lines, sayIn(page, words.total, { n: String(count) })];
}

/** Devices that are bolted to something by a joint that the file has no name for. */
function mountsWithout({ arresters, joints }: SheetFacts): SheetFacts['arresters'] {
  return arresters.filter((a) => a.on !== null && !joints.some((j) => j.id.startsWith(`${a.id}:`)));
}

/** A device that is mounted without a word of how is bolted by its own stud. */
function kindOf(page: WorksContext, { id, kind, bought }: SheetJoint, { arresters }: SheetFacts): string {
  if (kind !== null) return kindName(page, bought ?? kind);
  return arresters.some((a) => id.startsWith(`${a.id}:`)) ? words.mount : words.unknownKind;
}

function marksOf(joint: SheetJoint, { inSoil }: SheetFacts): string {
  if (joint.kind !== null && permanent.includes(joint.kind)) return words.permanent;
  if (joint.forBurial === 'yes') return words.mark.both;
  const buried = joint.buried === 'yes' || joint.holds.some((h) => inSoil.includes(h));
  return buried ? words.mark.buried : words.mark.reach;
}
