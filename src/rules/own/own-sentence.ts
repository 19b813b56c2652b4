import type { OwnCondition, OwnerStandard, OwnFigure, OwnLimit } from '../../site/standard/owner-standard.ts';
import { dimensionOfKey } from '../../units/format.ts';
import type { Interval } from '../../units/interval.ts';
import { ownStandardWords as words } from '../../words/own-standard-words.ts';
import { type Speech, say } from '../../words/say.ts';
import type { Finding } from '../run-rules.ts';
import { sayFigureOf } from '../say-figure.ts';
import { sayMeasured } from '../say-measured.ts';
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

interface Telling {
  readonly standard: OwnerStandard;
  readonly speech: Speech;
  readonly outcome: Finding['outcome'];
  /** Conditions that the outcome rests on. */
  readonly telling: OwnLimit['conditions'];
}

/** What a place says of itself at a limit: title, reason, figure and remedy. */
export function sayPlace(limit: OwnLimit, place: OwnPlace, { outcome, telling, standard, speech }: Telling) {
  const limits = telling.map((c) => sayLimit(c, speech)).join(', ');
  const figures = telling.map((c) => sayFound(place, c, speech)).join(', ');
  const values = {
    at: place.at,
    limit: limit.id,
    standard: standard.name,
    field: telling[0]!.field,
    limits,
    figures,
  };
  const said = wordsOf(place);
  const key = outcome === 'not met' ? 'notMet' : outcome === 'met' ? 'met' : 'cannotTell';
  return {
    title: say(outcome === 'not met' ? said.failTitle : words.title, values, speech),
    because: { key, values: {}, text: say(said[key], values, speech) },
    measured: measuredOf(telling, place, speech),
    remedy: remedyOf(limit, outcome, say(said[outcome === 'cannot tell' ? 'settle' : 'remedy'], values, speech)),
  };
}

/** A figure of the earth is that of all that is joined, never of the part that it is typed at. */
function wordsOf({ of }: OwnPlace) {
  if (of === undefined) return words;
  return of === 'earth' ? words.earth : { ...words.earth, ...words[of] };
}

function remedyOf({ remedy }: OwnLimit, outcome: Finding['outcome'], usual: string): string {
  if (outcome === 'met') return '';
  return outcome === 'not met' ? (remedy ?? usual) : usual;
}

function measuredOf(telling: OwnLimit['conditions'], place: OwnPlace, speech: Speech): Finding['measured'] {
  const figure = telling.find((c): c is OwnFigure => c.is === 'figure');
  const value = figure === undefined ? null : (place.figures[figure.field] ?? null);
  if (figure === undefined || value === null) return null;
  return sayMeasured({ key: figure.key, value, limit: figure.value, sense: figure.sense }, speech);
}
