import { ask, below } from '../reading/report.ts';
import type { Checked } from './checked.ts';

const metresInFoot = 0.3048;

/** A figure in inches alone: `43 in`, `43"`, `40 to 43 in`; not `3 ft 7 in`. */
const inches = /^[^'f]*\d\s*(?:in\.?|inch|inches|"|”|″)$/i;

/** Antennas small enough to be measured in inches. */
const small: readonly string[] = ['magnetic foot', 'GPS'];

/** Asks about a height typed in inches: nobody measures a tower so, and 43 in is easily typed for 43 ft. */
export function askHeights({ typed }: Checked): void {
  const { supports, antennas } = typed.parts;
  for (const { values, typed: texts, spot, fieldAt } of [
    ...supports,
    ...antennas.filter((a) => !small.includes(a.kind)),
  ]) {
    const { height } = values;
    const text = texts.height ?? '';
    if (height === null || !inches.test(text)) continue;
    const feet = Math.round((height.high / metresInFoot) * 10) / 10;
    ask(below(spot, 'height'), fieldAt.get('height')!, 'height-in-inches', { text, feet });
  }
}
