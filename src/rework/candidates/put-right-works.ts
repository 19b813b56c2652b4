import type { Study, StudyFinding } from '../../study/study.ts';
import type { SiteChange } from '../../study/try-change.ts';
import type { ChangeValue } from '../../study/written-lists.ts';
import type { Work } from '../work.ts';
import { anchorWorks } from './anchor-works.ts';
import { bendWorks } from './bend-works.ts';
import { mountFor, neededForPanel, type Panel } from './entry-panel.ts';
import { feedersFirst } from './feeders.ts';
import { each, newWork } from './new-work.ts';
import { forgetReading } from './old-reading.ts';
import { plannedLength } from './owner-units.ts';
import { ownerOf, type Scene } from './scene.ts';

/** Small things that one field of the file says: each with sentences of its own. */
export function putRightWorks(scene: Scene): readonly Work[] {
  return [
    ...neutrals(scene),
    ...pulledLines(scene),
    ...bendWorks(scene),
    ...electrodes(scene),
    ...rodsIndoors(scene),
    ...anchorWorks(scene),
  ];
}

interface Fix {
  readonly words: string;
  readonly subject: string;
  readonly section: 'equipment' | 'electrodes';
  readonly fields: Readonly<Record<string, ChangeValue>>;
  readonly answers: readonly StudyFinding[];
  readonly values?: Readonly<Record<string, unknown>>;
}

function fix({ words, subject, section, fields, answers, values = {} }: Fix): Work {
  const changes = Object.entries(fields).map(
    ([field, value]): SiteChange => ({ is: 'set', section, id: subject, field, value }),
  );
  return newWork({
    kind: 'put-right',
    words,
    subject,
    at: [subject],
    answers: answers.map((f) => f.id),
    changes,
    values: { part: subject, ...values },
  });
}

/**
 * A neutral bonded a second time: the screw or strap comes out, once the feeder has a protective conductor. One bonded nowhere
 * is for a person to look into.
 */
function neutrals(scene: Scene): readonly Work[] {
  const again = scene.findings('neutral-bonded-once').filter((f) => f.because.key === 'bonded again');
  return again.flatMap((f) => {
    const [box] = f.at;
    if (box === undefined || scene.part(box) === undefined) return [];
    const fields = { neutral_bonded: 'no' };
    const work = fix({ words: 'neutral', subject: box, section: 'equipment', fields, answers: [f] });
    return [{ ...work, needs: feedersFirst(scene, box) }];
  });
}

/**
 * Lines that are pulled and left lying: each gets a grounded place to go, in every state of the file. A receptacle is grounded
 * by what it is bolted to, so that the panel stands, and is tied, before.
 */
function pulledLines(scene: Scene): readonly Work[] {
  const wrong = scene.findings('spare-and-disconnected-lines');
  const lines = scene.study.lines.filter((l) => wrong.some((f) => f.at[0] === l.id));
  const states = scene.study.written?.states ?? [];
  const changes = states.flatMap(({ id, open }): readonly SiteChange[] => {
    const grounded = open.map((o) => (isOf(o, lines) ? { ...asFields(o), end: 'grounded' } : o));
    const same = JSON.stringify(grounded) === JSON.stringify(open);
    return same ? [] : [{ is: 'set', section: 'states', id, field: 'open', value: grounded }];
  });
  if (lines.length === 0 || changes.length === 0) return [];
  const mounts = panelsOf(scene, lines);
  const panels = mounts.map((m) => m.id);
  return [
    newWork({
      kind: 'put-right',
      words: 'pulled-lines',
      subject: 'pulled-lines',
      at: [...lines.map((l) => l.id), ...panels],
      answers: wrong.map((f) => f.id),
      changes,
      needs: [...new Set(mounts.flatMap((m) => neededForPanel(scene, m)))],
      materials: [each('grounded receptacle', lines.length), each('bolted lug', lines.length)],
      values: { lines: lines.map((l) => l.id).join(', '), count: lines.length, panels: panels.join(', ') || null },
    }),
  ];
}

/** Entry panels of the buildings that these lines go into, where anybody can tell which those are. */
function panelsOf(scene: Scene, lines: readonly Study['lines'][number][]): readonly Panel[] {
  const buildings = lines.flatMap((l) => l.crossings.slice(0, 1).map((c) => c.building));
  const found = [...new Set(buildings)].flatMap((building) => mountFor(scene, building, true) ?? []);
  return found.filter((m, i) => found.findIndex((other) => other.id === m.id) === i);
}

