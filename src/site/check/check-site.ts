import { askCrossings } from './ask-crossings.ts';
import { askElectrodes } from './ask-electrodes.ts';
import { askGauges } from './ask-gauges.ts';
import { askHeights } from './ask-heights.ts';
import { askLengths } from './ask-lengths.ts';
import { askOneLine } from './ask-one-line.ts';
import { askRods } from './ask-rods.ts';
import { askSoil } from './ask-soil.ts';
import { askStates } from './ask-states.ts';
import { askStraight } from './ask-straight.ts';
import type { Checked } from './checked.ts';
import { countLengths } from './count-lengths.ts';
import { takeDefaults } from './take-defaults.ts';

const checks: readonly ((checked: Checked) => void)[] = [
  countLengths,
  askHeights,
  askGauges,
  askRods,
  askElectrodes,
  askSoil,
  askLengths,
  askStraight,
  askOneLine,
  askCrossings,
  askStates,
  takeDefaults,
];

/** Everything that is asked about, or refused, only once the whole site is known; and the defaults that were taken. */
export function checkSite(checked: Checked): void {
  for (const check of checks) check(checked);
}
