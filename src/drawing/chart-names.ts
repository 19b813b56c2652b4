import type { Bounded } from '../study/study-earth.ts';
import { formatQuantity } from '../units/format.ts';
import { soilDrawingWords } from '../words/soil-drawing-words.ts';

/** A condition of the ground by the name under which a chart and its table have it. */
export function conditionName(id: string): string {
  return id === 'as typed' ? soilDrawingWords.asTyped : id;
}

/** A resistance as a range: `24 to 95 ohm`; ohms are ohms in both unit systems. Three digits unless fewer are asked for. */
export function ohmRange({ low, high }: Bounded, digits = 3): string {
  return formatQuantity({ low, high: high ?? Infinity }, 'resistance', 'si', { digits }) ?? soilDrawingWords.unknown;
}

/** A share in per cent with two figures: `44 %`, `3.1 %`; a trace is `under 0.1 %`. */
export function percent(share: number): string {
  const hundredths = share * 100;
  if (hundredths > 0 && hundredths < 0.1) return soilDrawingWords.trace;
  return `${Number(hundredths.toPrecision(hundredths > 99.5 ? 3 : 2))} %`;
}
