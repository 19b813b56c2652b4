import { describe, expect, it } from 'vitest';
import { readingTraps } from '../../src/network/reading-traps.ts';
import { runStudy } from '../../src/study/run-study.ts';
import { earthIn } from './earth-in.ts';

const head = 'site: {name: Loop, region: us, units: ft, service: panel}\n';
/** A field of rods on one wire, apart from the house with the service. */
function siteOf(rods: number, spacingFt: number, reading: string): string {
  const all = Array.from({ length: rods }, (_, i) => i + 1);
  return `${head}electrodes:
  H: {kind: rod, at: [500, 0], length: 8 ft}
${all.map((i) => `  R${i}: {kind: rod, at: [${spacingFt * i}, 0], length: 8 ft}`).join('\n')}
supports:
  mast: {kind: mast, at: [0, 10], height: 30 ft, sections: one piece}
equipment:
  panel: {kind: service panel, where: inside}
conductors:
  gec: {from: panel, to: H, wire: 6 AWG copper, length: 6 ft}
  lead: {from: mast@base, to: R1, wire: 4 AWG copper, length: 5 ft}
${all
  .slice(1)
  .map((i) => `  c${i}: {from: R${i - 1}, to: R${i}, wire: 4 AWG copper, length: ${spacingFt} ft}`)
  .join('\n')}
readings:
  r: ${reading}
`;
}

const trapsOf = (text: string) => readingTraps(earthIn(text).run).map(({ trap }) => trap);
const clamp = (on: string, reads: string) => `{kind: stakeless, on: ${on}, reads: ${reads}}`;

// What a clamp reads round a lead is the loop: an earth-tester booklet, pages 49 to 52 (read; see clamp-loop.ts).
describe('a clamp-on reading', () => {
  it.each([
    ['of a lone rod has no loop', 1, 40, clamp('lead', '31 ohm'), ['no-loop']],
    ['of a lone rod below an ohm is metal all the same', 1, 40, clamp('lead', '0.2 ohm'), ['metal-loop']],
    ['with one other is the sum of both', 2, 40, clamp('R1', '31 ohm'), ['sum-of-two']],
    ['with several others is taken', 4, 40, clamp('R1', '31 ohm'), []],
    ['below one ohm is a loop of metal', 4, 40, clamp('R1', '0.3 ohm'), ['metal-loop']],
    ['of one ohm is not', 4, 40, clamp('R1', '1 ohm'), []],
    ['among rods nearer than they are long reads low', 4, 7.9, clamp('R2', '12 ohm'), ['too-near']],
    ['at one length it is not said', 4, 8.1, clamp('R2', '12 ohm'), []],
    ['over range says no more than that', 4, 40, clamp('R1', 'over range'), []],
  ])('%s', (_, rods, spacingFt, reading, traps) => {
    expect(trapsOf(siteOf(rods, spacingFt, reading))).toEqual(traps);
  });

  it('in the group of the service has the electrodes of others in its loop: their number is not judged', () => {
    expect(trapsOf(siteOf(1, 40, clamp('gec', '31 ohm')))).toEqual([]);
    expect(trapsOf(siteOf(1, 40, clamp('gec', '0.3 ohm')))).toEqual(['metal-loop']);
  });
});

describe('a fall of potential', () => {
  const fall = (probes: string, ohms: string) =>
    `{kind: fall of potential, electrode: R1, current_probe: 100 ft, potential_probe: [${probes}], resistance: [${ohms}]}`;
  const slope = '20 ft, 40 ft, 60 ft';
  const level = '52 ft, 62 ft, 72 ft';

  // Slopes by hand, (R60 - R40) / (R40 - R20); the table begins at 0.40 and ends at 1.59 (earth-tester handbook, page 19, read).
  it.each([
    ['of slope 1 is good for the slope method', slope, '10 ohm, 11 ohm, 12 ohm', []],
    ['of slope 1.55 too', slope, '10 ohm, 11 ohm, 12.55 ohm', []],
    ['of slope 1.65 has its current probe too near', slope, '10 ohm, 11 ohm, 12.65 ohm', ['slope-high']],
    ['of slope 0.45 is good', slope, '10 ohm, 11 ohm, 11.45 ohm', []],
    ['of slope 0.35 levels off too much', slope, '10 ohm, 11 ohm, 11.35 ohm', ['slope-low']],
    ['that falls outwards is none', slope, '10 ohm, 11 ohm, 10.5 ohm', ['no-rise']],
    ['alike to 5 % at 52, 62 and 72 % is taken', level, '24 ohm, 25 ohm, 26 ohm', []],
    ['further apart there is none', level, '24 ohm, 25 ohm, 27 ohm', ['probes-disagree']],
    ['with probes elsewhere is not judged', '30 ft, 50 ft, 80 ft', '9 ohm, 8 ohm, 7 ohm', []],
    ['over range is not judged', level, '24 ohm, over range, 27 ohm', []],
  ])('%s', (_, probes, ohms, traps) => {
    expect(trapsOf(siteOf(1, 40, fall(probes, ohms)))).toEqual(traps);
  });
});

it('stands in the study as a sentence that names the reading', () => {
  const { site } = earthIn(siteOf(4, 40, clamp('R1', '0.3 ohm')));
  const { study } = runStudy(site, { state: null, version: '0', checksum: '', date: null });
  expect(study.earth.readingTraps).toEqual([
    {
      reading: 'r',
      at: 'R1',
      text: expect.stringMatching(/^r: below 1 ohm .* R1 is tied, and says nothing of the soil\.$/),
    },
  ]);
});
