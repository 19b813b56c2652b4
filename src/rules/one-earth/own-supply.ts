import type { Verdict } from '../rule.ts';
import { type Asked, nameIn, ttParts } from './tt-parts.ts';

/** The TT panel that a part stands on, on a site whose supply is of another kind. */
export interface OwnSupply {
  readonly panel: string;
  /** perhaps: loose metal in the building of the panel, or on a line to what is used there. */
  readonly is: 'own' | 'perhaps';
  /** What stands in the building of the panel and hangs on the service all the same. */
  readonly beside: readonly string[];
}

/** The TT part that a part of the site belongs to, or may belong to; null: none. */
export function ownSupplyOf(part: string, facts: Asked): OwnSupply | null {
  const parts = ttParts(facts);
  const name = nameIn(facts, part);
  const own = parts.find((p) => p.own === name);
  if (own !== undefined) return { panel: own.panel, is: 'own', beside: own.beside };
  const perhaps = parts.find((p) => p.perhaps.has(name));
  return perhaps === undefined ? null : { panel: perhaps.panel, is: 'perhaps', beside: [] };
}

/** Nobody can tell from a file whether the two parts are far enough apart; no bond is offered before somebody has. */
export function twoSupplies(at: readonly string[], { panel, is, beside }: OwnSupply): Verdict {
  const values = { panel };
  if (is === 'perhaps')
    return { is: 'cannot tell', at, because: { key: 'which supply', values }, settle: { key: 'say which', values } };
  if (beside.length > 0)
    return {
      is: 'cannot tell',
      at,
      because: { key: 'both in one building', values: { panel, beside } },
      settle: { key: 'part the two', values },
    };
  return {
    is: 'cannot tell',
    at,
    because: { key: 'supply of its own', values },
    settle: { key: 'look between the two', values },
  };
}
