import type { SheetFacts, SheetJoint } from '../rework/sheet/sheet-facts.ts';
import { sheetWords } from '../words/sheet-words.ts';
import { kindName, partName, partNames, sayIn } from './page-context.ts';
import type { WorksContext } from './works-context.ts';

const words = sheetWords.joints;

/** Kinds that cannot work loose; they may be buried where they are made for it. */
const permanent: readonly string[] = ['exothermic weld', 'irreversible crimp', 'brazed', 'welded'];

/** Each joint to make: kind, where, what it holds, the mark to look for; then how many there are. */
export function jointLines(page: WorksContext, facts: SheetFacts): readonly string[] {
  if (facts.joints.length === 0) return [];
  const lines = facts.joints.map((j) =>
    sayIn(page, words.one, {
      n: '1',
      kind: kindOf(page, j, facts),
      place: j.on === null ? partName(page, j.id) : partName(page, j.on),
      holds: partNames(page, j.holds),
      marks: sayIn(page, marksOf(j, facts)),
    }),
  );
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
