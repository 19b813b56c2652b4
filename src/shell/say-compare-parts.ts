import type { ChangedPart, ComparedMaterial, Comparison, FieldChange } from '../compare/comparison.ts';
import { compareWords as words } from '../words/compare-words.ts';
import { kindWords } from '../words/kind-words.ts';
import { type ComparePage, rangeOf } from './compare-page.ts';
import { bullet, headed } from './page-blocks.ts';

/** What came, went and was changed, and the material for it. */
export function partBlocks(comparison: Comparison, page: ComparePage): readonly string[] {
  const { materials } = comparison;
  return [
    headed(
      page,
      words.headings.parts,
      partLines(comparison, page).map((text) => bullet(page, text)),
    ),
    headed(page, words.headings.added, materialLines(materials.added, page)),
    headed(page, words.headings.removed, materialLines(materials.removed, page)),
  ];
}

function partLines({ parts, site }: Comparison, page: ComparePage): readonly string[] {
  const { sentence } = page;
  const some = (list: readonly string[], template: string) => (list.length === 0 ? [] : [sentence(template, { list })]);
  return [
    ...site.map((change) => sentence(words.site, { what: fieldText(change, page) })),
    ...some(
      parts.added.map((p) => p.id),
      words.added,
    ),
    ...some(
      parts.removed.map((p) => p.id),
      words.removed,
    ),
    ...parts.splits.map((s) => sentence(words.split, { before: s.before, list: s.after })),
    ...parts.joined.map((j) => sentence(words.joined, { list: j.before, after: j.after })),
    ...some(
      parts.renamed.map((pair) => sentence(words.pair, { ...pair })),
      words.renamed,
    ),
    ...parts.changed.map((part) =>
      sentence(words.changed, { id: part.after.id, what: changesOf(part, page).join('; ') }),
    ),
  ];
}

function changesOf({ fields, movedM, routeChanged }: ChangedPart, page: ComparePage): readonly string[] {
  const { sentence } = page;
  const moved = movedM === null ? [words.movedSomewhere] : movedM > 0 ? [sentence(words.moved, { movedM })] : [];
  // a line is moved with what it hangs on: where nothing else is to be said of it
  const rerouted = routeChanged && fields.length === 0 ? [words.rerouted] : [];
  return [...fields.map((change) => fieldText(change, page)), ...moved, ...rerouted];
}

function fieldText({ field, before, after }: FieldChange, { sentence }: ComparePage): string {
  const text = (typed: string | null) => typed ?? words.notTyped;
  return sentence(words.field, { field, before: text(before), after: text(after) });
}

function materialLines(materials: readonly ComparedMaterial[], page: ComparePage): readonly string[] {
  const { sentence } = page;
  return materials.flatMap((m) => {
    const name = sentence(m.name === 'unknown' ? words.unknownName[m.kind] : (ownWord(m.name) ?? '{name}'), {
      name: m.name,
    });
    const known = m.count.high > 0 || m.unknown === 0;
    const amount =
      m.unit === 'm'
        ? sentence(words.materialM, { lengthM: rangeOf(m.count), name })
        : sentence(words.materialEach, { count: countText(m.count), name });
    const unknown = m.unknown === 0 ? [] : [sentence(words.materialUnknown, { count: String(m.unknown), name })];
    return [...(known ? [amount] : []), ...unknown].map((text) => bullet(page, text));
  });
}

/** A kind of the file format in the region's words; a name that the owner typed stands as typed. */
function ownWord(name: string): string | null {
  return Object.hasOwn(kindWords, name) ? kindWords[name]! : null;
}

const countText = ({ low, high }: ComparedMaterial['count']) => (low === high ? String(low) : `${low} to ${high}`);
