import type { SurgeNetwork } from './surge-network.ts';

/** A way through elements: branches by their index, electrodes after them; +1 along the element, -1 against it. */
export interface SignedWay {
  readonly elements: Int32Array;
  readonly signs: Int8Array;
}

/**
 * The loops of a network: a tree of shortest ways from remote earth, and for each element that is not in it the loop that it
 * closes. Electrodes are elements from their node to remote earth.
 */
export interface SurgeLoops {
  /** From each node by the tree to remote earth; null: there is no way. */
  readonly toEarth: readonly (SignedWay | null)[];
  readonly loops: readonly SignedWay[];
}

export function surgeLoops(network: SurgeNetwork): SurgeLoops {
  const { nodeCount } = network;
  const ends = endsOf(network);
  const tree = treeFrom(nodeCount, ends, new Set());
  const toEarth = Array.from({ length: nodeCount }, (_, node) => wayToEarth(node, nodeCount, ends, tree));
  const isInTree = new Set(tree.filter((element) => element >= 0));
  const loops = ends.flatMap(([from, to], element) => {
    if (isInTree.has(element) || from === to) return [];
    const [start, end] = [from, to].map((node) => (node === nodeCount ? nothing : toEarth[node]!));
    return start == null || end == null ? [] : [closed(element, start, end)];
  });
  return { toEarth, loops };
}

/**
 * Ways to remote earth past some branches that are not there: those of the tree where they do, else the shortest that is left;
 * null: there is none.
 */
export function waysWithout(
  network: SurgeNetwork,
  { toEarth }: SurgeLoops,
  cut: ReadonlySet<number>,
): readonly (SignedWay | null)[] {
  const passes = (way: SignedWay | null) => way === null || way.elements.some((element) => cut.has(element));
  if (!toEarth.some(passes)) return toEarth;
  const ends = endsOf(network);
  const tree = treeFrom(network.nodeCount, ends, cut);
  return toEarth.map((way, node) => (passes(way) ? wayToEarth(node, network.nodeCount, ends, tree) : way));
}

type Ends = readonly (readonly [from: number, to: number])[];

function endsOf({ nodeCount, branches, earth }: SurgeNetwork): Ends {
  return [
    ...branches.map(({ from, to }) => [from, to] as const),
    ...earth.nodes.map((node) => [node, nodeCount] as const),
  ];
}

const nothing: SignedWay = { elements: new Int32Array(0), signs: new Int8Array(0) };

/** For each node the element by which it was first reached from earth, all at one distance before the next; -1: none. */
function treeFrom(earth: number, ends: Ends, cut: ReadonlySet<number>): Int32Array {
  const meeting: number[][] = Array.from({ length: earth + 1 }, () => []);
  ends.forEach(([from, to], element) => {
    if (cut.has(element)) return;
    meeting[from]!.push(element);
    meeting[to]!.push(element);
  });
  const reachedBy = new Int32Array(earth + 1).fill(-1);
  const seen = new Uint8Array(earth + 1);
  seen[earth] = 1;
  for (let front = [earth]; front.length > 0; ) {
    const next: number[] = [];
    for (const node of front) {
      for (const element of meeting[node]!) {
        const [from, to] = ends[element]!;
        const other = from === node ? to : from;
        if (seen[other] === 1) continue;
        seen[other] = 1;
        reachedBy[other] = element;
        next.push(other);
      }
    }
    front = next;
  }
  return reachedBy;
}

function wayToEarth(start: number, earth: number, ends: Ends, reachedBy: Int32Array): SignedWay | null {
  const [elements, signs]: [number[], number[]] = [[], []];
  for (let node = start; node !== earth; ) {
    const element = reachedBy[node]!;
    if (element < 0) return null;
    const [from, to] = ends[element]!;
    elements.push(element);
    signs.push(from === node ? 1 : -1);
    node = from === node ? to : from;
  }
  return { elements: Int32Array.from(elements), signs: Int8Array.from(signs) };
}

/** Along the element, on to earth from its end, and back from earth to its start; what is passed both ways falls out. */
function closed(element: number, start: SignedWay, end: SignedWay): SignedWay {
  const signOf = new Map<number, number>([[element, 1]]);
  end.elements.forEach((other, i) => {
    signOf.set(other, (signOf.get(other) ?? 0) + end.signs[i]!);
  });
  start.elements.forEach((other, i) => {
    signOf.set(other, (signOf.get(other) ?? 0) - start.signs[i]!);
  });
  const kept = [...signOf].filter(([, sign]) => sign !== 0);
  return { elements: Int32Array.from(kept, ([other]) => other), signs: Int8Array.from(kept, ([, sign]) => sign) };
}
