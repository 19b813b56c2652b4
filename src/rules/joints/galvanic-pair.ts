import type { JointFacts } from '../../facts/facts.ts';
import { partIndex } from '../../facts/part-index.ts';
import { galvanicDifferenceV, galvanicLimits } from '../../materials/galvanic-series.ts';
import type { Metal } from '../../materials/metals.ts';
import type { Site } from '../../site/site.ts';
import { rule, type Verdict } from '../rule.ts';
import { isZincOnCopper } from './clamp-metal-match.ts';
import { copperOnAluminium, isNeverForTwo, isParted } from './copper-on-aluminium.ts';
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
  limits: [{ key: 'differenceV', value: galvanicLimits.harshV, sense: 'most' }],
  needs: ['sections', 'joints', 'site'],
  check: (facts) => eachJoint(facts, (j) => (isIndoors(j, facts.site) ? null : ofJoint(j))),
});

/** The figure is for the wet: what is on a part inside a building stays dry. What lies in soil is an electrode. */
function isIndoors({ on }: JointFacts, site: Site): boolean {
  const { get, whereOf } = partIndex(site);
  const where = on === null || get(on)?.section === 'electrodes' ? null : whereOf(on);
  return where !== null && where !== 'outside';
}

/** The worst pair of wire, clamp and part; a clamp of unknown metal is left out, wire and part are not. */
function ofJoint(j: JointFacts): Verdict | null {
  const at = [j.id];
  if (j.kind === 'exothermic weld' || j.kind === 'welded') return null;
  const metals = [...j.wireMetals, j.onMetal, j.metal].filter((m): m is Metal => m !== null);
  const worst = pairs(metals).sort((a, b) => b.differenceV - a.differenceV)[0];
  if (worst === undefined) return null;
  const limit = galvanicLimits.harshV;
  const measured = { key: 'differenceV', value: worst.differenceV, limit, sense: 'most' } as const;
  if (worst.differenceV <= limit) return { is: 'met', at, because: { key: 'near', values: worst }, measured };
  if (isKeptDry(j)) return { is: 'met', at, because: { key: isParted(j) ? 'sheet' : 'made for both' } };
  return { is: 'not met', at, because: { key: 'apart', values: worst }, measured, ...causeOf(j) };
}

/**
 * Parted by a sheet or listed for both metals, and sealed; a sheet alone leaves its own step to the zinc, and zinc goes on no
 * copper. Each has to be typed: that the two go when wet holds until somebody said what keeps the water out.
 */
function isKeptDry(j: JointFacts): boolean {
  if (j.sealed !== 'yes' || isZincOnCopper(j)) return false;
  return isParted(j) || (j.listed === 'yes' && !isNeverForTwo(j));
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
