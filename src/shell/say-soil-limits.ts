import { percent } from '../drawing/chart-names.ts';
import { soilCommandWords } from '../words/soil-command-words.ts';
import { bullet, headed, type SoilPage } from './soil-page.ts';

const words = soilCommandWords.limits;

/** What was left out with how much it can matter, and how exact the figures are. */
export function limitsBlock(page: SoilPage): string {
  const { sentence, study } = page;
  const { solve, resistanceOhm, withServicesOhm } = study.earth;
  const { leaking = [], limits = [] } = solve ?? {};
  const lines = [
    ...limits,
    ...(leaking.length === 0 ? [] : [sentence(words.leaking, { list: leaking })]),
    ...(resistanceOhm !== null && withServicesOhm === null ? [sentence(words.services)] : []),
    ...(solve === null || solve.segments === 0 ? [] : [sentence(words.level), solvedText(page)]),
  ];
  return headed(
    page,
    soilCommandWords.headings.limits,
    lines.map((text) => bullet(page, text)),
  );
}

function solvedText({ sentence, study }: SoilPage): string {
  const { segments, errorShare, worstAt } = study.earth.solve!;
  const worst = worstAt === null ? '' : sentence(words.worst, { at: worstAt });
  return sentence(words.solved, { segments, error: percent(errorShare), worst });
}
