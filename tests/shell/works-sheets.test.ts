import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, afterEach, beforeAll, describe, expect, it, vi } from 'vitest';
import { works } from '../../src/shell/commands/works.ts';
import { Stop } from '../../src/shell/exit-code.ts';

let folder: string;
let file: string;

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'evenground-sheets-'));
  file = join(folder, 'first-mast.site.yaml');
  writeFileSync(file, readFileSync(new URL('../sites/smallest.site.yaml', import.meta.url)));
});
afterEach(() => vi.restoreAllMocks());
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** What is printed while the command runs. */
function listen() {
  const said = { out: '', err: '' };
  vi.spyOn(process.stdout, 'write').mockImplementation((text) => {
    said.out += String(text);
    return true;
  });
  vi.spyOn(process.stderr, 'write').mockImplementation((text) => {
    said.err += String(text);
    return true;
  });
  return said;
}

describe('works --sheet', () => {
  it('writes the page of works and the sheet whole, named after the site file, and says where they are', async () => {
    const said = listen();
    const sheet = join(folder, 'pages');
    expect(await works(file, { sheet })).toBe(0);
    expect(readdirSync(sheet).sort()).toEqual(['first-mast.sheet.html', 'first-mast.works.html']);
    expect(readFileSync(join(sheet, 'first-mast.sheet.html'), 'utf8')).toContain('Sheet for the contractor');
    expect(readFileSync(join(sheet, 'first-mast.works.html'), 'utf8').trimEnd()).toMatch(/<\/html>$/);
    expect(said.out).toMatch(/Open: .*first-mast\.works\.html, .*first-mast\.sheet\.html/);
  });

  it('keeps what is printed as JSON clean', async () => {
    const said = listen();
    await works(file, { sheet: join(folder, 'json'), json: true });
    expect(() => JSON.parse(said.out)).not.toThrow();
    expect(said.err).toContain('Open: ');
  });

  it('without it writes nothing', async () => {
    listen();
    await works(file, {});
    expect(existsSync(join(folder, 'first-mast.works.html'))).toBe(false);
  });

  it('a browser that is not there is said, and the pages stay', async () => {
    listen();
    const sheet = join(folder, 'pdf');
    const asked = works(file, { sheet, pdf: true, browser: join(folder, 'no-browser') });
    await expect(asked).rejects.toThrow(Stop);
    expect(readdirSync(sheet).sort()).toEqual(['first-mast.sheet.html', 'first-mast.works.html']);
  });

  it('a file in the way of the folder is said, and left as it is', async () => {
    listen();
    const sheet = join(folder, 'in-the-way');
    writeFileSync(sheet, 'mine');
    await expect(works(file, { sheet })).rejects.toThrow(/could not be written/);
    expect(readFileSync(sheet, 'utf8')).toBe('mine');
  });
});
