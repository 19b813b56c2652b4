import type { BondingRun } from '../bonding/bonding-of.ts';
import type { Tie, TieKind } from '../bonding/tie.ts';
import type { Position } from '../site/site.ts';
import { middle } from '../units/interval.ts';
import type { LeakingNetwork, Stretch } from './leaking-network.ts';
import { lineLengthM, stretchesAt } from './line-pieces.ts';
import { sharedSpans } from './shared-spans.ts';
import { type MetalFigure, strikeMetal } from './strike-metal.ts';
import type { StrikeTies } from './strike-ties.ts';
import { strikeWays, wayLengthM } from './strike-ways.ts';

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
  /** Typed by the owner, of this branch alone; it is coupled to nothing. */
  readonly statedH: number | null;
  /** Equal stretches that splices make of one run; the inductance of what has no place is that of the whole run. */
  readonly inRun: number;
}

/** Length that is taken for a wire or a line of which neither length nor place is known, metres. Ours; every use of it is told. */
export const assumedLengthM: Readonly<Partial<Record<TieKind, number>>> = {
  metal: 2,
  feeder: 10,
  shield: 10,
  cord: 10,
  guy: 15,
};

/** What is stated of the conductor or the support that a tie is of. */
interface Stated {
  /** The point of a support of which nobody knows the height hangs on its foot, without a length. */
  readonly isSupport: boolean;
  readonly hasInductance: boolean;
  /** Splices of its last run, and the span with which that begins. */
  readonly splices: number;
  readonly clamps: number;
}

/** The branches of a network with their metal, in the order of `leaking.network.branches`. */
export function strikeBranches(
  run: Pick<BondingRun, 'graph' | 'site' | 'metal'>,
  { whole, ties }: StrikeTies,
  leaking: LeakingNetwork,
): readonly StrikeBranch[] {
  const wayOf = strikeWays(run);
  const figureOf = strikeMetal(run.site);
  const statedOf = strikeStated(run);
  const { network, sources, stretches } = leaking;
  const cut = new Set(network.parts.filter((_, i) => stretches[i] !== null));
  const all = network.branches.map(({ from, to, resistanceOhm, nominalOhm }, i): StrikeBranch => {
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
        ...ofStretch(stretch, tie, figureOf(part, 'metal'), { ohm, stated: statedOf(part) }),
      };
    }
    const tie = ties[source!]!;
    const { from: a, to: b } = whole.branches[source!]!;
    const way = wayOf(tie, whole.nodes[a]!, whole.nodes[b]!);
    const figures = ofTie(tie, way, figureOf(part, tie.kind), statedOf(part));
    return { from, to, part, kind: tie.kind, span: tie.span ?? null, ...figures };
  });
  return sharedSpans(all, run.site.conductors, cut);
}

type Figures = Omit<StrikeBranch, 'from' | 'to' | 'part' | 'kind' | 'span'>;

function strikeStated({ site }: Pick<BondingRun, 'site'>): (part: string) => Stated {
  const supports = new Set(site.supports.map((s) => s.id));
  const conductors = new Map(site.conductors.map((c) => [c.id, c]));
  return (part) => {
    const c = conductors.get(part);
    return {
      isSupport: supports.has(part),
      hasInductance: c !== undefined && c.inductanceH !== null,
      splices: c?.splices.length ?? 0,
      clamps: c?.passes.length ?? 0,
    };
  };
}

function ofTie(tie: Tie, way: readonly Position[] | null, metal: MetalFigure, stated: Stated): Figures {
  const isContact = tie.body !== 'span';
  const resistanceOhm = likelyOhm(tie);
  const bare = { ...metal, statedH: null, inRun: 1 };
  if (isContact) return { ...bare, resistanceOhm: resistanceOhm ?? 0, lengthM: 0, lengthFrom: 'typed', way: null };
  const straightM = way === null ? null : wayLengthM(way);
  const typedM = tie.lengthM === null ? null : (middle(tie.lengthM) ?? tie.lengthM.low);
  const statedH = stated.hasInductance && tie.inductanceH !== null ? middle(tie.inductanceH) : null;
  if (statedH !== null) {
    const lengthM = typedM ?? straightM ?? 0;
    const ohm = resistanceOhm ?? lengthM * metal.ohmPerM;
    return { ...bare, resistanceOhm: ohm, lengthM, lengthFrom: 'typed', way: null, statedH };
  }
  // a way along which the metal would be longer than it was typed is not its way
  const isOff = typedM !== null && straightM !== null && straightM > longerThan * typedM;
  const takenM = stated.isSupport ? 0 : (assumedLengthM[tie.kind] ?? 0);
  const lengthM = typedM ?? straightM ?? takenM;
  return {
    ...bare,
    resistanceOhm: resistanceOhm ?? lengthM * metal.ohmPerM,
    lengthM,
    lengthFrom: typedM !== null ? 'typed' : straightM !== null ? 'straight' : 'assumed',
    way: way === null || isOff || straightM! < leastM ? null : way,
    inRun: (tie.span ?? 0) >= stated.clamps ? stated.splices + 1 : 1,
  };
}

/** Typed lengths and places are told apart no better than this. */
const longerThan = 1.25;
const leastM = 0.02;

function ofStretch(
  { line, fromM, toM }: Stretch,
  tie: Tie | null,
  metal: MetalFigure,
  { ohm, stated }: { readonly ohm: number | null; readonly stated: Stated },
): Figures {
  const lengthM = toM - fromM;
  const share = lengthM / Math.max(line.lengthM, lengthM);
  const wholeOhm = tie === null ? null : likelyOhm(tie);
  const wholeH = !stated.hasInductance || tie === null || tie.inductanceH === null ? null : middle(tie.inductanceH);
  return {
    ...metal,
    resistanceOhm: ohm ?? (wholeOhm === null ? lengthM * metal.ohmPerM : wholeOhm * share),
    lengthM,
    lengthFrom: 'straight',
    way: lengthM < leastM || wholeH !== null ? null : along({ line, fromM, toM }),
    statedH: wholeH === null ? null : wholeH * share,
    inRun: 1,
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
