import type { Study } from '../study/study.ts';
import { compareGroups, compareUnbonded, compareWeakPoints } from './compare-bonding.ts';
import { compareEarth } from './compare-earth.ts';
import { compareFindings, setsOf } from './compare-findings.ts';
import { compareParts } from './compare-parts.ts';
import { comparePaths } from './compare-paths.ts';
import { compareReach } from './compare-reach.ts';
import { compareSite } from './compare-site.ts';
import { compareStrikes } from './compare-strikes.ts';
import { type ComparedHead, type Comparison, comparisonFormat, type FindingChange } from './comparison.ts';
import { compareMaterials } from './materials/compare-materials.ts';

/** What became of a site: two studies side by side. Reads nothing but the studies; a study with itself differs in nothing. */
export function compareStudies(before: Study, after: Study): Comparison {
  const { parts, names } = compareParts(before, after);
  const findings = compareFindings(before, after, names);
  const figures = {
    site: compareSite(before, after, names),
    paths: comparePaths(before, after, names),
    earth: compareEarth(before, after, names),
    strike: compareStrikes(before, after, names),
    weakPoints: compareWeakPoints(before, after, names),
    unbonded: compareUnbonded(before, after, names),
    groups: compareGroups(before, after, names),
    reach: compareReach(before, after, names),
  };
  const count = (changes: readonly FindingChange[]) => changes.filter((c) => c.counts).length;
  return {
    format: comparisonFormat,
    before: headOf(before),
    after: headOf(after),
    sameRegion: before.site.region === after.site.region,
    differs: partsDiffer(parts) || findingsDiffer(findings) || figuresDiffer(figures),
    worseIn: count(findings.new) + count(findings.worse),
    betterIn: count(findings.cleared) + count(findings.better),
    parts,
    findings,
    ...figures,
    materials: compareMaterials(before, after, parts, names),
  };
}

function headOf(study: Study): ComparedHead {
  const { site, state, tool, verdict } = study;
  const { hazards, defects, advices, cannotTell, agreed } = verdict;
  return {
    name: site.name,
    file: site.file,
    checksum: site.checksum,
    state,
    revision: site.revision,
    date: site.prepared.date,
    region: site.region,
    codeSets: setsOf(study),
    tool,
    counts: { hazards, defects, advices, cannotTell, agreed },
  };
}

function partsDiffer({ changed, added, removed, splits, joined }: Comparison['parts']): boolean {
  return [changed, added, removed, splits, joined].some((list) => list.length > 0);
}

function findingsDiffer({ unchanged: _, ...lists }: Comparison['findings']): boolean {
  return Object.values(lists).some((list) => list.length > 0);
}

type Figures = Pick<Comparison, 'site' | 'paths' | 'earth' | 'strike' | 'weakPoints' | 'unbonded' | 'groups' | 'reach'>;

function figuresDiffer({ site, earth, strike, ...tables }: Figures): boolean {
  const rows = [
    ...Object.values(tables).flat(),
    earth,
    ...earth.electrodes,
    ...(strike === null ? [] : [...strike.differences, ...strike.conductors, ...strike.electrodes]),
  ];
  return site.length > 0 || rows.some((row) => row.standing !== 'same');
}
