import { drivenRods } from '../electrodes/driven.ts';
import { purposesOf } from '../electrodes/purposes-of.ts';
import { nothingThere } from '../looked-at.ts';
import { rule } from '../rule.ts';
import { sizeVerdict } from './least-sizes.ts';
import { limitsOfRow, rodRow } from './size-row.ts';

/** Galvanised steel is not among them. */
const metals = ['copper', 'tinned copper', 'hard-drawn copper', 'copper-clad steel', 'stainless steel'];
/** 8 ft, 2.4 m, by 1/2 in. */
const row = rodRow(2.4384, 2.4, 0.0127, metals);

export const lightningRodSizeUs = rule({
  id: 'lightning-rod-size-us',
  family: 'code',
  severity: 'defect',
  codeSets: ['us'],
  source: { document: 'UL 96A; NFPA 780', edition: '2007', clause: '10.1.4', provenance: 'read' },
  limits: limitsOfRow(row),
  needs: ['sections', 'electrodes', 'conductors', 'site'],
  check(facts) {
    const rods = drivenRods(facts.electrodes).filter((e) => purposesOf(e.part, facts).has('lightning'));
    return rods.length === 0 ? nothingThere(facts, 'electrodes') : rods.map((e) => sizeVerdict(e.part, [row]));
  },
});
