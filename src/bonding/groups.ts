import type { Group } from './bonding.ts';
import type { Members } from './members.ts';
import type { MetalNet } from './metal-net.ts';
import { piecesOf } from './metal-net.ts';
import type { Tie } from './tie.ts';

/** Which piece of metal each member belongs to, by the bonds that are known. */
export interface Grouping {
  readonly groups: readonly Group[];
  /** Member → id of its group. */
  readonly groupOf: ReadonlyMap<string, string>;
  /** Node number → id of the group of the piece it lies in; null where that holds no member. */
  readonly groupOfNode: (node: number) => string | null;
  /** Groups of one part on which nothing else lands either. */
  readonly alone: readonly string[];
}

interface Piece {
  readonly members: Set<string>;
  electrodes: number;
  hasService: boolean;
}

export interface GroupQuestion {
  readonly net: MetalNet;
  readonly members: Members;
  readonly electrodes: ReadonlySet<string>;
  /** Members that are the service; null: nobody knows. */
  readonly service: ReadonlySet<string> | null;
}

const isKnown = (tie: Tie) => tie.is === 'there';
const isMetalTie = (tie: Tie) => isKnown(tie) && tie.kind === 'metal';
const isBondTie = (tie: Tie) => isMetalTie(tie) || (isKnown(tie) && tie.kind === 'feeder');

/** Groups by permanent metal and feeders. A part on which several things land without joining them belongs to one of their groups. */
export function groupsOf(question: GroupQuestion): Grouping {
  const bonds = assign(question, isBondTie);
  const metal = assign(question, isMetalTie);
  const lists = new Map<number, string[]>();
  for (const [member, piece] of bonds.pieceOf) {
    const list = lists.get(piece);
    if (list === undefined) lists.set(piece, [member]);
    else list.push(member);
  }
  const groups = [...lists.values()].map((parts) => groupOfParts(question, parts, metal.pieceOf));
  groups.sort((a, b) => (a.id < b.id ? -1 : 1));
  const idOfPiece = new Map([...lists].map(([piece, parts]) => [piece, parts[0]!]));
  return {
    groups,
    groupOf: new Map([...bonds.pieceOf].map(([member, piece]) => [member, idOfPiece.get(piece)!])),
    groupOfNode: (node) => idOfPiece.get(bonds.of[node]!) ?? null,
    alone: groups.filter((g) => g.parts.length === 1 && bonds.isAlone(g.id)).map((g) => g.id),
  };
}

/** Members come in order, so the first part of a list is the group's id. */
function groupOfParts(question: GroupQuestion, parts: readonly string[], byMetal: ReadonlyMap<string, number>): Group {
  const { service, electrodes } = question;
  const main = mainPiece(question, parts, byMetal);
  return {
    id: parts[0]!,
    electrodes: parts.filter((id) => electrodes.has(id)),
    parts,
    hasService: service === null ? null : parts.some((id) => service.has(id)),
    byFeeder: parts.filter((id) => byMetal.get(id) !== main),
  };
}

/** Of the pieces that feeders join: that of the service, else the one with the most electrodes, the first of equals. */
function mainPiece(
  { service, electrodes }: GroupQuestion,
  parts: readonly string[],
  byMetal: ReadonlyMap<string, number>,
): number {
  const home = parts.find((id) => service?.has(id));
  if (home !== undefined) return byMetal.get(home)!;
  const counts = new Map<number, number>();
  for (const id of parts) {
    const piece = byMetal.get(id)!;
    counts.set(piece, (counts.get(piece) ?? 0) + (electrodes.has(id) ? 1 : 0));
  }
  let best = byMetal.get(parts[0]!)!;
  for (const [piece, count] of counts) if (count > counts.get(best)!) best = piece;
  return best;
}

/** The piece of each member: its only one, or of several the one that ties it to something. */
function assign(question: GroupQuestion, counts: (tie: Tie) => boolean) {
  const { net, members, electrodes, service } = question;
  const { of } = piecesOf(net, counts);
  const pieces = new Map<number, Piece>();
  for (const [id, nodes] of members) {
    for (const node of nodes)
      note(pieces, of[net.numberOf.get(node)!]!, id, electrodes.has(id), service?.has(id) ?? false);
  }
  const piecesFor = (nodes: readonly string[]) => [...new Set(nodes.map((node) => of[net.numberOf.get(node)!]!))];
  const firm = new Set([...members].filter(([, nodes]) => piecesFor(nodes).length === 1).map(([id]) => id));
  const pieceOf = new Map<string, number>();
  for (const [id, nodes] of members) {
    const candidates = piecesFor(nodes);
    pieceOf.set(id, candidates.length === 1 ? candidates[0]! : bestPiece(candidates, pieces, id, firm));
  }
  const isAlone = (id: string) =>
    members.get(id)!.every((node) => pieces.get(of[net.numberOf.get(node)!]!)!.members.size === 1);
  return { of, pieceOf, isAlone };
}

function note(pieces: Map<number, Piece>, number: number, id: string, isElectrode: boolean, isService: boolean): void {
  const piece = pieces.get(number) ?? { members: new Set<string>(), electrodes: 0, hasService: false };
  piece.members.add(id);
  if (isElectrode) piece.electrodes++;
  if (isService) piece.hasService = true;
  pieces.set(number, piece);
}

/** A piece that holds a part which belongs nowhere else comes before one in which only cases meet. */
function bestPiece(
  candidates: readonly number[],
  pieces: ReadonlyMap<number, Piece>,
  id: string,
  firm: ReadonlySet<string>,
): number {
  const rank = (number: number) => {
    const piece = pieces.get(number)!;
    const others = [...piece.members].filter((m) => m !== id);
    return {
      number,
      service: piece.hasService,
      tied: others.length > 0,
      firm: others.some((m) => firm.has(m)),
      electrodes: piece.electrodes,
      first: others[0] ?? '',
    };
  };
  const ranked = candidates
    .map(rank)
    .sort(
      (a, b) =>
        Number(b.tied && b.service) - Number(a.tied && a.service) ||
        Number(b.tied) - Number(a.tied) ||
        Number(b.firm) - Number(a.firm) ||
        b.electrodes - a.electrodes ||
        (a.first < b.first ? -1 : a.first > b.first ? 1 : 0),
    );
  return ranked[0]!.number;
}
