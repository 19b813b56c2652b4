import type { RuleWords } from '../rule-words.ts';

export const field = {
  'field-storm-rule': {
    title: 'A field station has a plan for a storm',
    failTitle: 'The field station has no plan for a storm',
    why: '[Grounding] makes neither a tent nor a mast a place to stay: what keeps people alive is to stop early and leave.',
    met: 'The file says that there is a plan to stop, lower and leave (`site.storm_plan: yes`).',
    remedy:
      'Write down who watches the sky, when everybody stops, what is lowered, and into which building or car people go; wait 30 minutes after the last thunder.',
    because: {
      'not temporary': 'The station is not a temporary one.',
      plan: 'There is a plan for a storm.',
      'no plan': 'There is no plan for a storm.',
      'nobody said': 'Nobody said whether there is a plan for a storm.',
      'write it':
        'Write the plan: who watches, when everybody stops, what is lowered, where people go; then type `storm_plan: yes` under `site`.',
    },
  },
  'field-mast-rod': {
    title: 'A field mast stands on a rod that shelter and generator share',
    failTitle: '{at}: the field mast has no rod that shelter and generator share',
    why: 'In the field people hold on to mast, shelter and generator at once.',
    met: 'Copper of at least {=6 AWG} all the way, or metal of the mast itself, leads from the mast to an [electrode], and shelter, vehicle and generator are in the same group.',
    remedy: 'Drive a rod beside {at} and tie mast, shelter, vehicle and generator frame to it by {=6 AWG}.',
    remedyAbroad: 'Drive a rod beside {at} and tie mast, shelter, vehicle and generator frame to it by 16 mm² copper.',
    tools: { 'walk round': 'wire gauge', 'measure it': 'wire gauge' },
    because: {
      'not temporary': 'The station is not a temporary one.',
      none: 'No mast of metal is in the file.',
      rod: '{at} stands on an [electrode] with everything that people hold on to.',
      'no rod': 'No permanent metal leads from {at} to an [electrode].',
      'rod unknown': 'Whether {at} reaches an [electrode] is not known.',
      'tie unknown': 'Whether {at} is tied to shelter, vehicle and generator is not known.',
      'perhaps temporary':
        'Something that is asked of a field station is missing at {at}, and whether the station is a temporary one is not known.',
      'say it': 'Type under `site` whether the station is a temporary one (`temporary:`).',
      'size unknown': 'How thick the conductors from {at} to its [electrode] are, is not known.',
      'measure it':
        'Measure the bare metal of each conductor from {at} to its [electrode] across with a gauge; type `wire:`.',
      'metal unknown': 'The metal of the conductor on {at} is not known.',
      'look at it':
        'Scratch the conductor on {at} where it lies bare, and never cut or loosen it: copper or another metal? Type it with `wire:`.',
      'metal not listed': 'The figure is of copper, and the conductor on {at} is of another metal.',
      ask: 'Lay a conductor of copper of {=6 AWG} beside the one on {at}.',
      'walk round':
        'Walk from {at} to its rod, to the shelter and to the generator, and type each conductor with its size.',
      apart: 'Nothing ties {at} to {shelters}.',
      thin: 'On each way from {at} to an [electrode] a conductor is thinner than {=6 AWG}.',
    },
  },
} as const satisfies Record<string, RuleWords>;
