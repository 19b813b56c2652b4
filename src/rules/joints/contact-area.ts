import { isAtLeast } from '../../units/interval.ts';
import { ifSaid } from '../if-said.ts';
import { rule, type Verdict } from '../rule.ts';

/** 3 square inches, square metres; printed as 19.5 cm². */
const leastM2 = 19.35e-4;

export const contactArea = rule({
  id: 'contact-area',
  family: 'practice',
  severity: 'advice',
  codeSets: ['us'],
  source: { document: 'MIL-HDBK-419A', edition: 'vol. II', clause: 'joints', provenance: 'read' },
  limits: [{ key: 'contactAreaM2', value: leastM2, sense: 'least' }],
  needs: ['joints'],
  check({ joints }) {
    const said = joints.flatMap(({ id, contactM2 }): readonly Verdict[] => {
      if (contactM2 === null) return [];
      const at = [id];
      const measured = { key: 'contactAreaM2', value: contactM2, limit: leastM2, sense: 'least' } as const;
      const enough = isAtLeast(contactM2, leastM2 * (1 - 2e-3));
      if (enough === 'yes') return [{ is: 'met', at, because: { key: 'wide' }, measured }];
      if (enough === 'no') return [{ is: 'not met', at, because: { key: 'narrow' }, measured }];
      return [{ is: 'cannot tell', at, because: { key: 'not exact' }, settle: { key: 'look' }, measured }];
    });
    // how wide the others are is nobody's first question
    return ifSaid(said, []);
  },
});
