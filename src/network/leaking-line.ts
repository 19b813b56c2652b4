import type { Interval } from '../units/interval.ts';
import type { Certain } from './certain.ts';
import type { LinePiece } from './line-pieces.ts';

/** Metal in the soil that is too long to be one potential: it leaks piece by piece, at nodes along it. */
export interface LeakingLine {
  /** The electrode or the conductor. */
  readonly part: string;
  /** Which span of a conductor; null: an electrode. */
  readonly span: number | null;
  readonly certain: Certain;
  readonly lengthM: number;
  readonly isClosed: boolean;
  readonly pieces: readonly LinePiece[];
  /** Of its metal; null: as the span's own resistance, shared by length. */
  readonly ohmPerM: Interval | null;
  /** What it has alone over what the pieces have at their likely figures, where a depth or a thickness is known by a range. */
  readonly share: Interval;
  /** Where what lands on it hangs, by id of the joint (or of the conductor, without one), from its start; else at its start. */
  readonly landingM: ReadonlyMap<string, number>;
}

/** Id of one piece, in `Ground.indexOf`. */
export function pieceId({ part, span }: Pick<LeakingLine, 'part' | 'span'>, piece: number): string {
  return span === null ? `${part}/soil.${piece + 1}` : `${part}/soil${span + 1}.${piece + 1}`;
}
