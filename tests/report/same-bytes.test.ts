import { expect, it } from 'vitest';
import type { Study } from '../../src/study/study.ts';
import { studyOfExample } from '../examples/study-of-example.ts';
import { pageOf } from './page-of.ts';
import { clubStrike, struck } from './sample-strike.ts';
import { clubStudy, houseStudy } from './samples.ts';

const marlHill = studyOfExample('marl-hill/marl-hill.site.yaml');

it.each([
  ['the club', clubStudy],
  ['the house', houseStudy],
  ['the club, struck', struck(clubStudy, clubStrike)],
  ['Marl Hill', marlHill],
])('the page of %s is the same each time, and from a study that was stored', (_, study) => {
  const page = pageOf(study);
  expect(pageOf(study)).toBe(page);
  expect(pageOf(JSON.parse(JSON.stringify(study)) as Study)).toBe(page);
});

it('a page tells one study from another', () => {
  const renamed = { ...clubStudy, site: { ...clubStudy.site, name: 'Another station' } };
  expect(pageOf(renamed)).not.toBe(pageOf(clubStudy));
});

it('a page hangs on no clock and no chance', () => {
  const { now } = Date;
  const { random } = Math;
  const page = pageOf(clubStudy);
  try {
    Date.now = () => {
      throw new Error('the clock was read');
    };
    Math.random = () => {
      throw new Error('a random figure was drawn');
    };
    expect(pageOf(clubStudy)).toBe(page);
  } finally {
    Date.now = now;
    Math.random = random;
  }
});
