import { soilCommandWords } from '../words/soil-command-words.ts';
import { bullet, headed, type SoilPage } from './soil-page.ts';

/** Readings that contradict each other or the soil, and what a measured electrode says of the soil. */
export function readingsBlock(page: SoilPage): string {
  const { contradictions, soilOfElectrodes } = page.study.earth;
  const said = [...contradictions.map((c) => c.text), ...soilOfElectrodes.map((s) => s.text)];
  return headed(
    page,
    soilCommandWords.headings.readings,
    said.map((text) => bullet(page, text)),
  );
}
