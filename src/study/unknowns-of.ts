import type { Facts } from '../facts/facts.ts';
import { partIndex } from '../facts/part-index.ts';
import { partSections, type SourcePlace } from '../site/site.ts';
import { type Speech, say, type Values } from '../words/say.ts';
import { type StudyWord, studyWords } from '../words/study.ts';
import type { Study } from './study.ts';

type Unknown = Study['unknowns'][number];

/** Lines that are asked about until one is typed or said not to come in. */
const askedLines: readonly string[] = ['mains', 'telephone', 'cable tv', 'network'];

/** What is not known and keeps a figure or an answer open, with what would settle it; by path. */
export function unknownsOf(facts: Facts, speech: Speech): readonly Unknown[] {
  const { site } = facts;
  const index = partIndex(site);
  const sentence = (key: StudyWord, values: Values = {}) => say(studyWords[key], values, speech);
  const entry = (
    path: string,
    why: StudyWord,
    settle: StudyWord,
    values: Values = {},
    place?: SourcePlace,
  ): Unknown => ({
    path,
    why: sentence(why, values),
    settle: sentence(settle, values),
    line: place?.line ?? null,
    column: place?.column ?? null,
  });
  const sections = partSections
    .filter((s) => s !== 'joints' && facts.sections[s] === 'missing')
    .map((s) => entry(s, 'section not looked at', 'type section', { section: s }));
  const lines = askedLines
    .filter((kind) => !site.header.without.includes(kind) && !site.lines.some((l) => l.kind === kind))
    .map((kind) => entry(`lines (${kind})`, 'line not asked', 'type line', { kind }));
  const conductors = facts.conductors.flatMap((c): Unknown[] => [
    ...(c.lengthM === null
      ? [entry(`conductors.${c.id}.length`, 'length unknown', 'measure length', {}, c.part.source)]
      : []),
    ...(c.areaM2 === null || c.wire?.metal == null
      ? [entry(`conductors.${c.id}.wire`, 'wire unknown', 'look wire', {}, c.part.source)]
      : []),
    ...(c.ends.includes(null) ? [entry(`conductors.${c.id}`, 'end unknown', 'trace end', {}, c.part.source)] : []),
  ]);
  const joints = facts.joints.filter((j) => j.kind === null).map((j) => entry(j.id, 'joint unknown', 'look joint'));
  const electrodes = facts.electrodes
    .filter((e) => e.aloneOhm === null && facts.site.soil !== null)
    .map((e) =>
      entry(`electrodes.${e.id}`, 'electrode missing', 'electrode settle', { missing: e.missing }, e.part.source),
    );
  const soil = site.soil === null && site.electrodes.length > 0 ? [entry('soil', 'soil unknown', 'soil settle')] : [];
  const bonds = index.all
    .filter((p) => p.bonded === 'yes')
    .map((p) => entry(`${p.section}.${p.id}.bonded`, 'undescribed bond', 'describe bond', {}, p.source));
  const joined = site.electrodes
    .filter((e) => e.kind === 'rods' && e.joined === 'unknown')
    .map((e) => entry(`electrodes.${e.id}.joined`, 'joined unknown', 'look joined', {}, e.source));
  return [...sections, ...lines, ...soil, ...electrodes, ...conductors, ...joints, ...bonds, ...joined];
}
