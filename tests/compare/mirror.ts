import type { Comparison, FindingChange, Sides, Standing } from '../../src/compare/comparison.ts';

/** What the comparison of the same two the other way round has to be, as far as its lists go, in sets without order. */
export function mirrored(c: Comparison): unknown {
  const { parts, findings } = c;
  return summary({
    ...c,
    before: c.after,
    after: c.before,
    parts: {
      ...parts,
      pairs: parts.pairs.map((p) => ({ ...p, before: p.after, after: p.before })),
      renamed: parts.renamed.map(swap),
      added: parts.removed,
      removed: parts.added,
      splits: parts.joined.map((j) => ({ before: j.after, after: j.before })),
      joined: parts.splits.map((s) => ({ before: s.after, after: s.before })),
    },
    findings: {
      ...findings,
      cleared: findings.new.map(swapFinding),
      new: findings.cleared.map(swapFinding),
      better: findings.worse.filter((f) => f.how !== 'found not met').map(swapFinding),
      worse: [...findings.better, ...findings.unsettled].map(swapFinding),
      unsettled: findings.worse.filter((f) => f.how === 'found not met').map(swapFinding),
      unchanged: findings.unchanged.map(swapFinding),
      agreedOtherwise: findings.agreedOtherwise.map(swapFinding),
    },
    materials: { added: c.materials.removed, removed: c.materials.added },
    weakPoints: c.weakPoints.map((w) => ({ ...w, at: swap(w.at), standing: turned(w.standing), point: swap(w.point) })),
    reach: c.reach.map((r) => ({ ...r, part: swap(r.part), standing: turned(r.standing), by: swap(r.by) })),
    paths: c.paths.map((p) => ({ ...p, from: swap(p.from), to: swap(p.to), standing: turned(p.standing) })),
    unbonded: c.unbonded.map((u) => ({ id: swap(u.id), standing: turned(u.standing), is: swap(u.is) })),
    groups: c.groups.map((g) => ({ ...g, id: swap(g.id), standing: turned(g.standing) })),
  });
}

/** What is told of a comparison, each list in the order of its text. */
export function summary(c: Comparison): unknown {
  const finding = ({ before, after }: FindingChange) => [before?.id ?? null, after?.id ?? null];
  const sorted = (list: readonly unknown[]) => list.map((x) => JSON.stringify(x)).sort();
  const { parts, findings } = c;
  return {
    heads: [c.before.file, c.after.file],
    pairs: sorted(parts.pairs.map((p) => [p.before, p.after])),
    renamed: sorted(parts.renamed.map((p) => [p.before, p.after])),
    added: sorted(parts.added.map((p) => p.id)),
    removed: sorted(parts.removed.map((p) => p.id)),
    splits: sorted(parts.splits.map((s) => [s.before, s.after])),
    joined: sorted(parts.joined.map((j) => [j.before, j.after])),
    findings: Object.fromEntries(Object.entries(findings).map(([name, list]) => [name, sorted(list.map(finding))])),
    materials: [sorted(c.materials.added), sorted(c.materials.removed)],
    weakPoints: sorted(c.weakPoints.map((w) => [w.at.before, w.at.after, w.standing])),
    reach: sorted(c.reach.map((r) => [r.part.before, r.part.after, r.standing])),
    paths: sorted(c.paths.map((p) => [p.from.before, p.from.after, p.aim, p.standing])),
    unbonded: sorted(c.unbonded.map((u) => [u.id.before, u.id.after, u.is.before, u.is.after, u.standing])),
    groups: sorted(c.groups.map((g) => [g.id.before, g.id.after, g.standing])),
  };
}

const swap = <T>({ before, after }: Sides<T>): Sides<T> => ({ before: after, after: before });
const swapFinding = (f: FindingChange): FindingChange => ({ ...f, before: f.after, after: f.before });

function turned(standing: Standing): Standing {
  if (standing === 'gone') return 'new';
  return standing === 'new' ? 'gone' : standing;
}
