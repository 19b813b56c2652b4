import type { RuleWords } from '../rule-words.ts';

export const equipment = {
  'no-orphan-equipment': {
    title: 'Every metal case is tied to [ground]',
    failTitle: 'Nothing lasting ties the case of {at}',
    why: 'A case that is tied to nothing floats to whatever its cables bring, and a person may be what ties it.',
    met: 'A bond leads to an [electrode], or its cord’s [protective conductor] to a panel or generator. A generator that is the only source of a field station is left out, and so are batteries, boxes with `plastic` in their kind, and what is the supplier’s (`owner: utility`).',
    tools: { 'ask feeder': 'electrician', 'ask supplier': 'electrician' },
    remedy: 'Bond {at} to the station’s bar; never lift the [protective conductor] of its cord.',
    because: {
      none: 'No equipment of this kind is in the file.',
      bonded: '{at} is bonded.',
      'by its cord': 'The [protective conductor] of its cord or circuit ties {at}.',
      'own source': 'The cords of a field station begin at {at}; no [electrode] is asked of it.',
      perhaps: 'Whether {at} {at?is:are} tied to anything depends on what is not known.',
      look: 'Look how {at} {at?is:are} fed (two or three pins: `protective_conductor:` of the line) and whether a bond lands on {at?it:them}.',
      'ask feeder':
        'Have a [electrician] look whether a [protective conductor] comes with the feeder of {at}; type `protective_conductor:` of that line, and each bond that lands on {at?it:them} as a conductor.',
      meter: 'The case of {at} is bonded by the supplier or the [electrician], and the file does not say how.',
      'ask supplier':
        'Ask the supplier, or have a [electrician] say, how the case of {at} is bonded; never open it, and put no clamp on it. Type `bonded: yes`, or `owner: utility` where the supplier owns {at?it:them}.',
      'case unknown':
        'Neither a bond nor the [protective conductor] of a cord reaches {at}; whether {at?it has a case:they have cases} of metal is not known.',
      'look at case':
        'Look whether {at} {at?has a case:have cases} of metal. Type it in the `kind:`: `metal` or `plastic` before the word that stands there.',
      nothing:
        'Neither a bond nor the [protective conductor] of a cord reaches {at}; its other cables tie it only while they are plugged in.',
    },
  },
  'metalwork-bonded': {
    title: 'Metal pipes, cladding and frames near the station are bonded',
    failTitle: '{at} is not bonded',
    why: 'Metal that is left out stands at another voltage in a strike and is what the flash jumps to.',
    met: 'Permanent metal leads from it to the [service] (to an [electrode] where the [service] is not known). A fence is asked about within {=3 m} of a tower or mast, as advice. The clauses name pipes and the steel that forms the frame of a building; of cladding, gutters, roofs, foil, tanks and other metal common practice asks it, as advice, or as a defect where it is within {=2.5 m} of what is touched with it or is a solar array. Power lines, the power service’s mast, the live wire of an electric fence and pools (whose bond is asked of its own) are left out.',
    tools: { tape: 'tape' },
    remedy: 'Bond {at} to the system of the [service].',
    because: {
      none: 'No such metal is in the file.',
      bonded: '{at} is bonded.',
      'in pieces': 'A bond lands on {at}, which {at?is:are} not one piece of metal: what hangs free of it is not held.',
      'each piece':
        'Look where {at} {at?is:are} parted (gates, overlaps, painted joints). Bridge it with jumpers and type `continuous: yes`; or type each piece as a part of its own, with its own `bonded:`.',
      'not bonded': '{at} is not bonded to anything.',
      'gas not bonded':
        '{at} is not bonded to anything. A gas pipe is bonded on the side of the house, behind the meter, and never serves as an [electrode].',
      'practice asks':
        '{at} is not bonded to anything. The clauses name pipes and the steel of a frame; for metal of this kind common practice asks it. Another article of your code may: this program does not hold them all.',
      'frames of an array':
        '{at} is not bonded to anything. Codes ask for the frames of solar panels to be bonded with their circuits, in articles that this program does not hold: have a [electrician] look.',
      'kind unknown': '{at} is not bonded to anything, and what {at?it is:they are} nobody said.',
      'say what': 'Look what {at} {at?is:are} (a pipe, a gutter, cladding, a frame) and type its `kind:`.',
      'far fence': '{at} is more than {=3 m} from every tower and mast.',
      'how near': '{at} is not bonded, and how near it comes to a tower or mast is not known.',
      tape: 'Measure how near {at} comes to each tower and mast; type it under `near:`.',
      'nobody said': 'Nobody said whether {at} {at?is:are} bonded.',
      look: 'Look at {at} for a clamp and a conductor; type `bonded:` or the conductor.',
    },
  },
} as const satisfies Record<string, RuleWords>;
