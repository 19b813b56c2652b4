import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { saySoil } from '../../src/shell/say-soil.ts';
import { readSite } from '../../src/site/read-site.ts';
import { runStudy } from '../../src/study/run-study.ts';
import { type BuiltCommand, buildCommand, type Ran } from './built-command.ts';
import { soilSites } from './soil-sites.ts';

type Name = keyof typeof soilSites;
let evenground: BuiltCommand;
let folder: string;
const path = (name: Name) => join(folder, `${name}.site.yaml`);
const ran = new Map<string, Ran>();
const soil = (name: Name, ...options: readonly string[]): Ran => {
  const key = [name, ...options].join(' ');
  const result = ran.get(key) ?? evenground.run('soil', path(name), ...options);
  ran.set(key, result);
  return result;
};
/** Every word of the page with one space between, so that no test hangs on where a line breaks. */
const page = (name: Name, ...options: readonly string[]) => soil(name, ...options).out.replace(/\s+/g, ' ');
const json = (name: Name, ...options: readonly string[]) => JSON.parse(soil(name, '--json', ...options).out);

beforeAll(() => {
  evenground = buildCommand();
  folder = mkdtempSync(join(tmpdir(), 'evenground-soil-'));
  for (const [name, text] of Object.entries(soilSites)) writeFileSync(path(name as Name), text);
});
afterAll(() => {
  evenground.remove();
  rmSync(folder, { recursive: true, force: true });
});

/** 8 ft of 5/8 in in 100 ohm m, ohm: reference solution, axisymmetric boundary elements with the exact kernel. */
const eightFeetOhm = 39.519;

describe('a site with soil and electrodes', () => {
  it('ends with 0, on stdout alone, and names the next command last', () => {
    const { code, err, out } = soil('plain');
    expect([code, err]).toEqual([0, '']);
    expect(out.trimEnd().split('\n').at(-1)).toBe(`Next: evenground report ${path('plain')} -o report`);
  });

  it('says the soil, what each electrode has alone, and where the figures end', () => {
    const said = page('plain');
    expect(said).toContain('Hill: soil and grounding electrodes');
    expect(said).toContain('As typed: 100 ohm m all the way down.');
    expect(said).toMatch(/R1 about (39|40) /);
    expect(said).toContain('no soil is known that well');
    expect(said).toContain('no promise that damage cannot happen');
  });

  it('has the reference figure of a rod, within half a percent', () => {
    const [r1] = json('plain').earth.conditions[0].electrodes;
    expect(r1.aloneOhm.value / eightFeetOhm).toBeGreaterThan(0.995);
    expect(r1.aloneOhm.value / eightFeetOhm).toBeLessThan(1.005);
  });

  it('answers how deep, how many and how far apart', () => {
    const said = page('plain');
    expect(said).toMatch(/one rod like R1, alone, has [\d.]+ to [\d.]+ ohm at|one rod like R1, alone, has about/);
    expect(said).toContain('One more rod like R1, tied to it, takes off');
    // By hand: two rods lift each other by about rho / (2 pi s) = 3.3 ohm; joined, (39.5 + 3.3) / 2 = 21.4 ohm.
    expect(said).toMatch(/Rods like R1 in a straight line, 16 ft \(4\.88 m\) apart and joined.*25 ohm takes about 2\./);
  });

  it('answers for winter and the other seasons, each with what it means', () => {
    const said = page('plain');
    expect(said).toMatch(/as typed wet dry summer winter/);
    expect(said).toContain('winter: frozen down to 3 ft (0.914 m), wet below it');
    expect(said).toMatch(/Frost to 3 ft \(0\.914 m\) raises resistance: R1 about 1\.\d times/);
  });

  it('says what an electrode outside a group takes on through the soil', () => {
    expect(page('plain')).toMatch(/R2: \d[\d.]*( to [\d.]+)? % of the rise of R1/);
  });

  it('speaks the units and the words of its region', () => {
    const said = page('metric');
    expect(said).toContain('soil and earth electrodes');
    expect(said).toMatch(/at 3 m \(9\.84 ft\), as it is/);
    expect(said).not.toMatch(/grounding/i);
  });

  it('is the same on every run', () => {
    expect(evenground.run('soil', path('plain')).out).toBe(soil('plain').out);
  });
});

describe('--json', () => {
  it('holds the earth of the study that check prints, and no figure that JSON cannot hold', () => {
    const { out, err, code } = soil('plain', '--json');
    expect([code, err]).toEqual([0, '']);
    const study = JSON.parse(evenground.run('check', path('plain'), '--json').out);
    expect(JSON.parse(out)).toEqual({ site: 'Hill', state: 'as typed', earth: study.earth });
    expect(`${JSON.stringify(JSON.parse(out), null, 2)}\n`).toBe(out);
  });
});

