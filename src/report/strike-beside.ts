import type {
  StudyArresterMargin,
  StudySideFlash,
  StudyStrikeEarth,
  StudyStrikeForce,
} from '../study/study-strike-meaning.ts';
import type { Interval } from '../units/interval.ts';
import { strikeBesideWords } from '../words/strike-beside-words.ts';
import { type Block, cell, loudCell, minor, paragraph, type Row, row, tableIfAny } from './block.ts';
import { figure, partName, sayIn } from './page-context.ts';
import { forceSentence, leastForceN, newtonIn, timesIn } from './strike-beside-text.ts';
import { captionOf, restBlocks, type StrikeView, someNames } from './strike-view.ts';

const { sideFlash, force, margin, earth } = strikeBesideWords;
/** The rest stands in the study file. */
const mostRows = 10;

/** What the strike means for what stands beside its ways, or was chosen for them; each only where there is something to say. */
export function besideBlocks(view: StrikeView): readonly Block[] {
  return [...sideFlashBlocks(view), ...forceBlocks(view), ...marginBlocks(view), ...earthBlocks(view)];
}

function sideFlashBlocks(view: StrikeView): readonly Block[] {
  const { page, strike } = view;
  const known = strike.sideFlashes.filter(({ way }) => way !== null);
  const lost = strike.sideFlashes.filter(({ way }) => way === null).map(({ metal }) => metal);
  const told = known.filter(({ outcome }) => outcome !== 'met');
  const count = known.length - told.length;
  if (strike.sideFlashes.length === 0) return [];
  const { head } = sideFlash;
  return [
    minor(sideFlash.heading),
    ...tableIfAny({
      id: `${view.id}-side-flash`,
      caption: captionOf(view, sideFlash.caption),
      head: [head.metal, head.distance, head.nfpa, head.iec, head.outcome],
      rows: told.slice(0, mostRows).map((flash) => flashRow(view, flash)),
    }),
    ...restBlocks(view, told.length, mostRows),
    ...(lost.length === 0 ? [] : [paragraph(sayIn(page, sideFlash.measure, { list: [someNames(view, lost)] }))]),
    ...(count === 0 ? [] : [paragraph(sayIn(page, sideFlash.enough, { count }))]),
    ...(told.length === 0 ? [] : [paragraph(sideFlash.note)]),
  ];
}

function flashRow({ page }: StrikeView, f: StudySideFlash): Row {
  const outcome = sideFlash.outcomes[f.outcome];
  return row(
    cell(
      partName(page, f.metal),
      sayIn(page, sideFlash.beside, { way: partName(page, f.way ?? '') }),
      f.between === 'solid' ? sideFlash.through : null,
    ),
    cell(figure(page, f.distanceM, 'length'), f.heightTaken ? sideFlash.taken : null),
    cell(figure(page, f.nfpaM, 'length')),
    cell(figure(page, f.iecM, 'length')),
    f.outcome === 'not met' ? loudCell(outcome) : cell(outcome),
  );
}

function forceBlocks(view: StrikeView): readonly Block[] {
  const { page, strike } = view;
  const now = strike.forces.filter(({ forceN }) => forceN >= leastForceN);
  const least = newtonIn(page, leastForceN);
  const [strongest] = [...strike.forces].sort((a, b) => b.atLevelIN - a.atLevelIN);
  if (strongest === undefined) return [];
  const sentence = (one: StudyStrikeForce, newton: number) => forceSentence(page, one, newton);
  if (now.length === 0) {
    const values = { least, strongest: sentence(strongest, strongest.atLevelIN) };
    return [minor(force.heading), paragraph(sayIn(page, force.none, values))];
  }
  return [
    minor(force.heading),
    { is: 'list', ordered: false, items: now.slice(0, mostRows).map((one) => sentence(one, one.forceN)) },
    ...restBlocks(view, now.length, mostRows),
    paragraph(sayIn(page, force.note, { least })),
  ];
}

