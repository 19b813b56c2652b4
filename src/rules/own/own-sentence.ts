import type { OwnCondition, OwnFigure } from '../../site/standard/owner-standard.ts';
import { dimensionOfKey } from '../../units/format.ts';
import type { Interval } from '../../units/interval.ts';
import { ownStandardWords as words } from '../../words/own-standard-words.ts';
import { type Speech, say } from '../../words/say.ts';
import { sayFigureOf } from '../say-figure.ts';
import type { OwnPlace } from './own-places.ts';

/** `wire of at least 33.6 mm² (2 AWG)`: what is asked, in both systems. */
export function sayLimit(c: OwnCondition, speech: Speech): string {
  if (c.is === 'word') return say(words.oneOf, { field: c.field, words: c.words.join(words.or) }, speech);
  return say(words[c.sense], { field: c.field, figure: sayFigure(c, c.value, speech) }, speech);
}

/** What was found against what is asked. */
export function sayFound(place: OwnPlace, c: OwnCondition, speech: Speech): string {
  if (c.is === 'word') {
    const values = { field: c.field, found: place.words[c.field] ?? null, words: c.words.join(words.or) };
    return say(words.word, values, speech);
  }
  const value = place.figures[c.field] ?? null;
  return say(words.figure, { field: c.field, figure: value === null ? null : sayFigure(c, value, speech) }, speech);
}

export function sayFigure({ key }: Pick<OwnFigure, 'key'>, value: number | Interval, speech: Speech): string {
  const dimension = dimensionOfKey(key);
  if (dimension === null) {
    if (typeof value === 'number') return String(value);
    return value.low === value.high ? String(value.low) : `${value.low} to ${value.high}`;
  }
  return sayFigureOf(value, dimension, speech);
}
