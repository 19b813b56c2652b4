/** Which thing before is which thing after, while it is worked out: numbers of things of both graphs. */
export interface Matches {
  readonly toAfter: Map<number, number>;
  readonly toBefore: Map<number, number>;
}

export const noMatches = (): Matches => ({ toAfter: new Map(), toBefore: new Map() });

export function match({ toAfter, toBefore }: Matches, before: number, after: number): void {
  toAfter.set(before, after);
  toBefore.set(after, before);
}
