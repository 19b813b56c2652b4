import { readdirSync, readFileSync } from 'node:fs';
import { basename, dirname, join, resolve } from 'node:path';
import { expect, it } from 'vitest';
import { factsOf } from '../../src/facts/facts-of.ts';
import { addRod } from '../../src/rules/changes/add-rod.ts';
import { type RuleId, ruleIds } from '../../src/rules/rule-ids.ts';
import type { SiteChange } from '../../src/site/change.ts';
import { readSite } from '../../src/site/read-site.ts';
import { runStudy } from '../../src/study/run-study.ts';
import { tryChange } from '../../src/study/try-change.ts';

const options = { state: null, version: '0', checksum: '', date: null };

/** A house and a mast; what stands in the sections is left to the case. */
const site = (header: string, sections: Readonly<Record<string, string>>) =>
  `site: {name: Change, units: ft, ${header}}\n${Object.entries({ conductors: '', ...sections })
    .map(([name, typed]) => `${name}:${typed === '' ? ' none' : `\n${typed.replace(/^ *(?=\w)/gm, '  ')}`}\n`)
    .join('')}`;

const us = 'region: us, service: panel';
const iec = 'region: iec, service: panel';
const panel = 'panel: {kind: service panel}';
const two = 'R: {kind: rod, length: 8 ft}\nS: {kind: rod, length: 8 ft}';
const mast = 'mast: {kind: mast, metal: galvanised steel, sections: one piece}';
const gec = 'c1: {from: panel, to: R, wire: 4 AWG copper}';
const lead = 'c2: {from: mast@base, to: S, wire: 4 AWG copper}';
const apart = (header: string) =>
  site(header, { electrodes: two, supports: mast, equipment: panel, conductors: `${gec}\n${lead}` });

/** One wire that is too thin for its clause; both ends stand in the sections. */
const thin = (header: string, conductor: string, more: Readonly<Record<string, string>> = {}) =>
  site(header, {
    electrodes: two,
    supports: mast,
    bars: 'bar: {kind: main earthing bar}\ndesk: {kind: station ground bar}',
    equipment: `${panel}\nradio: {kind: transceiver}`,
    conductors: `x: {${conductor}}`,
    ...more,
  });
const down = { supports: 'rod: {kind: air terminal, height: 20 ft}', buildings: 'house: {height: 20 ft}' };
const downX = (wire: string) => `from: rod, to: R, role: down conductor, wire: ${wire}`;

/** A wire from a mast to a rod by a clamp with a name. */
const clamp = (typed: string, wire = '6 AWG copper', rod = 'copper-clad steel', buried = '') =>
  site('region: us, service: unknown', {
    electrodes: `R: {kind: rod, metal: ${rod}}`,
    supports: mast,
    joints: `k: {${typed}, on: R}`,
    conductors: `c: {from: mast@base, to: R, wire: ${wire}${buried}, joints: [exothermic weld, k]}`,
  });
/** A coax, or another line, from an antenna to a radio indoors. */
const line = (typed: string, more: Readonly<Record<string, string>> = {}) =>
  site('region: us, service: none', {
    buildings: 'house: {}',
    electrodes: 'R: {kind: rod}',
    antennas: 'beam: {kind: yagi, dc_path: yes}',
    bars: 'entry: {kind: entry panel, where: outside}',
    equipment: 'radio: {kind: transceiver, where: house}',
    lines: `feed: {${typed}}`,
    conductors: 'c1: {from: entry, to: R}',
    ...more,
  });
const walked = (says: string) =>
  site('region: us, service: unknown', {
    electrodes: 'R: {kind: rod}',
    supports: mast,
    conductors: `c: {from: mast@base, to: R, wire: 6 AWG copper, ${says}}`,
  });

