import { anchorOf } from '../site/positions-of.ts';
import type { Site } from '../site/site.ts';
import type { StudyGuy } from './study.ts';

/** Guys as typed, support by support; those of a support that is not there are not there either. */
export function guysOf(site: Site): readonly StudyGuy[] {
  return site.supports
    .filter((s) => s.present !== 'no')
    .flatMap((s) =>
      s.guys.map((g) => ({
        id: g.id,
        support: s.id,
        anchorM: anchorOf(g),
        heightM: null,
        metal: g.metal === 'none' ? 'none' : (g.metal?.name ?? null),
        turnbuckle: g.turnbuckle,
        bypass: g.bypass,
        insulators: g.insulators,
        note: g.note,
        typed: g.typed,
      })),
    );
}
