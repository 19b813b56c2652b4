// A large invented station: as many huts in a row as it takes, each with a tower, its feed lines, boxes and bonds. Same
// seed, same text. Written to stdout when run by hand: node tests/bench/large-site.mjs [seed] [parts].
import { pathToFileURL } from 'node:url';

const PARTS_A_HUT = 200;
const ANTENNAS_A_HUT = 22;
const HUT_STEP_FT = 220;

/** Text of a site file with exactly `parts` parts (a multiple of those of a hut) and 6 electrodes for each hut. */
export function largeSite(seed = 1, parts = 2000, partsAHut = PARTS_A_HUT) {
  const site = { random: mulberry32(seed), sections: new Map(), partsAHut };
  addService(site);
  const huts = parts / partsAHut;
  for (let hut = 1; hut <= huts; hut++) {
    addEarth(site, hut);
    addTower(site, hut);
    for (let n = 1; n <= ANTENNAS_A_HUT; n++) addStation(site, hut, n);
    addBonds(site, hut);
    fillUp(site, hut);
  }
  return [...head(huts), ...[...site.sections].flatMap(([name, rows]) => [`${name}:`, ...rows])]
    .join('\n')
    .concat('\n');
}

function head(huts) {
  const hut = (_, i) => {
    const e = i * HUT_STEP_FT;
    return `  hut-${i + 1}: {corners: [[${e}, 0], [${e + 40}, 0], [${e + 40}, 28], [${e}, 28]], height: 12 ft}`;
  };
  return [
    'site: {name: Long Row, region: us, units: ft, service: main-panel, supply: us-grounded}',
    'soil: {layers: [{resistivity: 80 to 140 ohm m, thickness: 6 ft}, {resistivity: 60 ohm m}], known: measured}',
    'buildings:',
    ...Array.from({ length: huts }, hut),
    'states: {storm: {says: coax pulled at the desks, open: [plug-1-2, plug-1-4]}}',
  ];
}

/** The service panel and its lead stand for two of the first hut's parts. */
function addService(site) {
  add(
    site,
    'equipment',
    'main-panel',
    'kind: service panel, at: [0, 2, 4], where: hut-1, neutral_bonded: yes, rating: 200 A',
  );
  wire(site, 'main-lead', 'main-panel', 'rod-1-1', 3);
}

/** A ring with three rods, three rods at the tower and one lone rod at a guy's anchor. */
function addEarth(site, hut) {
  const e = (hut - 1) * HUT_STEP_FT;
  const rod = 'length: 8 ft, diameter: 5/8 in, metal: copper-clad steel';
  const places = [
    [e - 6, 0],
    [e + 20, 34],
    [e + 46, 0],
  ];
  places.forEach(([x, y], i) => {
    add(site, 'electrodes', `rod-${hut}-${i + 1}`, `kind: rod, at: [${x}, ${y}], ${rod}`);
    if (chance(site, 0.9)) wire(site, `rod-lead-${hut}-${i + 1}`, `rod-${hut}-${i + 1}`, `ring-${hut}`, 3);
  });
  const route = [
    [e - 2, -2],
    [e + 42, -2],
    [e + 42, 30],
    [e - 2, 30],
    [e - 2, -2],
  ]
    .map((p) => `[${p}]`)
    .join(', ');
  add(
    site,
    'electrodes',
    `ring-${hut}`,
    `kind: buried wire, route: [${route}], closed: yes, depth: 30 in, wire: 2 AWG tinned copper`,
  );
  add(
    site,
    'electrodes',
    `foot-${hut}`,
    `kind: rods, count: 3, layout: triangle, spacing: 16 ft, at: [${e + 100}, 20], ${rod}, joined: yes, wire: 4 AWG copper`,
  );
  add(site, 'electrodes', `anchor-${hut}`, `kind: rod, at: [${e + 100}, 90], ${rod}`);
}

