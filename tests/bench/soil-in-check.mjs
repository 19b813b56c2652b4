// What the soil adds to a command, in bare nodes: an invented site of 400 parts in two layers, with the four conditions
// that the ground can be in as states, against the same file with the resistance of each electrode stated in its place (so
// that both work out the default strike), and against the file with neither, of which no strike can be worked out.
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { childTime } from './child-time.mjs';
import { inTurns, median } from './in-turns.mjs';
import { largeSite } from './large-site.mjs';

const LIMIT_OF_CHECK = 1.5;
const PARTS = 400;
const conditions = 'winter: {frozen: yes}, drought: {dry: yes}, spring: {wet: yes}, ';

/** The benches: what soil adds to `check`, and, for information, to the whole study with every season (`check --json`). */
export async function soilInCheckBench({ command, scratch, rounds }) {
  const [withSoil, stated, without] = ['soil', 'stated', 'no-soil'].map((name) => join(scratch, `${name}.site.yaml`));
  const text = largeSite(1, PARTS)
    .replace('states: {', `states: {${conditions}`)
    .replace('known: measured}', 'frost: 3 ft, known: measured}');
  writeFileSync(withSoil, text);
  const plain = text.replace(/^soil:.*\n/m, '');
  writeFileSync(without, plain);
  writeFileSync(stated, withStatedResistances(plain));
  const json = join(scratch, 'study.json');
  const run = (...args) => childTime(process.execPath, args, [0, 1]);
  const times = await inTurns(
    {
      bare: () => run('-e', '0'),
      check: () => run(command, 'check', withSoil),
      stated: () => run(command, 'check', stated),
      plain: () => run(command, 'check', without),
      study: () => run(command, 'check', withSoil, '--json', '-o', json),
    },
    rounds,
  );
  const { segments } = JSON.parse(readFileSync(json, 'utf8')).earth.solve;
  const own = (name) => median(times[name].map((t) => t.cpuMs ?? t.wallMs));
  const added = (name, to) => (own(name) - own(to)) / own('bare');
  const ms = (name) => `${own(name).toFixed(0)} ms`;
  const detail = `${segments} segments, two layers, as typed and four states; bare node ${ms('bare')}, with soil ${ms('check')}, resistances stated ${ms('stated')}, neither ${ms('plain')}`;
  return [
    { name: 'what soil adds to check, in bare nodes', ratio: added('check', 'stated'), most: LIMIT_OF_CHECK, detail },
    {
      name: 'what soil and the default strike that it makes possible add to check, in bare nodes',
      ratio: added('check', 'plain'),
      most: null,
      detail,
    },
    {
      name: 'what soil adds to check --json (every season, curves, surface), in bare nodes',
      ratio: added('study', 'plain'),
      most: null,
      detail,
    },
  ];
}

/** The text with a measured resistance in every row of its electrodes. */
function withStatedResistances(text) {
  const [before, rest] = text.split(/(?<=^electrodes:\n)/m);
  const end = rest.search(/^\S/m);
  const rows = rest.slice(0, end).replaceAll(/\}$/gm, ', resistance: {is: 40 ohm, known: measured}}');
  return before + rows + rest.slice(end);
}
