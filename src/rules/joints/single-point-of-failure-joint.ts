import type { WeakPoint } from '../../bonding/bonding.ts';
import type { Site } from '../../site/site.ts';
import { nothingThere } from '../looked-at.ts';
import { rule, type Verdict } from '../rule.ts';

export const singlePointOfFailureJoint = rule({
  id: 'single-point-of-failure-joint',
  family: 'practice',
  severity: 'advice',
  codeSets: ['any'],
  source: { document: 'ours', edition: null, clause: null, provenance: 'ours' },
  needs: ['sections', 'bonding', 'site'],
  check({ sections, bonding, site }) {
    const guarded = guardedParts(site).filter((id) => bonding.earthBy.bonds.has(id));
    if (guarded.length === 0) return nothingThere({ sections }, 'conductors');
    const byLoss = gather(bonding.weakPoints, new Set(guarded), true);
    const lost = new Set(byLoss.flatMap((g) => g.parts));
    const perhaps = gather(bonding.weakPoints, new Set(guarded.filter((id) => !lost.has(id))), false);
    const open = new Set(perhaps.flatMap((g) => g.parts));
    const rest = guarded.filter((id) => !lost.has(id) && !open.has(id));
    return [
      ...byLoss.map(
        ({ weak, parts }): Verdict => ({ is: 'not met', at: weak, because: { key: 'single', values: { parts } } }),
      ),
      ...perhaps.map(
        ({ weak, parts }): Verdict => ({
          is: 'cannot tell',
          at: weak,
          because: { key: 'perhaps single', values: { parts } },
          settle: { key: 'look for second', values: { parts } },
        }),
      ),
      ...rest.map((id): Verdict => ({ is: 'met', at: [id], because: { key: 'two ways' } })),
    ];
  },
});

function guardedParts(site: Site): readonly string[] {
  return [...site.supports, ...site.arresters, ...site.bars].map((p) => p.id).sort();
}

/**
 * Joints and conductors that take the same masts, arresters and panels off stand as one finding: those that surely do, or
 * those beside which a tie that nobody is sure of may be a second way.
 */
function gather(weakPoints: readonly WeakPoint[], guarded: ReadonlySet<string>, certain: boolean) {
  const groups = new Map<string, { weak: string[]; parts: readonly string[] }>();
  for (const w of weakPoints) {
    if (w.kind === 'part' || w.certain !== certain) continue;
    const parts = [...new Set([...w.losesEarth, ...w.losesService])].filter((id) => guarded.has(id)).sort();
    if (parts.length === 0 || isOwnBolt(w.at, parts)) continue;
    const key = parts.join('+');
    groups.set(key, { weak: [...(groups.get(key)?.weak ?? []), w.at].sort(), parts });
  }
  return [...groups.values()];
}

/** The bolt that holds an arrester or bar to what carries it (`a1:entry`) takes off that part alone; every one has its own. */
function isOwnBolt(at: string, parts: readonly string[]): boolean {
  return parts.length === 1 && at.startsWith(`${parts[0]}:`);
}
