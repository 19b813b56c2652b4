import { describe, expect, it } from 'vitest';
import { questionsOf } from './read-text.ts';

const asked = (text: string) => questionsOf(`site: {units: m}\n${text}`).map(([key]) => key);
const rod = (fields: string) => asked(`electrodes:\n  R: {kind: rod, ${fields}}\n`);
const layer = (resistivity: string) => asked(`soil: {layers: [{resistivity: ${resistivity}}]}\n`);

describe('a rod above the ground', () => {
  it('is asked about where nothing of it is in the soil, and only there', () => {
    expect(rod('length: 2.4 m, top: -2.4 m')).toEqual(['electrode-above-ground']);
    expect(rod('length: 2.4 m, top: -5 m')).toEqual(['electrode-above-ground']);
    expect(rod('length: 2.4 m, top: -2.3 m')).toEqual([]);
    expect(rod('length: 2.4 m, top: -3 to -2 m')).toEqual([]);
    expect(rod('length: 2.4 m, top: 3 m')).toEqual([]);
    expect(rod('top: -3 m')).toEqual([]);
  });
});

describe('an electrode thicker than it is long', () => {
  it('is asked about', () => {
    expect(rod('length: 1 cm, diameter: 5 cm')).toEqual(['shorter-than-thick']);
    expect(rod('length: 16 mm, diameter: 16 mm')).toEqual([]);
    expect(rod('length: 1 to 6 cm, diameter: 5 cm')).toEqual([]);
    expect(asked('electrodes:\n  P: {kind: pipe, length: 1 cm, diameter: 5 cm}\n')).toEqual(['shorter-than-thick']);
  });
});

describe('a resistivity that nothing underfoot has', () => {
  it.each(['1000000000 ohm m', '1 to 2000000 ohm m', '0.04 ohm m', '100 microohm m'])('is asked about: %s', (ohmM) => {
    expect(layer(ohmM)).toEqual(['resistivity-odd']);
  });

  it.each(['0.2 ohm m', '1000000 ohm m', 'over 2000 ohm m', 'unknown', '100 to 5000 ohm m'])('is not: %s', (ohmM) => {
    expect(layer(ohmM)).toEqual([]);
  });
});
