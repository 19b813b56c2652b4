import type { RuleWords } from '../rule-words.ts';
import { askDesigner } from './lightning.ts';

/** What may release an antenna on a wall. */
const facade = {
  'on facade':
    '{at} {at?is:are} on the face of a building: at least {=2 m} below the edge of the roof and at most {=1.5 m} out from the wall no [electrode conductor] is asked of an antenna.',
  'measure facade':
    'Measure from the edge of the roof down to the top of {at}, and out from the wall to the farthest point of the antenna. Type them as `below_roof:` and `from_wall:` of the antenna.',
  exempt:
    '{at}: the antenna stays {=2 m} below the edge of the roof and within {=1.5 m} of the wall, where no [electrode conductor] is asked. The bond of its shield is.',
} as const;

const earthed = {
  title: 'Every metal support of an outdoor antenna is [grounded]',
  failTitle: '{at} is not [grounded]',
  why: 'A mast that is not [grounded] collects static, becomes live at a fault, and sends a strike down the feed line into the room.',
  met: 'Permanent metal leads from the support to an [electrode]. Wood and plastic supports are left out; their lead-ins are not.',
  remedy: 'Run a conductor from the foot of {at} to an [electrode] that is bonded to the [service].',
  because: {
    none: 'No support is in the file.',
    'not of metal': 'No support is of metal.',
    earthed: '{at} reaches an [electrode] through permanent metal.',
    'metal unknown': 'Nobody said what {at} {at?is:are} made of.',
    'look at it': 'Look whether {at} {at?is:are} of metal and type `metal:`.',
    perhaps: 'Whether {at} {at?reaches:reach} an [electrode] depends on what is not known.',
    trace: 'Look for a conductor at the foot of {at} and follow it to where it ends; type it.',
    'supply unknown':
      '{at} {at?is:are} bonded to the [main bar], and whether the supply brings the network operator’s [ground] along (TN) or not (TT) is not known.',
    'find supply':
      'Ask the network operator, or read the label at the meter: TN-S, TN-C-S (PME) or TT; type it under `site.supply`.',
    'supplier only':
      '{at} {at?is:are} bonded to the [main bar], which the network operator [ground]s; no [electrode] of the building is in the file.',
    'ask about earth':
      'Look for an [electrode] of the building (footing, lightning protection) and type it, or have a [electrician] confirm what the local rule accepts for an antenna on this supply.',
    'no way': 'No permanent metal leads from {at} to any [electrode].',
  },
} as const;

const indoors = 'Every support stands indoors and carries indoor antennas alone.';

export const masts = {
  'mast-grounded': { ...earthed, because: { ...earthed.because, indoors } },
  'iec-mast-earthed': {
    ...earthed,
    met: `${earthed.met} On the face of a building, at least {=2 m} below the edge of the roof and at most {=1.5 m} out from the wall, none is asked. Under the air terminals of a lightning protection it is for whoever designs that.`,
    tools: { 'ask designer': 'papers' },
    because: {
      ...earthed.because,
      ...facade,
      'under terminals':
        '{at} {at?is:are} not [grounded], and {at?stands:stand} under the air terminals of the building. Where the [separation distance] is kept, a mast there needs a bond to the [main bar] ({=4 mm2}), not a lightning conductor; whether it is kept is not known, or no bond is in the file.',
      'ask designer': askDesigner,
      indoors,
    },
  },
  'mast-section-joints-bonded': {
    title: 'Sliding and hinged mast sections are jumpered',
    failTitle: 'The sections of {at} only touch: there are no jumpers',
    why: 'Rollers, slip joints and hinges are no bond: they pass current today and arc tomorrow.',
    met: 'Sections are one metal (welded, bolted), or a jumper bridges each moving joint. The hinge of a tilt-over mast is one, whatever its tube is.',
    remedy: 'Fit a flexible jumper across each moving joint of {at}, long enough for the whole travel.',
    because: {
      none: 'No support slides or tilts.',
      'one metal': 'The sections of {at} are one metal.',
      jumpers: 'Jumpers bridge the sections of {at}.',
      'no jumpers': 'The sections of {at} slide or hinge and no jumper bridges them.',
      'nobody said': 'Nobody said whether jumpers bridge the sections of {at}.',
      look: 'Look at each moving joint of {at} for a jumper; type `jumpers:`, and `sections:` if they are not as typed.',
    },
  },
  'guy-anchor-grounded': {
    title: 'Each metal [guy] anchor has an [electrode]',
    failTitle: '[Guy] {at} has no [electrode] at its anchor',
    why: 'Part of a strike goes down the [guy]s; without an [electrode] it goes through turnbuckle and concrete.',
    met: 'A conductor of the file leads from the [guy] or its anchor to an [electrode]; one to the tower alone does not count.',
    remedy:
      'Clamp a conductor to {at} above the turnbuckle and lead it to a rod at the anchor; mind the metals (galvanised steel tied to copper in the same soil corrodes).',
    because: {
      none: 'No [guy] is in the file.',
      electrode: 'A conductor leads from {at} to an [electrode].',
      perhaps: 'Whether {at} {at?has:have} an [electrode] or {at?is:are} of metal is not known.',
      look: 'Look at the anchor of {at} for a conductor and a rod; type both.',
      'no electrode': 'No conductor ends on {at}.',
      'leads elsewhere': 'A conductor ends on {at}, and it leads to no [electrode] of the anchor.',
    },
  },
} as const satisfies Record<string, RuleWords>;
