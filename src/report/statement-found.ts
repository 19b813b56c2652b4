import type { ComparedMaterial, ComparedPart } from '../compare/comparison.ts';
import { unitPrice } from '../rework/cost/price-lines.ts';
import type { StudySetCounts } from '../study/study.ts';
import type { Interval } from '../units/interval.ts';
import { moneyText } from '../units/money-text.ts';
import { setName } from '../words/code-set-words.ts';
import { statementWords } from '../words/statement-words.ts';
import { type Block, paragraph, type Section } from './block.ts';
import { type CompareContext, wordingOf } from './compare-context.ts';
import { countText, isOnlyUnknown, materialName } from './compare-materials.ts';
import { type PageContext, sayIn } from './page-context.ts';
import { alikeEntries, someEntries, standing } from './statement-lists.ts';

const mostFound = 6;
const mostMaterials = 8;
const mostNames = 8;

/** What the first file tells: how many findings, and the gravest. */
export function foundSection(page: CompareContext): Section {
  const words = statementWords.found;
  const entries = alikeEntries(page.before, standing(page.before.study.findings, 'not met'));
  const blocks = entries.length === 0 ? [paragraph(words.none)] : [paragraph(words.most), gravest(page, entries)];
  return { id: 'found', heading: words.heading, blocks: [paragraph(foundCounts(page)), ...blocks] };
}

/** With several sets of conditions those of each by its name. */
function foundCounts(page: CompareContext): string {
  const words = statementWords.found;
  const sayCounts = ({ hazards, defects, advices, cannotTell }: Omit<StudySetCounts, 'codeSet'>) =>
    sayIn(page.after, words.counts, { hazards, defects, advices, cannotTell });
  const { bySet } = page.before.study.verdict;
  if (bySet === undefined) return sayCounts(page.comparison.before.counts);
  return bySet.map((set) => `${setName(set.codeSet)}: ${sayCounts(set)}`).join(' ');
}

/** The first of them, one a line, and how many more there are. */
function gravest(page: CompareContext, entries: readonly string[]): Block {
  const more = entries.length - mostFound;
  const rest = more <= 0 ? [] : [sayIn(page.before, statementWords.found.more, { n: String(more) })];
  return { is: 'list', ordered: false, items: [...entries.slice(0, mostFound), ...rest] };
}

const words = statementWords.done;

/** What one file has and the other has not: parts by section, material with its price where the file has prices. */
export function doneSection(page: CompareContext): Section {
  const { parts, differs } = page.comparison;
  const wording = wordingOf(page);
  const heading = words.heading[wording];
  if (!differs) return { id: 'done', heading, blocks: [paragraph(words.none)] };
  const lines = [
    ['added', parts.added, page.after],
    ['removed', parts.removed, page.before],
    ['changed', parts.changed.map((c) => c.after), page.after],
  ] as const;
  const blocks = lines
    .filter(([, list]) => list.length > 0)
    .map(([which, list, own]) => paragraph(sayIn(page.after, words[which][wording], { list: bySection(own, list) })));
  return { id: 'done', heading, blocks: [...blocks, ...material(page), effect(page)] };
}

/** `2 bars (station-bar, ibt)`; long lists of names are cut, the number stands. */
function bySection(page: PageContext, list: readonly ComparedPart[]): string {
  const sections = [...new Set(list.map((p) => p.section))];
  return sections
    .map((section) => {
      const own = list.filter((p) => p.section === section);
      const names = Object.hasOwn(words.sections, section)
        ? words.sections[section as keyof typeof words.sections]
        : words.other;
      const count = sayIn(page, words.counted, {
        n: String(own.length),
        name: sayIn(page, names[own.length === 1 ? 0 : 1]),
      });
      return own.length > mostNames ? count : `${count} (${own.map((p) => p.id).join(', ')})`;
    })
    .join('; ');
}

function material(page: CompareContext): readonly Block[] {
  const { added } = page.comparison.materials;
  if (added.length === 0) return [];
  const entries = added.map((m) => {
    const [name, n] = [materialName(page, m), String(m.unknown)];
    if (isOnlyUnknown(m)) return sayIn(page.after, words.onlyUnknownLength, { name, n });
    const text = `${name}: ${countText(page, m)}`;
    return m.unknown === 0 ? text : sayIn(page.after, words.unknownLength, { name: text, n });
  });
  const list = someEntries(page.after, entries, mostMaterials);
  return [paragraph(sayIn(page.after, words.material[wordingOf(page)], { list })), ...price(page, added)];
}

/** By the owner's own prices; a material without one is named, and nothing is invented for it. */
function price(page: CompareContext, added: readonly ComparedMaterial[]): readonly Block[] {
  const prices = page.after.study.prices ?? page.before.study.prices ?? null;
  if (prices === null || prices.lines.length === 0) return [];
  const each = added.map((m) => ({ m, unit: unitPrice(m, prices) }));
  const priced = each.flatMap(({ m, unit }) =>
    unit === null ? [] : [{ low: unit.low * m.count.low, high: unit.high * m.count.high }],
  );
  if (priced.length === 0) return [];
  const total = { low: sumOf(priced, 'low'), high: sumOf(priced, 'high') };
  const without = each.filter((e) => e.unit === null).map((e) => materialName(page, e.m));
  const unpriced = without.length === 0 ? '' : sayIn(page.after, words.unpriced, { list: without.join(', ') });
  const unmeasured = added.some((m) => m.unknown > 0) ? words.unmeasured : '';
  const values = { price: moneyText(total, prices.currency)!, unpriced, unmeasured };
  return [paragraph(sayIn(page.after, words.price, values))];
}

const sumOf = (all: readonly Interval[], end: keyof Interval) => all.reduce((sum, one) => sum + one[end], 0);

function effect(page: CompareContext): Block {
  const { findings } = page.comparison;
  const count = (kind: 'cleared' | 'better' | 'new' | 'worse') => findings[kind].filter((c) => c.counts).length;
  const values = { cleared: count('cleared'), better: count('better'), new: count('new'), worse: count('worse') };
  return paragraph(sayIn(page.after, words.cleared[wordingOf(page)], values));
}
