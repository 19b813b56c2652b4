import { readFileSync, statSync } from 'node:fs';
import { extname, isAbsolute, join, normalize } from 'node:path';
import type { Photo } from '../report/photos-section.ts';
import type { Study } from '../study/study.ts';

/** Largest picture that goes into the page, bytes. */
const mostBytes = 1_000_000;
const types: Readonly<Record<string, string>> = {
  '.jpg': 'image/jpeg',
  '.jpeg': 'image/jpeg',
  '.png': 'image/png',
  '.webp': 'image/webp',
};

/** Pictures named in the site file that lie in its folder or below it and are small enough; the others stay names. */
export function readPhotos(study: Study, folder: string): readonly Photo[] {
  const names = [...new Set(study.parts.flatMap((p) => p.photos))].sort();
  return names.flatMap((name) => readPhoto(name, folder) ?? []);
}

function readPhoto(name: string, folder: string): Photo | null {
  const type = types[extname(name).toLowerCase()];
  const inside = !isAbsolute(name) && !normalize(name).startsWith('..');
  if (type === undefined || !inside) return null;
  try {
    const path = join(folder, name);
    const { size } = statSync(path);
    if (size > mostBytes) return null;
    return { name, dataUri: `data:${type};base64,${readFileSync(path).toString('base64')}` } as Photo;
  } catch {
    return null;
  }
}
