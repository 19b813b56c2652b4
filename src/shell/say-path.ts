import type { Way, WayPiece } from '../bonding/bonding.ts';
import { jointKinds } from '../bonding/joint-kinds.ts';
import type { Between, Side } from '../bonding/way-between.ts';
import type { DcBetween } from '../network/dc-between.ts';
import type { Site } from '../site/site.ts';
import { speechOf } from '../study/speech-of.ts';
import type { Interval } from '../units/interval.ts';
import { sayField } from '../words/field-words.ts';
import { say, type Values } from '../words/say.ts';
import { pathWords as words } from '../words/way-words.ts';
import { sayDcBetween } from './say-dc-between.ts';
import { plain, type Terminal, wrap } from './terminal.ts';

export type Sentence = (template: string, values?: Values) => string;

/** The terminal's page of a way: its pieces in order, its sums, how many separate ways there are; or that there is none, and what would decide. */
export function sayPath(
  site: Site,
  between: Between,
  dc: DcBetween | null,
  file: string,
  state: string | null,
  terminal: Terminal,
): string {
  const speech = speechOf(site);
  const sentence: Sentence = (template, values = {}) => plain(say(template, values, speech));
  const { from, to, way, same } = between;
  const stated = state === null ? '' : sentence(words.inState, { state });
  const head = sentence(words.title, { site: (site.header.name ?? words.unnamed) + stated, from, to });
  const body = same
    ? [wrap(sentence(words.same, { from, to }), terminal.width)]
    : way === null
      ? noWay(between, sentence, terminal)
      : [
          piecesBlock(site, way, sentence, terminal),
          sumsBlock(site, way, sentence, terminal),
          ...(dc === null ? [] : [sayDcBetween(between, dc, sentence, terminal)]),
        ];
  const part = way?.weakest?.part ?? way?.through[0];
  const next = part === undefined ? sentence(words.nextCheck, { file }) : sentence(words.next, { file, part });
  const caution = terminal.paint(wrap(sentence(words.caution), terminal.width), 'dim');
  return `${[terminal.paint(wrap(head, terminal.width), 'bold'), ...body, caution, next].join('\n\n')}\n`;
}

const wireOf = (site: Site, part: string): string | null =>
  site.conductors.find(({ id }) => id === part)?.typed.wire ?? null;

function piecesBlock(site: Site, way: Way, sentence: Sentence, { width }: Terminal): string {
  const kinds = jointKinds(site);
  const column = String(way.pieces.length).length + 4;
  const lines = way.pieces.map((piece, i) => {
    const { template, values } = pieceWords(piece, wireOf(site, piece.part), kinds);
    const number = `${i + 1}.`;
    const text = `${number} ${sentence(template, values)}; ${figuresOf(piece, sentence).join(', ')}`;
    const indent = column - number.length - 1;
    return wrap(text, width, indent, column - indent);
  });
  return lines.join('\n');
}

function pieceWords(piece: WayPiece, wire: string | null, kinds: ReadonlyMap<string, string | null>) {
  const { part, from, to, body } = piece;
  const isOwnJoint = body === 'contact' && kinds.has(part) && (from === part || to === part);
  if (isOwnJoint) {
    const kind = kinds.get(part) ?? words.kindUnknown;
    return { template: words.joint, values: { part, kind, on: from === part ? to : from } };
  }
  const template = body !== 'span' ? words[body] : wire === null ? words.span : words.spanOf;
  return { template, values: { part, from, to, wire } };
}

/** What is asked of this kind of piece; a contact has no length of its own. */
function figuresOf({ body, lengthM, resistanceOhm, inductanceH, bendsDeg }: WayPiece, sentence: Sentence): string[] {
  const isContact = body === 'contact';
  return [
    ...(isContact ? [] : [sentence(lengthM === null ? words.lengthUnknown : words.length, { lengthM })]),
    sentence(resistanceOhm === null ? words.resistanceUnknown : words.resistance, { resistanceOhm }),
    ...(isContact
      ? []
      : [sentence(inductanceH === null ? words.inductanceUnknown : words.inductance, { inductanceH })]),
    ...(bendsDeg === 0 ? [] : [sentence(words.bends, { bendsDeg })]),
  ];
}

