import { expect, it } from 'vitest';
import { jsonSchema } from '../../src/site/json-schema.ts';
import type { SiteRead } from '../../src/site/read-site.ts';
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
const studies = 1000;
const bases = siteTexts();
/** Most mutations are of small files, for time. */
const small = bases.filter(({ text }) => text.length < 1000);
const trees = new Map(bases.map(({ file, text }) => [file, looseOf(text)]));
const pool = poolOf([...trees.values()]);
const fitsSchema = validator(jsonSchema());
const layouts: readonly Layout[] = ['json', 1, 2, 3];

interface Mutated {
  readonly bytes: Uint8Array;
  readonly ofTree: boolean;
  readonly fits: boolean;
}

function mutated(by: Chance): Mutated {
  const base = by.pick(by.often(0.98) ? small : bases);
  if (!by.often(ofTrees)) return { bytes: mutateText(base.text, by), ofTree: false, fits: false };
  const tree = mutateTree(trees.get(base.file)!, by, pool);
  const plain = plainOf(tree);
  const bytes = new TextEncoder().encode(printed(tree, by.pick(layouts)));
  return { bytes, ofTree: true, fits: plain !== null && fitsSchema(plain.value) === null };
}

/** Every problem has its place and whole sentences, and nothing of the program shows. */
function expectSaid(problem: Parameters<typeof sayProblem>[0]): void {
  const { line, column } = problem.source;
  const said = sayProblem(problem, 'x.site.yaml');
  const start = `x.site.yaml:${line}:${column}: `;
  const isWhole = line >= 1 && column >= 1 && said.startsWith(start) && /[.?]$/.test(said) && !/[\r\n]/.test(said);
  const ownWords = said
    .slice(start.length)
    .replace(problem.path, '')
    .replaceAll(/`[^`]*`/g, '');
  const shows = /undefined|\[object |NaN|^\s+at |cannot be used \(|\{\w+\}/.test(ownWords);
  if (!isWhole || shows) throw new Error(`badly said: ${said}`);
}

function expectAlike(again: SiteRead, first: SiteRead): void {
  const both = [again, first].map(({ site, problems }) => JSON.stringify({ site, problems }));
  if (both[0] !== both[1]) throw new Error('read twice, not alike');
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
      if (n % 50 === 0) expectAlike(readSiteBytes(bytes, 'x.site.yaml'), { site, problems });
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
}, 1_800_000);
