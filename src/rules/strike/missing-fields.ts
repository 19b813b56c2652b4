import type { ElectrodeFacts } from '../../facts/facts.ts';

/** Figures of a formula by what somebody types for them. */
const fields: Readonly<Record<string, string>> = {
  lengthM: 'length',
  armLengthM: 'length',
  diameterM: 'diameter',
  radiusM: 'wire',
  joiningRadiusM: 'wire',
  coreDiameterM: 'wire',
  depthM: 'depth',
  topM: 'top',
  widthM: 'width',
  heightM: 'height',
  spacingM: 'spacing',
  holeDiameterM: 'hole',
  backfillOhmM: 'backfill_resistivity',
  angleDeg: 'angle',
  count: 'count',
  layout: 'layout',
  stands: 'stands',
};

/** What has to be typed of these electrodes before anything is known of what they have to the soil: `length:`, each once. */
export function missingFields(electrodes: readonly ElectrodeFacts[], ids: readonly string[]): readonly string[] {
  const asked = electrodes.filter((e) => ids.includes(e.id)).flatMap((e) => e.missing);
  return [...new Set(asked.flatMap((figure) => fields[figure] ?? []))].map((field) => `\`${field}:\``);
}
