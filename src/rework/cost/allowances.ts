import type { Interval } from '../../units/interval.ts';
import type { WorkKind } from '../work.ts';

/** What takes time; the owner sets another figure by the same name: `hours per rod: 1`, `hours per ft of trench: 0.2`. */
export type Allowance =
  | 'work'
  | 'rod'
  | 'joint'
  | 'trench'
  | 'conductor'
  | 'protector'
  | 'panel'
  | 'line'
  | 'look'
  | 'day';

/**
 * Hours that things take one person with hand tools, from easy to hard: our own allowance, no source. `trench` and
 * `conductor` (not in soil) are hours for each metre, all others for each; `work` is for going there, laying out, the test and
 * clearing up; `day` is how many hours one has.
 */
export const allowances: Readonly<Record<Allowance, Interval>> = {
  work: { low: 0.5, high: 1.5 },
  rod: { low: 0.25, high: 1.5 },
  joint: { low: 0.1, high: 0.5 },
  trench: { low: 0.2, high: 0.7 },
  conductor: { low: 0.05, high: 0.2 },
  protector: { low: 0.5, high: 1.5 },
  panel: { low: 3, high: 8 },
  line: { low: 2, high: 6 },
  look: { low: 0.25, high: 1 },
  day: { low: 8, high: 8 },
};

/** What a kind of work takes beside its materials. */
export const extraOf: Readonly<Partial<Record<WorkKind, Allowance>>> = {
  'add-protector': 'protector',
  'move-arrester': 'protector',
  'move-panel': 'panel',
  'move-line': 'line',
  'put-right': 'look',
};
