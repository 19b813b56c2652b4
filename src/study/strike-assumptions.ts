import { outsideOhm, type StrikeFacts, unknownLevelV } from '../facts/strike-facts.ts';
import type { Site } from '../site/site.ts';
import { type Speech, say, type Values } from '../words/say.ts';
import { strikeWords } from '../words/strike-words.ts';

const { assumed, strokes, medianNegative } = strikeWords;
const channels = { struck: assumed.channel, line: assumed.alongLine, nearby: assumed.nearby } as const;

/** In words: what a strike was worked out with because nobody typed it, and what was left out. */
export function strikeAssumptions(
  strike: StrikeFacts,
  site: Site,
  isAsked: boolean,
  speech: Speech,
): readonly string[] {
  const { taken, stroke, at, refused, guarded } = strike;
  const sentence = (template: string, values: Values = {}) => say(template, values, speech);
  const of = (template: string, list: readonly string[]) => (list.length === 0 ? [] : [sentence(template, { list })]);
  if (taken === null || refused !== null) return [];
  const { waveName, figures, isDefault } = stroke;
  const isAntenna = site.antennas.some(({ id }) => id === at);
  return [
    ...(isDefault && !isAsked
      ? [sentence(assumed.defaultStroke, { name: medianNegative, peakA: figures.peakA, wave: waveName })]
      : []),
    ...(isAsked ? [] : [sentence(isAntenna ? assumed.struckAntenna : assumed.struck)]),
    sentence(channels[strike.how], { at }),
    ...taken.lengths.map(({ lengthM, parts }) => sentence(assumed.length, { list: parts, lengthM })),
    ...of(assumed.heights, taken.heights),
    ...(strike.differences.some((d) => d.isBracketed) ? [sentence(assumed.coupled)] : []),
    ...of(assumed.lengthOnly, taken.lengthOnly),
    ...taken.wires.map(({ diameterM, parts }) => sentence(assumed.wire, { list: parts, diameterM })),
    ...taken.towers.map(({ part, diameterM }) => sentence(assumed.tower, { part, diameterM })),
    ...of(assumed.bundle, taken.laidApart),
    ...of(assumed.onFace, taken.onFace),
    ...of(assumed.electrodes, taken.unknownElectrodes),
    ...of(assumed.hangFree, taken.hangFree),
    ...of(assumed.guysIn, taken.guysIn),
    ...of(assumed.guys, taken.guys),
    ...of(assumed.cores, taken.cores),
    ...of(assumed.perhaps, taken.perhaps),
    ...(guarded === null
      ? of(assumed.open, taken.protectors)
      : [
          ...of(assumed.tubes, guarded.tubes),
          ...of(assumed.varistors, guarded.varistors),
          ...of(assumed.stubs, guarded.stubs),
          ...of(assumed.bleeds, guarded.bleeds),
        ]),
    ...(taken.levels.length === 0 ? [] : [sentence(assumed.gap, { list: taken.levels, levelV: unknownLevelV })]),
    ...(taken.outside.length === 0
      ? []
      : [
          sentence(assumed.outside, {
            list: taken.outside,
            overheadOhm: outsideOhm.overhead,
            buriedOhm: outsideOhm.buried,
          }),
        ]),
    sentence(assumed.neutral),
    strike.ionisationVPerM === null
      ? sentence(assumed.ionisation)
      : sentence(assumed.ionised, { fieldVPerM: strike.ionisationVPerM }),
    sentence(assumed.skin),
    sentence(assumed.joints),
  ];
}

/** What a stroke is called. */
export function strokeName({ stroke }: StrikeFacts, speech: Speech): string {
  return say(stroke.isDefault ? medianNegative : strokes[stroke.waveName], {}, speech);
}

/** Why nothing can be said; null: something can. */
export function strikeRefused({ refused }: StrikeFacts, speech: Speech): string | null {
  if (refused === null) return null;
  const { parts } = refused;
  const words = strikeWords.refused;
  switch (refused.reason) {
    case 'nothing to strike':
      return say(words.nothingToStrike, {}, speech);
    case 'not near':
      return say(words.notNear, {}, speech);
    case 'too large':
      return say(words.tooLarge, {}, speech);
    case 'no metal':
      return say(words.noMetal, { part: parts[0]! }, speech);
    case 'no soil':
      return parts.length === 0 ? say(words.noSoil, {}, speech) : say(words.electrodeUnknown, { list: parts }, speech);
    case 'no electrode':
      return say(words.noElectrode, {}, speech);
    case 'hangs free':
      return say(words.noWayToSoil, { part: parts[0]! }, speech);
    case 'impossible inductances':
      return parts.length > 1
        ? say(words.closePieces, { a: parts[0]!, b: parts[1]! }, speech)
        : say(words.noInductance, { list: parts }, speech);
  }
}
