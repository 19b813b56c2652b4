import { speechOf } from '../study/speech-of.ts';
import type { StudyArresterMargin, StudySideFlash, StudyStrikeForce } from '../study/study-strike-meaning.ts';
import type { Dimension } from '../units/dimension.ts';
import { formatQuantity } from '../units/format.ts';
import type { Interval } from '../units/interval.ts';
import { strikeBesideWords } from '../words/strike-beside-words.ts';
import { bullet, headed, paragraph } from './page-blocks.ts';
import type { StrikePage } from './strike-page.ts';

const { sideFlash, force, margin, earth } = strikeBesideWords;
/** More than this is a wall of figures. */
const mostTold = 6;
/** Told from here on, newton; the study has what would reach it at level I. */
const leastForceN = 500;
const newtonPerPound = 4.448;

/** Side flash, force, protectors against the radio, electrodes longer than counts; each only where there is something to say. */
export function besideBlocks(page: StrikePage): readonly string[] {
  return [sideFlashBlock(page), forceBlock(page), marginBlock(page), earthBlock(page)];
}

function dim(page: StrikePage, text: string): string {
  return page.terminal.paint(paragraph(page, text), 'dim');
}

/** A figure or a range in both unit systems, the owner's first. */
function shown({ site }: StrikePage, value: number | Interval | null, dimension: Dimension): string {
  const system = speechOf(site).unitsFirst === 'us' ? 'both-us-first' : 'both-si-first';
  return formatQuantity(value, dimension, system, { digits: 2 }) ?? strikeBesideWords.unknown;
}

function sideFlashBlock(page: StrikePage): string {
  const known = page.strike.sideFlashes.filter(({ way }) => way !== null);
  const lost = page.strike.sideFlashes.filter(({ way }) => way === null).map(({ metal }) => metal);
  const told = known.filter(({ outcome }) => outcome !== 'met');
  const count = known.length - told.length;
  return headed(page, sideFlash.heading, [
    ...told.slice(0, mostTold).map((flash) => bullet(page, flashSentence(page, flash))),
    ...restOf(page, told.length),
    ...(lost.length === 0 ? [] : [bullet(page, page.sentence(sideFlash.measure, { list: lost }))]),
    ...(count === 0 ? [] : [bullet(page, page.sentence(sideFlash.enough, { count }))]),
    ...(told.length === 0 ? [] : [dim(page, sideFlash.note)]),
  ]);
}

function flashSentence(page: StrikePage, f: StudySideFlash): string {
  return page.sentence(sideFlash.line, {
    metal: f.metal,
    way: f.way ?? '',
    through: f.between === 'solid' ? `, ${sideFlash.through}` : '',
    distance: shown(page, f.distanceM, 'length') + (f.heightTaken ? ` (${sideFlash.taken})` : ''),
    nfpa: shown(page, f.nfpaM, 'length'),
    iec: shown(page, f.iecM, 'length'),
    outcome: sideFlash.outcomes[f.outcome],
  });
}

function restOf(page: StrikePage, all: number): readonly string[] {
  return all <= mostTold ? [] : [bullet(page, page.sentence(strikeBesideWords.more, { count: all - mostTold }))];
}

function forceBlock(page: StrikePage): string {
  const { forces } = page.strike;
  const now = forces.filter(({ forceN }) => forceN >= leastForceN);
  const least = newtonIn(page, leastForceN);
  const [strongest] = [...forces].sort((a, b) => b.atLevelIN - a.atLevelIN);
  if (strongest === undefined) return '';
  if (now.length === 0) {
    const values = { least, strongest: forceSentence(page, strongest, strongest.atLevelIN) };
    return headed(page, force.heading, [paragraph(page, page.sentence(force.none, values))]);
  }
  return headed(page, force.heading, [
    ...now.slice(0, mostTold).map((one) => bullet(page, forceSentence(page, one, one.forceN))),
    ...restOf(page, now.length),
    dim(page, page.sentence(force.note, { least })),
  ]);
}

function newtonIn(page: StrikePage, newton: number): string {
  const digits = (value: number) => formatQuantity(value, 'number', 'si', { digits: 2 }) ?? '';
  return page.sentence(force.newton, { newton: digits(newton), pound: digits(newton / newtonPerPound) });
}