function addTower(site, hut) {
  const e = (hut - 1) * HUT_STEP_FT;
  const guy = `guys: {guy-${hut}: {anchor: [${e + 100}, 88], metal: galvanised steel, turnbuckle: yes, bypass: ${pick(site, ['yes', 'no', 'unknown'])}}}`;
  const sections = pick(site, ['bolted', 'one piece', 'welded', 'sliding']);
  add(
    site,
    'supports',
    `tower-${hut}`,
    `kind: lattice tower, at: [${e + 100}, 20], height: 90 ft, legs: 3, metal: galvanised steel, sections: ${sections}, ${guy}`,
  );
  for (const leg of [1, 2, 3]) wire(site, `leg-${hut}-${leg}`, `tower-${hut}.leg${leg}@base`, `foot-${hut}`, 6);
  if (hut % 4 !== 0) wire(site, `tower-tie-${hut}`, `foot-${hut}`, `ring-${hut}`, 60);
  wire(site, `guy-lead-${hut}`, `guy-${hut}@tower`, `anchor-${hut}`, 5);
  add(site, 'bars', `foot-bar-${hut}`, `kind: tower bar, on: tower-${hut}@2 ft`);
}

/** An antenna, its line by way of an arrester to a radio, the mains cord, the strip and the bond. */
function addStation(site, hut, n) {
  const [tower, entry, radio] = [`tower-${hut}`, `entry-${hut}`, `radio-${hut}-${n}`];
  const height = 30 + 2 * n;
  const touches = pick(site, ['yes', 'yes', 'no', 'unknown']);
  add(
    site,
    'antennas',
    `antenna-${hut}-${n}`,
    `kind: ${pick(site, ['yagi', 'J-pole', 'half-wave dipole'])}, on: ${tower}@${height} ft, dc_path: ${pick(site, ['yes', 'no', 'unknown'])}, touches_support: ${touches}`,
  );
  add(
    site,
    'arresters',
    `arrester-${hut}-${n}`,
    `kind: gas tube, on: ${entry}, sparkover: 230 V, listed: ${pick(site, ['yes', 'unknown'])}`,
  );
  add(
    site,
    'equipment',
    radio,
    `kind: ${pick(site, ['transceiver', 'receiver', 'amplifier'])}, where: hut-${hut}, power: 100 W`,
  );
  const low = chance(site, 0.8) ? `{bond: ${tower}@2 ft}, ` : '';
  const stops = `[antenna-${hut}-${n}, {bond: ${tower}@${height - 2} ft}, ${low}arrester-${hut}-${n}, {plug: plug-${hut}-${n}}, ${radio}]`;
  add(site, 'lines', `feed-${hut}-${n}`, `kind: coax, cable: RG-213, path: ${stops}`);
  add(
    site,
    'lines',
    `cord-${hut}-${n}`,
    `kind: mains, path: [panel-${hut}, ${radio}], length: 20 ft, protective_conductor: yes`,
  );
  wire(site, `strip-${hut}-${n}`, `arrester-${hut}-${n}`, entry, 1);
  if (chance(site, 0.9)) wire(site, `bond-${hut}-${n}`, radio, `bar-${hut}`, 4);
}

