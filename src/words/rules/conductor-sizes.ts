import type { RuleWords } from '../rule-words.ts';
import { sizeSentences, sizeTools } from './size-sentences.ts';

const byService = {
  ...sizeSentences,
  'service unknown':
    '{at} is thinner than is never questioned; whether it is enough hangs on the size of the [service] conductors.',
  'read service':
    'Ask the supplier or a [electrician] for the size of the [service] conductors, and type `service_wire:` of the panel. Do not open the panel for it.',
} as const;
const byServiceTools = { ...sizeTools, 'read service': 'electrician' } as const;

const electrodeWire = {
  why: 'The wire from the [service] to its [electrode]s carries fault current and the surges of the supply line; a thin one melts at its clamp.',
  remedy: 'Have a [electrician] replace {at} with the size that the table asks for the [service].',
  tools: byServiceTools,
  because: byService,
} as const;

export const conductorSizes = {
  'rod-only-conductor-size': {
    ...electrodeWire,
    title:
      'The wire from the [service] to rods, pipes or plates is as thick as the table asks, at most {=6 AWG} copper',
    failTitle: 'The wire {at} from the [service] to its rods is too thin',
    met: '{=6 AWG} copper or {=4 AWG} aluminium, whatever the [service]; less where the table allows less. A wire that goes on to another kind of [electrode] is judged by that one.',
  },
  'concrete-only-conductor-size': {
    ...electrodeWire,
    title:
      'The wire from the [service] to a [concrete-encased electrode] is as thick as the table asks, at most {=4 AWG} copper',
    failTitle: 'The wire {at} from the [service] to the footing is too thin',
    met: '{=4 AWG} copper, whatever the [service]; less where the table allows less.',
  },
  'ring-conductor-size': {
    ...electrodeWire,
    title: 'The wire from the [service] to a [ground ring] is as thick as the table asks, at most as thick as the ring',
    failTitle: 'The wire {at} from the [service] to the ring is too thin',
    met: 'As thick as the wire of the ring, whatever the [service]; less where the table allows less.',
  },
  'service-conductor-size': {
    ...electrodeWire,
    title: 'The wire from the [service] to a water pipe, a frame or another [electrode] has the size of the table',
    failTitle: 'The wire {at} from the [service] is thinner than the table asks',
    met: 'The size that the table gives for the [service] conductors: from {=8 AWG} to {=3/0 AWG} copper. Leave this one to a [electrician].',
  },
  'communications-conductor-size': {
    title: 'The lead of a telephone, cable or network protector is at least {=14 AWG} copper',
    failTitle: 'The lead {at} of a protector is too thin',
    why: 'The lead carries what the protector takes off the line; what melts there leaves the line without one.',
    met: '{=14 AWG} copper or more, and what the shield of a cable can carry; more than {=6 AWG} is never asked.',
    remedy: 'Replace {at} with {=14 AWG} copper or more; {=6 AWG} is never questioned.',
    exempt: 'Leads of antennas, masts and their arresters are judged by mast-ground-size.',
    tools: sizeTools,
    because: sizeSentences,
  },
  'comms-electrode-bond-size': {
    title: 'An [electrode] of telephone, cable or network is tied to the others by at least {=6 AWG} copper',
    failTitle: 'The tie {at} of the telephone or cable [electrode] is too thin',
    why: 'Two [electrode]s in one soil stand at different voltages in a storm; the tie carries the current that evens them out.',
    met: '{=6 AWG} copper or more.',
    remedy: 'Replace {at} with {=6 AWG} copper or more.',
    tools: sizeTools,
    because: sizeSentences,
  },
} as const satisfies Record<string, RuleWords>;
