import { exact } from '../../units/interval.ts';
import { ask, below } from '../reading/report.ts';
import type { Checked } from './checked.ts';

/** Kinds whose length goes down, and whose top is their upper end. */
const upright: readonly string[] = ['rod', 'rods', 'drilled rod', 'well casing'];

/** Asks about an electrode that stands above the ground as a whole, and about one that is thicker than it is long. */
export function askElectrodes({ typed }: Checked): void {
  for (const { kind, values, typed: texts, spot, fieldAt } of typed.parts.electrodes) {
    const { top, length, diameter } = values;
    const topM = top ?? exact(0);
    const isAbove = upright.includes(kind) && length !== null && topM.high < 0 && -topM.high >= length.high;
    if (isAbove) {
      const said = { top: texts.top ?? '', length: texts.length ?? '' };
      ask(below(spot, 'top'), fieldAt.get('top')!, 'electrode-above-ground', said);
    }
    if (length !== null && diameter !== null && length.high < diameter.low) {
      const said = { length: texts.length ?? '', diameter: texts.diameter ?? '' };
      ask(below(spot, 'length'), fieldAt.get('length')!, 'shorter-than-thick', said);
    }
  }
}
