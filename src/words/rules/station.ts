import type { RuleWords } from '../rule-words.ts';

export const station = {
  'equipment-on-station-bar': {
    title: 'Every metal case of the station hangs on one bar',
    failTitle: '{at} does not hang on the station’s bar',
    why: 'Cases on one bar rise together in a strike; a case that only its cord ties follows another way.',
    met: 'A bond leads from the case to a station bar, the entry panel or the main bar. A cord’s [protective conductor] stays and is no such bond. Modems, routers and computers are left out.',
    remedy:
      'Bond {at} to the station’s bar by a short strap or wire; leave the [protective conductor] of its cord as it is.',
    because: {
      none: 'No case of a station, or no bar, is in the file.',
      'on bar': '{at} hangs on a bar.',
      perhaps: 'Whether {at} {at?hangs:hang} on a bar depends on what is not known.',
      look: 'Look how {at} {at?is:are} fed (two or three pins: `protective_conductor:` of the line) and whether a bond lands on {at?it:them}.',
      'not on bar': 'No bond leads from {at} to a bar.',
    },
  },
  'racks-bonded': {
    title: 'Racks and cabinets are bonded by a thick conductor',
    failTitle: 'The bond of {at} is thinner than is asked',
    why: 'A rack collects what all its boxes lead off.',
    met: 'A conductor of at least {=16 mm2} of copper lands on the rack.',
    remedy: 'Bond {at} to the bar by {=16 mm2}.',
    tools: { 'measure it': 'wire gauge' },
    because: {
      none: 'No rack or cabinet is in the file.',
      'no conductor': 'No conductor lands on a rack; that is asked of its own.',
      thick: 'A thick conductor lands on {at}.',
      'size unknown': 'How thick the bond of {at} is, is not known.',
      'measure it': 'Measure the conductor on {at} and type `wire:`.',
      thin: 'Every conductor on {at} is thinner than {=16 mm2}.',
    },
  },
} as const satisfies Record<string, RuleWords>;
