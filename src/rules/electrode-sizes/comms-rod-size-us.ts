import { drivenRods } from '../electrodes/driven.ts';
import { purposesOf } from '../electrodes/purposes-of.ts';
import { nothingThere } from '../looked-at.ts';
import { rule } from '../rule.ts';
import { sizeVerdict } from './least-sizes.ts';
import { onlyFor } from './only-for.ts';
import { limitsOfRow, rodRow } from './size-row.ts';

/** 5 ft, 1.5 m, by 1/2 in. */
const row = rodRow(1.524, 1.5, 0.0127);

export const commsRodSizeUs = rule({
  id: 'comms-rod-size-us',
  family: 'code',
  severity: 'defect',
  codeSets: ['us'],
  source: { document: 'NFPA 70', edition: '2020', clause: '800.100(B)(3)(2)', provenance: 'second-hand' },
  limits: limitsOfRow(row),
  needs: ['sections', 'electrodes', 'conductors', 'site'],
  check(facts) {
    const rods = drivenRods(facts.electrodes).filter((e) => onlyFor(purposesOf(e.part, facts), 'communications'));
    return rods.length === 0 ? nothingThere(facts, 'electrodes') : rods.map((e) => sizeVerdict(e.part, [row]));
  },
});
