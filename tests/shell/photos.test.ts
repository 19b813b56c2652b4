import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { photoLimitBytes } from '../../src/report/photos-section.ts';
import { readPhotos } from '../../src/shell/photos.ts';
import { pageOf, piecesOf, sectionOf } from '../report/page-of.ts';
import { clubStudy } from '../report/samples.ts';

/** First bytes of each kind of file: JPEG (ITU-T T.81: FF D8, then a marker), PNG (ISO/IEC 15948), GIF89a, WebP (RIFF). */
const jpeg = Buffer.from([0xff, 0xd8, 0xff, 0xe0]);
const png = Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]);
const gif = Buffer.from('GIF89a\x01\x00\x01\x00', 'latin1');
const webp = Buffer.from('RIFF\x0a\x00\x00\x00WEBPVP8 ', 'latin1');

const root = mkdtempSync(join(tmpdir(), 'photos-'));
const folder = join(root, 'site');
mkdirSync(join(folder, 'folder.jpg'), { recursive: true });
afterAll(() => rmSync(root, { recursive: true }));

function studyWith(photos: readonly string[]) {
  const [first, ...others] = clubStudy.parts;
  return { ...clubStudy, parts: [{ ...first!, photos }, ...others.map((p) => ({ ...p, photos: [] }))] };
}

/** What is read of one file that the site names; null bytes: there is no such file. */
function read(name: string, bytes: Buffer | null) {
  if (bytes !== null) writeFileSync(join(folder, name), bytes);
  return readPhotos(studyWith([name]), folder)[0]!;
}

describe('pictures that a site file names', () => {
  it.each([
    ['a.jpg', jpeg, 'image/jpeg'],
    ['b.PNG', png, 'image/png'],
    ['c.gif', gif, 'image/gif'],
    ['d.webp', webp, 'image/webp'],
    ['wrong-ending.png', jpeg, 'image/jpeg'],
  ] as const)('are known by their first bytes: %s', (name, bytes, type) => {
    expect(read(name, bytes)).toEqual({ name, dataUri: `data:${type};base64,${bytes.toString('base64')}` });
  });

  it('go in up to the limit and not beyond', () => {
    expect(read('just.jpg', Buffer.concat([jpeg, Buffer.alloc(photoLimitBytes - 4)]))).toHaveProperty('dataUri');
    const over = read('over.jpg', Buffer.concat([jpeg, Buffer.alloc(photoLimitBytes - 3)]));
    expect(over).toEqual({ name: 'over.jpg', leftOut: 'too large' });
  });

  it.each([
    ['missing.jpg', null, 'not found'],
    ['notes.jpg', Buffer.from('meter reads 41'), 'not a picture'],
    ['drawing.svg', Buffer.from('<svg xmlns="http://www.w3.org/2000/svg"/>'), 'not a picture'],
    ['empty.png', Buffer.alloc(0), 'not a picture'],
    ['folder.jpg', null, 'not a picture'],
    ['../outside.jpg', jpeg, 'elsewhere'],
    [join(root, 'outside.jpg'), null, 'elsewhere'],
  ] as const)('stay out with the reason: %s', (name, bytes, leftOut) => {
    expect(read(name, bytes)).toEqual({ name, leftOut });
  });

  it('all stand on the page: those at the limit shown, the others with what keeps them out', () => {
    const names = ['just.jpg', 'missing.jpg', 'notes.jpg', 'over.jpg'];
    const study = studyWith(names);
    const html = sectionOf(pageOf(study, readPhotos(study, folder)), 'photos');
    expect(html.match(/<img /g)).toHaveLength(1);
    const text = piecesOf(`<body>${html}`);
    const states = names.map((name) => text[text.indexOf(name) + 2]);
    expect(states[0]).toBe('below');
    expect(states[1]).toContain('not found');
    expect(states[2]).toContain('not a picture');
    expect(states[3]).toContain('larger than 1.5 MB');
  });
});
