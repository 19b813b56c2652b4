import { readPoint } from './format/points.ts';
import { newReport } from './reading/report.ts';
import { sourceText } from './reading/source-text.ts';
import type { PointRef } from './site.ts';

/**
 * A point as an owner types it outside the file: `main-panel`, `tower@48 ft`, `rods.2`, `tower@base`, or a joint `c1:E1`.
 * null for what is none. What it names is not looked up.
 */
export function pointOfText(text: string): PointRef | null {
  const typed = text.trim();
  const at = { start: 0, end: typed.length };
  const spot = { path: '', report: newReport(sourceText(typed)) };
  return readPoint(typed, { is: 'text', text: typed, quoted: true, at }, spot, 'joint');
}