describe('soil that is not known', () => {
  it('is no error: it says what to do, with the line to type, and which figures are missing beside it', () => {
    const { code, err } = soil('withoutSoil');
    expect([code, err]).toEqual([0, '']);
    const said = page('withoutSoil');
    expect(said).toContain('Not known: neither typed nor measured');
    expect(said).toContain('`soil: {type: clay}`');
    expect(said).toContain('r1: {kind: four-pin, spacing: [3 ft, 5 ft, 10 ft, 15 ft, 20 ft],');
    expect(said).toContain('R2: Its resistance cannot be worked out; not known, or out of reason: length.');
    expect(said).toContain(`Next: with the soil typed, evenground soil ${path('withoutSoil')}`);
  });

  it('gives no figure of any electrode', () => {
    const { earth } = json('withoutSoil');
    expect(earth.conditions[0].layers).toEqual([]);
    expect(earth.electrodes.map((e: { aloneOhm: unknown }) => e.aloneOhm)).toEqual([null, null]);
    expect(page('withoutSoil')).not.toMatch(/R1 (about )?\d/);
  });

  it('has every line that it tells somebody to type accepted', () => {
    const said = soil('lone').out;
    const [line] = /soil: \{layers: .*\}/.exec(said)!;
    const { site, problems } = readSite(`${soilSites.lone}${line}\n`, 'x.site.yaml');
    expect(problems).toEqual([]);
    // By hand: 750 ohm over the reference's 0.39519 ohm per ohm m.
    const { low, high } = site!.soil!.layers[0]!.resistivityOhmM!;
    expect(Math.abs((low + high) / 2 / (750 / 0.39519) - 1)).toBeLessThan(0.01);
    const typed = /r1: \{kind: four-pin, spacing: \[([^\]]*)\],/.exec(said)![1]!;
    const readings = `readings:\n  r1: {kind: four-pin, spacing: [${typed}], resistance: [9 ohm, 8 ohm, 7 ohm]}\n`;
    expect(readSite(soilSites.lone + readings, 'x.site.yaml').problems).toEqual([]);
    for (const kind of /Kinds: (.*?), and more/.exec(said.replace(/\s+/g, ' '))![1]!.split(', ')) {
      expect(readSite(`${soilSites.lone}soil: {type: ${kind}}\n`, 'x.site.yaml').problems, kind).toEqual([]);
    }
  });
});

describe('no electrode', () => {
  it('says so, and sends to the check', () => {
    const { code } = soil('withoutElectrodes');
    expect(code).toBe(0);
    const said = page('withoutElectrodes');
    expect(said).toContain('The file has no grounding electrode, so there is nothing to work out.');
    expect(said).toContain(`Next: evenground check ${path('withoutElectrodes')}`);
  });
});

describe('soil by its name', () => {
  it('is a wide range with a reason, and asks to measure', () => {
    const said = page('named');
    // EN 50522 annex J, from memory: sand 200 to 2500 ohm m.
    expect(said).toContain('Taken as sand, which tables have at 200 to 2500 ohm m');
    expect(said).toContain('Measure it: four pins');
    const [r1] = json('named').earth.conditions[0].electrodes;
    expect(r1.aloneOhm.low / (2 * eightFeetOhm)).toBeCloseTo(1, 1);
    expect(r1.aloneOhm.high / (25 * eightFeetOhm)).toBeCloseTo(1, 1);
  });
});

describe('four-pin readings', () => {
  it('of uniform soil are said to be that, with the figure that they were made from, and are used', () => {
    const said = page('fitted');
    const [, ohmM] = /alike all through, (\d+) ohm m/.exec(said)!;
    expect(Math.abs(Number(ohmM) / 200 - 1)).toBeLessThan(0.01);
    expect(said).toContain('This is the soil that is used here.');
    expect(said).toMatch(/Pins apart Read, ohm m Layers give 1 m \(3\.28 ft\) 200 200/);
    const { soilFit } = json('fitted').earth;
    expect(soilFit.chosen).toBe(1);
  });

  it('at one spacing carry no layers, and the page says why', () => {
    const { soilFit } = json('oneSpacing').earth;
    expect(page('oneSpacing')).toContain(soilFit.text[0]);
    expect(soilFit.text.join(' ')).toMatch(/spacing/);
  });
});

describe('readings of one rod that no uniform soil has', () => {
  it('are said in one sentence: what does not fit, what does, and what the drop settles', () => {
    const said = page('deep');
    expect(said).toMatch(/No uniform soil fits both 750 ohm at 10 ft \(3\.05 m\) and 5 ohm at 55 ft \(16\.8 m\);/);
    expect(said).toMatch(/two layers do with a boundary anywhere from 15 to 50 ft/);
    expect(said).toMatch(/lower layer 50 ohm m to [89](\.\d)? ohm m/);
    expect(said).toMatch(/with the drop seen at 45 ft \(13\.7 m\) it is about 1[56] ohm m\./);
  });
});