function forceSentence(page: StrikePage, one: StudyStrikeForce, newton: number): string {
  const { part, beside, turnsDeg } = one;
  const says = newtonIn(page, newton);
  if (beside === null) return page.sentence(force.bend, { part, turnsDeg: turnsDeg ?? 0, force: says });
  const apart = shown(page, one.apartM, 'length');
  return page.sentence(one.attracts ? force.parallelPull : force.parallelPush, {
    part,
    beside,
    apart: one.apartTaken ? page.sentence(force.taken, { apart }) : apart,
    force: says,
  });
}

function marginBlock(page: StrikePage): string {
  const told = page.strike.margins.filter(({ outcome }) => outcome !== 'not applicable');
  if (told.length === 0) return '';
  return headed(page, margin.heading, [
    ...told.slice(0, mostTold).map((one) => bullet(page, marginSentence(page, one))),
    ...restOf(page, told.length),
    dim(page, margin.note),
  ]);
}

function marginSentence(page: StrikePage, m: StudyArresterMargin): string {
  const load = page.sentence(margin.load, {
    power: shown(page, m.powerW, 'power'),
    impedanceOhm: m.impedanceOhm,
    swr: m.swr === null ? margin.swrUnknown : shown(page, m.swr, 'number'),
  });
  return page.sentence(margin.line, {
    arrester: m.arrester,
    line: m.line,
    load,
    peak: shown(page, m.peakV, 'voltage'),
    fires: shown(page, m.sparkoverV, 'voltage'),
    times: m.times === null ? '' : `, ${page.sentence(margin.times, { times: shown(page, m.times, 'number') })}`,
    outcome: margin.outcomes[m.outcome],
  });
}

function ionisedLines(page: StrikePage): readonly string[] {
  const { ionised, ionisationVPerM: fieldVPerM } = page.strike;
  if (fieldVPerM === null) return [];
  if (ionised.length === 0) return [paragraph(page, page.sentence(earth.notIonised, { fieldVPerM }))];
  const list = ionised.slice(0, mostTold).map(({ part, ohm, ionisedOhm, onsetA }) =>
    page.sentence(earth.ionisedOne, {
      part,
      ohm: shown(page, ohm, 'resistance'),
      ionisedOhm: shown(page, ionisedOhm, 'resistance'),
      onsetA: shown(page, onsetA, 'current'),
    }),
  );
  return [paragraph(page, page.sentence(earth.ionised, { list })), ...restOf(page, ionised.length)];
}

function earthBlock(page: StrikePage): string {
  const { earths, stroke } = page.strike;
  if (earths.length === 0 || stroke === null) return '';
  const told = earths.filter(({ isLonger }) => isLonger === 'yes' || isLonger === 'without breakdown');
  const ends = (of: 'resistivityOhmM' | 'effectiveM' | 'ionisedM'): Interval => ({
    low: Math.min(...earths.map((one) => one[of].low)),
    high: Math.max(...earths.map((one) => one[of].high)),
  });
  const values = {
    frontS: stroke.frontS,
    resistivityOhmM: ends('resistivityOhmM'),
    effectiveM: ends('effectiveM'),
    ionisedM: ends('ionisedM'),
  };
  const rows = told.slice(0, mostTold).map((e) =>
    bullet(
      page,
      page.sentence(earth.line, {
        part: e.part,
        arm: shown(page, e.armM, 'length'),
        use: shown(page, e.effectiveM, 'length'),
        broken: shown(page, e.ionisedM, 'length'),
        alone: shown(page, e.aloneOhm?.value ?? null, 'resistance'),
        impulse: shown(page, e.impulseOhm, 'resistance'),
      }),
    ),
  );
  return headed(page, earth.heading, [
    paragraph(page, page.sentence(earth.sentence, values)),
    ...rows,
    ...restOf(page, told.length),
    ...ionisedLines(page),
    ...(told.length === 0 ? [paragraph(page, earth.everyCount)] : [dim(page, `${earth.allCount} ${earth.note}`)]),
  ]);
}