/** A finding of each rule that can carry a change: where it stands, and the file. */
const cases: readonly (readonly [rule: RuleId, at: string, text: string])[] = [
  ['all-electrodes-one-system', 'S', apart(us)],
  ['antenna-rod-is-not-a-substitute', 'mast', apart(us)],
  ['iec-antenna-electrode-to-main-bar', 'S', apart(iec)],
  ['uk-multiple-earth-rf-rod-bond', 'S', apart('region: uk, service: panel, supply: tn-c-s')],
  [
    'screens-not-sole-bond',
    'mast',
    site(us, {
      electrodes: two,
      supports: mast,
      antennas: 'beam: {kind: yagi, on: mast@top}',
      equipment: `${panel}\nradio: {kind: transceiver}`,
      lines: 'coax: {kind: coax, path: [beam, {bond: mast@base}, {bond: panel}, radio]}',
      conductors: gec,
    }),
  ],
  [
    'outlet-ground-not-lightning-ground',
    'mast',
    site(us, {
      electrodes: two,
      supports: mast,
      equipment: `${panel}\nradio: {kind: transceiver}`,
      lines: 'cord: {kind: mains, path: [panel, radio], protective_conductor: yes}',
      conductors: `${gec}\nc4: {from: mast@base, to: radio, wire: 6 AWG copper}`,
    }),
  ],
  [
    'shelters-within-reach-bonded',
    'radio',
    site(us, { equipment: `${panel}\nradio: {kind: transceiver, within_reach: [desk]}\ndesk: {kind: computer}` }),
  ],
  [
    'separate-building-electrode',
    'sub',
    site(us, {
      buildings: 'house: {}\nhut: {}',
      electrodes: 'R: {kind: rod}',
      equipment: 'panel: {kind: service panel, where: house}\nsub: {kind: sub-panel, where: hut}',
      lines: 'feeder: {kind: mains, path: [panel, sub], protective_conductor: yes}',
      conductors: gec,
    }),
  ],
  ['service-electrode-known', 'panel', site(us, { electrodes: '', equipment: panel })],
  ['mast-grounded', 'mast', site(us, { electrodes: two, supports: mast, equipment: panel, conductors: gec })],
  ['iec-mast-earthed', 'mast', site(iec, { electrodes: two, supports: mast, equipment: panel, conductors: gec })],
  // the new rod is tied to the service: by itself it would be one more earth apart
  ['iec-mast-earthed', 'mast', site(iec, { electrodes: '', supports: mast, equipment: panel })],
  [
    'mast-section-joints-bonded',
    't',
    site('region: us, service: unknown', { supports: 't: {kind: crank-up tower, sections: sliding, jumpers: no}' }),
  ],
  [
    'panel-tied-to-service',
    'entry',
    site(us, { electrodes: two, bars: 'entry: {kind: entry panel}', equipment: panel, conductors: gec }),
  ],
  ['arrester-bonded', 'a1', line('kind: coax, path: [beam, a1, radio]', { arresters: 'a1: {kind: gas tube}' })],
  [
    'arrester-lead-short',
    'a1',
    line('kind: coax, path: [beam, a1, radio]', { arresters: 'a1: {kind: gas tube, on: entry, lead: 2 ft}' }),
  ],
  ['arrester-on-every-feed-line', 'feed', line('kind: coax, path: [beam, radio]', { arresters: '' })],
  ['drip-loop', 'feed', line('kind: coax, path: [beam, radio], drip_loop: no')],
  ['transmit-lead-in-standoff', 'feed', line('kind: open-wire, path: [beam, radio], standoff: 1 in')],
  ['transmitter-contact-guard', 'feed', line('kind: open-wire, path: [beam, radio], guarded: no')],
  ['service-surge-protector', 'panel', site(us, { electrodes: two, arresters: '', equipment: panel, conductors: gec })],
  [
    'equipment-on-station-bar',
    'radio',
    site(us, {
      electrodes: two,
      bars: 'desk: {kind: station ground bar}',
      equipment: `${panel}\nradio: {kind: transceiver}`,
      lines: '',
      conductors: `${gec}\nc3: {from: desk, to: R}`,
    }),
  ],
  [
    'metalwork-bonded',
    'gas',
    site(us, {
      electrodes: two,
      equipment: panel,
      metalwork: 'gas: {kind: gas pipe, bonded: no}',
      conductors: gec,
    }),
  ],
  ['rod-length-us', 'R', site(us, { electrodes: 'R: {kind: rod, length: 6 ft}', equipment: panel, conductors: gec })],
  [
    'single-rod-25-ohm',
    'R',
    site(us, { electrodes: 'R: {kind: rod, length: 8 ft}', equipment: panel, conductors: gec }),
  ],
  [
    'water-pipe-supplemented',
    'W',
    site(us, {
      electrodes: 'W: {kind: water pipe, length: 20 ft, continuous: yes}',
      equipment: panel,
      conductors: gec.replace('to: R', 'to: W'),
    }),
  ],
  ['conductor-guarded', 'c', walked('guarded: no')],
  ['support-spacing', 'c', walked('fixings: 6 ft')],
  ['ferrous-sleeve-bonded', 'c', walked('enclosure: steel pipe, enclosure_bonded: no')],
  [
    'connection-labelled',
    'c1',
    site('region: uk, service: panel', {
      electrodes: two,
      equipment: panel,
      conductors: gec.replace('wire: 4 AWG copper', 'wire: 16 mm2 copper, labelled: no'),
    }),
  ],
  ['joint-method-allowed', 'k', clamp('kind: hose clamp')],
  [
    'clamp-listed-for-burial',
    'k',
    clamp('kind: rod clamp, listed: yes, for_burial: no', undefined, undefined, ', buried: 1 ft'),
  ],
  ['clamp-metal-match', 'k', clamp('kind: rod clamp, metal: zinc, listed: yes, for_burial: yes')],
  ['no-solder-in-path', 'k', clamp('kind: solder')],
  ['no-twist-joint', 'k', clamp('kind: twist')],
  ['surface-cleaned', 'k', clamp('kind: rod clamp, cleaned: no')],
  [
    'joint-sealed-dissimilar',
    'k',
    clamp('kind: rod clamp, metal: bronze, sealed: no', undefined, 'galvanised steel', ', buried: 1 ft'),
  ],
  [
    'two-bolt-lug-on-steel',
    'k',
    clamp('kind: rod clamp')
      .replace('k: {kind: rod clamp, on: R}', 'k: {kind: bolted lug, bolts: 1, on: mast}')
      .replace('[exothermic weld, k]', '[k, exothermic weld]'),
  ],
  ['mast-ground-size', 'x', thin(us, 'from: mast, to: R, wire: 12 AWG copper')],
  [
    'antenna-electrode-bond-size',
    'x',
    thin(us, '', {
      conductors: 'x: {from: R, to: S, wire: 10 AWG copper}\nlead: {from: mast, to: S, wire: 10 AWG copper}',
    }),
  ],
  ['transmit-protective-ground-size', 'x', thin(us, 'from: mast, to: R, wire: 12 AWG copper')],
  ['transmit-operating-ground-size', 'x', thin(us, 'from: radio, to: desk, wire: 16 AWG copper')],
  [
    'communications-conductor-size',
    'x',
    thin(us, 'from: block, to: R, wire: 16 AWG copper', { arresters: 'block: {kind: telephone protector}' }),
  ],
  [
    'comms-electrode-bond-size',
    'x',
    thin(us, 'from: R, to: S, wire: 10 AWG copper', {
      electrodes: 'R: {kind: rod, serves: communications}\nS: {kind: rod, serves: service}',
    }),
  ],
  ['down-conductor-size-us', 'x', thin(us, downX('6 AWG copper'), down)],
  [
    'common-bond-main-size',
    'x',
    thin(us, 'from: R, to: S, wire: 6 AWG copper', {
      ...down,
      electrodes: 'R: {kind: rod, serves: lightning}\nS: {kind: rod}',
    }),
  ],
  [
    'bonding-conductor-size-us',
    'x',
    thin(us, 'from: frame, to: R, wire: 8 AWG copper', {
      ...down,
      electrodes: 'R: {kind: rod, serves: lightning}\nS: {kind: rod}',
      metalwork: 'frame: {kind: steel frame}',
    }),
  ],
  [
    'tower-lead-size',
    'x',
    thin(`${us}, code: {document: TIA-222-G}`, 'from: t, to: R, wire: 6 AWG copper', { supports: 't: {kind: tower}' }),
  ],
  ['tactical-conductor-size', 'x', thin(`${us}, temporary: yes`, 'from: mast, to: R, wire: 8 AWG copper')],
  ['antenna-earthing-size-iec', 'x', thin(iec, 'from: mast, to: R, wire: 6 mm2 copper')],
  ['main-bonding-size-iec', 'x', thin(iec, 'from: R, to: S, wire: 4 mm2 copper')],
  ['earthing-conductor-size-iec', 'x', thin(iec, 'from: bar, to: R, wire: 4 mm2 copper, buried: no')],
  [
    'antenna-bonding-size-iec',
    'x',
    thin(iec, 'from: a1, to: bar, wire: 2 mm2 copper, runs: open', { arresters: 'a1: {kind: gas tube}' }),
  ],
  [
    'surge-device-conductor',
    'x',
    thin(iec, 'from: spd, to: bar, wire: 4 mm2 copper', { arresters: 'spd: {kind: mains protector, test_class: II}' }),
  ],
  ['down-conductor-size-iec', 'x', thin(iec, downX('35 mm2 copper'), down)],
  ['bar-to-bar-bond-iec', 'x', thin(`${iec}, claims: class II`, 'from: bar, to: desk, wire: 10 mm2 copper')],
  [
    'body-to-bar-bond-iec',
    'x',
    thin(`${iec}, claims: class II`, 'from: pipe, to: bar, wire: 4 mm2 copper', {
      metalwork: 'pipe: {kind: water pipe}',
    }),
  ],
  ['au-down-conductor', 'x', thin('region: au, service: panel', downX('25 mm2 copper'), down)],
];

