import type { BondingRun } from '../bonding/bonding-of.ts';
import type { Tie, TieKind } from '../bonding/tie.ts';
import type { Position } from '../site/site.ts';
import { middle } from '../units/interval.ts';
import type { LeakingNetwork, Stretch } from './leaking-network.ts';
import { lineLengthM, stretchesAt } from './line-pieces.ts';
import { type MetalFigure, strikeMetal } from './strike-metal.ts';
import type { StrikeTies } from './strike-ties.ts';
import { strikeWays } from './strike-ways.ts';

/** One branch of a strike's network and the metal that it is. */
export interface StrikeBranch extends MetalFigure {
  readonly from: number;
  readonly to: number;
  /** The part (conductor, support, line, joint) whose metal it is. */
  readonly part: string;
  readonly kind: TieKind;
  readonly span: number | null;
  readonly resistanceOhm: number;
  /** 0: no metal between the two, or so little that its length does not count. */
  readonly lengthM: number;
  /** typed: by the owner; straight: as the way between its ends is; assumed: neither is known. */
  readonly lengthFrom: 'typed' | 'straight' | 'assumed';
  /** Points that the metal passes, metres east, north, up; null: nobody knows where it is. */
  readonly way: readonly Position[] | null;
}

/** Length that is taken for a wire or a line of which neither length nor place is known, metres. Ours; every use of it is told. */
export const assumedLengthM: Readonly<Partial<Record<TieKind, number>>> = {
  metal: 2,
  feeder: 10,
  shield: 10,
  cord: 10,
};

/** The branches of a network with their metal, in the order of `leaking.network.branches`. */
export function strikeBranches(
  run: Pick<BondingRun, 'graph' | 'site' | 'metal'>,
  { whole, ties }: StrikeTies,
  leaking: LeakingNetwork,
): readonly StrikeBranch[] {
  const wayOf = strikeWays(run);
  const figureOf = strikeMetal(run.site);
  const { network, sources, stretches } = leaking;
  return network.branches.map(({ from, to, resistanceOhm, nominalOhm }, i): StrikeBranch => {
    const source = sources[i]!;
    const stretch = stretches[i]!;
    const part = network.parts[i]!;
    if (stretch !== null) {
      const ohm = source === null ? (nominalOhm ?? middle(resistanceOhm) ?? 0) : null;
      const tie = source === null ? null : ties[source]!;
      return {
        from,
        to,
        part,
        kind: 'metal',
        span: network.spans[i]!,
        ...ofStretch(stretch, tie, figureOf(part, 'metal'), ohm),
      };
    }
    const tie = ties[source!]!;
    const { from: a, to: b } = whole.branches[source!]!;
    const way = wayOf(tie, whole.nodes[a]!, whole.nodes[b]!);
    return { from, to, part, kind: tie.kind, span: tie.span ?? null, ...ofTie(tie, way, figureOf(part, tie.kind)) };
  });
}

type Figures = Omit<StrikeBranch, 'from' | 'to' | 'part' | 'kind' | 'span'>;

function ofTie(tie: Tie, way: readonly Position[] | null, metal: MetalFigure): Figures {
  const straightM = way === null ? null : wayLengthM(way);
  const typedM = tie.lengthM === null ? null : middle(tie.lengthM);
  const isContact = tie.body !== 'span';
  if (isContact) return { ...metal, resistanceOhm: likelyOhm(tie) ?? 0, lengthM: 0, lengthFrom: 'typed', way: null };
  // a way along which the metal would be longer than it was typed is not its way
  const isOff = typedM !== null && straightM !== null && straightM > longerThan * typedM;
  const lengthM = typedM ?? straightM ?? assumedLengthM[tie.kind] ?? 0;
  return {
    ...metal,
    resistanceOhm: likelyOhm(tie) ?? lengthM * metal.ohmPerM,
    lengthM,
    lengthFrom: typedM !== null ? 'typed' : straightM !== null ? 'straight' : 'assumed',
    way: way === null || isOff || straightM! < leastM ? null : way,
  };
}

/** Typed lengths and places are told apart no better than this. */
const longerThan = 1.25;
const leastM = 0.02;

function ofStretch({ line, fromM, toM }: Stretch, tie: Tie | null, metal: MetalFigure, ownOhm: number | null): Figures {
  const lengthM = toM - fromM;
  const wholeOhm = tie === null ? null : likelyOhm(tie);
  const resistanceOhm =
    ownOhm ?? (wholeOhm === null ? lengthM * metal.ohmPerM : (wholeOhm * lengthM) / Math.max(line.lengthM, lengthM));
  return {
    ...metal,
    resistanceOhm,
    lengthM,
    lengthFrom: 'straight',
    way: lengthM < leastM ? null : along({ line, fromM, toM }),
  };
}

/** null where several arms lie side by side: they have no one way. */
function along({ line, fromM, toM }: Stretch): readonly Position[] | null {
  const runs = line.pieces.flatMap(({ body }) => body.runs);
  if (Math.abs(lineLengthM(runs) - line.lengthM) > 0.01 * line.lengthM) return null;
  const isRound = toM > line.lengthM;
  const whole = isRound ? [...runs, ...runs] : runs;
  const cut = stretchesAt(
    whole,
    [fromM, toM].filter((m) => m > 0),
  );
  const own = cut[fromM > 0 ? 1 : 0]!;
  if (own.length === 0) return null;
  return [own[0]!.from, ...own.map((run) => run.to)].map(([east, north, depth]): Position => [east, north, -depth]);
}

function likelyOhm({ resistanceOhm }: Tie): number | null {
  return resistanceOhm === null ? null : middle(resistanceOhm);
}

/** Metres along the points of a way. */
export function wayLengthM(way: readonly Position[]): number {
  return way
    .slice(1)
    .reduce((sum, p, i) => sum + Math.hypot(p[0] - way[i]![0], p[1] - way[i]![1], p[2] - way[i]![2]), 0);
}
