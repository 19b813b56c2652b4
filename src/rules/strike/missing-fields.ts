import type { ElectrodeFacts } from '../../facts/facts.ts';
import { figureNames } from '../../words/study.ts';

/** What has to be typed of these electrodes before anything is known of what they have to the soil: `length:`, each once. */
export function missingFields(electrodes: readonly ElectrodeFacts[], ids: readonly string[]): readonly string[] {
  const asked = electrodes.filter((e) => ids.includes(e.id)).flatMap((e) => e.missing);
  return [...new Set(asked.flatMap((figure) => figureNames[figure] ?? []))].map((field) => `\`${field}:\``);
}