it.each(cases)('the change of %s at %s puts it right, and no hazard comes of it', (rule, at, text) => {
  const name = 'typed.site.yaml';
  const read = readSite(text, name);
  if (read.site === null) throw new Error(JSON.stringify(read.problems));
  const before = runStudy(read.site, options).study;
  const notMet = (study: typeof before) =>
    study.findings.find((f) => f.rule === rule && f.at.includes(at) && f.outcome === 'not met');
  const finding = notMet(before);
  expect(finding, `${rule} stands before`).toBeDefined();
  expect(finding!.change?.length ?? 0, 'it carries a change').toBeGreaterThan(0);
  const tried = tryChange(text, name, finding!.change as readonly SiteChange[], options);
  if ('problem' in tried) throw new Error(JSON.stringify(tried.problem));
  expect(notMet(tried.run.study)).toBeUndefined();
  expect(tried.run.study.verdict.hazards).toBeLessThanOrEqual(before.verdict.hazards);
});

it.each([
  ['us', { length: '8 ft', diameter: '5/8 in', metal: 'copper-clad steel' }],
  ['ca', { length: '10 ft', diameter: '5/8 in', metal: 'copper-clad steel' }],
  ['unknown', { length: '8 ft', diameter: '5/8 in', metal: 'copper-clad steel' }],
  ['uk', { length: '2.5 m', diameter: '16 mm', metal: 'copper-clad steel', coating: '0.25 mm' }],
  ['au', { length: '2.5 m', diameter: '16 mm', metal: 'copper-clad steel', coating: '0.25 mm' }],
])('a new rod in region %s is one that its clauses take', (region, size) => {
  const text = site(`region: ${region}, service: panel`, { electrodes: '', supports: mast, equipment: panel });
  const read = readSite(text, 'typed.site.yaml');
  const { study } = runStudy(read.site!, options);
  const found = study.findings.find((f) => /mast-(grounded|earthed)$/.test(f.rule) && f.outcome === 'not met');
  const change = found?.change as readonly SiteChange[] | undefined;
  const [rod] = addRod(factsOf(read.site!, null), 'mast@base');
  expect(rod).toMatchObject({ fields: size });
  if (region !== 'unknown') expect(change?.filter((c) => c.is === 'add' && c.section === 'conductors')).toHaveLength(2);
});

