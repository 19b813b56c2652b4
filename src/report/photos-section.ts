import type { Study } from '../study/study.ts';
import { scheduleWords } from '../words/schedule-words.ts';
import { type Block, cell, paragraph, row, type Section, tableIfAny } from './block.ts';
import { type PageContext, partNames, sayIn } from './page-context.ts';

/** A picture by the name that the site file gives it, as a data URI. */
export interface Photo {
  readonly name: string;
  readonly dataUri: string;
}

/** Longest data URI that is put on the page, in characters: about 1.5 MB of picture. */
export const photoLimit = 2_000_000;

const words = scheduleWords.photos;
const picture = /^data:image\/(?:png|jpeg|gif|webp);base64,[A-Za-z0-9+/]+={0,2}$/;

export function hasPhotos(study: Study): boolean {
  return study.parts.some((p) => p.photos.length > 0);
}

/** Photographs by name, with what each shows. Pictures come only as data URIs. */
export function photosSection(page: PageContext, photos: readonly Photo[]): Section {
  const byName = showing(page);
  const handed = new Map(photos.map((p) => [p.name, p.dataUri]));
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

function stateOf(page: PageContext, dataUri: string | undefined): string {
  if (dataUri === undefined) return words.notGiven;
  if (dataUri.length > photoLimit) return sayIn(page, words.tooLarge, { size: '1.5 MB' });
  return picture.test(dataUri) ? words.shown : words.notPicture;
}

function pictureOf(
  page: PageContext,
  name: string,
  parts: readonly string[],
  dataUri: string | undefined,
): readonly Block[] {
  if (dataUri === undefined || stateOf(page, dataUri) !== words.shown) return [];
  const shown = partNames(page, parts);
  return [{ is: 'photo', dataUri, alt: sayIn(page, words.alt, { name, parts: shown }), caption: `${name}: ${shown}` }];
}
