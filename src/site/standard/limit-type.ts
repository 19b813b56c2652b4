import type { Dimension } from '../../units/dimension.ts';
import { gaugeAreaM2, gaugeNumber } from '../../units/wire-gauge.ts';
import { type FieldType, textOf } from '../format/field.ts';
import { readFigure } from '../format/quantity.ts';
import { refuse } from '../reading/report.ts';

export interface Limit {
  readonly sense: 'least' | 'most';
  readonly value: number;
}

/** `at least 2 AWG`, `at most 0.5 m`: one figure and which side of it is asked. `senses`: the sides that make sense. */
export function limit(dimension: Dimension, senses: readonly Limit['sense'][] = ['least', 'most']): FieldType<Limit> {
  const expects = 'a limit such as at least 2 AWG or at most 0.5 m';
  return {
    schema: { type: 'string', pattern: `^(${senses.map((sense) => `at ${sense}`).join('|')}) ` },
    expects,
    read: (node, spot) => {
      const typed = textOf(node, spot, expects);
      if (typed === null) return null;
      const [, side, figure] = /^at (least|most)\s+(.+)$/i.exec(typed) ?? [];
      if (side === undefined || figure === undefined) return refuse(spot, node.at, 'limit-side', { text: typed });
      const sense = side.toLowerCase() === 'least' ? 'least' : 'most';
      const gauge = dimension === 'area' ? gaugeNumber(/^(\S+) AWG$/i.exec(figure)?.[1] ?? '') : null;
      if (gauge !== null) return { sense, value: gaugeAreaM2(gauge) };
      const read = readFigure(figure, dimension, { positive: true }, node, spot);
      if (read === null) return null;
      const { low, high } = read.interval;
      return low === high ? { sense, value: low } : refuse(spot, node.at, 'limit-one-figure', { text: typed });
    },
  };
}
