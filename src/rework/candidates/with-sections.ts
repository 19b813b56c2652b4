import type { SiteChange } from '../../study/try-change.ts';
import { byCodeUnit } from '../../units/by-code-unit.ts';
import type { Work } from '../work.ts';
import type { Scene } from './scene.ts';

/** Sections that works add parts to. */
const ours: readonly string[] = ['arresters', 'bars', 'conductors', 'electrodes', 'joints'];

/**
 * A first part in a section that nobody looked at would say that somebody did, and turn what cannot be told into what is
 * missing. So the file goes on saying that these sections hold only some of what is there; all works say it alike.
 */
export function withSections(scene: Scene, work: Work): Work {
  const { missing = [], incomplete = [] } = scene.study.written ?? {};
  const unseen = ours.filter((section) => missing.includes(section));
  const isFirst = work.changes.some((c) => c.is === 'add' && unseen.includes(c.section));
  if (!isFirst) return work;
  const value = [...new Set([...incomplete, ...unseen])].sort(byCodeUnit);
  const said: SiteChange = { is: 'set', section: 'site', id: null, field: 'incomplete', value };
  return { ...work, changes: [said, ...work.changes] };
}