function marginBlocks(view: StrikeView): readonly Block[] {
  const { page, strike } = view;
  const told = strike.margins.filter(({ outcome }) => outcome !== 'not applicable');
  const receiving = strike.margins
    .filter(({ outcome }) => outcome === 'not applicable')
    .map(({ arrester }) => arrester);
  const { head } = margin;
  if (told.length === 0) return [];
  return [
    minor(margin.heading),
    ...tableIfAny({
      id: `${view.id}-margins`,
      caption: captionOf(view, margin.caption),
      head: [head.arrester, head.power, head.peak, head.fires, head.times],
      rows: told.slice(0, mostRows).map((one) => marginRow(view, one)),
    }),
    ...restBlocks(view, told.length, mostRows),
    ...(receiving.length === 0
      ? []
      : [paragraph(sayIn(page, margin.receives, { list: [someNames(view, receiving)] }))]),
    paragraph(margin.note),
  ];
}

function marginRow({ page }: StrikeView, m: StudyArresterMargin): Row {
  const load = sayIn(page, margin.load, {
    power: figure(page, m.powerW, 'power'),
    impedanceOhm: m.impedanceOhm,
    swr: m.swr === null ? margin.swrUnknown : figure(page, m.swr, 'number'),
  });
  const outcome = margin.outcomes[m.outcome];
  return row(
    cell(partName(page, m.arrester), partName(page, m.line)),
    cell(load),
    cell(figure(page, m.peakV, 'voltage')),
    cell(figure(page, m.sparkoverV, 'voltage')),
    m.outcome === 'not met' ? loudCell(outcome, timesIn(page, m.times)) : cell(outcome, timesIn(page, m.times)),
  );
}

function earthBlocks(view: StrikeView): readonly Block[] {
  const { page, strike } = view;
  const { earths, stroke } = strike;
  const told = earths.filter(({ isLonger }) => isLonger === 'yes' || isLonger === 'without breakdown');
  if (earths.length === 0 || stroke === null) return [];
  const hull = (of: (one: StudyStrikeEarth) => Interval): Interval => ({
    low: Math.min(...earths.map((one) => of(one).low)),
    high: Math.max(...earths.map((one) => of(one).high)),
  });
  const values = {
    frontS: stroke.frontS,
    resistivityOhmM: hull((one) => one.resistivityOhmM),
    effectiveM: hull((one) => one.effectiveM),
    ionisedM: hull((one) => one.ionisedM),
  };
  const { head } = earth;
  return [
    minor(sayIn(page, earth.heading)),
    paragraph(`${sayIn(page, earth.sentence, values)} ${told.length === 0 ? earth.everyCount : ''}`.trim()),
    ...tableIfAny({
      id: `${view.id}-earths`,
      caption: captionOf(view, earth.caption),
      head: [sayIn(page, head.part), head.arm, head.use, head.broken, head.impulse],
      rows: told.slice(0, mostRows).map((one) => earthRow(view, one)),
    }),
    ...restBlocks(view, told.length, mostRows),
    ...(told.length === 0 ? [] : [paragraph(`${earth.allCount} ${earth.note}`)]),
    ...ionisedBlocks(view),
  ];
}

function ionisedBlocks(view: StrikeView): readonly Block[] {
  const { page, strike } = view;
  const { ionised, ionisationVPerM: fieldVPerM } = strike;
  if (fieldVPerM === null) return [];
  if (ionised.length === 0) return [paragraph(sayIn(page, earth.notIonised, { fieldVPerM }))];
  const list = ionised.slice(0, mostRows).map(({ part, ohm, ionisedOhm, onsetA }) =>
    sayIn(page, earth.ionisedOne, {
      part: partName(page, part),
      ohm: figure(page, ohm, 'resistance'),
      ionisedOhm: figure(page, ionisedOhm, 'resistance'),
      onsetA: figure(page, onsetA, 'current'),
    }),
  );
  return [paragraph(sayIn(page, earth.ionised, { list })), ...restBlocks(view, ionised.length, mostRows)];
}

function earthRow({ page }: StrikeView, e: StudyStrikeEarth): Row {
  const armM = e.armM ?? Number.POSITIVE_INFINITY;
  const use = (most: Interval) => (armM <= most.low ? earth.whole : figure(page, most, 'length'));
  return row(
    cell(partName(page, e.part)),
    cell(figure(page, e.armM, 'length')),
    cell(use(e.effectiveM)),
    cell(use(e.ionisedM)),
    cell(
      figure(page, e.impulseOhm, 'resistance'),
      sayIn(page, earth.direct, { ohm: figure(page, e.aloneOhm?.value ?? null, 'resistance') }),
    ),
  );
}
