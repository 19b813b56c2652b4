import type { TypedPart } from '../reading/typed-site.ts';
import type { Line } from '../site.ts';

/** What a line or conductor runs beside; null where that is not known. */
export function alongOf(along: TypedPart<'lines'>['values']['along']): Line['along'] {
  return along?.part == null ? null : { part: along.part, spacingM: along.spacing };
}
