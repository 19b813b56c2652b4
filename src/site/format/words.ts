import { nearName } from '../../units/near-name.ts';
import { refuse, type Spot } from '../reading/report.ts';
import type { TreeNode } from '../reading/tree.ts';
import type { Answer } from '../site.ts';
import { type FieldType, textOf } from './field.ts';

/** Free text. */
export function text(expects = 'text'): FieldType<string> {
  return {
    schema: { type: ['string', 'number', 'boolean'] },
    expects,
    read: (node, spot) => textOf(node, spot, expects),
  };
}

/** One of a few words. */
export function oneOf<const W extends string>(words: readonly W[]): FieldType<W> {
  const expects = `one of ${words.join(', ')}`;
  return {
    schema: { enum: words },
    expects,
    read: (node, spot) => {
      const typed = textOf(node, spot, expects);
      return typed === null ? null : wordOf(typed, words, node, spot);
    },
  };
}

function wordOf<W extends string>(typed: string, words: readonly W[], node: TreeNode, spot: Spot): W | null {
  const plain = plainWord(typed);
  const found = words.find((word) => plainWord(word) === plain);
  if (found !== undefined) return found;
  return refuse(spot, node.at, 'word-unknown', { text: typed, words: words.join(', ') }, nearName(typed, words));
}

/** Small letters; spaces, hyphens and underscores are alike. */
export function plainWord(word: string): string {
  return word
    .toLowerCase()
    .replace(/[\s_-]+/g, ' ')
    .trim();
}

const answers: Readonly<Record<string, Answer>> = { yes: 'yes', true: 'yes', no: 'no', false: 'no' };

/** yes or no; true and false are the same. `unknown` never gets here. */
export const answer: FieldType<Answer> = {
  schema: { enum: ['yes', 'no', true, false] },
  expects: 'yes, no or unknown',
  read: (node, spot) => {
    const typed = textOf(node, spot, 'yes, no or unknown');
    if (typed === null) return null;
    const found = Object.hasOwn(answers, typed.toLowerCase()) ? answers[typed.toLowerCase()] : undefined;
    return found ?? refuse(spot, node.at, 'not-an-answer', { text: typed });
  },
};

/** A whole number, at least `least`. */
export function count(least: number, most = 100_000): FieldType<number> {
  return {
    schema: { type: 'integer', minimum: least, maximum: most },
    expects: `a whole number from ${least} up`,
    read: (node, spot) => {
      const typed = textOf(node, spot, `a whole number from ${least} up`);
      if (typed === null) return null;
      const value = /^\d{1,9}$/.test(typed) ? Number(typed) : Number.NaN;
      if (value >= least && value <= most) return value;
      return refuse(spot, node.at, 'not-a-count', { text: typed, least, most });
    },
  };
}

const isoDate = /^(\d{4})(?:-(\d{2})(?:-(\d{2}))?)?$/;

/** A day, month or year: 2026-05-02, 2026-05, 2026. */
export const date: FieldType<string> = {
  schema: { type: ['string', 'integer'] },
  expects: 'a date such as 2026-05-02',
  read: (node, spot) => {
    const typed = textOf(node, spot, 'a date such as 2026-05-02');
    if (typed === null) return null;
    return isDate(typed) ? typed : refuse(spot, node.at, 'not-a-date', { text: typed });
  },
};

function isDate(typed: string): boolean {
  const [, year, month = '01', day = '01'] = isoDate.exec(typed) ?? [];
  if (year === undefined) return false;
  const leap = Number(year) % 4 === 0 && (Number(year) % 100 !== 0 || Number(year) % 400 === 0);
  const days = [31, leap ? 29 : 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31][Number(month) - 1];
  return days !== undefined && Number(day) >= 1 && Number(day) <= days;
}

/** Notes a text that none of several readings fits. */
export function refuseText(node: TreeNode, spot: Spot, expects: string): null {
  const typed = textOf(node, spot, expects);
  return typed === null ? null : refuse(spot, node.at, 'not-expected', { text: typed, expects });
}
