import type { Bar } from '../../site/site.ts';
import { nothingThere } from '../looked-at.ts';
import { rule, type Verdict } from '../rule.ts';

export const notOnCoverOrDoor = rule({
  id: 'not-on-cover-or-door',
  family: 'code',
  severity: 'defect',
  codeSets: ['us'],
  source: { document: 'NFPA 70', edition: null, clause: '800.100(B), 810.21(F), 250.94', provenance: 'second-hand' },
  needs: ['sections', 'site'],
  check({ sections, site }) {
    const bars = site.bars.filter((b) => b.present !== 'no');
    const boxes = new Set(site.equipment.map((e) => e.id));
    const verdicts = bars.flatMap((b) => ofBar(b, boxes.has(b.on?.part ?? '')));
    return verdicts.length > 0 ? verdicts : nothingThere({ sections }, 'bars');
  },
});

/** Asked of a bar of which somebody said it, of one at the service, and of one that is fixed to a box. */
function ofBar({ id, kind, onCover }: Bar, isOnBox: boolean): readonly Verdict[] {
  const at = [id];
  if (onCover === 'no') return [{ is: 'met', at, because: { key: 'fixed part' } }];
  if (onCover === 'yes') return [{ is: 'not met', at, because: { key: 'on cover' } }];
  if (!isOnBox && kind !== 'intersystem bonding termination') return [];
  return [{ is: 'cannot tell', at, because: { key: 'nobody said' }, settle: { key: 'look' } }];
}
