import type { GroundFacts } from '../facts/facts.ts';
import { groundWords } from '../words/ground-words.ts';
import { type Speech, say } from '../words/say.ts';
import type { StudySoilOfElectrode } from './study-earth.ts';

type Measured = GroundFacts['measured'];
const words = groundWords.measured;

/** What a measured electrode says of the soil, to two digits: it is read to no more. */
export function soilOfElectrode(m: Measured['ofElectrodes'][number], speech: Speech): StudySoilOfElectrode {
  const { electrode, measuredOhm, uniformOhmM } = m;
  const ranged = ({ low, high }: { readonly low: number; readonly high: number }) => ({
    value: (low + high) / 2,
    low,
    high,
  });
  const rounded = { low: twoDigits(uniformOhmM.low), high: twoDigits(uniformOhmM.high) };
  return {
    electrode,
    measuredOhm: ranged(measuredOhm),
    uniformOhmM: ranged(uniformOhmM),
    text: say(words.soilOf, { electrode, measuredOhm, uniformOhmM: rounded }, speech),
  };
}

/** A contradiction in one sentence. */
export function sayContradiction(c: Measured['contradictions'][number], speech: Speech): string {
  if (c.is === 'not the soil taken') {
    const { measuredOhm, computedOhm } = c;
    return say(words.notTaken, { electrode: c.at.join(', '), measuredOhm, computedOhm }, speech);
  }
  const { readings, boundaryM, lowerOhmM, drop } = c;
  const said = readings.map(({ ohm, lengthM }) => say(words.reading, { resistanceOhm: ohm, lengthM }, speech));
  const list = said.length === 2 ? `both ${said.join(' and ')}` : said.join(', ');
  if (boundaryM === null || lowerOhmM === null) return say(words.noLayers, { list }, speech);
  const [shallowOhmM, deepOhmM] = [twoDigits(lowerOhmM[0]), twoDigits(lowerOhmM[1])];
  const values = { list, boundaryM, shallowOhmM, deepOhmM };
  if (drop === null) return say(words.noUniform, values, speech);
  return say(words.noUniformDrop, { ...values, dropM: drop.depthM, dropOhmM: twoDigits(drop.lowerOhmM) }, speech);
}

/** Why a reading is no resistance to earth, and what to do. */
export function sayTrap({ reading, at, trap }: GroundFacts['traps'][number], speech: Speech): string {
  const traps: Readonly<Record<typeof trap, string>> = groundWords.traps;
  return say(traps[trap], { reading, at }, speech);
}

function twoDigits(figure: number): number {
  return Number(figure.toPrecision(2));
}
