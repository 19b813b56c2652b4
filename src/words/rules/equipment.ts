import type { RuleWords } from '../rule-words.ts';

export const equipment = {
  'no-orphan-equipment': {
    title: 'Every metal case is tied to [ground]',
    failTitle: '{at} is tied to nothing',
    why: 'A case that is tied to nothing floats to whatever its cables bring, and a person may be what ties it.',
    met: 'A bond leads to an [electrode], or its cord’s [protective conductor] to the [service].',
    remedy: 'Bond {at} to the station’s bar; never lift the [protective conductor] of its cord.',
    because: {
      none: 'No equipment of this kind stands in the file.',
      bonded: '{at} is bonded.',
      'by its cord': 'The [protective conductor] of a cord ties {at} to the [service].',
      perhaps: 'Whether {at} is tied to anything hangs on what is not known.',
      look: 'Look how {at} is fed (two or three pins) and whether a bond lands on it.',
      nothing: 'Neither a bond nor the [protective conductor] of a cord reaches {at}.',
    },
  },
  'metalwork-bonded': {
    title: 'Metal pipes, cladding and frames near the station are bonded',
    failTitle: '{at} is not bonded',
    why: 'Metal that is left out stands at another voltage in a strike and is what the flash jumps to.',
    met: 'Permanent metal leads from it to the [service] (to an [electrode] where the [service] is not known).',
    remedy: 'Bond {at} to the system of the [service]; gas piping downstream of the meter and never as an [electrode].',
    because: {
      none: 'No such metal stands in the file.',
      bonded: '{at} is bonded.',
      'not bonded': '{at} is not bonded to anything.',
      'nobody said': 'Nobody said whether {at} is bonded.',
      look: 'Look at {at} for a clamp and a conductor; type `bonded:` or the conductor.',
    },
  },
} as const satisfies Record<string, RuleWords>;
