import type { Bonding } from '../../bonding/bonding.ts';
import type { Site } from '../../site/site.ts';
import { onceFor } from '../../units/once-for.ts';

type Asked = { readonly bonding: Bonding; readonly site: Site };

/** What a part still reaches by permanent metal without that conductor: the service, else an electrode; null: neither. */
export function sideOf(start: string, without: string, facts: Asked): 'service' | 'electrode' | null {
  const service = facts.bonding.service.part;
  if (meetsWithout(start, without, facts, (id) => id === service)) return 'service';
  const electrodes = electrodesOf(facts.site);
  return meetsWithout(start, without, facts, (id) => electrodes.has(id)) ? 'electrode' : null;
}

/** Whether a part still reaches the service or an electrode so. */
export function hasSide(start: string, without: string, facts: Asked): boolean {
  const service = facts.bonding.service.part;
  const electrodes = electrodesOf(facts.site);
  return meetsWithout(start, without, facts, (id) => id === service || electrodes.has(id));
}

/**
 * Whether what a part reaches by permanent metal without that conductor, nearest first and not going on over the service,
 * holds one that `isMet` takes.
 */
export function meetsWithout(
  start: string,
  without: string,
  { bonding, site }: Asked,
  isMet: (id: string) => boolean,
): boolean {
  const next = metalOf(bonding);
  const ends = endsOf(site);
  const reached = new Set([start]);
  // A set goes on to what is added while it is walked.
  for (const id of reached) {
    if (isMet(id)) return true;
    if (id === bonding.service.part || ends.has(id)) continue;
    for (const { to, part } of next.get(id) ?? []) if (part !== without) reached.add(to);
  }
  return false;
}

const electrodesOf = onceFor(
  ({ electrodes }: Site) => new Set(electrodes.flatMap((e) => (e.present === 'no' ? [] : [e.id]))),
);

/** What passes no bond on: radios and the like, arresters, metal that is not known to be one piece. */
const endsOf = onceFor(({ equipment, arresters, metalwork }: Site) => {
  const boxes = equipment.filter((e) => !/panel|meter box|cabinet|rack|generator/.test(e.kind));
  const pieces = metalwork.filter((m) => m.continuous !== 'yes');
  return new Set([...boxes, ...arresters, ...pieces].map((p) => p.id));
});

/** Ties of permanent metal by either end, with what makes them; those that may not be there count. */
const metalOf = onceFor(({ ties }: Bonding) => {
  const next = new Map<string, { readonly to: string; readonly part: string }[]>();
  const add = (from: string, to: string, part: string) => {
    const list = next.get(from);
    if (list === undefined) next.set(from, [{ to, part }]);
    else list.push({ to, part });
  };
  for (const { a, b, kind, part } of ties) {
    if (kind !== 'metal') continue;
    add(a, b, part);
    add(b, a, part);
  }
  return next;
});
