import type { ArresterFacts, Facts } from '../../facts/facts.ts';
import type { Line } from '../../site/site.ts';
import { isWhole, nothingThere } from '../looked-at.ts';
import { rule } from '../rule.ts';
import { antennaUnits } from './antenna-units.ts';
import { feedLines } from './crossing-lines.ts';

type Asked = Pick<Facts, 'header' | 'sections' | 'bonding' | 'arresters' | 'site'>;

export const mainsProtectorAtPanel = rule({
  id: 'mains-protector-at-panel',
  family: 'practice',
  severity: 'advice',
  codeSets: ['any'],
  source: { document: 'common practice; IEC 62305-4', edition: null, clause: 'zone boundary', provenance: 'memory' },
  needs: ['header', 'sections', 'bonding', 'arresters', 'site'],
  check(facts) {
    if (facts.bonding.service.is === 'none') return [{ is: 'not applicable', because: { key: 'no service' } }];
    const mains = mainsOfRadios(facts.site);
    if (mains.length === 0) return nothingThere(facts, 'lines');
    const bars = barsOfFeedLines(facts);
    if (bars.size === 0) return [{ is: 'not applicable', because: { key: 'no panel' } }];
    const all = facts.arresters.filter((a) => a.part.kind === 'mains protector');
    const units = all.filter((a) => a.part.present === 'yes');
    const bare = mains.filter((l) => !units.some((u) => isOnWay(u, l, bars)));
    // one protector of the whole supply at the bar of the feed lines does for every circuit
    const isOfAll = units.some((u) => u.lines.length === 0 && bars.has(u.part.on?.part ?? ''));
    const at = mains.map((l) => l.id).sort();
    if (bare.length === 0 || isOfAll) return [{ is: 'met', at, because: { key: 'same bar' } }];
    const open = bare.filter((l) => l.path.some((s) => s.is === 'unknown'));
    const ids = bare.map((l) => l.id).sort();
    if (open.length === bare.length)
      return [{ is: 'cannot tell', at: ids, because: { key: 'path unknown' }, settle: { key: 'look' } }];
    if (!isWhole(facts, 'arresters') || units.length < all.length)
      return [{ is: 'cannot tell', at: ids, because: { key: 'not looked' }, settle: { key: 'look for it' } }];
    return [{ is: 'not met', at: ids, because: { key: 'none there' } }];
  },
});

/** Mains lines that end on a box to which a feed line leads. */
function mainsOfRadios(site: Asked['site']): readonly Line[] {
  const fed = new Set(site.lines.filter((l) => feedLines.includes(l.kind)).flatMap(stopsOf));
  const boxes = new Set(site.equipment.filter((e) => fed.has(e.id)).map((e) => e.id));
  return site.lines.filter((l) => l.kind === 'mains' && l.present !== 'no' && stopsOf(l).some((id) => boxes.has(id)));
}

const stopsOf = (line: Line) => line.path.flatMap((s) => (s.is === 'part' && s.at.part !== null ? [s.at.part] : []));

/** Entry panels and station bars, and whatever bar the protectors of feed lines are on. */
function barsOfFeedLines({ site, arresters }: Asked): ReadonlySet<string> {
  const panels = site.bars.filter((b) => b.kind === 'entry panel' || b.kind === 'station ground bar');
  const ids = panels.filter((b) => b.present !== 'no').map((b) => b.id);
  const hung = antennaUnits(arresters).flatMap((a) => a.part.on?.part ?? []);
  return new Set([...ids, ...hung.filter((id) => site.bars.some((b) => b.id === id))]);
}

function isOnWay(unit: ArresterFacts, line: Line, bars: ReadonlySet<string>): boolean {
  return unit.lines.includes(line.id) && bars.has(unit.part.on?.part ?? '');
}
