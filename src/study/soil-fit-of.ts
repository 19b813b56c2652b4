import type { GroundFacts } from '../facts/facts.ts';
import { type Speech, say } from '../words/say.ts';
import { soilFitWords as words } from '../words/soil-fit-words.ts';
import type { StudyFitted, StudySoilFit } from './study-earth.ts';

type Sounding = NonNullable<GroundFacts['sounding']>;
type Fit = Sounding['fit'];
type Figure = Fit['layers'][number]['resistivityOhmM'];

/** What the four-pin readings carry, in figures and in sentences. `isUsed`: whether the study's soil is this one. */
export function soilFitOf(sounding: Sounding, isUsed: boolean, speech: Speech): StudySoilFit {
  const { points, fit, curve } = sounding;
  const readings = [...new Set(points.map((p) => p.reading))];
  return {
    readings,
    points: points.flatMap(({ reading, spacingM }, at) => {
      const { measuredOhmM, fittedOhmM } = fit.readings[at]!;
      return measuredOhmM === null ? [] : [{ reading, spacingM, measuredOhmM, fittedOhmM }];
    }),
    curve,
    chosen: fit.chosen,
    layers: fit.layers.map(({ resistivityOhmM, thicknessM }) => ({
      resistivityOhmM: fitted(resistivityOhmM),
      thicknessM: thicknessM === null ? null : fitted(thicknessM),
    })),
    tradeOffs: fit.tradeOffs.map(({ layer, of, range }) => ({ layer, of, range: fitted(range) })),
    misfitShare: fit.misfitShare,
    tried: fit.tried.flatMap(({ layers, misfitShare }) => (misfitShare === null ? [] : [{ layers, misfitShare }])),
    text: fit.chosen === null ? [sayReason(fit, speech)] : sayFit(sounding, readings, isUsed, speech),
  };
}

/** An end that nothing bounds is 0 below and null above. */
function fitted({ value, low, high, resolved }: Figure): StudyFitted {
  return { value, low: low ?? 0, high, resolved };
}

function sayReason({ reason }: Fit, speech: Speech): string {
  const known = reason!;
  const shares =
    known.key === 'misfit' ? { percent: percent(known.misfitShare), limit: percent(known.limitShare) } : {};
  const { key: _key, ...figures } = known;
  const values = Object.fromEntries(Object.entries({ ...figures, ...shares }).filter(([, v]) => !Array.isArray(v)));
  return say(words.reasons[known.key], rounded(values), speech);
}

function sayFit(
  { points, fit }: Sounding,
  readings: readonly string[],
  isUsed: boolean,
  speech: Speech,
): readonly string[] {
  const { layers, tradeOffs } = fit;
  const figures = figuresOf(layers);
  const others = fit.tried.filter((t) => t.layers < layers.length && t.misfitShare !== null);
  const besides = tradeOffs.filter(({ layer }) => !isOpen(layers[layer]!));
  const spacings = new Set(points.filter((_, i) => fit.readings[i]!.measuredOhmM !== null).map((p) => p.spacingM)).size;
  return [
    layers.length === 1 ? sayUniform(layers[0]!.resistivityOhmM, readings, speech) : sayLayers(fit, readings, speech),
    sayMisfit(fit, { spacings, figures: figures.length }, speech),
    ...others.map((t) => say(words.tried, { count: words.counts[t.layers], percent: percent(t.misfitShare!) }, speech)),
    ...(figures.every((f) => f.resolved) ? [] : [words.notResolved]),
    ...besides.map((trade) => sayTrade(words.settledToo[trade.of], trade, speech)),
    isUsed ? words.used : words.typedWins,
  ];
}

function figuresOf(layers: Fit['layers']): readonly Figure[] {
  return layers.flatMap((l) => (l.thicknessM === null ? [l.resistivityOhmM] : [l.resistivityOhmM, l.thicknessM]));
}

/** Neither figure of the layer is resolved. */
function isOpen({ resistivityOhmM, thicknessM }: Fit['layers'][number]): boolean {
  return !resistivityOhmM.resolved && thicknessM?.resolved === false;
}

/** As many figures as spacings fit exactly, whatever was read: a misfit of nothing would look like a proof. */
function sayMisfit(
  { misfitShare, noiseShare }: Fit,
  { spacings, figures }: { readonly spacings: number; readonly figures: number },
  speech: Speech,
): string {
  const noise = percent(noiseShare);
  if (spacings <= figures)
    return say(words.exact, { figures: String(figures), spacings: String(spacings), noise }, speech);
  return say(words.ranges, { percent: percent(misfitShare!), noise }, speech);
}

function sayUniform(figure: Figure, readings: readonly string[], speech: Speech): string {
  return say(words.uniform, { list: readings, resistivity: sayFigure('resistivity', figure, speech) }, speech);
}

function sayLayers({ layers, tradeOffs }: Fit, readings: readonly string[], speech: Speech): string {
  const each = layers.map((layer, at) => {
    const trade = tradeOffs.find((t) => t.layer === at);
    if (trade !== undefined && isOpen(layer)) return sayTrade(words.settled[trade.of], trade, speech);
    const resistivity = sayFigure('resistivity', layer.resistivityOhmM, speech);
    if (layer.thicknessM === null) return say(words.lastLayer, { resistivity }, speech);
    return say(words.layer, { resistivity, thickness: sayFigure('thickness', layer.thicknessM, speech) }, speech);
  });
  const count = String(words.counts[layers.length as 2 | 3]).replace(/ layers$/, '');
  return say(words.layers, { list: readings, count, layers: each.join('; ') }, speech);
}

/** A figure with its range; one that is not resolved is no figure, only a range. */
function sayFigure(what: 'resistivity' | 'thickness', figure: Figure, speech: Speech): string {
  const { value, low, high, resolved } = figure;
  if (low === null && high === null) return words[`${what}Free`];
  const template = resolved ? words[what] : words[`${what}Open`];
  const [valueKey, rangeKey] = what === 'resistivity' ? ['valueOhmM', 'rangeOhmM'] : ['valueM', 'rangeM'];
  return say(template, { [valueKey!]: digits(value), [rangeKey!]: rangeOf(figure) }, speech);
}

function sayTrade(template: string, { layer, range }: Fit['tradeOffs'][number], speech: Speech): string {
  const [value, low, high] = [range.value, range.low ?? 0, range.high ?? Number.POSITIVE_INFINITY].map(digits);
  return say(template, { layer: layer + 1, value: value!, low: low!, high: String(high) }, speech);
}

function rangeOf({ low, high }: Figure) {
  return { low: digits(low ?? 0), high: high === null ? Number.POSITIVE_INFINITY : digits(high) };
}

function rounded(values: Record<string, unknown>): Record<string, number> {
  return Object.fromEntries(Object.entries(values).map(([key, value]) => [key, digits(value as number)]));
}

function percent(share: number): number {
  return share < 5e-4 ? 0 : Number((share * 100).toPrecision(2));
}

function digits(figure: number): number {
  return Number.isFinite(figure) ? Number(figure.toPrecision(3)) : figure;
}
