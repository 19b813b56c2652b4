import { addCosts } from '../rework/cost/cost-of.ts';
import { addMaterials } from '../rework/cost/counts-of.ts';
import { labourPrice, labourRates } from '../rework/cost/hours-of.ts';
import { priceLines, unitPrice } from '../rework/cost/price-lines.ts';
import { withSpare } from '../rework/cost/with-spare.ts';
import type { Material } from '../rework/work.ts';
import { type Interval, mul, sum } from '../units/interval.ts';
import { moneyText } from '../units/money-text.ts';
import { worksPageWords } from '../words/works-page-words.ts';
import { cell, listCell, loudCell, paragraph, type Row, row, type Section, tableIfAny } from './block.ts';
import { kindName, sayIn } from './page-context.ts';
import { amountText } from './sheet-material.ts';
import type { WorksContext } from './works-context.ts';
import { currencyOf, hasPrices, hoursOfCost } from './works-cost.ts';

const words = worksPageWords.material;

interface Priced {
  readonly material: Material;
  readonly lines: readonly string[];
  readonly cost: Interval | null;
  readonly costSpare: Interval | null;
}

/** Everything to buy with spare, the owner's price of it and what it comes to; what has no price is named. */
export function worksMaterialSection(page: WorksContext): Section {
  const priced = addMaterials(page.plan.steps.map((s) => s.work)).map((m) => pricedOf(page, m));
  const money = hasPrices(page);
  const head = [words.name, words.needed, words.spare, ...(money ? [words.line, words.cost, words.costSpare] : [])];
  const rows = [...priced.map((p) => materialRow(page, p, money)), ...(money ? closingRows(page, priced) : [])];
  const notes = [...missingNote(page, priced), sayIn(page, words.spareNote), ...(money ? [words.taxNote] : [])];
  const blocks =
    priced.length === 0
      ? [paragraph(words.none)]
      : [
          ...tableIfAny({ id: 'material-table', caption: words.caption, head, rows, look: 'wide' }),
          ...notes.map(paragraph),
        ];
  return { id: 'material', heading: words.heading, blocks };
}

function pricedOf({ plan }: WorksContext, material: Material): Priced {
  const prices = plan.before.prices ?? null;
  const unit = prices === null ? null : unitPrice(material, prices);
  return {
    material,
    lines: prices === null ? [] : priceLines(material, prices).map((l) => l.typed),
    cost: unit === null ? null : mul(unit, material.count),
    costSpare: unit === null ? null : mul(unit, withSpare(material)),
  };
}

function materialRow(page: WorksContext, { material, lines, cost, costSpare }: Priced, money: boolean): Row {
  const spare = { unit: material.unit, count: withSpare(material) };
  const shown = (m: Interval | null) => cell(moneyText(m, currencyOf(page)) ?? '–');
  const prices = lines.length === 0 ? loudCell(words.noPrice) : listCell(lines);
  return row(
    cell(kindName(page, material.name)),
    cell(amountText(page, material)),
    cell(amountText(page, spare)),
    ...(money ? [prices, shown(cost), shown(costSpare)] : []),
  );
}

/** Work, then all together: what cannot be told because of a missing price is said. */
function closingRows(page: WorksContext, priced: readonly Priced[]): readonly Row[] {
  const prices = page.plan.before.prices!;
  const costs = addCosts(page.plan.steps.map((s) => s.cost));
  const rates = labourRates(prices);
  const labour = labourPrice(costs.hours, prices);
  const work = moneyText(labour, currencyOf(page)) ?? '–';
  const label = sayIn(page, words.work, { hours: hoursOfCost(costs) });
  const rate = rates.length === 0 ? cell(words.noRate) : listCell(rates.map((r) => r.typed));
  const total = (pick: (p: Priced) => Interval | null) => {
    const known = [...priced.map(pick).filter((c) => c !== null), ...(labour === null ? [] : [labour])];
    return loudCell(moneyText(sum(known)!, currencyOf(page))!);
  };
  const what = priced.every((p) => p.cost !== null) ? words.total : words.totalPriced;
  return [
    row(cell(label), cell(''), cell(''), rate, cell(work), cell(work)),
    row(
      cell(what),
      cell(''),
      cell(''),
      cell(''),
      total((p) => p.cost),
      total((p) => p.costSpare),
    ),
  ];
}

/** What comes on top because nobody knows its price. */
function missingNote(page: WorksContext, priced: readonly Priced[]): readonly string[] {
  const missing = priced.filter((p) => p.cost === null).map((p) => kindName(page, p.material.name));
  return missing.length === 0 || !hasPrices(page) ? [] : [sayIn(page, words.missing, { list: missing })];
}
