import type { RuleWords } from '../rule-words.ts';

export const strike = {
  'arrester-fits-power': {
    title: 'Arresters of feed lines fit the power on their line',
    failTitle: '{at} does not fit the power on its line',
    why: 'One that fires too low is fired by the transmitter itself, holds its arc and wears out; one that fires far too high lets more of a strike through to the radio than it has to.',
    met: 'Lowest spark-over at least 1.5 times the peak voltage of the line at its power and SWR (a rule of the trade), and at most four times that (ours; of a line that only receives: at most 360 V). A single typed voltage is taken as its middle, 20 percent either way. Where only its power is typed: at least the power of the line.',
    remedy:
      'Put in an arrester made for {powerW} at the SWR of this line: its lowest spark-over at least 1.5 times the peak of {peakV}, and the next step of the trade above that.',
    because: {
      none: 'No arrester on a coax line with a box is in the file.',
      'power unknown': 'How much power goes through {at} is not known.',
      'type power': 'Read the output power off the radio or amplifier; type `power:`.',
      'level unknown':
        'At what voltage {at} {at?fires:fire} is not known, nor for what power {at?it is:they are} made.',
      'read it': 'Read the spark-over or the power off {at} or its sheet; type `sparkover:` or `rated_power:`.',
      low: '{at} is meant to fire too near the peak of {peakV} that {powerW} makes on its line, or below it.',
      'swr unknown': 'Whether {at} {at?stands:stand} the power hangs on the SWR of the line.',
      'type swr': 'Read the highest SWR off the radio or a meter; type `swr:` at the radio.',
      high: '{at} fires far above the peak of {peakV} that its line ever has.',
      fits: '{at} fires well above what the line has, and not far above it.',
      rated: '{at} is made for this power.',
      'rated less': '{at} is made for less than {powerW}.',
      receives: 'Nothing on its line sends.',
    },
  },
} as const satisfies Readonly<Record<string, RuleWords>>;
