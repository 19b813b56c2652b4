import type { StudyStrikeMeaning } from '../../src/study/study-strike-meaning.ts';

const struck = { how: 'struck', ionisationVPerM: null, ionised: [] } as const;

export const nothingBeside: StudyStrikeMeaning = { ...struck, forces: [], sideFlashes: [], margins: [], earths: [] };

const exact = (value: number) => ({ low: value, high: value });

/** By hand: what a page has to show, not what a calculation gave. */
export const clubMeaning: StudyStrikeMeaning = {
  ...struck,
  forces: [
    {
      kind: 'bend',
      part: 'c3',
      beside: null,
      forceN: 640,
      atLevelIN: 28_400,
      attracts: false,
      peakA: 21_000,
      besideA: null,
      lengthM: 1.5,
      apartM: null,
      apartTaken: false,
      turnsDeg: 90,
    },
    {
      kind: 'parallel',
      part: 'line1',
      beside: 'tower',
      forceN: 210,
      atLevelIN: 9_300,
      attracts: true,
      peakA: 5_200,
      besideA: 30_000,
      lengthM: 12,
      apartM: 0.15,
      apartTaken: false,
      turnsDeg: null,
    },
  ],
  sideFlashes: [
    {
      way: 'tower',
      metal: 'gas',
      distanceM: exact(1.2),
      lengthM: 10,
      heightTaken: true,
      downConductors: 1,
      between: 'air',
      nfpaM: exact(1.67),
      iecM: { low: 0.4, high: 0.8 },
      level: null,
      outcome: 'not met',
    },
    {
      way: null,
      metal: 'foil',
      distanceM: null,
      lengthM: null,
      heightTaken: false,
      downConductors: 1,
      between: 'unknown',
      nfpaM: null,
      iecM: null,
      level: null,
      outcome: 'cannot tell',
    },
  ],
  margins: [
    {
      arrester: 'a1',
      line: 'line1',
      powerW: exact(600),
      impedanceOhm: exact(50),
      swr: exact(2),
      peakV: exact(346),
      sparkoverV: { low: 184, high: 276 },
      leastV: exact(520),
      times: exact(0.53),
      mostW: 75,
      outcome: 'not met',
    },
  ],
  earths: [
    {
      part: 'E1',
      peakA: 4_000,
      resistivityOhmM: { low: 80, high: 140 },
      armM: 30,
      effectiveM: { low: 7.1, high: 10.1 },
      ionisedM: { low: 29, high: 36 },
      isLonger: 'without breakdown',
      aloneOhm: { value: 6.2, low: 5, high: 8 },
      impulseOhm: 20.4,
    },
  ],
};
