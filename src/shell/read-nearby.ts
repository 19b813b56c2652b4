import { nearbySides } from '../facts/strike-facts.ts';
import type { Site } from '../site/site.ts';
import { speechOf } from '../study/speech-of.ts';
import type { StrikeStudyAsk } from '../study/strike-study.ts';
import { breakdownField } from '../surge/ionised-resistance.ts';
import { readQuantity } from '../units/quantity.ts';
import { say } from '../words/say.ts';
import { strikeOptionWords as words } from '../words/strike-command-words.ts';

type Read<T> = { readonly is: T } | { readonly problems: readonly string[] };

type Nearby = NonNullable<StrikeStudyAsk['nearby']>;

/** `100 m`, `100 m north-east`, `300 ft NE`. */
export function readNearby(site: Site, text: string): Read<Nearby> {
  const problem = (template: string) => ({ problems: [say(template, { text }, speechOf(site))] });
  const found =
    /^(.*?)(?:\s+of\s+it)?(?:,?\s+(north|south|east|west|[nsew]{1,2}|(?:north|south)[- ]?(?:east|west)))?$/i.exec(
      text.trim(),
    );
  const [, size, named] = found ?? [];
  const read = readQuantity(size ?? '', 'length', { positive: true });
  const side = named === undefined ? null : sideOf(named);
  if (!read.ok || side === undefined) return problem(words.nearby.shape);
  const { low, high } = read.interval;
  if (low !== high) return problem(words.nearby.range);
  return { is: { distanceM: low, side, text: size!.trim() } };
}

/** `N`, `north east`, `north-east`; undefined: none that is known. */
function sideOf(named: string): Nearby['side'] | undefined {
  const plain = named.toLowerCase().replace(/[- ]/g, '');
  return nearbySides.find((side) => [side.replace('-', ''), initials(side)].includes(plain));
}

function initials(side: string): string {
  return side
    .split('-')
    .map((word) => word[0])
    .join('');
}

/** Soil that breaks down far below or above what documents have is a slip: by so much at the most. Ours. */
const mostTimes = 10;

/** `300 kV/m`, in volts per metre. */
export function readField(site: Site, text: string): Read<number> {
  const { low: leastVPerM, high: mostVPerM } = breakdownField;
  const speech = speechOf(site);
  const values = { text, leastVPerM, mostVPerM };
  const read = readQuantity(text, 'field', { positive: true });
  if (!read.ok || read.interval.low !== read.interval.high) {
    return { problems: [say(words.ionisation.shape, values, speech)] };
  }
  const fieldVPerM = read.interval.low;
  const isSlip = fieldVPerM < leastVPerM / mostTimes || fieldVPerM > mostVPerM * mostTimes;
  return isSlip ? { problems: [say(words.ionisation.size, values, speech)] } : { is: fieldVPerM };
}
