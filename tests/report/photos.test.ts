import { describe, expect, it } from 'vitest';
import { photoLimit } from '../../src/report/photos-section.ts';
import { pageOf, piecesOf, sectionOf } from './page-of.ts';
import { clubStudy, houseStudy } from './samples.ts';

/** A picture of one pixel (PNG). */
const pixel =
  'data:image/png;base64,iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg==';
const prefix = 'data:image/jpeg;base64,';
const ofLength = (length: number) => prefix + 'A'.repeat(length - prefix.length);

function photosOf(photos: Parameters<typeof pageOf>[1]) {
  const html = sectionOf(pageOf(clubStudy, photos), 'photos');
  return { html, text: piecesOf(`<body>${html}`) };
}

/** What the table says about a photograph. */
function stateOf(name: string, photos: Parameters<typeof pageOf>[1]): string {
  const { text } = photosOf(photos);
  return text[text.indexOf(name) + 2]!;
}

describe('photographs', () => {
  it('stand on the page with the numbers of what they show', () => {
    const { html, text } = photosOf([{ name: 'meter-wall.jpg', dataUri: pixel }]);
    expect(html).toContain('<img src="data:image/png;base64,');
    expect(html.match(/<img /g)).toHaveLength(1);
    expect(stateOf('meter-wall.jpg', [{ name: 'meter-wall.jpg', dataUri: pixel }])).toBe('below');
    expect(text.some((t) => /^meter-wall\.jpg: \d+ E-service, \d+ main-panel$/.test(t))).toBe(true);
  });

  it('that were not handed in are named', () => {
    expect(stateOf('panel.jpg', [{ name: 'meter-wall.jpg', dataUri: pixel }])).toBe('not handed in');
    expect(photosOf([]).html).not.toContain('<img');
  });

  it('go in up to the limit that the page states, and not beyond', () => {
    const just = [{ name: 'panel.jpg', dataUri: ofLength(photoLimit) }];
    const over = [{ name: 'panel.jpg', dataUri: ofLength(photoLimit + 1) }];
    expect(stateOf('panel.jpg', just)).toBe('below');
    expect(stateOf('panel.jpg', over)).toBe('left out: larger than 1.5 MB');
    expect(photosOf(over).html).not.toContain('<img');
    // Four characters of base64 hold three bytes, so that the limit in characters is 1.5 MB of picture.
    expect((photoLimit * 3) / 4).toBe(1_500_000);
  });

  it.each([
    'javascript:alert(1)',
    'https://example.invalid/x.png',
    'data:text/html;base64,PHNjcmlwdD4=',
    'data:image/svg+xml;base64,PHN2Zz4=',
    'data:image/png;base64,AAAA" onerror="alert(1)',
  ])('that are no picture stay out: %s', (dataUri) => {
    const photos = [{ name: 'panel.jpg', dataUri }];
    expect(stateOf('panel.jpg', photos)).toBe('left out: not a picture that can be embedded');
    expect(photosOf(photos).html).not.toContain('<img');
  });

  it('are named by a study of which none was handed in', () => {
    expect(piecesOf(pageOf(houseStudy))).toContain('plate.jpg');
  });
});
