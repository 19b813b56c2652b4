import type { Facts, GroundFacts } from '../facts/facts.ts';
import { partIndex } from '../facts/part-index.ts';
import { middle } from '../units/interval.ts';
import { groundWords } from '../words/ground-words.ts';
import { type Speech, say } from '../words/say.ts';
import { sayContradiction, soilOfElectrode } from './say-measured-soil.ts';
import { soilFitOf } from './soil-fit-of.ts';
import type { Study } from './study.ts';
import type { Bounded, StudyEarthCondition, StudyEarthSolve, StudyLayer } from './study-earth.ts';

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
    transferred: ground.transferred.map((t) => ({ ...t, share: bounded(t.share)! })),
    depthCurves: ground.answers.depthCurves.map((c) => ({
      ...c,
      points: c.points.map(({ lengthM, ohm }) => ({ lengthM, ohm: bounded(ohm)! })),
    })),
    spacingGains: ground.answers.spacingGains,
    rodLines: ground.answers.rodLines,
    surfaces: ground.answers.surfaces.map((s) => ({ ...s, condition: ground.conditions[0]!.id })),
    solve: solveOf(facts, speech),
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

function solveOf({ ground, earth }: Asked, speech: Speech): StudyEarthSolve | null {
  const now = ground.conditions[0]!.ground;
  const solved = now.together.likely ?? now.together.high ?? now.together.low;
  const limits = limitsOf(now, earth, speech);
  if (solved === null) {
    const isNothing = now.soil === null || limits.length === 0;
    return isNothing ? null : { segments: 0, errorShare: 0, worstAt: null, leaking: [], limits };
  }
  const isElectrode = (i: number): boolean => now.alone.has(now.partAt[i]!);
  const worst = solved.errorShare.reduce(
    (best, share, i) => (isElectrode(i) && share > (solved.errorShare[best] ?? 0) ? i : best),
    -1,
  );
  return {
    segments: solved.segments.count,
    errorShare: now.errorShare,
    worstAt: now.partAt[worst] ?? null,
    leaking: now.leaking.filter((c) => c.spans !== null).map((c) => c.id),
    limits,
  };
}

function sayRefused(refused: Condition['ground']['refused'], speech: Speech): readonly string[] {
  if (refused === null) return [];
  const { tooMany, refused: inOnePlace } = groundWords.limits;
  return [say(refused.reason === 'too many segments' ? tooMany : inOnePlace, { at: refused.at }, speech)];
}

/** Nothing is known of it, though every figure was typed. */
function isOpen(ohm: { readonly value: number | null; readonly low: number; readonly high: number } | null): boolean {
  return ohm !== null && ohm.value === null && !(ohm.low > 0) && ohm.high === Number.POSITIVE_INFINITY;
}

function limitsOf(now: Condition['ground'], earth: Facts['earth'], speech: Speech): readonly string[] {
  const words = groundWords.limits;
  const sentence = (template: string, list: readonly string[]) =>
    list.length === 0 ? [] : [say(template, { list }, speech)];
  const placed = new Set(now.partAt);
  const uncoupled = [...new Set(earth.couplingLeftOut.flat())].filter((id) => !placed.has(id)).sort();
  const { refused, soil } = now;
  return [
    ...sayRefused(refused, speech),
    ...sentence(words.noFigure, soil === null ? [] : [...now.alone].filter(([, a]) => isOpen(a.ohm)).map(([id]) => id)),
    ...sentence(words.noPlace, uncoupled),
    ...sentence(words.otherSoil, refused === null ? statedLow(now, earth) : []),
    ...sentence(
      words.leakNoPlace,
      now.leaking.filter((c) => c.spans === null).map((c) => c.id),
    ),
    ...sentence(
      words.leakPerhapsBare,
      now.leaking.filter((c) => c.spans !== null && c.certain === 'likely').map((c) => c.id),
    ),
    ...sentence(words.perhaps, earth.perhaps),
    ...sentence(words.perhapsTied, earth.perhapsTied),
    ...(soil !== null && soil.profile.merged > 0 ? [words.merged] : []),
  ];
}

/** Placed, and yet not felt by others with a place: stated to have less than those bring over through the soil. */
function statedLow({ alone, partAt }: Condition['ground'], { couplingLeftOut }: Facts['earth']): readonly string[] {
  const pairs = couplingLeftOut.filter((pair) => pair.every((id) => partAt.includes(id)));
  return [...new Set(pairs.flat())].filter((id) => alone.get(id)?.how === 'stated').sort();
}
