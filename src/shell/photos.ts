import { statSync } from 'node:fs';
import { isAbsolute, join, normalize } from 'node:path';
import { type Photo, photoLimitBytes, type WhyNoPhoto } from '../report/photos-section.ts';
import type { Study } from '../study/study.ts';
import { readBytes } from './files.ts';

/** Kinds of picture that every browser shows, each by the bytes that its files begin with (`.` stands for any byte). */
const beginnings: readonly (readonly [type: string, bytes: RegExp])[] = [
  ['image/jpeg', /^\xff\xd8\xff/],
  ['image/png', /^\x89PNG\r\n/],
  ['image/gif', /^GIF8[79]a/],
  ['image/webp', /^RIFF.{4}WEBP/s],
];

/** Pictures named in the site file that lie in its folder or below it; where one stays out, why. By name. */
export function readPhotos(study: Study, folder: string): readonly Photo[] {
  const names = [...new Set(study.parts.flatMap((p) => p.photos))].sort();
  return names.map((name) => {
    const read = readPhoto(name, folder);
    return read.startsWith('data:') ? { name, dataUri: read } : { name, leftOut: read as WhyNoPhoto };
  });
}

/** A data URI, or why there is none. */
function readPhoto(name: string, folder: string): `data:${string}` | WhyNoPhoto {
  if (isAbsolute(name) || normalize(name).startsWith('..')) return 'elsewhere';
  const path = join(folder, name);
  const found = statOf(path);
  if (found === null) return 'not found';
  if (!found.isFile()) return 'not a picture';
  if (found.size > photoLimitBytes) return 'too large';
  return embed(path) ?? 'not readable';
}

function statOf(path: string) {
  try {
    return statSync(path, { throwIfNoEntry: false }) ?? null;
  } catch {
    return null;
  }
}

function embed(path: string): `data:${string}` | WhyNoPhoto | null {
  try {
    const bytes = Buffer.from(readBytes(path, photoLimitBytes));
    const start = bytes.toString('latin1', 0, 16);
    const type = beginnings.find(([, pattern]) => pattern.test(start))?.[0];
    return type === undefined ? 'not a picture' : `data:${type};base64,${bytes.toString('base64')}`;
  } catch {
    return null;
  }
}
