import type { Part } from '../../site/site.ts';
import { nothingThere } from '../looked-at.ts';
import { rule, type Verdict } from '../rule.ts';
import { type AntennaGround, antennaGrounds } from './antenna-grounds.ts';

/** Boxes and bars of the service, its raceway, and metal that counts as an electrode. */
const allowed: readonly string[] = [
  'service panel',
  'meter box',
  'main earthing bar',
  'service raceway',
  'steel frame',
];
/** Metal that is easily taken for ground and is none; other metal is bonded there, and pipes are asked by rules of their own. */
const noGround = /\b(?:tap|faucet|spigot|radiator|heating|vent pipe|drain|downspout|sewer|oil pipe|door|window)/i;
/** Sections where a ground may land; a radio is bonded, not grounded at. */
const points: readonly Part['section'][] = ['electrodes', 'bars', 'metalwork'];

export const groundPointAllowed = rule({
  id: 'ground-point-allowed',
  family: 'code',
  severity: 'defect',
  codeSets: ['us'],
  source: { document: 'NFPA 70', edition: null, clause: '810.21(F)(2)', provenance: 'second-hand' },
  needs: ['sections', 'masts', 'arresters', 'conductors', 'site'],
  check(facts) {
    const hasBar = facts.site.bars.some((b) => b.kind === 'intersystem bonding termination' && b.present !== 'no');
    if (hasBar) return [{ is: 'not applicable', because: { key: 'bar first' } }];
    const grounds = antennaGrounds(facts).filter(({ lands }) => points.includes(lands.section) || isService(lands));
    if (grounds.length === 0) return nothingThere(facts, 'conductors');
    const verdicts = [...new Set(grounds.map((g) => g.from))].flatMap((from) =>
      ofPart(
        from,
        grounds.filter((g) => g.from === from),
      ),
    );
    return verdicts.length > 0 ? verdicts : [{ is: 'not applicable', because: { key: 'other metal' } }];
  },
});

const isService = ({ kind }: Part) => kind === 'service panel' || kind === 'meter box' || kind === 'sub-panel';

/** One point of the list is enough; what else is bonded beside it is no ground of the antenna. Of conduits only the raceway of the service counts. */
function ofPart(from: string, grounds: readonly AntennaGround[]): readonly Verdict[] {
  const at = [from];
  const lands = grounds.map((g) => g.lands);
  const good = lands.find((p) => p.section === 'electrodes' || p.section === 'bars' || allowed.includes(p.kind));
  if (good !== undefined) return [{ is: 'met', at, because: { key: 'listed', values: { on: good.id } } }];
  const panel = lands.find((p) => p.kind === 'sub-panel');
  if (panel !== undefined)
    return [{ is: 'cannot tell', at, because: { key: 'sub-panel', values: { on: panel.id } }, settle: { key: 'ask' } }];
  const pipe = lands.find((p) => p.kind === 'conduit');
  if (pipe !== undefined)
    return [
      { is: 'cannot tell', at, because: { key: 'raceway', values: { on: pipe.id } }, settle: { key: 'look at pipe' } },
    ];
  const wrong = lands.filter((p) => noGround.test(p.kind)).map((p) => p.id);
  return wrong.length === 0 ? [] : [{ is: 'not met', at, because: { key: 'not listed', values: { on: wrong } } }];
}
