import { expect, it } from 'vitest';
import { jsonSchema } from '../../src/site/json-schema.ts';
import { readSiteBytes } from '../../src/site/read-site-bytes.ts';
import type { Site } from '../../src/site/site.ts';
import { runStudy } from '../../src/study/run-study.ts';
import { sayProblem } from '../../src/words/say-problem.ts';
import { type Chance, chance } from './chance.ts';
import { type Layout, looseOf, plainOf, printed } from './loose-tree.ts';
import { mutateText } from './mutate-text.ts';
import { mutateTree, poolOf } from './mutate-tree.ts';
import { validator } from './schema-validator.ts';
import { siteTexts } from './site-texts.ts';

const files = 20_000;
const ofTrees = 0.6;
/** Sites that are worked out to the end, each in one of its states. */
const studies = 1200;
const bases = siteTexts().filter(({ text }) => text.length < 2000);
const trees = bases.map(({ text }) => looseOf(text));
const pool = poolOf(trees);
const fitsSchema = validator(jsonSchema());
const layouts: readonly Layout[] = ['json', 1, 2, 3];

interface Mutated {
  readonly bytes: Uint8Array;
  readonly ofTree: boolean;
  readonly fits: boolean;
}

function mutated(by: Chance): Mutated {
  const index = by.below(bases.length);
  if (!by.often(ofTrees)) return { bytes: mutateText(bases[index]!.text, by), ofTree: false, fits: false };
  const tree = mutateTree(trees[index]!, by, pool);
  const plain = plainOf(tree);
  const bytes = new TextEncoder().encode(printed(tree, by.pick(layouts)));
  return { bytes, ofTree: true, fits: plain !== null && fitsSchema(plain.value) === null };
}

/** Every problem has its place and whole sentences, and nothing of the program shows. */
function expectSaid(problem: Parameters<typeof sayProblem>[0]): void {
  const { line, column } = problem.source;
  const said = sayProblem(problem, 'x.site.yaml');
  const isWhole = line >= 1 && column >= 1 && said.startsWith(`x.site.yaml:${line}:${column}: `) && said.endsWith('.');
  const shows = /undefined|\[object |NaN|\n|^\s+at |cannot be used \(/.test(said.replaceAll(/`[^`]*`/g, ''));
  if (!isWhole || shows) throw new Error(`badly said: ${said}`);
}

function studyOf(site: Site, by: Chance): string {
  const state = by.pick([null, ...site.states.map((s) => s.id)]);
  const { study, faults } = runStudy(site, { state, version: '0', checksum: '', date: null });
  if (faults.length > 0) throw new Error(`${faults[0]!.rule}: ${(faults[0]!.error as Error).stack}`);
  return JSON.stringify(study);
}

it(`${files} mutated files end in a site or in problems with their places, never in a crash`, () => {
  const by = chance(20_260_502);
  const counts = { ofTrees: 0, fitting: 0, read: 0, fittingRead: 0, studies: 0, slowestMs: 0 };
  for (let n = 0; n < files; n++) {
    const { bytes, ofTree, fits } = mutated(by);
    const began = performance.now();
    const where = () => `file ${n}:\n${new TextDecoder().decode(bytes).slice(0, 4000)}`;
    try {
      const { site, problems } = readSiteBytes(bytes, 'x.site.yaml');
      if ((site === null) === (problems.length === 0)) throw new Error('neither a site nor a problem, or both');
      problems.forEach(expectSaid);
      counts.ofTrees += ofTree ? 1 : 0;
      counts.fitting += fits ? 1 : 0;
      counts.read += site === null ? 0 : 1;
      counts.fittingRead += fits && site !== null ? 1 : 0;
      const again = n % 50 === 0 ? readSiteBytes(bytes, 'x.site.yaml') : null;
      if (again !== null && JSON.stringify(again) !== JSON.stringify({ site, problems }))
        throw new Error('read twice, not alike');
      if (site === null || counts.studies >= studies || !by.often(0.2)) continue;
      counts.studies++;
      const seed = by.below(2 ** 31);
      const study = studyOf(site, chance(seed));
      if (counts.studies % 10 === 0 && studyOf(site, chance(seed)) !== study)
        throw new Error('worked out twice, not alike');
    } catch (error) {
      throw new Error(`${(error as Error).stack}\n${where()}`);
    } finally {
      counts.slowestMs = Math.max(counts.slowestMs, performance.now() - began);
    }
  }
  const share = (n: number) => `${Math.round((100 * n) / files)} %`;
  process.stdout.write(
    `${files} mutated files: ${share(counts.ofTrees)} of the parsed tree, ${share(counts.fitting)} fit the schema, ` +
      `${share(counts.read)} read; ${counts.studies} studies; slowest ${Math.round(counts.slowestMs)} ms\n`,
  );
  expect(counts.ofTrees).toBeGreaterThanOrEqual(files / 2);
  expect(counts.fitting).toBeGreaterThanOrEqual(files / 4);
  expect(counts.read).toBeGreaterThan(files / 20);
  expect(counts.studies).toBe(studies);
  expect(counts.slowestMs).toBeLessThan(5000);
}, 900_000);
