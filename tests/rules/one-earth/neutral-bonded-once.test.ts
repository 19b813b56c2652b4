import { expect, test } from 'vitest';
import { readSite } from '../../../src/site/read-site.ts';
import { runStudy } from '../../../src/study/run-study.ts';

/** `outcome at` of each verdict on these boxes; the service is at `main`. */
function neutrals(boxes: string): readonly string[] {
  const { site, problems } = readSite(
    `site: {name: Neutrals, region: us, units: ft, service: main}\nequipment: {${boxes}}\n`,
    'neutrals',
  );
  if (site === null) throw new Error(JSON.stringify(problems));
  const { study } = runStudy(site, { state: null, version: 'test', checksum: '', date: null });
  return study.findings.filter((f) => f.rule === 'neutral-bonded-once').map((f) => `${f.outcome} ${f.at.join(' ')}`);
}

const main = 'main: {kind: service panel, neutral_bonded: yes}';

test('a sub-panel, and a second service panel beside the one that is the service', () => {
  expect(neutrals(`${main}, sub: {kind: sub-panel, neutral_bonded: yes}`)).toEqual(['not met sub']);
  expect(neutrals(`${main}, sub: {kind: sub-panel, neutral_bonded: no}`)).toEqual(['met sub']);
  expect(neutrals(`${main}, sub: {kind: sub-panel}`)).toEqual(['cannot tell sub']);
  expect(neutrals(`hut: {kind: service panel, neutral_bonded: yes}, ${main}`)).toEqual(['not met hut']);
});

// NFPA 70 250.142(A): on the supply side of the service disconnect the neutral may be bonded (from memory).
test('the meter box on the supply side may be bonded as well, and so may a source of its own', () => {
  expect(neutrals(`meter: {kind: meter box, neutral_bonded: yes}, ${main}`)).toEqual([]);
  expect(neutrals(`${main}, gen: {kind: portable generator, neutral_bonded: yes}`)).toEqual([]);
});

test('a panel under another name is not overlooked', () => {
  expect(neutrals(`${main}, barn: {kind: breaker box, neutral_bonded: yes}`)).toEqual(['not met barn']);
  expect(neutrals('main: {kind: breaker box, neutral_bonded: yes}')).toEqual([]);
});
