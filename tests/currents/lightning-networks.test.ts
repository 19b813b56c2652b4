import { describe, expect, it } from 'vitest';
import { resistancesToEarth } from '../../src/currents/resistance.ts';
import { network, oneAmpere, solve } from './networks.ts';

interface Case {
  readonly title: string;
  readonly into: string;
  /** name from-to milliohm */
  readonly branches: string;
  /** node ohm */
  readonly electrodes: string;
  readonly toEarthOhm: number;
  readonly potentialsV: string;
  readonly currentsA: string;
}

/**
 * Six networks of a mast, its bonds and its electrodes, one ampere put in. The figures to six decimals were worked out
 * apart from this program, beside surge answers of the same networks on which numpy and a circuit simulator agreed.
 */
const cases: readonly Case[] = [
  {
    title: 'mast top, down conductor, one electrode',
    into: 'T',
    branches: 'b1 T-B 13',
    electrodes: 'B 10',
    toEarthOhm: 10.013,
    potentialsV: 'T 10.013000, B 10.000000',
    currentsA: 'b1 1.000000',
  },
  {
    title: 'mast with its own electrode, bonded 15 m to a second one',
    into: 'T',
    branches: 'b1 T-B1 5; b2 B1-B2 20',
    electrodes: 'B1 25, B2 10',
    toEarthOhm: 7.158055,
    potentialsV: 'T 7.158055, B1 7.153055, B2 7.138778',
    currentsA: 'b1 1.000000, b2 0.713878',
  },
  {
    title: 'the same with the bond open',
    into: 'T',
    branches: 'b1 T-B1 5',
    electrodes: 'B1 25, B2 10',
    toEarthOhm: 25.005,
    potentialsV: 'T 25.005000, B1 25.000000, B2 0.000000',
    currentsA: 'b1 1.000000',
  },
  {
    title: 'tower base, entry panel, service entrance and rack in two loops',
    into: 'T',
    branches: 'b1 T-P 3; b2 T-S 26; b3 P-S 10; b4 P-Q 4; b5 S-Q 40',
    electrodes: 'T 8, P 20, S 12',
    toEarthOhm: 3.872145,
    potentialsV: 'T 3.872145, P 3.870934, S 3.869223, Q 3.870778',
    currentsA: 'b1 0.403589, b2 0.112393, b3 0.171145, b4 0.038897, b5 -0.038897',
  },
  {
    title: 'buried ring with eight electrodes and a cross tie',
    into: 'D',
    branches:
      'd1 D-N1 4; r1 N1-N2 2; r2 N2-N3 2; r3 N3-N4 2; r4 N4-N5 2; r5 N5-N6 2; r6 N6-N7 2; r7 N7-N8 2; r8 N8-N1 2; x1 N3-N7 4',
    electrodes: 'N1 30, N2 35, N3 40, N4 45, N5 50, N6 40, N7 35, N8 30',
    toEarthOhm: 4.634083,
    potentialsV:
      'D 4.634083, N1 4.630083, N2 4.629257, N3 4.628696, N4 4.628382, N5 4.628275, N6 4.628353, N7 4.628662, N8 4.629218',
    currentsA:
      'd1 1.000000, r1 0.413074, r2 0.280809, r3 0.156597, r4 0.053744, r5 -0.038821, r6 -0.154530, r7 -0.278283, r8 -0.432590, x1 0.008495',
  },
  {
    title: 'entry panel on a short and a long lead to two electrodes',
    into: 'P',
    branches: 'b1 P-G 1.3; b2 P-H 13; b3 G-H 10',
    electrodes: 'G 15, H 6',
    toEarthOhm: 4.289182,
    potentialsV: 'P 4.289182, G 4.288334, H 4.284666',
    currentsA: 'b1 0.652629, b2 0.347371, b3 0.366740',
  },
  {
    title: 'buried wire as six sections that leak',
    into: 'W0',
    branches: 'w1 W0-W1 6; w2 W1-W2 6; w3 W2-W3 6; w4 W3-W4 6; w5 W4-W5 6; w6 W5-W6 6',
    electrodes: 'W0 60, W1 90, W2 90, W3 90, W4 90, W5 90, W6 90',
    toEarthOhm: 12.009704,
    potentialsV: 'W0 12.009704, W1 12.004904, W2 12.000906, W3 11.997707, W4 11.995308, W5 11.993709, W6 11.992910',
    currentsA: 'w1 0.799838, w2 0.666450, w3 0.533107, w4 0.399799, w5 0.266518, w6 0.133255',
  },
];

const pairs = (text: string): readonly (readonly [string, number])[] =>
  text.split(', ').map((pair) => [pair.split(' ')[0]!, Number(pair.split(' ')[1])]);

/** Half of the sixth decimal. */
const halfDigit = 0.5000001e-6;

describe.each(cases)('$title', ({ into, branches, electrodes, toEarthOhm, potentialsV, currentsA }) => {
  const parsed = branches.split('; ').map((line) => line.split(/[ -]/));
  const names = [...new Set([...parsed.flatMap(([, a, b]) => [a!, b!]), ...pairs(electrodes).map(([node]) => node)])];
  const solved = solve(
    network(
      names.length,
      parsed.map(([, a, b, milliohm]) => [names.indexOf(a!), names.indexOf(b!), Number(milliohm) / 1000]),
      pairs(electrodes).map(([node, ohm]) => [names.indexOf(node), ohm]),
    ),
  );
  const flowed = oneAmpere(solved, names.indexOf(into));

  it('has the resistance to earth worked out elsewhere', () => {
    const ohm = resistancesToEarth(solved)[names.indexOf(into)]!;
    expect(Math.abs(ohm - toEarthOhm)).toBeLessThan(halfDigit);
  });

  it.each(pairs(potentialsV))('has %s at %d V', (node, volt) => {
    expect(Math.abs(flowed.potentialV[names.indexOf(node)]! - volt)).toBeLessThan(halfDigit);
  });

  it.each(pairs(currentsA))('has %s carry %d A', (branch, ampere) => {
    const at = parsed.findIndex(([name]) => name === branch);
    expect(Math.abs(flowed.branchA[at]! - ampere)).toBeLessThan(halfDigit);
  });

  it('is in balance', () => {
    expect(flowed.residual).toBeLessThan(1e-14);
  });
});
