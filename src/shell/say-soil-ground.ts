import { soilNames } from '../materials/soils.ts';
import type { StudySoilFit } from '../study/study-earth.ts';
import { soilCommandWords } from '../words/soil-command-words.ts';
import { bullet, figureOf, headed, paragraph, type SoilPage } from './soil-page.ts';

const words = soilCommandWords.soil;

/** The soil as typed, as fitted to readings, or not known; and how it is measured where nobody did. */
export function soilBlock(page: SoilPage): string {
  const { soilFit } = page.study.earth;
  const fit = soilFit === null ? [] : [...soilFit.text.map((t) => bullet(page, t)), ...fitTable(page, soilFit)];
  return headed(page, soilCommandWords.headings.soil, [...takenLines(page), ...fit]);
}

/** Whether any layer is known at all. */
export function isSoilKnown({ study }: SoilPage): boolean {
  return (study.earth.conditions[0]?.layers.length ?? 0) > 0;
}

function takenLines(page: SoilPage): readonly string[] {
  const { study, sentence } = page;
  const { soil, soilFit } = study.earth;
  const typed = soil?.layers ?? [];
  const line = (text: string) => [paragraph(page, text)];
  if (typed.length > 0) {
    const { known } = soil!;
    const open = typed.some((l) => l.resistivityOhmM === null) ? line(sentence(words.unknownLayers)) : [];
    // told is what the format takes where nobody said
    const said = known === 'told' || known === 'unknown' ? words.typed : words.typedKnown;
    return [...line(sentence(said, { known, layers: layersText(page) })), ...open];
  }
  if (!isSoilKnown(page)) return line(sentence(words.unknown));
  if (soilFit !== null && soilFit.chosen !== null) return [];
  const { resistivityOhmM } = study.earth.conditions[0]!.layers[0]!;
  const range = figureOf(page, resistivityOhmM, 'resistivity');
  return line(sentence(words.preset, { type: soil?.type ?? null, range }));
}

function layersText(page: SoilPage): string {
  const { sentence, study } = page;
  const { layers } = study.earth.soil!;
  return layers
    .map(({ resistivityOhmM, thicknessM }, i) => {
      const isLast = i === layers.length - 1;
      const open = isLast ? (layers.length === 1 ? words.layerOnly : words.layerBelow) : words.layerOpen;
      return sentence(thicknessM === null ? open : words.layer, { resistivityOhmM, thicknessM });
    })
    .join('; ');
}

/** More readings than this are a wall of figures. */
const mostReadings = 10;

function fitTable(page: SoilPage, { points }: StudySoilFit): readonly string[] {
  const { fitHead: head, moreReadings } = words;
  const rows = [...points]
    .sort((a, b) => a.spacingM - b.spacingM)
    .slice(0, mostReadings)
    .map((p) => [
      figureOf(page, p.spacingM, 'length'),
      figureOf(page, p.measuredOhmM, 'resistivity').replace(/ ohm m$/, ''),
      p.fittedOhmM === null ? '-' : figureOf(page, p.fittedOhmM, 'resistivity').replace(/ ohm m$/, ''),
    ]);
  if (rows.length === 0) return [];
  const table = [[head.spacing, head.measured, head.fitted], ...rows];
  const widths = [0, 1, 2].map((column) => Math.max(...table.map((cells) => cells[column]!.length)) + 2);
  const lines = table.map((cells) =>
    `  ${cells.map((cell, column) => cell.padEnd(widths[column]!)).join('')}`.trimEnd(),
  );
  const more = points.length - rows.length;
  return [...lines, ...(more > 0 ? [`  ${page.sentence(moreReadings, { count: more })}`] : [])];
}

/** The two things to do where the soil is not known; measuring alone where it was only assumed. */
export function measureBlock(page: SoilPage): string {
  const { study, sentence } = page;
  const { soil, soilFit } = study.earth;
  const isFitted = soilFit !== null && soilFit.chosen !== null;
  const isGuess = soil === null || soil.known === 'assumed' || soil.known === 'unknown' || soil.layers.length === 0;
  if (isFitted || (isSoilKnown(page) && !isGuess)) return '';
  const list = spacingsToTry(page);
  const name = isSoilKnown(page) ? [] : [sentence(words.name, { list: toldKinds })];
  const guess = isSoilKnown(page) ? [] : guessText(page);
  const typed = words.measureLine.map((line, i) => paragraph(page, sentence(line, { list }), 5 + 5 * i, 5));
  const measure = [sentence(words.measure, { list })];
  const isOne = name.length === 0;
  const step = (text: string, i: number) => paragraph(page, isOne ? text : `${i + 1}. ${text}`, 2, isOne ? 0 : 3);
  return headed(page, soilCommandWords.headings.first, [
    ...[...name, ...measure].map(step),
    ...typed,
    ...guess.slice(0, 1).map((text) => step(text, 2)),
    ...guess.slice(1).map((text) => paragraph(page, text, 5, 5)),
  ]);
}

/** What the first electrode that was read alone would have the soil be, and the line to type. */
function guessText({ study, sentence }: SoilPage): readonly string[] {
  const [first] = study.earth.soilOfElectrodes;
  const ohmM = first === undefined ? null : first.uniformOhmM.value;
  if (first === undefined || ohmM === null) return [];
  const values = { electrode: first.electrode, ohmM: String(Number(ohmM.toPrecision(2))) };
  return [sentence(words.fromElectrode, values), sentence(words.fromElectrodeLine, values)];
}

/** What most people can tell by eye, from the table of soils. */
const toldKinds = ['clay', 'loam', 'sand', 'gravel', 'stony ground', 'marsh', 'weathered granite', 'bedrock'].filter(
  (kind) => soilNames.includes(kind),
);

/** Round distances of pins, feet and metres. */
const round = {
  ft: [1, 2, 3, 5, 10, 15, 20, 30, 40, 60, 100, 150, 200],
  m: [0.3, 0.5, 1, 1.5, 2, 3, 5, 7.5, 10, 15, 20, 30, 50],
} as const;
const metres = { ft: 0.3048, m: 1 } as const;
/** 8 ft: the usual rod. Common practice, no source. */
const usualRodM = 2.4384;

/** From a third of the longest rod's length to three times it: what that rod feels. */
function spacingsToTry({ site, study }: SoilPage): readonly string[] {
  const { units } = study.site;
  const lengths = site.electrodes
    .filter((e) => e.kind === 'rod' || e.kind === 'rods')
    .flatMap((e) => (e.lengthM === null ? [] : [e.lengthM.low]));
  const longestM = Math.min(Math.max(usualRodM, ...lengths), 20);
  const inRange = (spacing: number) => {
    const times = (spacing * metres[units]) / longestM;
    return times > 0.3 && times < 3.3;
  };
  return round[units].filter(inRange).map((spacing) => `${spacing} ${units}`);
}
