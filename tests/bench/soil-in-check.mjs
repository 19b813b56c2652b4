// What the soil adds to a command, in bare nodes: an invented site of 400 parts in two layers, with the four conditions
// that the ground can be in as states, against the same file without its soil.
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
  const [withSoil, without] = ['soil', 'no-soil'].map((name) => join(scratch, `${name}.site.yaml`));
  const text = largeSite(1, PARTS)
    .replace('states: {', `states: {${conditions}`)
    .replace('known: measured}', 'frost: 3 ft, known: measured}');
  writeFileSync(withSoil, text);
  writeFileSync(without, text.replace(/^soil:.*\n/m, ''));
  const json = join(scratch, 'study.json');
  const run = (...args) => childTime(process.execPath, args, [0, 1]);
  const times = await inTurns(
    {
      bare: () => run('-e', '0'),
      check: () => run(command, 'check', withSoil),
      plain: () => run(command, 'check', without),
      study: () => run(command, 'check', withSoil, '--json', '-o', json),
    },
    rounds,
  );
  const { segments } = JSON.parse(readFileSync(json, 'utf8')).earth.solve;
  const own = (name) => median(times[name].map((t) => t.cpuMs ?? t.wallMs));
  const added = (name) => (own(name) - own('plain')) / own('bare');
  const detail = `${segments} segments, two layers, as typed and four states; bare node ${own('bare').toFixed(0)} ms, without soil ${own('plain').toFixed(0)} ms`;
  return [
    { name: 'what soil adds to check, in bare nodes', ratio: added('check'), most: LIMIT_OF_CHECK, detail },
    {
      name: 'what soil adds to check --json (every season, curves, surface), in bare nodes',
      ratio: added('study'),
      most: null,
      detail,
    },
  ];
}
