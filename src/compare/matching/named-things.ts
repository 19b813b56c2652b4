import type { Study, StudyPart } from '../../study/study.ts';

/** Whatever a site file gives an id: a part, a place, a building, a guy, a plug, a state. */
export interface NamedThing {
  readonly id: string;
  /** Section of a part; else 'places', 'buildings', 'guys', 'plugs', 'states'. */
  readonly section: string;
  readonly kind: string;
  readonly positionM: readonly [number, number, number] | null;
  /** What its owner says of it, names of other things left out. */
  readonly says: Readonly<Record<string, string>>;
  /** Ids that it names, with the field that does. */
  readonly names: readonly { readonly role: string; readonly id: string }[];
}

/** Everything named in a study, in the order of the study. */
export function namedThings(study: Study): readonly NamedThing[] {
  const bare = [
    ...study.parts.map(partThing),
    ...(study.places ?? []).map(({ id, positionM, where }) =>
      thing(id, 'places', 'place', { positionM, names: named({ where }) }),
    ),
    ...study.buildings.map((b) =>
      thing(b.id, 'buildings', 'building', {
        says: { corners: cornersText(b.cornersM), height: JSON.stringify(b.heightM) },
      }),
    ),
    ...study.guys.map((g) =>
      thing(g.id, 'guys', 'guy', { positionM: g.anchorM, says: g.typed, names: named({ support: g.support }) }),
    ),
    ...plugsOf(study),
    ...study.states.map((s) => thing(s.id, 'states', 'state', { says: { says: s.says ?? '' } })),
  ];
  const known = new Set(bare.map((t) => t.id));
  return bare.map((t) => ({ ...t, names: t.names.filter((n) => n.id !== t.id && known.has(n.id)) }));
}

/** Fields that only name other things, or say what nobody would know a part by. */
const notSaid = new Set(
  'kind from to passes path at on where along near within_reach between joints joint guys route open note photo owner known bends covers position corners of serial'.split(
    ' ',
  ),
);
const naming = ['from', 'to', 'passes', 'path', 'along', 'near', 'within_reach', 'between', 'of'];

function partThing(p: StudyPart): NamedThing {
  const says = Object.fromEntries(Object.entries(p.typed).filter(([field]) => !notSaid.has(field)));
  const typed = naming.flatMap((role) => idsIn(p.typed[role] ?? '').map((id) => ({ role, id })));
  const names = [...named({ on: p.on, place: p.place, where: p.where }), ...typed];
  return thing(p.id, p.section, p.kind, { positionM: p.positionM, says: { ...says, present: p.present }, names });
}

function thing(id: string, section: string, kind: string, more: Partial<NamedThing>): NamedThing {
  return { id, section, kind, positionM: null, says: {}, names: [], ...more };
}

function named(roles: Readonly<Record<string, string | null>>): NamedThing['names'] {
  return Object.entries(roles).flatMap(([role, text]) => idsIn(text ?? '').map((id) => ({ role, id })));
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
