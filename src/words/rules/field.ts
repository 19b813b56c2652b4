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
} as const satisfies Record<string, RuleWords>;
