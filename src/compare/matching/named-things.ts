import type { Study, StudyPart } from '../../study/study.ts';
import { plainWords } from './plain-words.ts';

/** Whatever a site file gives an id: a part, a place, a building, a guy, a plug, a state. */
export interface NamedThing {
  readonly id: string;
  /** Section of a part; else 'places', 'buildings', 'guys', 'plugs', 'states'. */
  readonly section: string;
  readonly kind: string;
  /** Where it stands, or each point of its route; [] where nobody knows. */
  readonly placesM: readonly (readonly [number, number, number])[];
  /** What its owner says of it, names of other things left out. */
  readonly says: Readonly<Record<string, string>>;
  /** What its owner noted about it: tells twins apart, and is soon written otherwise. */
  readonly note: string;
  /** What both ends of a conductor or a line are at, as ids where they have one; [] for what has no ends. */
  readonly ends: readonly string[];
  /** Ids that it names, with the field that does and the point of the thing that is meant. */
  readonly names: readonly { readonly role: string; readonly id: string }[];
}

/** Everything named in a study, in the order of the study. */
export function namedThings(study: Study): readonly NamedThing[] {
  const stops = new Map(study.lines.map((line) => [line.id, line.stops]));
  const bare = [
    ...study.parts.map((p) => partThing(p, stops.get(p.id) ?? [])),
    ...(study.places ?? []).map(({ id, positionM, where }) =>
      thing(id, 'places', 'place', { placesM: known(positionM), names: named({ where }) }),
    ),
    ...study.buildings.map((b) =>
      thing(b.id, 'buildings', 'building', {
        says: { corners: cornersText(b.cornersM), height: JSON.stringify(b.heightM) },
      }),
    ),
    ...study.guys.map((g) =>
      thing(g.id, 'guys', 'guy', {
        placesM: known(g.anchorM),
        says: saidOf(g.typed),
        names: named({ support: g.support }),
      }),
    ),
    ...plugsOf(study),
    ...study.states.map((s) => thing(s.id, 'states', 'state', { says: { says: s.says ?? '' } })),
  ];
  const ids = new Set(bare.map((t) => t.id));
  return bare.map((t) => ({ ...t, names: t.names.filter((n) => n.id !== t.id && ids.has(n.id)) }));
}

/** Fields that only name other things, or say what nobody would know a part by. */
const notSaid = new Set(
  'kind from to passes path at on where along near within_reach between joints joint guys route open note photo owner known bends covers position corners of serial'.split(
    ' ',
  ),
);
const naming = ['from', 'to', 'passes', 'path', 'along', 'near', 'within_reach', 'between', 'of'];

function partThing(p: StudyPart, stops: readonly string[]): NamedThing {
  const names = [
    ...named({ on: p.on, place: p.place, where: p.where }),
    ...naming.flatMap((role) => namedIn(role, p.typed[role] ?? '')),
  ];
  const placesM = p.routeM.length > 0 ? p.routeM : known(p.positionM);
  return thing(p.id, p.section, p.kind, {
    placesM,
    says: { ...saidOf(p.typed), present: p.present },
    note: p.note ?? '',
    ends: endsOf(p, stops),
    names,
  });
}

function endsOf({ section, typed }: StudyPart, stops: readonly string[]): NamedThing['ends'] {
  const ends = section === 'conductors' ? [typed.from ?? '', typed.to ?? ''] : [stops[0] ?? '', stops.at(-1) ?? ''];
  if (section !== 'conductors' && section !== 'lines') return [];
  return ends.map((end) => idsIn(end)[0] ?? end);
}

function saidOf(typed: Readonly<Record<string, string>>): NamedThing['says'] {
  const said = Object.entries(typed).filter(([field]) => !notSaid.has(field));
  return Object.fromEntries(said.map(([field, text]) => [field, plainWords(text).join(' ')]));
}

const known = (positionM: StudyPart['positionM']) => (positionM === null ? [] : [positionM]);

function thing(id: string, section: string, kind: string, more: Partial<NamedThing>): NamedThing {
  return { id, section, kind, placesM: [], says: {}, note: '', ends: [], names: [], ...more };
}

function named(roles: Readonly<Record<string, string | null>>): NamedThing['names'] {
  return Object.entries(roles).flatMap(([role, text]) => namedIn(role, text ?? ''));
}

/** `from: tower.leg2@base` names the tower, as `from leg2@base`. */
function namedIn(role: string, text: string): NamedThing['names'] {
  const points = text.match(/[\p{L}\p{N}\p{M}_-]+(?:[.@][^,\]}]*)?/gu) ?? [];
  return points.map((point) => {
    const [id = '', ...more] = point.split(/(?=[.@])/);
    return { role: `${role} ${more.join('').trim()}`.trim(), id };
  });
}

/** Plugs have no entry of their own: a line names them among its stops. */
function plugsOf({ lines }: Study): readonly NamedThing[] {
  return lines.flatMap((line) =>
    line.stops.flatMap((stop, i) =>
      stop.startsWith('plug ')
        ? [
            thing(stop.slice('plug '.length), 'plugs', 'plug', {
              says: { stop: String(i) },
              names: named({ line: line.id }),
            }),
          ]
        : [],
    ),
  );
}

/** Words of a text that may be ids; what follows @ or a dot is a point of the thing before it. */
export function idsIn(text: string): readonly string[] {
  return text.replace(/@[^,\]}]*|\.[\p{L}\p{N}_-]+/gu, ' ').match(idPattern) ?? [];
}

/** A run of characters that an id may be made of. */
export const idPattern = /[\p{L}\p{N}\p{M}_-]+/gu;

function cornersText(cornersM: Study['buildings'][number]['cornersM']): string {
  return cornersM.map((c) => c.map((x) => x.toFixed(2)).join(' ')).join(', ');
}
