import { describe, expect, it } from 'vitest';
import { electrodeResistance } from '../../src/electrodes/electrode-resistance.ts';
import { ringWire, straightWire } from '../../src/electrodes/level-wire.ts';
import { plate, plateRadiusM } from '../../src/electrodes/plate.ts';
import { mutualOfRods, slenderRod } from '../../src/electrodes/rod.ts';
import { rodGroup, rodPositions } from '../../src/electrodes/rod-group.ts';
import {
  breakdownA,
  britishGroup,
  britishWire,
  closePair,
  dwightStar,
  dwightStrip,
  dwightWire,
  farPair,
  hemisphere,
  impulseOhm,
  laurentGrid,
  schlumbergerOfTwo,
  schwarzGrid,
  schwarzSquare,
  spheroidRod,
  sundeLine,
  sundeWire,
  surfaceRing,
  surfaceWire,
  sverakGrid,
  tipRod,
  wennerOfTwo,
} from '../reference/published-forms.ts';
import { deepFlatPlate, deepUprightPlate } from './deep-plates.ts';
import { drilled, ohmOf, soil } from './shapes.ts';

const rod = { lengthM: 3, topM: 0 };
const aloneOhm = 100 * slenderRod(rod, 0.016);
const substation = schwarzGrid({
  gridOhmM: 400,
  rodOhmM: 400,
  areaM2: 4900,
  gridLengthM: 1540,
  wireRadiusM: 0.005,
  depthM: 0.5,
  rods: 20,
  rodLengthM: 7.5,
  rodRadiusM: 0.005,
  k: schwarzSquare(0.5 / 70),
});
const breakdown = breakdownA(400e3, 100, 30);

/**
 * Every published formula at one set of figures, worked out apart from this program to six digits: first those that the
 * program uses, then those in tests/reference/published-forms.ts. Soil of 100 ohm m where none is named.
 */
describe('formulas in print to six figures', () => {
  it.each([
    ['rod 3 m x 16 mm', aloneOhm, 33.4927],
    ['rod, any thickness', 100 * mutualOfRods(rod, rod, 0.008), 33.4997],
    ['mutual of two rods 3 m apart', 100 * mutualOfRods(rod, rod, 3), 4.37995],
    ['mutual of two rods 10 m apart', 100 * mutualOfRods(rod, rod, 10), 1.54826],
    ['two rods 3 m apart', 100 * rodGroup(rod, 0.016, rodPositions('line', 2, 3))!, 18.9398],
    ['wire of 20 m', 100 * straightWire(20, 0.005, 0.5), 8.53524],
    ['ring of 10 m', 100 * ringWire(10 * Math.PI, 0.004, 0.6), 6.44246],
    ['flat plate', 100 * deepFlatPlate(0.5, 1.5), 27.6113],
    ['upright plate', 100 * deepUprightPlate(0.5, 1.5), 27.6747],
    ['plate of 0.81 m²', 100 * plate(plateRadiusM(0.9, 0.9), 1.5), 27.5532],
    ['rod in a column', ohmOf(electrodeResistance(drilled(3, 0.016, 0.3, 30), soil(100))), 22.6073],

    ['hemisphere of 0.5 m', hemisphere(100, 0.5), 31.831],
    ['rod by its tip', tipRod(100, 3, 0.008), 35.1206],
    ['half spheroid', spheroidRod(100, 3, 0.008), 35.1207],
    ['two rods 6 m apart, Dwight', farPair(100, 3, 0.008, 6), 17.9953],
    ['two rods 1 m apart, Dwight', closePair(100, 3, 0.008, 1), 21.1089],
    ['five rods in line, Sunde', sundeLine(100, 3, 0.008, 6, 5), 7.92706],
    ['four rods in line, BS 7430', britishGroup(aloneOhm, 100, 3, 4, 2.15), 11.2247],
    ['eight rods in a square, BS 7430', britishGroup(aloneOhm, 100, 3, 8, 4.51), 7.17737],
    ['wire of 20 m, Dwight', dwightWire(100, 20, 0.005, 0.5), 8.53504],
    ['wire of 20 m, Sunde', sundeWire(100, 20, 0.005, 0.5), 8.49575],
    ['wire of 20 m, BS 7430', britishWire(100, 20, 0.01, 0.5), 8.49457],
    ['wire of 20 m, EN 50522', surfaceWire(100, 20, 0.01), 13.2004],
    ['right angle', dwightStar(2, 100, 10, 0.005, 0.5), 8.81318],
    ['star of three', dwightStar(3, 100, 10, 0.005, 0.5), 6.54777],
    ['star of four', dwightStar(4, 100, 10, 0.005, 0.5), 5.61066],
    ['star of six', dwightStar(6, 100, 10, 0.005, 0.5), 4.73367],
    ['star of eight', dwightStar(8, 100, 10, 0.005, 0.5), 4.32728],
    ['ring of 10 m, EN 50522', surfaceRing(100, 10, 0.008), 9.08727],
    ['strip of 25 x 3 mm', dwightStrip(100, 20, 0.025, 0.003, 0.6), 8.11033],
    ['grid, Laurent', laurentGrid(400, 4900, 1540), 2.79182],
    ['grid, Sverak', sverakGrid(400, 4900, 1540, 0.5), 2.77569],
    ['grid, Schwarz, alone', substation.gridOhm, 2.88449],
    ['grid, Schwarz, its rods', substation.rodsOhm, 4.75264],
    ['grid, Schwarz, mutual', substation.mutualOhm, 2.58155],
    ['grid, Schwarz, joined', substation.joinedOhm, 2.8474],
    ['four pins 2 m apart on 300 over 100 at 2 m', wennerOfTwo(300, 100, 2, 2), 248.705],
    ['close inner pins, outer ones 4 m apart', schlumbergerOfTwo(300, 100, 2, 2), 275.031],
    ['breakdown of soil, 400 kV/m, ampere', breakdown, 7073.55],
    ['30 ohm while 30 kA break soil down', impulseOhm(30, 30e3, breakdown), 13.1041],
  ])('%s: %d', (_, ours, known) => {
    expect(Number(ours.toPrecision(6))).toBe(known);
  });

  // to be met by a formula of its own in print, against the one that the program uses
  it.each([
    ['two rods 6 m apart', farPair(1, 3, 0.008, 6), rodGroup(rod, 0.016, rodPositions('line', 2, 6))!, 0.002],
    ['two rods 1 m apart', closePair(1, 3, 0.008, 1), rodGroup(rod, 0.016, rodPositions('line', 2, 1))!, 0.0003],
    ['wire, Dwight', dwightWire(1, 20, 0.005, 0.5), straightWire(20, 0.005, 0.5), 0.0001],
    ['wire, Sunde', sundeWire(1, 20, 0.005, 0.5), straightWire(20, 0.005, 0.5), 0.005],
    ['wire, BS 7430', britishWire(1, 20, 0.01, 0.5), sundeWire(1, 20, 0.005, 0.5), 0.0002],
    ['half spheroid by its tip', spheroidRod(1, 3, 0.008), tipRod(1, 3, 0.008), 0.00001],
  ])('%s: two forms agree', (_, a, b, share) => {
    expect(Math.abs(a / b - 1)).toBeLessThan(share);
  });
});
