import { exact, type Interval, mul, scale } from '../units/interval.ts';
import { readQuantity } from '../units/quantity.ts';
import { type Metal, metalNames, nearMetal, plainMetal, plainMetalNames, readMetal } from './metals.ts';
import { awgNameOfArea, gaugeAreaM2, gaugeNumber } from './wire-sizes.ts';

export type WireForm = 'round' | 'strap' | 'tube' | 'braid' | 'conduit';
export type Said = 'yes' | 'no' | 'unknown';

/** A wire, strap, tube, braid or conduit as its owner names it. A figure that was not given is null. */
export interface Wire {
  readonly form: WireForm;
  readonly metal: Metal | null;
  /** Section of metal. */
  readonly areaM2: Interval | null;
  /** Of the metal, over all: for stranded wire that of the solid wire of the same section (its strands lie a little wider). */
  readonly diameterM: Interval | null;
  readonly widthM: Interval | null;
  readonly thicknessM: Interval | null;
  readonly insulated: Said;
  readonly stranded: Said;
  /** `6 AWG` where the section is that gauge. */
  readonly awg: string | null;
  readonly text: string;
}

/** Why a wire cannot be read. */
export type WireFault =
  /** values: text, example. */
  | 'wire-unreadable'
  /** values: text, metal, near. */
  | 'wire-metal-unknown'
  /** values: text, gauge. */
  | 'wire-gauge-unknown'
  /** values: text. */
  | 'wire-size-zero';

export type WireRead =
  | { readonly ok: true; readonly wire: Wire }
  | { readonly ok: false; readonly code: WireFault; readonly values: Readonly<Record<string, string>> };

type Fault = Extract<WireRead, { ok: false }>;
type Shape = Pick<Wire, 'form' | 'areaM2' | 'diameterM' | 'widthM' | 'thicknessM'>;

const unitWord = /^(?:awg|ga|gauge|gage|mm2|mm|cm|m|in|inch|inches|ft|kcmil|cmil|mcm|sq mm|sq in|mm sq)$/;

/** Longer texts are no wire; see the same limit of figures. */
const longest = 200;

const example =
  '6 AWG copper, 16 mm2 copper, round 8 mm copper, strap 3 in x 0.022 in copper, tube 3/4 in copper, braid 1/2 in';

/**
 * Reads a wire as the trade writes it: `6 AWG copper`, `#6 copper`, `2/0 AWG tinned copper`, `16 mm2 copper`, `round 8 mm
 * copper`, `strap 3 in x 0.022 in copper`, `tube 3/4 in copper`, `braid 1/2 in`, `conduit 3/4 in steel`; `insulated`,
 * `bare`, `stranded`, `solid` may stand anywhere. A metal that is not named is unknown; the trade size of a tube says
 * nothing of its wall, so its section is unknown.
 */
export function readWire(text: string): WireRead {
  const typed = text.trim();
  if (typed.length > longest) return fault('wire-unreadable', `${typed.slice(0, 60)}...`, { example });
  const { rest, insulated, stranded } = takeManner(typed);
  const { size, metal, metalText } = takeMetal(rest);
  const shape = readShape(size, typed);
  if ('code' in shape) return metalText === null ? shape : unknownMetal(typed, metalText);
  if (metalText !== null) return unknownMetal(typed, metalText);
  return { ok: true, wire: { ...shape, metal, insulated, stranded, awg: gaugeOf(shape), text: typed } };
}

function gaugeOf({ form, areaM2 }: Shape): string | null {
  return form === 'round' && areaM2 !== null && areaM2.low === areaM2.high ? awgNameOfArea(areaM2.low) : null;
}

/** Words on how it is made, taken out of the text. */
function takeManner(text: string): { rest: string; insulated: Said; stranded: Said } {
  const has = (pattern: RegExp) => pattern.test(text);
  const insulated = has(/\b(?:insulated|covered)\b/i) ? 'yes' : has(/\bbare\b/i) ? 'no' : 'unknown';
  const stranded = has(/\bstranded\b/i) ? 'yes' : has(/\bsolid\b/i) ? 'no' : 'unknown';
  const rest = text.replace(/\b(?:insulated|covered|bare|stranded|solid|wire|cable)\b|,/gi, ' ').replace(/\s+/g, ' ');
  return { rest: rest.trim(), insulated, stranded };
}

