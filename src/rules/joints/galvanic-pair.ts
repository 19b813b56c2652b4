import type { JointFacts } from '../../facts/facts.ts';
import { galvanicDifferenceV, galvanicLimits } from '../../materials/galvanic-series.ts';
import type { Metal } from '../../materials/metals.ts';
import { rule, type Verdict } from '../rule.ts';
import { isZincOnCopper } from './clamp-metal-match.ts';
import { copperOnAluminium } from './copper-on-aluminium.ts';
import { eachJoint } from './typed-joints.ts';

export const galvanicPair = rule({
  id: 'galvanic-pair',
  family: 'practice',
  severity: 'advice',
  codeSets: ['any'],
  source: {
    document: 'anodic index tables after MIL-STD-889',
    edition: null,
    clause: 'outdoors 0.15 V',
    provenance: 'second-hand',
  },
  needs: ['sections', 'joints'],
  check: (facts) => eachJoint(facts, ofJoint),
});

/** The worst pair of wire, clamp and part; a clamp of unknown metal is left out, wire and part are not. */
function ofJoint(j: JointFacts): Verdict | null {
  const at = [j.id];
  if (j.kind === 'exothermic weld' || j.kind === 'welded') return null;
  const metals = [...j.wireMetals, j.onMetal, j.metal].filter((m): m is Metal => m !== null);
  const worst = pairs(metals).sort((a, b) => b.differenceV - a.differenceV)[0];
  if (worst === undefined) return null;
  const measured = {
    key: 'differenceV',
    value: worst.differenceV,
    limit: galvanicLimits.harshV,
    sense: 'most',
  } as const;
  if (worst.differenceV > galvanicLimits.harshV)
    return { is: 'not met', at, because: { key: 'apart', values: worst }, measured, ...causeOf(j) };
  return { is: 'met', at, because: { key: 'near', values: worst }, measured };
}

/** A rule that asks more of the same pair says it first. */
function causeOf(j: JointFacts): { readonly under?: string } {
  if (copperOnAluminium(j) === 'contact') return { under: `no-copper-aluminium-contact:${j.id}` };
  return isZincOnCopper(j) ? { under: `clamp-metal-match:${j.id}` } : {};
}

function pairs(metals: readonly Metal[]) {
  return metals.flatMap((a, i) =>
    metals.slice(i + 1).flatMap((b) => {
      const differenceV = galvanicDifferenceV(a, b);
      return differenceV === null ? [] : [{ first: a.name, second: b.name, differenceV }];
    }),
  );
}