function addBonds(site, hut) {
  const e = (hut - 1) * HUT_STEP_FT;
  add(site, 'bars', `entry-${hut}`, `kind: entry panel, at: [${e + 40}, 20, 2], where: outside`);
  add(site, 'bars', `bar-${hut}`, `kind: station ground bar, at: [${e + 36}, 20, 3], where: hut-${hut}`);
  add(
    site,
    'equipment',
    `panel-${hut}`,
    `kind: sub-panel, at: [${e + 2}, 2, 4], where: hut-${hut}, neutral_bonded: no`,
  );
  add(
    site,
    'metalwork',
    `pipe-${hut}`,
    `kind: water pipe, route: [[${e + 30}, 0], [${e + 30}, -30]], bonded: ${pick(site, ['yes', 'unknown', 'no'])}, continuous: ${pick(site, ['yes', 'unknown'])}`,
  );
  add(site, 'joints', `clamp-${hut}`, `kind: ${jointKind(site)}, on: entry-${hut}, listed: unknown, accessible: yes`);
  add(
    site,
    'conductors',
    `entry-a-${hut}`,
    `from: ring-${hut}, to: entry-${hut}, wire: 2 AWG copper, length: 5 ft, joints: [exothermic weld, clamp-${hut}]`,
  );
  wire(site, `entry-b-${hut}`, `entry-${hut}`, `rod-${hut}-3`, 9);
  wire(site, `bar-a-${hut}`, `bar-${hut}`, `entry-${hut}`, 6);
  wire(site, `bar-b-${hut}`, `bar-${hut}`, `panel-${hut}`, 30);
  wire(site, `foot-bar-lead-${hut}`, `foot-bar-${hut}`, `foot-${hut}`, 8);
  if (chance(site, 0.5)) wire(site, `untraced-${hut}`, `ring-${hut}`, 'unknown', 0);
  if (hut === 1) return;
  if (hut !== 5) wire(site, `link-a-${hut}`, `ring-${hut - 1}`, `ring-${hut}`, HUT_STEP_FT);
  if (hut % 3 === 0) wire(site, `link-b-${hut}`, `foot-${hut - 1}`, `foot-${hut}`, HUT_STEP_FT);
  const panel = hut === 2 ? 'main-panel' : `panel-${hut - 1}`;
  if (hut !== 8)
    add(
      site,
      'lines',
      `feeder-${hut}`,
      `kind: mains, path: [${panel}, panel-${hut}], length: 220 ft, protective_conductor: yes`,
    );
}

/** Further boxes with bonds of their own, some by way of the box before, up to the hut's share of parts. */
function fillUp(site, hut) {
  const left = () => hut * site.partsAHut - count(site);
  for (let n = 1; left() > 0; n++) {
    add(
      site,
      'equipment',
      `box-${hut}-${n}`,
      `kind: ${pick(site, ['computer', 'power supply', 'controller', 'rack'])}, where: hut-${hut}`,
    );
    const to = n > 1 && chance(site, 0.3) ? `box-${hut}-${n - 1}` : `bar-${hut}`;
    if (left() > 0) wire(site, `box-bond-${hut}-${n}`, `box-${hut}-${n}`, to, 5);
    if (left() > 0 && chance(site, 0.5))
      add(
        site,
        'lines',
        `data-${hut}-${n}`,
        `kind: network, path: [box-${hut}-${n}, radio-${hut}-${1 + (n % ANTENNAS_A_HUT)}]`,
      );
  }
}

function wire(site, id, from, to, lengthFt) {
  const gauge = pick(site, [
    '2 AWG tinned copper',
    '4 AWG copper',
    '6 AWG copper',
    'strap 3 in x 0.022 in copper',
    'unknown',
  ]);
  const length = lengthFt > 0 && chance(site, 0.9) ? `${lengthFt} ft` : 'unknown';
  add(
    site,
    'conductors',
    id,
    `from: ${from}, to: ${to}, wire: ${gauge}, length: ${length}, joints: [${jointKind(site)}, ${jointKind(site)}]`,
  );
}

function jointKind(site) {
  return pick(site, [
    'bolted lug',
    'exothermic weld',
    'rod clamp',
    'irreversible crimp',
    'hose clamp',
    'solder',
    'unknown',
  ]);
}

function add(site, section, id, fields) {
  const rows = site.sections.get(section) ?? [];
  site.sections.set(section, rows);
  rows.push(`  ${id}: {${fields}}`);
}

function count(site) {
  return [...site.sections.values()].reduce((sum, rows) => sum + rows.length, 0);
}

function pick(site, list) {
  return list[Math.floor(site.random() * list.length)];
}

function chance(site, share) {
  return site.random() < share;
}

function mulberry32(from) {
  let state = from >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = Math.imul(state ^ (state >>> 15), state | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}

if (process.argv[1] !== undefined && import.meta.url === pathToFileURL(process.argv[1]).href)
  process.stdout.write(largeSite(Number(process.argv[2] ?? 1), Number(process.argv[3] ?? 2000)));
