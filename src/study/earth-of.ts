import type { Facts, GroundFacts } from '../facts/facts.ts';
import { partIndex } from '../facts/part-index.ts';
import { middle } from '../units/interval.ts';
import { groundWords } from '../words/ground-words.ts';
import { type Speech, say } from '../words/say.ts';
import { earthSolve } from './earth-solve.ts';
import { sayContradiction, sayTrap, soilOfElectrode } from './say-measured-soil.ts';
import { soilFitOf } from './soil-fit-of.ts';
import type { Study } from './study.ts';
import type { Bounded, StudyEarthCondition, StudyLayer } from './study-earth.ts';

type Asked = Pick<Facts, 'site' | 'earth' | 'electrodes' | 'ground'>;
type Condition = GroundFacts['conditions'][number];

/** What the study says of soil and electrodes. */
export function earthOf(facts: Asked, speech: Speech): Study['earth'] {
  const { site, earth, electrodes, ground } = facts;
  const { soil } = site;
  const isPart = new Set(partIndex(site).all.map((p) => p.id));
  return {
    resistanceOhm: bounded(earth.resistanceOhm),
    withServicesOhm: null,
    electrodes: electrodes.map((e) => ({
      id: e.id,
      aloneOhm: bounded(e.aloneOhm),
      currentShare: earth.currentShare.get(e.id) ?? null,
      inGroupOhm: inGroupOhm(earth, e.id),
      how: e.how,
      formula: e.formula,
      source: e.source,
      group: e.group,
    })),
    groups: earth.groups.map((g) => ({ id: g.id, resistanceOhm: bounded(g.resistanceOhm) })),
    parts: [...earth.ofPart]
      .filter(([id]) => isPart.has(id))
      .map(([id, ohm]) => ({ id, resistanceOhm: bounded(ohm) }))
      .sort((a, b) => (a.id < b.id ? -1 : 1)),
    soil: soil === null ? null : { layers: soil.layers, type: soil.type, known: soil.known },
    couplingLeftOut: earth.couplingLeftOut,
    residual: earth.residual,
    worstAt: earth.worstAt,
    conditions: ground.conditions.map((c) => conditionRow(c, electrodes, speech)),
    soilFit:
      ground.sounding === null
        ? null
        : soilFitOf(ground.sounding, ground.conditions[0]!.ground.soil?.from === 'readings', speech),
    soilOfElectrodes: ground.measured.ofElectrodes.map((m) => soilOfElectrode(m, speech)),
    contradictions: ground.measured.contradictions.map((c) => ({ at: c.at, text: sayContradiction(c, speech) })),
    readingTraps: ground.traps.map((t) => ({ reading: t.reading, at: t.at, text: sayTrap(t, speech) })),
    transferred: ground.transferred.map((t) => ({ ...t, share: bounded(t.share)! })),
    depthCurves: ground.answers.depthCurves.map((c) => ({
      ...c,
      points: c.points.map(({ lengthM, ohm }) => ({ lengthM, ohm: bounded(ohm)! })),
    })),
    spacingGains: ground.answers.spacingGains,
    rodLines: ground.answers.rodLines,
    surfaces: ground.answers.surfaces.map((s) => ({ ...s, condition: ground.conditions[0]!.id })),
    solve: earthSolve(facts, speech),
  };
}

function inGroupOhm({ resistanceOhm, currentShare }: Facts['earth'], id: string): number | null {
  const share = currentShare.get(id);
  const ohm = resistanceOhm?.value ?? null;
  return share === undefined || !(share > 0) || ohm === null ? null : ohm / share;
}

/** JSON has no Infinity: an open end is null, and so is the likely figure of what has no way to earth. */
export function bounded(figure: { readonly value: number | null; readonly low: number; readonly high: number } | null) {
  if (figure === null) return null;
  const finite = (end: number | null): number | null => (Number.isFinite(end) ? end : null);
  return { value: finite(figure.value), low: figure.low, high: finite(figure.high) };
}

function conditionRow(
  { id, condition, ground, dc }: Condition,
  electrodes: Facts['electrodes'],
  speech: Speech,
): StudyEarthCondition {
  return {
    id,
    says: sayCondition(condition, speech),
    layers: layersOf(ground.soil),
    resistanceOhm: bounded(dc.earth.resistanceOhm),
    groups: dc.earth.groups.map((g) => ({ id: g.id, resistanceOhm: bounded(g.resistanceOhm) })),
    electrodes: electrodes.map((e) => ({
      id: e.id,
      aloneOhm: bounded(ground.alone.get(e.id)?.ohm ?? null),
      currentShare: dc.earth.currentShare.get(e.id) ?? null,
    })),
  };
}

function sayCondition(condition: Condition['condition'], speech: Speech): string {
  const words = groundWords.conditions;
  if (condition === null) return words.typed;
  const { name, frostM, dryDepthM } = condition;
  const template = name === 'winter' && frostM === null ? words.winterWet : words[name];
  return say(template, { frostM, depthM: dryDepthM }, speech);
}

/** The likely plain soil, with the range of each of its depths where the bounds have the same boundaries. */
function layersOf(soil: Condition['ground']['soil']): readonly StudyLayer[] {
  if (soil === null) return [];
  if (soil.condition === null) {
    return soil.layers.map(({ resistivityOhmM, thicknessM, likely }) => ({
      resistivityOhmM: ranged(resistivityOhmM, likely?.resistivityOhmM),
      thicknessM: thicknessM === null ? null : ranged(thicknessM, likely?.thicknessM),
    }));
  }
  const { likely } = soil.profile;
  if (likely === null) return [];
  return likely.resistivityOhmM.map((ohmM, i) => {
    const thickM = likely.thicknessM[i];
    return { resistivityOhmM: point(ohmM), thicknessM: thickM === undefined ? null : point(thickM) };
  });
}

function ranged({ low, high }: { readonly low: number; readonly high: number }, likely?: number | null): Bounded {
  return { value: likely ?? middle({ low, high }), low, high: high === Number.POSITIVE_INFINITY ? null : high };
}

function point(figure: number): Bounded {
  return { value: figure, low: figure, high: figure };
}
