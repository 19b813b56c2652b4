import { expect, it } from 'vitest';
import { pageContext } from '../../src/report/page-context.ts';
import { besideBlocks } from '../../src/report/strike-beside.ts';
import { clubStrike } from './sample-strike.ts';
import { clubMeaning, nothingBeside } from './sample-strike-meaning.ts';
import { clubStudy } from './sample-study.ts';

const blocks = (meaning: typeof clubMeaning) => {
  const page = pageContext(clubStudy, ['strike']);
  const strike = { ...clubStrike, ...meaning };
  return JSON.stringify(besideBlocks({ page, study: clubStudy, strike, mark: null, id: 's' }));
};

it('tells side flash, force, protectors and electrodes where there is something to say', () => {
  const text = blocks(clubMeaning);
  for (const part of ['too close', 'Measure how far', '640 N', 'too low', '0.53 times', 'direct current'])
    expect(text).toContain(part);
  // 210 N on each metre is below the limit of 500
  expect(text).not.toContain('pulled together');
});

it('says nothing where there is nothing', () => {
  expect(blocks(nothingBeside)).toBe('[]');
});
