import type { Study } from '../../src/study/study.ts';
import type { Bounded } from '../../src/study/study-earth.ts';
import { noSoil } from './no-soil.ts';

type Earth = Study['earth'];

const around = (value: number | null, low: number, high: number | null): Bounded => ({ value, low, high });

const condition = (id: string, says: string, topOhmM: number, whole: Bounded | null): Earth['conditions'][number] => ({
  id,
  says,
  layers: [
    { resistivityOhmM: around(topOhmM, topOhmM / 2, topOhmM * 2), thicknessM: around(0.8, 0.8, 0.8) },
    { resistivityOhmM: around(400, 200, null), thicknessM: null },
  ],
  resistanceOhm: whole,
  groups: [
    { id: 'mast', resistanceOhm: around(null, topOhmM / 4, null) },
    { id: 'rod-house', resistanceOhm: whole },
  ],
  electrodes: [{ id: 'rod-house', aloneOhm: around(280, 140, null), currentShare: 1 }],
});

/** Soil of the invented house: readings that no layers fit, a rod whose resistance has no upper bound, nothing with a place. */
export const houseSoil: Pick<Earth, keyof typeof noSoil> = {
  ...noSoil,
  conditions: [
    condition('as typed', 'soil as typed', 300, around(180, 90, null)),
    condition('winter', 'frozen down to 0.8 m (2.62 ft), wet below it', 6000, around(null, 160, null)),
  ],
  soilFit: {
    readings: ['meadow'],
    points: [
      { reading: 'meadow', spacingM: 1, measuredOhmM: 310, fittedOhmM: null },
      { reading: 'meadow', spacingM: 2, measuredOhmM: 45, fittedOhmM: null },
      { reading: 'meadow', spacingM: 4, measuredOhmM: 920, fittedOhmM: null },
    ],
    curve: [],
    chosen: null,
    layers: [],
    tradeOffs: [],
    misfitShare: null,
    tried: [
      { layers: 1, misfitShare: 0.88 },
      { layers: 2, misfitShare: 0.61 },
    ],
    text: ['No layers make the reading at 2 m so much lower than those on either side: read again at that spacing.'],
  },
  transferred: [{ electrode: 'rod-mast', group: 'rod-house', share: around(null, 0.02, null) }],
  depthCurves: [
    {
      electrode: 'rod-house',
      condition: 'as typed',
      lengthM: null,
      points: [
        { lengthM: 1.5, ohm: around(null, 140, null) },
        { lengthM: 3, ohm: around(null, 80, null) },
        { lengthM: 6, ohm: around(null, 30, null) },
      ],
    },
  ],
  spacingGains: [
    {
      electrode: 'rod-house',
      points: [
        { spacingM: 1.5, ohm: 171, gainShare: 0.39 },
        { spacingM: 3, ohm: 157, gainShare: 0.44 },
      ],
    },
  ],
};
