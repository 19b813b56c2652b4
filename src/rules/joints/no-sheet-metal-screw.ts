import type { Site } from '../../site/site.ts';
import { nothingThere } from '../looked-at.ts';
import { rule, type Verdict } from '../rule.ts';

export const noSheetMetalScrew = rule({
  id: 'no-sheet-metal-screw',
  family: 'code',
  severity: 'defect',
  codeSets: ['us'],
  source: { document: 'NFPA 70', edition: null, clause: '250.8', provenance: 'second-hand' },
  needs: ['sections', 'joints', 'site'],
  check({ sections, joints, site }) {
    // a kind that nobody knows is asked by no-solder-in-path
    const all = [...joints.map(({ id, kind }) => ({ id, kind })), ...mounted(site)].filter((j) => j.kind !== null);
    if (all.length === 0) return nothingThere({ sections }, 'conductors');
    return all.map(({ id, kind }): Verdict => {
      if (kind === 'sheet-metal screw') return { is: 'not met', at: [id], because: { key: 'screw' } };
      return { is: 'met', at: [id], because: { key: 'other' } };
    });
  },
});

/** Bars, arresters and boxes by what holds them to what they are on. */
function mounted(site: Site): readonly { readonly id: string; readonly kind: string | null }[] {
  return [...site.bars, ...site.arresters, ...site.equipment].flatMap(({ id, joint, on, present }) =>
    present === 'no' || on?.part == null ? [] : [{ id: `${id}:${on.part}`, kind: joint }],
  );
}
