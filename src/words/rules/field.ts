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
    met: 'Permanent metal of at least {=6 AWG} leads from the mast to an [electrode], and shelter, vehicle and generator are in the same group.',
    remedy: 'Drive a rod beside {at} and tie mast, shelter, vehicle and generator frame to it by {=6 AWG}.',
    tools: { 'walk round': 'wire gauge' },
    because: {
      'not temporary': 'The station is not a temporary one.',
      none: 'No mast of metal is in the file.',
      rod: '{at} stands on an [electrode] with everything that people hold on to.',
      'no rod': 'No permanent metal leads from {at} to an [electrode].',
      'rod unknown': 'Whether {at} reaches an [electrode] is not known.',
      'tie unknown': 'Whether {at} is tied to shelter, vehicle and generator is not known.',
      'size unknown': 'How thick the conductor at {at} is, is not known.',
      'walk round':
        'Walk from {at} to its rod, to the shelter and to the generator, and type each conductor with its size.',
      apart: 'Nothing ties {at} to {shelters}.',
      thin: 'The conductor at {at} is thinner than {=6 AWG}.',
    },
  },
} as const satisfies Record<string, RuleWords>;
