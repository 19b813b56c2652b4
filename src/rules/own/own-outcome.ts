import type { OwnCondition, OwnFigure } from '../../site/standard/owner-standard.ts';
import { type Interval, isAtLeast, isAtMost } from '../../units/interval.ts';
import type { OwnPlace } from './own-places.ts';

export type OwnOutcome = 'met' | 'not met' | 'cannot tell';

/** A size as printed is met by a size as printed: 13.3 mm² is 6 AWG, 67.4 mm² is 2/0 AWG. */
const printedShare = 2e-3;

/** A figure against the owner's limit: 'cannot tell' where nothing is known or the limit lies inside the range. */
export function figureOutcome(
  value: Interval | null,
  { sense, value: limit }: Pick<OwnFigure, 'sense' | 'value'>,
): OwnOutcome {
  if (value === null) return 'cannot tell';
  const is =
    sense === 'least' ? isAtLeast(value, limit * (1 - printedShare)) : isAtMost(value, limit * (1 + printedShare));
  return is === 'unknown' ? 'cannot tell' : is === 'yes' ? 'met' : 'not met';
}

export function conditionOutcome(place: OwnPlace, c: OwnCondition): OwnOutcome {
  if (c.is === 'figure') return figureOutcome(place.figures[c.field] ?? null, c);
  const found = place.words[c.field] ?? null;
  if (found === null) return 'cannot tell';
  const plain = (text: string) =>
    text
      .toLowerCase()
      .replace(/[\s_-]+/g, ' ')
      .trim();
  return c.words.some((w) => plain(w) === plain(found)) ? 'met' : 'not met';
}

/** One that is not met outweighs one that cannot be told, and that outweighs all that are met. */
export function worst(outcomes: readonly OwnOutcome[]): OwnOutcome {
  return (['not met', 'cannot tell'] as const).find((o) => outcomes.includes(o)) ?? 'met';
}