describe('a lone rod of 750 ohm', () => {
  it('gets the soil that it would mean, and the line to go on from', () => {
    const said = page('lone');
    expect(said).toContain('R1 was read as 750 ohm: in soil alike all through that would be 1900 ohm m.');
    expect(said).toContain('soil: {layers: [{resistivity: about 1900 ohm m}], known: assumed}');
  });

  it('is told once that rods do not bring 25 ohm there, and what matters instead', () => {
    const line = 'soil: {layers: [{resistivity: about 1900 ohm m}], known: assumed}\n';
    const file = join(folder, 'begun.site.yaml');
    writeFileSync(file, soilSites.lone + line);
    const said = evenground.run('soil', file).out.replace(/\s+/g, ' ');
    expect(said.match(/Neither length nor number that was tried brings 25 ohm here\./g)).toHaveLength(1);
    expect(said).toContain('tie all of it to one system first');
    expect(page('plain')).not.toContain('Neither length nor number');
  });
});

describe('a state of the file', () => {
  it('is what the page is about', () => {
    expect(page('states', '--state', 'winter')).toContain('Hill, state winter: soil and grounding electrodes');
    const [now] = json('states', '--state', 'winter').earth.conditions;
    expect(now.electrodes[0].aloneOhm.high).toBeGreaterThan(1.2 * eightFeetOhm);
  });

  it('that there is not ends with 2 and the states that there are', () => {
    const { code, out, err } = soil('states', '--state', 'summer');
    expect([code, out]).toEqual([2, '']);
    expect(err).toContain('no state is called "summer". Its states are: winter.');
  });
});

describe('what cannot be used', () => {
  it('no file, an option that there is not, a site with problems: 2, and nothing on stdout', () => {
    writeFileSync(join(folder, 'wrong.site.yaml'), soilSites.plain.replace('100 ohm m', '0 ohm m'));
    for (const args of [
      [join(folder, 'none.site.yaml')],
      [path('plain'), '--depth'],
      [join(folder, 'wrong.site.yaml')],
    ])
      expect(evenground.run('soil', ...args)).toMatchObject({ code: 2, out: '' });
  });

  it('an output that is full ends with 4', () => {
    if (process.platform !== 'linux') return;
    expect(evenground.bash(`$evenground soil ${path('plain')} > /dev/full`).code).toBe(4);
  });
});

describe('the width of the terminal', () => {
  const { site } = readSite(soilSites.plain, 'plain.site.yaml');
  const { study } = runStudy(site!, { state: null, version: '0', checksum: '', date: null, detail: true });
  const at = (width: number) => saySoil(study, site!, 'plain.site.yaml', { width, paint: (text) => text });

  it.each([40, 60, 100, 120])('%i columns are not overrun, but by the command to copy in the last line', (width) => {
    const over = at(width)
      .trimEnd()
      .split('\n')
      .slice(0, -1)
      .filter((line) => line.length > width);
    expect(over).toEqual([]);
  });

  it('changes where lines break, and not what is said', () => {
    const words = (text: string) => text.split(/\s+/).filter((w) => /[a-z]{3}/.test(w));
    const outsideTable = (text: string) => words(text.replace(/OHM TO[\s\S]*?\n {2}- /, ''));
    expect(outsideTable(at(44))).toEqual(outsideTable(at(118)));
  });

  it('parts no figure from its unit', () => {
    expect(at(41)).not.toMatch(/\d\n *(?:ohm|ft|%|m\b)/);
  });
});

describe('colour', () => {
  it('is left out where the output is no terminal', () => {
    expect(evenground.bash(`FORCE_COLOR=1 $evenground soil ${path('plain')}`).out).not.toContain('\u001b');
  });

  it.skipIf(!hasScript())('is there on a terminal and not with NO_COLOR', () => {
    const onTerminal = (command: string) => evenground.bash(`script -qec "${command}" /dev/null`).out;
    expect(onTerminal(`$evenground soil ${path('plain')}`)).toContain('\u001b[');
    expect(onTerminal(`NO_COLOR=1 $evenground soil ${path('plain')}`)).not.toContain('\u001b[');
  });
});

function hasScript(): boolean {
  const found = /util-linux/.test(spawnSync('bash', ['-c', 'script --version'], { encoding: 'utf8' }).stdout);
  if (!found) process.stderr.write('SKIPPED: no script(1) of util-linux, so colour on a terminal was not looked at\n');
  return found;
}
