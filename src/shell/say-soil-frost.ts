import type { StudyEarthCondition } from '../study/study-earth.ts';
import { soilCommandWords } from '../words/soil-command-words.ts';
import { figureOf, type SoilPage } from './soil-page.ts';

const words = soilCommandWords.frost;
/** Rises below this are lost in the range of the soil. */
const noticed = 1.2;
/** From here on what was a way into the soil is hardly one. */
const nearlyLost = 4;
const mostNamed = 6;

/** What frost does to the whole and to each electrode, against the soil as it is; or that no frost depth was typed. */
export function frostLines(page: SoilPage): readonly string[] {
  const { study, site, sentence } = page;
  const [now, ...others] = study.earth.conditions;
  if (now === undefined || now.layers.length === 0 || study.earth.electrodes.length === 0) return [];
  const frostM = site.soil?.frostM ?? null;
  if (frostM === null) return [sentence(words.unknown)];
  const frozen = others.find((c) => c.id === 'winter' || c.id === 'frozen' || isFrozen(page, c.id));
  if (frozen === undefined) return [];
  const frost = figureOf(page, frostM, 'length');
  const rises = risesOf(page, now, frozen);
  const told = rises.filter((r) => r.times >= noticed).slice(0, mostNamed);
  if (told.length === 0) return [sentence(words.deep, { frost })];
  const list = told.map(({ what, times }) =>
    sentence(words.item, { what, times: String(Number(times.toPrecision(2))) }),
  );
  const lost = rises.filter((r) => r.times >= nearlyLost).map((r) => r.what);
  const worse = sentence(words.worse, { frost, list: list.join('; ') });
  return [lost.length === 0 ? worse : `${worse} ${sentence(words.inside, { list: lost })}`];
}

function isFrozen({ site }: SoilPage, id: string): boolean {
  return site.states.find((s) => s.id === id)?.frozen === 'yes';
}

interface Rise {
  readonly what: string;
  readonly times: number;
}

/** The whole first, then the electrodes by how much they rise. */
function risesOf({ sentence }: SoilPage, now: StudyEarthCondition, frozen: StudyEarthCondition): readonly Rise[] {
  const times = (after: number | null | undefined, before: number | null | undefined) =>
    after == null || before == null || !(before > 0) ? [] : [after / before];
  const whole = times(frozen.resistanceOhm?.value, now.resistanceOhm?.value);
  const each = now.electrodes.flatMap(({ id, aloneOhm }) => {
    const then = frozen.electrodes.find((e) => e.id === id)?.aloneOhm;
    return times(then?.value, aloneOhm?.value).map((t) => ({ what: id, times: t }));
  });
  const byRise = [...each].sort((a, b) => b.times - a.times || (a.what < b.what ? -1 : 1));
  return [...whole.map((t) => ({ what: sentence(words.whole), times: t })), ...byRise];
}
