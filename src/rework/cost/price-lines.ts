import type { Wire } from '../../materials/wire.ts';
import type { StudyPrice, StudyPrices } from '../../study/study.ts';
import type { Interval } from '../../units/interval.ts';
import { footM } from '../../units/unit-table.ts';
import type { Material } from '../work.ts';
import { wireNamed } from './material-kind.ts';

/**
 * Lines of the owner's prices that a material is bought by: those of its own name; else those of the same wire; else those
 * that say the same in other words (`ground rod`, `gas tube arrester`); else those that differ in a size that one of the two
 * does not name (`8 ft rod`); else the one that is a letter away. A size that differs is never a slip. Only lines that can be
 * used count: metres are bought by a length, pieces by the piece, and the price has to be a figure.
 */
export function priceLines(
  { name, unit }: Pick<Material, 'name' | 'unit'>,
  prices: StudyPrices,
): readonly StudyPrice[] {
  const usable = prices.lines.filter((l) => l.price !== null && fits(l.per, unit));
  const found = matchers(name).map((fitsName) => usable.filter((l) => fitsName(l.name)));
  const slips =
    wireNamed(name) === null ? usable.filter((l) => isSlip(essence(l.name), essence(name))).slice(0, 1) : [];
  return [...found, slips].find((lines) => lines.length > 0) ?? [];
}

/** Price of one, or of one metre, from the least line to the greatest; null where no line fits. */
export function unitPrice(material: Pick<Material, 'name' | 'unit'>, prices: StudyPrices): Interval | null {
  const each = priceLines(material, prices).map((l) => ({
    low: l.price!.low / (l.perCount * lengthM[l.per]),
    high: l.price!.high / (l.perCount * lengthM[l.per]),
  }));
  if (each.length === 0) return null;
  return { low: Math.min(...each.map((e) => e.low)), high: Math.max(...each.map((e) => e.high)) };
}

/** International foot, exact. */
const lengthM: Readonly<Record<StudyPrice['per'], number>> = { each: 1, m: 1, ft: footM, hour: 1, day: 1 };

function fits(per: StudyPrice['per'], unit: Material['unit']): boolean {
  return unit === 'each' ? per === 'each' : per === 'm' || per === 'ft';
}

/** From the strictest on. */
function matchers(name: string): readonly ((line: string) => boolean)[] {
  const wire = wireNamed(name);
  return [
    (line) => tidy(line) === tidy(name),
    (line) => wire !== null && isSameWire(wire, wireNamed(line)),
    (line) => wire === null && essence(line) === essence(name),
    (line) =>
      wire === null &&
      withoutSize(line) === withoutSize(name) &&
      (figures(essence(line)) === '' || figures(essence(name)) === ''),
  ];
}

function isSameWire(a: Wire, b: Wire | null): boolean {
  if (b === null || a.form !== b.form || a.metal === null || b.metal === null || a.metal.name !== b.metal.name)
    return false;
  if (a.insulated !== b.insulated && a.insulated !== 'unknown' && b.insulated !== 'unknown') return false;
  if (a.areaM2 === null || b.areaM2 === null) return essence(a.text) === essence(b.text);
  return isClose(a.areaM2.low, b.areaM2.low) && isClose(a.areaM2.high, b.areaM2.high);
}

/** One size written two ways. */
function isClose(a: number, b: number): boolean {
  return a === b || Math.abs(a - b) <= 1e-6 * Math.max(a, b);
}

function tidy(name: string): string {
  return name
    .toLowerCase()
    .replace(/[\s_-]+/g, ' ')
    .trim();
}

/** Without words that change nothing of what is bought. */
function essence(name: string): string {
  const words = tidy(name)
    .replace(/\b(?:arrester|arrestor|ground|grounding|earth|earthing|new|listed|a|an|one|the)\b/g, ' ')
    .replace(/\b(rod|clamp|weld|lug|tube|protector|crimp|bolt|bar|connector)s\b/g, '$1');
  return words.replace(/\s+/g, ' ').trim();
}

/** Without lengths, diameters and what joins them. */
function withoutSize(name: string): string {
  const number = String.raw`\d+(?:[ /.]\d+)*`;
  const sizes = new RegExp(String.raw`${number}\s*(?:ft|foot|feet|'|in|inch|"|mm2|mm|cm|m)?(?![a-z])`, 'g');
  return essence(name)
    .replace(sizes, ' ')
    .replace(/\b(?:x|by|of|long)\b|,/g, ' ')
    .replace(/\s+/g, ' ')
    .trim();
}

/** The same words, of which one or the other of five letters or more has one slip; a shorter word that differs is another. */
function isSlip(a: string, b: string): boolean {
  const [left, right] = [a.split(' '), b.split(' ')];
  if (figures(a) !== figures(b) || left.length !== right.length) return false;
  return left.every((word, i) => word === right[i] || (word.length >= longWord && isNear(word, right[i]!)));
}

const longWord = 5;

/** At most one letter wrong, missing or too many, the first one right. */
function isNear(a: string, b: string): boolean {
  return Math.abs(a.length - b.length) <= 1 && a[0] === b[0] && differing(a, b) <= 1;
}

/** Letters of the longer one that remain when what both begin and end with is taken off. */
function differing(a: string, b: string): number {
  let from = 0;
  while (from < Math.min(a.length, b.length) && a[from] === b[from]) from++;
  let end = 0;
  while (end < Math.min(a.length, b.length) - from && a.at(-1 - end) === b.at(-1 - end)) end++;
  return Math.max(a.length, b.length) - from - end;
}

/** A figure that differs is another thing, however near the letters. */
function figures(name: string): string {
  return (name.match(/\d+(?:[./]\d+)*/g) ?? []).join(' ');
}
