import { ask } from '../reading/report.ts';
import type { Checked } from './checked.ts';

/** Asks about a state that is in no way different from the site as typed. */
export function askStates({ typed }: Checked): void {
  for (const { values, spot, at } of typed.states) {
    const lists = [values.open, values.set, values.lost];
    const weather = [values.frozen, values.dry, values.wet];
    if (lists.some((l) => l !== null && l.length > 0) || weather.includes('yes')) continue;
    ask(spot, at, 'state-changes-nothing');
  }
}
