import type { Facts } from '../facts/facts.ts';
import { partIndex } from '../facts/part-index.ts';
import { partSections, type SourcePlace } from '../site/site.ts';
import { type Speech, say, type Values } from '../words/say.ts';
import { figureNames, type StudyWord, studyWords } from '../words/study.ts';
import type { Study } from './study.ts';

type Unknown = Study['unknowns'][number];

/** Lines that are asked about until one is typed or said not to come in. */
const askedLines: readonly string[] = ['mains', 'telephone', 'cable tv', 'network'];

/** Makes one entry from its path, message keys, values and place. */
type Note = (path: string, why: StudyWord, settle: StudyWord, values?: Values, place?: SourcePlace) => Unknown;

/** What is not known and keeps a figure or an answer open, with what would settle it; by subject, then in order of the file. */
export function unknownsOf(facts: Facts, speech: Speech): readonly Unknown[] {
  const sentence = (key: StudyWord, values: Values = {}) => say(studyWords[key], values, speech);
  const note: Note = (path, why, settle, values = {}, place) => ({
    path,
    why: sentence(why, values),
    settle: sentence(settle, values),
    line: place?.line ?? null,
    column: place?.column ?? null,
  });
  return [ofTheWhole, ofLines, ofSoil, ofElectrodes, ofConductors, ofJoints, ofParts].flatMap((list) =>
    list(facts, note),
  );
}

function ofTheWhole({ sections, bonding, header }: Facts, note: Note): readonly Unknown[] {
  return [
    ...(bonding.service.is === 'unknown' ? [note('site.service', 'service unknown', 'find service')] : []),
    ...((header.supply === null || header.supply === 'unknown') && bonding.service.is !== 'none'
      ? [note('site.supply', 'supply unknown', 'find supply')]
      : []),
    ...partSections
      .filter((s) => s !== 'joints' && sections[s] === 'missing')
      .map((s) => note(s, 'section not looked at', 'type section', { section: s })),
    ...header.incomplete.map((s) => note(s, 'section incomplete', 'complete section', { section: s })),
  ];
}

function ofLines({ site }: Facts, note: Note): readonly Unknown[] {
  return [
    ...askedLines
      .filter((kind) => !site.header.without.includes(kind) && !site.lines.some((l) => l.kind === kind))
      .map((kind) => note(`lines (${kind})`, 'line not asked', 'type line', { kind })),
    ...site.lines
      .filter((l) => l.path.some((stop) => stop.is === 'unknown'))
      .map((l) => note(`lines.${l.id}.path`, 'stop unknown', 'follow line', {}, l.source)),
  ];
}

/** Typed, named or read: any of them will do. */
function ofSoil({ site, ground }: Facts, note: Note): readonly Unknown[] {
  const isAsked = site.electrodes.length > 0 || site.soil !== null;
  return isAsked && !isSoilKnown(ground) ? [note('soil', 'soil unknown', 'soil settle')] : [];
}

function isSoilKnown({ conditions }: Facts['ground']): boolean {
  return conditions[0]!.ground.soil !== null;
}

/** Not the soil, which has an entry of its own. */
function typedNames({ part, missing }: Facts['electrodes'][number]): readonly string[] {
  // a group of rods stands in a ring or a star by its radius
  const nameOf = (figure: string) =>
    figure === 'radiusM' && part.kind === 'rods' ? 'radius' : (figureNames[figure] ?? figure);
  return [...new Set(missing.filter((figure) => !figure.startsWith('soil.')).map(nameOf))];
}

function ofElectrodes({ electrodes, site }: Facts, note: Note): readonly Unknown[] {
  return [
    ...electrodes
      .filter((e) => e.aloneOhm === null)
      .flatMap((e) => {
        const missing = typedNames(e);
        if (missing.length === 0) return [];
        return [note(`electrodes.${e.id}`, 'electrode missing', 'electrode settle', { missing }, e.part.source)];
      }),
    ...site.electrodes
      .filter((e) => e.kind === 'rods' && e.joined === 'unknown')
      .map((e) => note(`electrodes.${e.id}.joined`, 'joined unknown', 'look joined', {}, e.source)),
  ];
}

function ofConductors({ conductors }: Facts, note: Note): readonly Unknown[] {
  return conductors.flatMap(({ id, part, lengthM, areaM2, wire, ends }) => [
    ...(lengthM === null ? [note(`conductors.${id}.length`, 'length unknown', 'measure length', {}, part.source)] : []),
    ...(areaM2 === null || wire?.metal == null
      ? [note(`conductors.${id}.wire`, 'wire unknown', 'look wire', {}, part.source)]
      : []),
    ...(ends.includes(null) ? [note(`conductors.${id}`, 'end unknown', 'trace end', {}, part.source)] : []),
  ]);
}

function ofJoints({ joints }: Facts, note: Note): readonly Unknown[] {
  return joints.filter((j) => j.kind === null).map((j) => note(j.id, 'joint unknown', 'look joint'));
}

function ofParts({ site }: Facts, note: Note): readonly Unknown[] {
  return partIndex(site).all.flatMap((p) => [
    ...(p.present === 'unknown'
      ? [note(`${p.section}.${p.id}.present`, 'perhaps there', 'look there', {}, p.source)]
      : []),
    ...(p.bonded === 'yes'
      ? [note(`${p.section}.${p.id}.bonded`, 'undescribed bond', 'describe bond', {}, p.source)]
      : []),
  ]);
}
