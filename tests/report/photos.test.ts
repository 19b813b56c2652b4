import { describe, expect, it } from 'vitest';
import { photoLimitBytes } from '../../src/report/photos-section.ts';
import { pageOf, piecesOf, sectionOf } from './page-of.ts';
import { clubStudy, houseStudy } from './samples.ts';

/** A picture of one pixel (PNG). */
const pixel =
  'data:image/png;base64,iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg==';
const prefix = 'data:image/jpeg;base64,';

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
    // Four characters of base64 hold three bytes.
    const just = [{ name: 'panel.jpg', dataUri: prefix + 'A'.repeat((photoLimitBytes * 4) / 3) }];
    const over = [{ name: 'panel.jpg', dataUri: prefix + 'A'.repeat((photoLimitBytes * 4) / 3 + 40) }];
    expect(stateOf('panel.jpg', just)).toBe('below');
    expect(stateOf('panel.jpg', over)).toBe('left out: larger than 1.5 MB; make it smaller');
    expect(photosOf(over).html).not.toContain('<img');
    expect(photoLimitBytes).toBe(1_500_000);
  });

  it.each([
    ['too large', 'left out: larger than 1.5 MB; make it smaller'],
    ['not found', 'left out: not found beside the site file; check the name'],
    ['not a picture', 'left out: not a picture that can be embedded (JPEG, PNG, GIF or WebP)'],
    ['not readable', 'left out: it could not be read; check whose file it is'],
    ['elsewhere', 'left out: not in the folder of the site file or below it; copy it there'],
  ] as const)('that are left out are named with the reason: %s', (leftOut, says) => {
    const photos = [{ name: 'panel.jpg', leftOut }];
    expect(stateOf('panel.jpg', photos)).toBe(says);
    expect(photosOf(photos).html).not.toContain('<img');
  });

  it.each([
    'javascript:alert(1)',
    'https://example.invalid/x.png',
    'data:text/html;base64,PHNjcmlwdD4=',
    'data:image/svg+xml;base64,PHN2Zz4=',
    'data:image/png;base64,AAAA" onerror="alert(1)',
  ])('that are no picture stay out: %s', (dataUri) => {
    const photos = [{ name: 'panel.jpg', dataUri }];
    expect(stateOf('panel.jpg', photos)).toBe('left out: not a picture that can be embedded (JPEG, PNG, GIF or WebP)');
    expect(photosOf(photos).html).not.toContain('<img');
  });

  it('are named by a study of which none was handed in', () => {
    expect(piecesOf(pageOf(houseStudy))).toContain('plate.jpg');
  });
});