function asFields(opening: ChangeValue): Readonly<Record<string, ChangeValue>> {
  return typeof opening === 'object' && !Array.isArray(opening)
    ? (opening as Readonly<Record<string, ChangeValue>>)
    : { at: opening };
}

/** An opening names a plug of a line, or the line and a stop. */
function isOf(opening: ChangeValue, lines: readonly Study['lines'][number][]): boolean {
  const at = String(asFields(opening).at);
  return lines.some((l) => at.startsWith(`${l.id}:`) || l.stops.includes(`plug ${at}`));
}

/** Electrodes found loose or eaten: made anew. */
function electrodes(scene: Scene): readonly Work[] {
  const worn = scene.findings('condition-sound').filter((f) => scene.part(f.at[0] ?? '')?.section === 'electrodes');
  return worn.map((f) => {
    const work = fix({
      words: 'electrode-condition',
      subject: f.at[0]!,
      section: 'electrodes',
      fields: { condition: 'sound' },
      answers: [f],
      values: { condition: f.because.key },
    });
    return { ...work, changes: [...work.changes, ...forgetReading(scene, f.at[0]!)] };
  });
}

/** An electrode inside the house: driven anew outside, with its wire. */
function rodsIndoors(scene: Scene): readonly Work[] {
  const wrong = scene.findings('no-lightning-path-through-building').filter((f) => f.because.key === 'rod indoors');
  return wrong.flatMap((f) => {
    const id = f.at[0]!;
    const typed = scene.part(id)?.typed ?? {};
    const leads = scene.study.conductors.filter((c) => [c.from, c.to].some((p) => ownerOf(p) === id));
    const moved = leads.flatMap((c): readonly SiteChange[] => [
      { is: 'set', section: 'conductors', id: c.id, field: 'where', value: 'outside' },
      ...(c.lengthM === null
        ? []
        : [{ is: 'set', section: 'conductors', id: c.id, field: 'length', value: 'unknown' } as const]),
    ]);
    const gone = ['at', 'on'].filter((field) => typed[field] !== undefined);
    return [
      newWork({
        kind: 'put-right',
        words: 'rod-outside',
        subject: id,
        at: [id],
        answers: [f.id],
        changes: [
          { is: 'set', section: 'electrodes', id, field: 'where', value: 'outside' },
          ...gone.map((field): SiteChange => ({ is: 'set', section: 'electrodes', id, field, value: null })),
          ...forgetReading(scene, id),
          ...moved,
        ],
        materials: [each('rod'), each('exothermic weld')],
        values: { part: id },
      }),
    ];
  });
}

/** Rules that ask a length of a rod. */
const lengthRules: readonly string[] = [
  'rod-length-us',
  'comms-rod-size-us',
  'lightning-rod-size-us',
  'tower-rod-size',
  'iec-antenna-electrode-minimum',
  'type-a-length',
  'below-moisture-and-frost',
];

/** Rods that do not reach deep enough: another length is coupled on, or a longer one driven. */
export function deepenWorks(scene: Scene): readonly Work[] {
  const wrong = scene.findings(...lengthRules).filter((f) => isTooShort(scene, f));
  const rods = [...new Set(wrong.map((f) => f.at[0]!))];
  return rods.map((id) => {
    const answers = wrong.filter((f) => f.at[0] === id);
    const least = Math.max(...answers.map((f) => f.measured!.limit));
    const length = plannedLength(least, scene.study.site.units);
    const count = scene.study.electrodes?.find((e) => e.id === id)?.members ?? 1;
    return newWork({
      kind: 'deepen-rod',
      subject: id,
      at: [id],
      answers: answers.map((f) => f.id),
      changes: [
        { is: 'set', section: 'electrodes', id, field: 'length', value: length.text },
        ...forgetReading(scene, id),
      ],
      materials: [each(`${length.text} rod`, count), each('rod coupling', count)],
      runs: [{ part: id, routeM: [], lengthM: { low: length.lengthM, high: length.lengthM }, depthM: null }],
      values: { rod: id, lengthM: length.lengthM, count },
    });
  });
}

function isTooShort(scene: Scene, { at, measured }: StudyFinding): boolean {
  const kind = scene.part(at[0] ?? '')?.kind ?? '';
  return ['rod', 'rods', 'drilled rod', 'pipe'].includes(kind) && measured?.unit === 'm' && measured.limit > 0.5;
}
