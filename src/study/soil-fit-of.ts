import type { GroundFacts } from '../facts/facts.ts';
import { type Speech, say } from '../words/say.ts';
import { soilFitWords as words } from '../words/soil-fit-words.ts';
import type { StudyFitted, StudySoilFit } from './study-earth.ts';

type Sounding = NonNullable<GroundFacts['sounding']>;
type Fit = Sounding['fit'];
type Figure = Fit['layers'][number]['resistivityOhmM'];

/** What the four-pin readings carry, in figures and in sentences. `isUsed`: whether the study's soil is this one. */
export function soilFitOf({ points, fit, curve }: Sounding, isUsed: boolean, speech: Speech): StudySoilFit {
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
    misfitShare: fit.misfitShare,
    tried: fit.tried.flatMap(({ layers, misfitShare }) => (misfitShare === null ? [] : [{ layers, misfitShare }])),
    text: fit.chosen === null ? [sayReason(fit, speech)] : sayFit(fit, readings, isUsed, speech),
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

function sayFit(fit: Fit, readings: readonly string[], isUsed: boolean, speech: Speech): readonly string[] {
  const { layers, misfitShare, noiseShare, tradeOffs } = fit;
  const open = layers.flatMap(({ resistivityOhmM, thicknessM }, at) => [
    ...(resistivityOhmM.resolved ? [] : [sayOpen('resistivity', at, resistivityOhmM, speech)]),
    ...(thicknessM === null || thicknessM.resolved ? [] : [sayOpen('thickness', at, thicknessM, speech)]),
  ]);
  const others = fit.tried.filter((t) => t.layers < layers.length && t.misfitShare !== null);
  return [
    layers.length === 1 ? sayUniform(layers[0]!.resistivityOhmM, readings, speech) : sayLayers(fit, readings, speech),
    say(words.ranges, { percent: percent(misfitShare!), noise: percent(noiseShare) }, speech),
    ...others.map((t) => say(words.tried, { count: words.counts[t.layers], percent: percent(t.misfitShare!) }, speech)),
    ...(open.length === 0 ? [] : [say(words.notResolved, { list: open }, speech)]),
    ...tradeOffs.map((trade) => sayTrade(trade, speech)),
    isUsed ? words.used : words.typedWins,
  ];
}

function sayUniform(figure: Figure, readings: readonly string[], speech: Speech): string {
  const values = { list: readings, topOhmM: digits(figure.value), rangeOhmM: rangeOf(figure) };
  return say(words.uniform, values, speech);
}

function sayLayers({ layers }: Fit, readings: readonly string[], speech: Speech): string {
  const each = layers.map(({ resistivityOhmM, thicknessM }) => {
    const values = { resistivityOhmM: digits(resistivityOhmM.value), rangeOhmM: rangeOf(resistivityOhmM) };
    if (thicknessM === null) return say(words.lastLayer, values, speech);
    return say(words.layer, { ...values, thicknessM: digits(thicknessM.value), rangeM: rangeOf(thicknessM) }, speech);
  });
  const count = String(words.counts[layers.length as 2 | 3]).replace(/ layers$/, '');
  return say(words.layers, { list: readings, count, layers: each.join('; ') }, speech);
}

function sayOpen(what: 'resistivity' | 'thickness', at: number, { low, high }: Figure, speech: Speech): string {
  const name = say(words.what[what], { layer: at + 1 }, speech);
  const key = what === 'resistivity' ? 'OhmM' : 'M';
  const template =
    low === null ? (high === null ? words.open : words.openLow) : high === null ? words.openHigh : words.wide;
  const withUnits = template.replace('{low}', `{low${key}}`).replace('{high}', `{high${key}}`);
  const values = {
    what: name,
    [`low${key}`]: low === null ? null : digits(low),
    [`high${key}`]: high === null ? null : digits(high),
  };
  return say(withUnits, values, speech);
}

function sayTrade({ layer, of, range }: Fit['tradeOffs'][number], speech: Speech): string {
  const template = of === 'thickness times resistivity' ? words.tradeProduct : words.tradeQuotient;
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
