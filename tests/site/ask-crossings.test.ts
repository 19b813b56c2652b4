import { describe, expect, it } from 'vitest';
import { questionsOf, siteOf } from './read-text.ts';

const ring =
  '  ring: {kind: buried wire, route: [[0, 0], [6, 0], [6, 6], [0, 6]], closed: yes, depth: 60 cm, wire: 50 mm2 copper}\n';
const header = 'site: {units: m}\n';

/** What is asked of a ring of 6 m by 6 m and of what else is typed. */
function asked(electrodes: string, conductors = ''): readonly (readonly [string, string])[] {
  const wires = conductors === '' ? '' : `conductors:\n${conductors}`;
  return questionsOf(`${header}electrodes:\n${ring}${electrodes}${wires}`).filter(([key]) => key === 'crossing-untied');
}

const wire = (rest: string, route = '[[3, 3], [9, 3]]') => `  c1: {wire: 16 mm2 copper, route: ${route}, ${rest}}\n`;
const crossing = [['crossing-untied', 'conductors.c1.route']];

describe('a bare wire across a ring', () => {
  it('is asked about at one depth, with the name of the ring', () => {
    expect(asked('', wire('buried: 60 cm'))).toEqual(crossing);
    const { questions } = siteOf(`${header}electrodes:\n${ring}conductors:\n${wire('buried: 60 cm')}`);
    expect(questions.map((q) => q.values)).toEqual([{ other: 'ring' }]);
  });

  it('is not, at another depth', () => {
    expect(asked('', wire('buried: 40 cm'))).toEqual([]);
    // 8 mm and 4.5 mm thick: 6.2 mm from middle to middle is where they touch
    expect(asked('', wire('buried: 59.5 cm'))).toEqual(crossing);
    expect(asked('', wire('buried: 59 cm'))).toEqual([]);
  });

  it('is asked about where nobody typed the depth', () => {
    expect(asked('', wire('buried: yes'))).toEqual(crossing);
  });

  it.each([
    ['insulated', '  c1: {wire: 16 mm2 copper insulated, route: [[3, 3], [9, 3]], buried: 60 cm}\n'],
    ['above the ground', wire('buried: no')],
    ['not said to be buried', wire('known: seen')],
    ['in a pipe', wire('buried: 60 cm, runs: in conduit')],
    ['not there', wire('buried: 60 cm, present: no')],
    ['beside it', wire('buried: 60 cm', '[[7, 0], [7, 6]]')],
    ['one that ends before it', wire('buried: 60 cm', '[[3, 3], [5.9, 3]]')],
  ])('is not, %s', (_, conductor) => expect(asked('', conductor)).toEqual([]));

  it('is asked about where its end lies on the ring', () => {
    expect(asked('', wire('buried: 60 cm', '[[3, 3], [6, 3]]'))).toEqual(crossing);
  });

  it('and across the side that closes it', () => {
    expect(asked('', wire('buried: 60 cm', '[[-3, 3], [3, 3]]'))).toEqual(crossing);
  });

  it.each([
    ['it lands on the ring', wire('buried: 60 cm, to: ring')],
    ['it passes the ring', wire('buried: 60 cm, passes: [ring]')],
    ['another conductor joins the two', `${wire('buried: 60 cm')}  c2: {from: c1, to: ring, length: 10 cm}\n`],
  ])('is not where %s', (_, conductors) => expect(asked('', conductors)).toEqual([]));
});

describe('an upright rod', () => {
  it('on the way of a ring is asked about; beside it or tied to it is not', () => {
    const rod = (at: string) => `  R: {kind: rod, at: ${at}, length: 2.4 m, diameter: 16 mm}\n`;
    expect(asked(rod('[6, 2]'))).toEqual([['crossing-untied', 'electrodes.R.at']]);
    expect(asked(rod('[6.05, 2]'))).toEqual([]);
    expect(asked(rod('[6, 2]'), '  c1: {from: R, to: ring, length: 10 cm}\n')).toEqual([]);
  });

  it('whose end lies above the ring is not', () => {
    expect(asked('  R: {kind: rod, at: [6, 2], length: 40 cm, diameter: 16 mm}\n')).toEqual([]);
  });

  it('in the place of another is', () => {
    const rods = '  A: {kind: rod, at: [20, 0], length: 2.4 m}\n  B: {kind: rod, at: [20, 0], length: 3 m}\n';
    expect(asked(rods)).toEqual([['crossing-untied', 'electrodes.B.at']]);
  });
});

describe('many wires', () => {
  it('are asked about up to a limit, and soon', () => {
    const across = Array.from(
      { length: 2000 },
      (_, i) => `  w${i}: {wire: 16 mm2 copper bare, route: [[0, ${i}], [2000, ${i}.4]], buried: 50 cm}\n`,
    );
    const along = Array.from(
      { length: 200 },
      (_, i) => `  v${i}: {wire: 16 mm2 copper bare, route: [[${i}, 0], [${i}, 2000]], buried: 50 cm}\n`,
    );
    const start = performance.now();
    const questions = questionsOf(`${header}conductors:\n${across.join('')}${along.join('')}`);
    expect(questions.filter(([key]) => key === 'crossing-untied').length).toBe(50);
    expect(performance.now() - start).toBeLessThan(20_000);
  });
});
