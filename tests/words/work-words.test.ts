import { describe, expect, it } from 'vitest';
import { sayWork } from '../../src/words/say-work.ts';
import type { WorkWordsKey } from '../../src/words/work-words.ts';

const us = { terms: 'us', unitsFirst: 'us' } as const;
const stepsOf = (words: WorkWordsKey, values: object) => sayWork({ words, ...values }, us).steps;

const locate = 'Have buried pipes and cables located and marked before anybody digs or drives.';
const way = { from: 'E2', to: 'E1', wire: '6 AWG copper', lengthM: { low: 10, high: 10 } };

describe('what is told of a work', () => {
  it.each(['bond', 'second-path', 'tie-metalwork'] as const)('%s: pipes are located where somebody digs', (words) => {
    expect(stepsOf(words, { ...way, depthM: 0.4572 })).toContain(locate);
    // from the foot of a wall a lead may go on in the soil
    expect(stepsOf(words, { ...way, depthM: null, down: 'yes' })).toContain(locate);
    expect(stepsOf(words, { ...way, depthM: 0.4572, down: 'yes' }).filter((s) => s === locate)).toHaveLength(1);
    expect(stepsOf(words, { ...way, depthM: null })).not.toContain(locate);
  });

  it('rods and rings are always in the soil', () => {
    expect(stepsOf('add-rods', { to: 'E1', count: 1, rodLengthM: 2.4384, spacingM: 4.8768 })).toContain(locate);
    expect(stepsOf('close-ring', { ring: 'ring' })).toContain(locate);
  });

  it('a bond does not speak of a drawing that may not be there', () => {
    expect(stepsOf('bond', { ...way, depthM: null })[0]).toBe(
      'Lay 6 AWG copper from E2 to E1, round the house and not through it.',
    );
  });

  it('rods keep their distance from electrodes, not from the box that they are tied to', () => {
    const rods = (count: number) =>
      stepsOf('add-rods', { to: 'shop-panel', count, rodLengthM: 2.4384, spacingM: 4.8768 });
    expect(rods(2)[1]).toMatch(
      /^Drive 2 ground rods of .*, each 16 ft \(4\.88 m\) from the next grounding electrode, /,
    );
    expect(rods(1)[1]).toMatch(/^Drive 1 ground rod of .*, 16 ft \(4\.88 m\) from the next grounding electrode, /);
    for (const count of [1, 2]) expect(rods(count)[1]).not.toContain('shop-panel');
  });
});
