import type { Interval } from '../units/interval.ts';
import { frozenTop, type SoilRatio } from './frozen-soil.ts';
import { moistureRatio, moistureSource } from './soil-moisture.ts';
import { type Citation, cite, commonPractice } from './source.ts';

/** The conditions that a site is worked out for, by name, in the order they are shown in. */
export const conditionNames = ['wet', 'dry', 'summer', 'winter'] as const;
export type ConditionName = (typeof conditionNames)[number];

/** A dried top over the same soil as it is otherwise. */
export const dryTop: SoilRatio = {
  // from the multiplier of wires at 0.5 to 0.8 m in the mildest zone to top soil that dries from 20 % of moisture to 10 %
  ratio: { low: 1.5, high: moistureRatio(10, 20)!.high },
  source: cite(
    'seasonal multipliers in eastern-European code practice; booklet on earth testing, resistivity by moisture',
    null,
    null,
    'memory',
  ),
};

/** A wet top over the same soil as it is otherwise: from soil with 15 % of moisture that takes up 20 %, to none more. */
export const wetTop: SoilRatio = { ratio: { low: moistureRatio(20, 15)!.low, high: 1 }, source: moistureSource };

/** How deep seasons reach, metres: a summer's drying, and that of a long drought. Moisture below it stays as it is. */
export const summerDepthM: Interval = { low: 0.3, high: 1 };
export const droughtDepthM: Interval = { low: 1, high: 2 };
export const seasonDepthSource: Citation = commonPractice;

/** What a condition does to the soil from the surface down; depths in metres, ratios of resistivity. */
export interface NamedCondition {
  readonly name: ConditionName;
  readonly frostM: Interval | null;
  readonly frozenRatio: Interval | null;
  readonly dryDepthM: Interval | null;
  readonly dryRatio: Interval | null;
  readonly wetDepthM: Interval | null;
  readonly wetRatio: Interval | null;
  readonly sources: readonly Citation[];
}

/**
 * A condition by name. Wet: a wet top. Dry: a top dried by a long drought. Summer: a dry top, less deep. Winter: frozen down
 * to the site's frost depth, wet below it as far as seasons reach; without a frost depth (null: not typed) only wet.
 */
export function namedCondition(name: ConditionName, frostM: Interval | null): NamedCondition {
  switch (name) {
    case 'wet':
      return { ...wet, name };
    case 'dry':
      return dried(name, droughtDepthM);
    case 'summer':
      return dried(name, summerDepthM);
    case 'winter':
      if (frostM === null) return { ...wet, name };
      return { ...wet, name, frostM, frozenRatio: frozenTop.ratio, sources: [frozenTop.source, ...wet.sources] };
  }
}

const unchanged = {
  frostM: null,
  frozenRatio: null,
  dryDepthM: null,
  dryRatio: null,
  wetDepthM: null,
  wetRatio: null,
} as const;

const wet = {
  ...unchanged,
  wetDepthM: droughtDepthM,
  wetRatio: wetTop.ratio,
  sources: [wetTop.source, seasonDepthSource],
};

function dried(name: ConditionName, dryDepthM: Interval): NamedCondition {
  return { ...unchanged, name, dryDepthM, dryRatio: dryTop.ratio, sources: [dryTop.source, seasonDepthSource] };
}
