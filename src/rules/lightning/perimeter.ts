import type { Site } from '../../site/site.ts';

/** Way round the one building of a site, metres; null: none or several, or a corner that nobody knows. */
export function perimeterM({ buildings }: Site): number | null {
  const [only, ...others] = buildings;
  const corners = only?.corners ?? [];
  if (others.length > 0 || corners.length < 3) return null;
  return corners.reduce<number>((sum, a, i) => {
    const b = corners[(i + 1) % corners.length]!;
    return sum + Math.hypot(b[0] - a[0], b[1] - a[1]);
  }, 0);
}
