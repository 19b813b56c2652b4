import type { Dimension } from '../../units/dimension.ts';
import { exact, type Interval } from '../../units/interval.ts';
import { type QuantityOptions, readQuantity } from '../../units/quantity.ts';
import { refuse, type Spot } from '../reading/report.ts';
import type { TreeNode } from '../reading/tree.ts';
import type { StatedOhm } from '../site.ts';
import { type FieldType, textOf } from './field.ts';

export interface QuantityRules {
  /** A bare number is in `site.units`. */
  readonly bare?: boolean;
  /** Zero is refused; without this only negative figures are. */
  readonly positive?: boolean;
  /** Negative figures are fine. */
  readonly signed?: boolean;
}

const examples: Partial<Readonly<Record<Dimension, string>>> = {
  length: 'a length such as 8 ft or 2.5 m',
  area: 'an area such as 500 sq ft or 20 m2',
  resistance: 'a resistance such as 0.4 mohm or 25 ohm',
  resistivity: 'a resistivity such as 180 ohm m',
  power: 'a power such as 100 W',
  frequency: 'a frequency such as 14.2 MHz',
  voltage: 'a voltage such as 230 V',
  current: 'a current such as 100 A',
  angle: 'an angle such as 90 deg',
  inductance: 'an inductance such as 1.5 uH',
  number: 'a number such as 2',
};

/** A figure with its unit, or a range of it. */
export function quantity(dimension: Dimension, rules: QuantityRules = {}): FieldType<Interval> {
  const expects = examples[dimension] ?? `a ${dimension} with its unit`;
  const allowsNumber = rules.bare === true || dimension === 'number';
  // nothing is nothing in any unit
  const allowsZero = dimension === 'length' && rules.positive !== true && !allowsNumber;
  return {
    schema: allowsZero
      ? { anyOf: [{ type: 'string' }, { const: 0 }] }
      : { type: allowsNumber ? ['string', 'number'] : 'string' },
    expects,
    read: (node, spot) => {
      const typed = textOf(node, spot, expects);
      if (typed === null) return null;
      if (allowsZero && /^0(?:\.0*)?$/.test(typed)) return exact(0);
      return readFigure(typed, dimension, rules, node, spot)?.interval ?? null;
    },
  };
}

/** A length; bare numbers are in `site.units` only where the field's name says that it is a length. */
export const bareLength = quantity('length', { bare: true, positive: true });
export const bareDistance = quantity('length', { bare: true });
export const length = quantity('length', { positive: true });

/** A resistance that is stated or was read; `over range` too. */
export const statedOhm: FieldType<StatedOhm> = {
  schema: { type: 'string' },
  expects: 'a resistance such as 25 ohm, or over range',
  read: (node, spot) => {
    const typed = textOf(node, spot, 'a resistance such as 25 ohm, or over range');
    const read = typed === null ? null : readFigure(typed, 'resistance', {}, node, spot, { overRange: true });
    return read === null ? null : { ohm: read.interval, overRange: read.overRange };
  },
};

/** Reads a figure and notes what is wrong with it. */
export function readFigure(
  typed: string,
  dimension: Dimension,
  rules: QuantityRules,
  node: TreeNode,
  spot: Spot,
  options: QuantityOptions = {},
): { readonly interval: Interval; readonly overRange: boolean } | null {
  const unit = rules.bare ? spot.report.bareUnit : null;
  const bare = unit === null ? {} : { bareUnit: unit };
  const read = readQuantity(typed, dimension, { ...options, ...bare, positive: rules.positive === true });
  if (!read.ok) {
    if (dimension === 'number' && read.code.startsWith('unit-'))
      return refuse(spot, node.at, 'number-with-unit', { text: typed });
    const key = read.code === 'unit-missing' && rules.bare ? 'units-not-said' : read.code;
    return refuse(spot, node.at, key, read.values, read.values.near || null);
  }
  const negative = rules.signed !== true && read.interval.low < 0;
  return negative ? refuse(spot, node.at, 'negative', { text: typed }) : read;
}

/** A resistance, or a voltage where the instrument showed that. */
export const reading: FieldType<{ readonly ohm: StatedOhm | null; readonly volt: Interval | null }> = {
  schema: { type: 'string' },
  expects: 'what the instrument showed, such as 31 ohm, 12 mV or over range',
  read: (node, spot) => {
    const typed = textOf(node, spot, 'what the instrument showed, such as 31 ohm');
    if (typed === null) return null;
    const volt = readQuantity(typed, 'voltage');
    if (volt.ok) return { ohm: null, volt: volt.interval };
    const ohm = statedOhm.read(node, spot);
    return ohm === null ? null : { ohm, volt: null };
  },
};

/** The voltage that a protector lets through, at a current: `400 V at 5 kA`. */
export const clamping: FieldType<{ readonly voltageV: Interval; readonly currentA: Interval }> = {
  schema: { type: 'string' },
  expects: 'a voltage at a current, such as 400 V at 5 kA',
  read: (node, spot) => {
    const expects = 'a voltage at a current, such as 400 V at 5 kA';
    const typed = textOf(node, spot, expects);
    if (typed === null) return null;
    const [voltage, current, more] = typed.split(/\s+at\s+/);
    if (voltage === undefined || current === undefined || more !== undefined) {
      return refuse(spot, node.at, 'not-expected', { text: typed, expects });
    }
    const voltageV = readFigure(voltage, 'voltage', { positive: true }, node, spot);
    const currentA = readFigure(current, 'current', { positive: true }, node, spot);
    if (voltageV === null || currentA === null) return null;
    return { voltageV: voltageV.interval, currentA: currentA.interval };
  },
};
