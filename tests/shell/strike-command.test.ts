import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type StrikeOptions, type StrikeStudy, strike } from '../../src/shell/commands/strike.ts';
import { Stop } from '../../src/shell/exit-code.ts';
import { version } from '../../src/shell/version.ts';
import { handMadeStrike, larchRise } from './strike-fixture.ts';

type Asked = Parameters<StrikeStudy>[1];

let folder: string;
let file: string;
let output: string;

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'evenground-strike-'));
  file = join(folder, 'larch-rise.site.yaml');
  output = join(folder, 'page.txt');
  writeFileSync(file, `${larchRise}states:\n  storm: {lost: [c4]}\n`);
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** What the command asks of the study. */
function asked(options: StrikeOptions): Asked {
  let ask: Asked | null = null;
  const study: StrikeStudy = (_site, given) => {
    ask = given;
    return handMadeStrike;
  };
  expect(strike(file, { ...options, output }, study)).toBe(0);
  return ask!;
}

/** What the command says when it cannot go on; nothing is worked out then. */
function refused(options: StrikeOptions): Stop {
  const study: StrikeStudy = () => {
    throw new Error('worked out all the same');
  };
  try {
    strike(file, options, study);
  } catch (error) {
    if (error instanceof Stop) return error;
    throw error;
  }
  throw new Error('not refused');
}

describe('the command strike', () => {
  it('asks for what is usual where nothing is typed', () => {
    expect(asked({})).toEqual({
      state: null,
      at: null,
      currentA: null,
      wave: null,
      nearby: null,
      ionisationVPerM: null,
      between: [],
      version,
    });
  });

  it.each([
    ['30 kA', 30e3],
    ['30kA', 30e3],
    ['5000 A', 5e3],
    ['100 A', 100],
    ['1000 kA', 1e6],
  ])('reads a current of %s', (current, currentA) => {
    expect(asked({ current }).currentA).toBe(currentA);
  });

  it.each([
    ['10/350', '10/350'],
    [' 8 / 20 us', '8/20'],
    ['1.2x50', '1.2/50'],
    ['0.25/100 µs', '0.25/100'],
  ])('reads a wave of %s', (typed, wave) => {
    expect(asked({ wave: typed }).wave).toBe(wave);
  });

  it('takes a line as the place at which a surge comes in', () => {
    expect(asked({ at: 'feed' }).at).toBe('feed');
  });

  it('hands on place, state and pairs, as an owner types them', () => {
    const between = ['radio,main-panel', ' tower@45 ft , entry', 'c1:R1,remote ground'];
    expect(asked({ at: 'beam', state: 'storm', between })).toMatchObject({
      at: 'beam',
      state: 'storm',
      between: [
        ['radio', 'main-panel'],
        ['tower@45 ft', 'entry'],
        ['c1:R1', 'remote earth'],
      ],
    });
  });

  it.each([
    [{ current: '0' }, '--current: `0` has no unit.'],
    [{ current: '0 kA' }, 'has to be more than zero'],
    [{ current: '-30 kA' }, 'has to be more than zero'],
    [{ current: '1e9 kA' }, 'Peaks are taken from 100 A to 1000 kA'],
    [{ current: '99 A' }, 'no stroke'],
    [{ current: '30' }, 'Type it behind the figure: --current "30 kA"'],
    [{ current: '30 kV' }, 'is for voltage, not for a current'],
    [{ current: '30 kAmps' }, '`kAmps`'],
    [{ current: '20 to 40 kA' }, 'is a range, and one strike has one peak'],
    [{ current: 'about 30 kA' }, 'is a range'],
    [{ current: 'a lot' }, 'cannot be read as a current'],
    [{ current: '12,5 kA' }, '--current "12.5 kA"'],
    [{ wave: '10/300' }, 'did you mean 10/350?'],
    [{ wave: 'sharp' }, 'Waves: 10/350 (first positive stroke), 1/200'],
    [{ at: 'twoer@top' }, 'Did you mean tower@top?'],
    [{ at: 'nobody-knows' }, 'has this name'],
    [{ at: 'tower@80 ft' }, 'above the top of tower'],
    [{ at: 'tower@45' }, 'with its unit'],
    [{ at: 'c4', state: 'storm' }, 'it is not there'],
    [{ state: 'flood' }, 'no state is called "flood". Its states are: storm.'],
    [{ between: ['radio'] }, '--between radio,main-panel'],
    [{ between: ['radio,entry,beam'] }, 'is not a pair'],
    [{ between: ['radio,'] }, 'is not a pair'],
    [{ between: ['radio,radio'] }, 'names one thing twice'],
    [{ between: ['radoi,entry'] }, 'Did you mean radio?'],
  ])('refuses %j', (options, says) => {
    const { code, message } = refused(options);
    expect(code).toBe(2);
    expect(message).toContain(says);
    expect(message).not.toMatch(/NaN|undefined|\{\w+\}/);
  });

  it('says all that is wrong at once, each thing once', () => {
    const { message } = refused({ current: '0 A', wave: '9/9', at: 'radoi', between: ['radoi,entry', 'entry'] });
    expect(message.split('\n').map((line) => line.split(':')[0])).toEqual([
      'radoi',
      '--current',
      '--wave',
      '--between',
    ]);
  });

  it('lets no text steer the terminal', () => {
    // biome-ignore lint/suspicious/noControlCharactersInRegex: they must not come through
    expect(refused({ wave: '\u001b[31m', current: '\u202e30' }).message).not.toMatch(/[\u001b\u202e]/);
  });
});

describe('its result', () => {
  const study: StrikeStudy = () => handMadeStrike;
  const hopeless = { ...handMadeStrike, stroke: null, refused: 'No soil is known.', differences: [] };

  it('is the page, or the study of the strike as JSON, whole in the file that is named', () => {
    expect(strike(file, { output }, study)).toBe(0);
    expect(readFileSync(output, 'utf8')).toMatch(/^Larch Rise: a strike at tower@top\n/);
    expect(strike(file, { output, json: true, state: 'storm' }, study)).toBe(0);
    expect(JSON.parse(readFileSync(output, 'utf8'))).toEqual({
      site: 'Larch Rise',
      state: 'storm',
      strike: handMadeStrike,
    });
  });

  it('is a sentence and exit 2 where nothing could be worked out; JSON all the same', () => {
    expect(() => strike(file, {}, () => hopeless)).toThrow(
      new Stop(2, 'A strike at tower@top cannot be worked out: No soil is known.'),
    );
    expect(() => strike(file, {}, () => ({ ...hopeless, at: '' }))).toThrow('A strike cannot be worked out: No soil');
    expect(strike(file, { output, json: true }, () => hopeless)).toBe(2);
    expect(JSON.parse(readFileSync(output, 'utf8')).strike.refused).toBe('No soil is known.');
  });
});
