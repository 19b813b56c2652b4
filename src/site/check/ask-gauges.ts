import type { Wire } from '../../materials/wire.ts';
import { ask, below, type Spot } from '../reading/report.ts';
import type { Span } from '../reading/tree.ts';
import type { Checked } from './checked.ts';

/** Gauges that bonding wire and house wiring come in. */
const gauges: readonly number[] = [1, 2, 3, 4, 6, 8, 10, 12, 14];
/** Of these figures, the sizes in which wire is sold by the square millimetre (IEC 60228, from memory). */
const metricSizes: readonly number[] = [1, 4, 6, 10];

interface TypedWire {
  readonly wire: Wire | null;
  readonly spot: Spot;
  readonly at: Span | undefined;
}

/**
 * Asks about a whole number of square millimetres that is a gauge as well. Where wire is sold by gauge (us, ca, or feet in
 * a file without a region) that is any such number: `6 mm2` there is most likely 6 AWG (13.3 mm2). Elsewhere 4, 6 and
 * 10 mm2 are what every shop has and are taken as typed; only numbers in which no metric wire comes (2, 3, 8, 12, 14) are
 * asked about.
 */
export function askGauges({ typed, site }: Checked): void {
  const { region, units } = site.header;
  const soldByGauge = region === 'us' || region === 'ca' || (region === 'unknown' && units === 'ft');
  const odd = soldByGauge ? gauges : gauges.filter((g) => !metricSizes.includes(g));
  for (const { wire, spot, at } of wiresOf(typed)) {
    if (wire === null || at === undefined) continue;
    const [, figure] = /^(\d{1,2})\s*(?:mm2|mm²|mm\^2|sq\.?\s*mm)(?:\s|$)/i.exec(wire.text) ?? [];
    if (figure === undefined || !odd.includes(Number(figure))) continue;
    ask(spot, at, 'gauge-as-mm2', { text: wire.text, gauge: Number(figure) });
  }
}

function wiresOf({ parts }: Checked['typed']): readonly TypedWire[] {
  const named = <V>(
    members: readonly { values: V; spot: Spot; fieldAt: ReadonlyMap<string, Span> }[],
    field: keyof V & string,
  ): readonly TypedWire[] =>
    members.map(({ values, spot, fieldAt }) => ({
      wire: values[field] as Wire | null,
      spot: below(spot, field),
      at: fieldAt.get(field),
    }));
  return [
    ...named(parts.electrodes, 'wire'),
    ...named(parts.equipment, 'service_wire'),
    ...named(parts.equipment, 'electrode_wire'),
    ...named(parts.conductors, 'wire'),
  ];
}