function sumsBlock(site: Site, way: Way, sentence: Sentence, { width }: Terminal): string {
  const { rows } = words;
  const spans = way.pieces.filter(({ body }) => body !== 'contact');
  const table: readonly (readonly [string, string])[] = [
    [rows.length, sumOf(way.lengthM, way.pieces, 'lengthM', words.length, words.atLeastLength, sentence)],
    [rows.bends, way.bendsDeg === 0 ? words.noBends : sentence('{bendsDeg}', { bendsDeg: way.bendsDeg })],
    [
      rows.resistance,
      sumOf(way.resistanceOhm, way.pieces, 'resistanceOhm', words.resistance, words.atLeastOhm, sentence),
    ],
    [rows.inductance, sumOf(way.inductanceH, spans, 'inductanceH', words.inductance, words.atLeastHenry, sentence)],
    [rows.weakest, weakestOf(site, way, sentence)],
    [rows.separate, separateOf(way, sentence)],
  ];
  const column = Math.max(...table.map(([name]) => name.length)) + 2;
  const lines = table.map(([name, text]) => `${name.padEnd(column)}${wrap(text, width, column, 0).trimStart()}`);
  return [...lines, ...(way.byFeeder ? [wrap(sentence(words.byFeeder), width)] : [])].join('\n');
}

/** The sum, or what is known of it with the pieces that keep it open. */
function sumOf(
  total: Interval | null,
  pieces: readonly WayPiece[],
  figure: 'lengthM' | 'resistanceOhm' | 'inductanceH',
  known: string,
  atLeast: string,
  sentence: Sentence,
): string {
  if (total !== null) return sentence(known, { [figure]: total });
  const list = [...new Set(pieces.filter((piece) => piece[figure] === null).map(({ part }) => part))];
  const least = pieces.reduce((sum, piece) => sum + (piece[figure]?.low ?? 0), 0);
  return least === 0 ? words.allUnknown : sentence(atLeast, { [figure]: least, list });
}

function weakestOf(site: Site, { weakest }: Way, sentence: Sentence): string {
  if (weakest === null) return words.weakestUnknown;
  const wire = wireOf(site, weakest.part);
  return sentence(wire === null ? words.weakest : words.weakestWire, { ...weakest, wire });
}

function separateOf({ separatePaths, separatePathsStrict }: Way, sentence: Sentence): string {
  if (separatePaths === 1) return words.oneWay;
  return sentence(words.manyWays, { count: separatePaths, strict: separatePathsStrict });
}

function noWay({ from, to, decidedBy, fromSide, toSide }: Between, sentence: Sentence, { width }: Terminal): string[] {
  const untraced = [...new Set([...fromSide.untraced, ...toSide.untraced])];
  const open = [
    ...decidedBy.map((path) => sentence(words.settle, { path, what: sayField(path) })),
    ...untraced.map((part) => sentence(words.untraced, { part })),
  ];
  const said = sentence(open.length === 0 ? words.noWay : words.noWayKnown, { from, to });
  return [
    [wrap(said, width), ...open.map((line) => wrap(`- ${line}`, width, 2, 2))].join('\n'),
    [sideOf(from, fromSide, sentence, width), sideOf(to, toSide, sentence, width)].join('\n'),
    wrap(sentence(words.noBonds), width),
  ];
}

function sideOf(end: string, { parts }: Side, sentence: Sentence, width: number): string {
  const others = parts.filter((id) => id !== end);
  const text = others.length === 0 ? sentence(words.alone, { end }) : sentence(words.with, { end, list: others });
  return wrap(text, width, 0, 2);
}