/** Files of the rules room that a file imports, near and far; what it asks of another rule brings no change along. */
function importsOf(file: string, seen = new Set<string>()): ReadonlySet<string> {
  for (const [, path] of readFileSync(file, 'utf8').matchAll(/from '(\.[^']+)'/g)) {
    const found = resolve(dirname(file), path!);
    const isRule = (ruleIds as readonly string[]).includes(basename(found, '.ts'));
    if (!found.includes('/src/rules/') || isRule || seen.has(found)) continue;
    seen.add(found);
    importsOf(found, seen);
  }
  return seen;
}

/** Whether a rule may give a change: by what it imports; a rule on sizes says how the wire is sold. */
function mayChange(id: string): boolean {
  const root = resolve('src/rules');
  const name = readdirSync(root, { recursive: true, encoding: 'utf8' }).find((f) => basename(f) === `${id}.ts`)!;
  const file = join(root, name);
  const all = [file, ...importsOf(file)];
  const makes = (f: string) => /from '[^']*changes\/(?!thicker-wire)/.test(readFileSync(f, 'utf8'));
  const sells = /'(?:awg|mm2)'|mainVerdict/.test(readFileSync(file, 'utf8'));
  return sells || all.some((f) => !f.includes('/changes/') && makes(f));
}

it('every rule that may give a change has its case, and no other', () => {
  expect([...new Set(cases.map(([rule]) => rule))].sort()).toEqual(ruleIds.filter(mayChange).sort());
});
