import type { StudyPart } from '../study/study.ts';
import type { Dimension } from '../units/dimension.ts';
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

/** What the owner typed about a part beyond its columns, each figure in both unit systems where it can be read. */
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
  return read.ok && !read.overRange ? figure(page, read.interval, dimension) : text;
}

function dimensionOf(dimension: Dimension, fields: readonly string[]): Readonly<Record<string, Dimension>> {
  return Object.fromEntries(fields.map((field) => [field, dimension]));
}
