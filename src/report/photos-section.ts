import type { Study } from '../study/study.ts';
import { scheduleWords } from '../words/schedule-words.ts';
import { type Block, cell, paragraph, row, type Section, tableIfAny } from './block.ts';
import { type PageContext, partNames, sayIn } from './page-context.ts';

/** Why a picture that the file names is not on the page. */
export type WhyNoPhoto = 'too large' | 'not found' | 'not a picture' | 'not readable' | 'elsewhere';

/** A picture by the name that the site file gives it: as a data URI, or why it was left out. */
export type Photo =
  | { readonly name: string; readonly dataUri: string }
  | { readonly name: string; readonly leftOut: WhyNoPhoto };

/** Largest picture that goes onto the page, bytes: the one limit, for whoever reads the files too. */
export const photoLimitBytes = 1_500_000;

/** The same as characters of base64, of which four hold three bytes, with room for `data:image/...;base64,`. */
const longestUri = (photoLimitBytes * 4) / 3 + 40;

const words = scheduleWords.photos;
const picture = /^data:image\/(?:png|jpeg|gif|webp);base64,[A-Za-z0-9+/]+={0,2}$/;

export function hasPhotos(study: Study): boolean {
  return study.parts.some((p) => p.photos.length > 0);
}

/** Photographs by name, with what each shows. Pictures come only as data URIs. */
export function photosSection(page: PageContext, photos: readonly Photo[]): Section {
  const byName = showing(page);
  const handed = new Map(photos.map((p) => [p.name, p]));
  const rows = [...byName].map(([name, parts]) =>
    row(cell(name), cell(partNames(page, parts)), cell(stateOf(page, handed.get(name)))),
  );
  const table = { id: 'photos-table', caption: words.caption, head: [words.name, words.parts, words.state], rows };
  const pictures = [...byName].flatMap(([name, parts]) => pictureOf(page, name, parts, handed.get(name)));
  return { id: 'photos', heading: words.heading, blocks: [paragraph(words.intro), ...tableIfAny(table), ...pictures] };
}

/** Names of photographs in order, each with the parts that it shows. */
function showing({ study }: PageContext): ReadonlyMap<string, readonly string[]> {
  const pairs = study.parts.flatMap((p) => p.photos.map((name) => [name, p.id] as const));
  const names = [...new Set(pairs.map(([name]) => name))].sort((a, b) => (a < b ? -1 : a > b ? 1 : 0));
  return new Map(names.map((name) => [name, pairs.filter(([n]) => n === name).map(([, id]) => id)]));
}

function stateOf(page: PageContext, photo: Photo | undefined): string {
  if (photo === undefined) return words.notGiven;
  const why = 'leftOut' in photo ? photo.leftOut : whyNot(photo.dataUri);
  const size = `${photoLimitBytes / 1e6} MB`;
  return why === null ? words.shown : sayIn(page, words.leftOut, { why: sayIn(page, words.why[why], { size }) });
}

function whyNot(dataUri: string): WhyNoPhoto | null {
  if (dataUri.length > longestUri) return 'too large';
  return picture.test(dataUri) ? null : 'not a picture';
}

function pictureOf(
  page: PageContext,
  name: string,
  parts: readonly string[],
  photo: Photo | undefined,
): readonly Block[] {
  if (photo === undefined || 'leftOut' in photo || whyNot(photo.dataUri) !== null) return [];
  const shown = partNames(page, parts);
  const alt = sayIn(page, words.alt, { name, parts: shown });
  return [{ is: 'photo', dataUri: photo.dataUri, alt, caption: `${name}: ${shown}` }];
}