/** The metal at the end of the text; `metalText` is a word there that is no metal. */
function takeMetal(text: string): { size: string; metal: Metal | null; metalText: string | null } {
  const plain = plainMetal(text);
  const name = plainMetalNames.find((known) => plain === known || plain.endsWith(` ${known}`));
  if (name !== undefined) {
    return { size: plain.slice(0, plain.length - name.length).trim(), metal: readMetal(name), metalText: null };
  }
  const word = /(?:^|\s)(?:(?:awg|mm2|mm|cm|m|in|ft|kcmil|cmil|mcm|sq mm|sq in)\s+)?([a-z][a-z ]*)$/.exec(plain)?.[1];
  const isUnit = word === undefined || word === plain || unitWord.test(word);
  if (isUnit) return { size: plain, metal: null, metalText: null };
  return { size: plain.slice(0, -word.length).trim(), metal: null, metalText: word };
}

function unknownMetal(text: string, metal: string): Fault {
  const near = nearMetal(metal) ?? '';
  return {
    ok: false,
    code: 'wire-metal-unknown',
    values: { text, metal, near, known: metalNames.slice(0, 8).join(', ') },
  };
}

function readShape(size: string, typed: string): Shape | Fault {
  const gauge = /^(?:#\s*|no\.?\s*|awg\s*)?(\d\/0|\d{1,4})(?:\s*(awg|ga|gauge|gage))?$/.exec(size);
  if (gauge !== null && (gauge[2] !== undefined || /^(?:#|no|awg)/.test(size) || /^[1-4]\/0$/.test(size))) {
    return readGauge(gauge[1]!, typed);
  }
  const form = /^(round|rod|strap|strip|tape|flashing|tube|pipe|braid|conduit)\s+(.*)$/.exec(size);
  if (form !== null) return readForm(form[1]!, form[2]!, typed);
  const area = readQuantity(size, 'area', { positive: true });
  if (area.ok) return round(area.interval);
  return area.code === 'zero-or-negative'
    ? fault('wire-size-zero', typed, {})
    : fault('wire-unreadable', typed, { example });
}

function readGauge(name: string, typed: string): Shape | Fault {
  const number = gaugeNumber(name);
  if (number === null) return fault('wire-gauge-unknown', typed, { gauge: name });
  const areaM2 = gaugeAreaM2(number);
  return { ...round(exact(areaM2)), areaM2: exact(areaM2) };
}

function readForm(word: string, figures: string, typed: string): Shape | Fault {
  const parts = figures.split(/\s*[x×]\s*/).map((part) => part.trim());
  const [first, second] = parts.map((part) => readLength(part));
  if (first === undefined || parts.length > 2) return fault('wire-unreadable', typed, { example });
  if (first === 'zero' || second === 'zero') return fault('wire-size-zero', typed, {});
  if (first === null || second === null) return fault('wire-unreadable', typed, { example });
  if (word === 'round' || word === 'rod') return roundOf(first);
  if (word === 'tube' || word === 'pipe') return hollow('tube', first, second ?? null);
  if (word === 'conduit') return hollow('conduit', first, second ?? null);
  return flat(word === 'braid' ? 'braid' : 'strap', first, second ?? null);
}

function readLength(text: string): Interval | 'zero' | null {
  const read = readQuantity(text, 'length', { positive: true });
  if (read.ok) return read.interval;
  return read.code === 'zero-or-negative' ? 'zero' : null;
}

function round(areaM2: Interval): Shape {
  const root = (area: number) => Math.sqrt((4 * area) / Math.PI);
  const diameterM = { low: root(areaM2.low), high: root(areaM2.high) };
  return { form: 'round', areaM2, diameterM, widthM: null, thicknessM: null };
}

function roundOf(diameterM: Interval): Shape {
  const areaM2 = scale(mul(diameterM, diameterM), Math.PI / 4);
  return { form: 'round', areaM2, diameterM, widthM: null, thicknessM: null };
}

/** A braid's section is its copper's, which its width does not give. */
function flat(form: 'strap' | 'braid', widthM: Interval, thicknessM: Interval | null): Shape {
  const areaM2 = form === 'strap' && thicknessM !== null ? mul(widthM, thicknessM) : null;
  return { form, areaM2, diameterM: null, widthM, thicknessM };
}

/** π (d − t) t for a tube of outer diameter d and wall t. */
function hollow(form: 'tube' | 'conduit', diameterM: Interval, thicknessM: Interval | null): Shape {
  if (thicknessM === null) return { form, areaM2: null, diameterM, widthM: null, thicknessM };
  const wall = { low: diameterM.low - thicknessM.low, high: diameterM.high - thicknessM.high };
  const middleM = { low: Math.min(wall.low, wall.high), high: Math.max(wall.low, wall.high) };
  return { form, areaM2: scale(mul(middleM, thicknessM), Math.PI), diameterM, widthM: null, thicknessM };
}

function fault(code: WireFault, text: string, values: Readonly<Record<string, string>>): Fault {
  return { ok: false, code, values: { text, ...values } };
}
