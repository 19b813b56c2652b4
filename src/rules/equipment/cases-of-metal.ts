/** Boxes too small or too plastic to ask a bond of. */
const exempt: readonly string[] = ['modem', 'router', 'computer'];
/** A battery has no case to bond; a rack or cabinet round it is asked. */
const battery = /\b(?:batter(?:y|ies)|accumulators?)(?: (?:bank|pack|string)s?)?$/i;
/** Kinds that are boxes of metal. Of a free word nobody knows it, unless the word says so. */
const metalCased: readonly string[] = [
  'service panel',
  'sub-panel',
  'transceiver',
  'receiver',
  'transmitter',
  'repeater',
  'amplifier',
  'tuner',
  'coax switch',
  'power supply',
  'controller',
  'rotator',
  'rack',
  'cabinet',
  'generator',
];

/** Nothing there to bond, by the kind that was typed. */
export function hasNoCase(kind: string): boolean {
  return exempt.includes(kind) || battery.test(kind) || /\bplastic\b/i.test(kind);
}

/** false: nobody knows. */
export function isOfMetal(kind: string): boolean {
  return metalCased.includes(kind) || /\b(?:metal|steel)\b/i.test(kind);
}
