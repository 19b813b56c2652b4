import type { StudyPart } from '../study/study.ts';
import type { Dimension } from '../units/dimension.ts';
import { formatQuantity } from '../units/format.ts';
import { readQuantity } from '../units/quantity.ts';
import { figure, type PageContext } from './page-context.ts';

/** Fields of the file that have a column of their own, or none on a page. */
const shownElsewhere = new Set([
  ...['kind', 'at', 'on', 'where', 'note', 'photo', 'known', 'condition', 'present', 'owner', 'count'],
  ...['near', 'within_reach', 'route', 'path', 'lengths', 'from', 'to', 'passes', 'joints', 'guys', 'bonded'],
]);

const dimensions: Readonly<Record<string, Dimension>> = {
  ...dimensionOf('length', ['length', 'diameter', 'height', 'width', 'depth', 'top', 'spacing', 'radius', 'face']),
  ...dimensionOf('length', ['hole', 'size', 'lead']),
  ...dimensionOf('area', ['area']),
  ...dimensionOf('resistance', ['resistance']),
  ...dimensionOf('resistivity', ['backfill_resistivity']),
  ...dimensionOf('angle', ['angle']),
  ...dimensionOf('power', ['power', 'rated_power']),
  ...dimensionOf('current', ['rating']),
  ...dimensionOf('frequency', ['band']),
};

/** What the owner typed about a part beyond its columns; a figure also in the other unit system, where it can be read. */
export function typedDetails(page: PageContext, part: StudyPart): string {
  return Object.entries(part.typed)
    .filter(([field]) => !shownElsewhere.has(field))
    .map(([field, text]) => `${field.replaceAll('_', ' ')} ${typedValue(page, field, text)}`)
    .join(', ');
}

function typedValue(page: PageContext, field: string, text: string): string {
  const dimension = Object.hasOwn(dimensions, field) ? dimensions[field] : undefined;
  if (dimension === undefined) return text;
  const read = readQuantity(text, dimension, { bareUnit: page.study.site.units, overRange: true });
  if (!read.ok || read.overRange) return text;
  const [us, si] = [formatQuantity(read.interval, dimension, 'us'), formatQuantity(read.interval, dimension, 'si')];
  if (us === null || si === null || us === si) return text;
  if (!/[a-z'"]/i.test(text)) return figure(page, read.interval, dimension);
  return `${text} (${(metric.test(text) ? us : si).replace(/^(?:over|under) /, '')})`;
}

/** A figure in metres or parts of them; any other length or section is in feet, inches or gauges. */
const metric = /\d\s*[mck]?m[²2]?(?![a-z])/i;

function dimensionOf(dimension: Dimension, fields: readonly string[]): Readonly<Record<string, Dimension>> {
  return Object.fromEntries(fields.map((field) => [field, dimension]));
}
