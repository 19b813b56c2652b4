import { soilCommandWords } from '../words/soil-command-words.ts';
import { bullet, headed, type SoilPage } from './soil-page.ts';

/** Readings that contradict each other or the soil, readings that are not what they look like, and what a measured electrode says of the soil. */
export function readingsBlock(page: SoilPage): string {
  const { contradictions, readingTraps, soilOfElectrodes } = page.study.earth;
  const said = [...contradictions, ...readingTraps, ...soilOfElectrodes].map(({ text }) => text);
  return headed(
    page,
    soilCommandWords.headings.readings,
    said.map((text) => bullet(page, text)),
  );
}
