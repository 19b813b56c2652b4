import type { BoxFacts, Facts } from '../../facts/facts.ts';
import { isWhole } from '../looked-at.ts';
import { electrodesAtBuilding } from './electrodes-at-building.ts';
import { feedersOf } from './feeders-of.ts';
import { homeOfService } from './home-of-service.ts';

type Asked = Pick<Facts, 'header' | 'sections' | 'bonding' | 'boxes' | 'site'>;

/**
 * Whether a neutral that is bonded at a sub-panel may be what the Canadian code accepts (10-208 in the older numbering, from
 * memory): another building with an electrode of its own, and no bonding conductor in its feeder. Nothing but what is surely
 * otherwise rules it out.
 */
export function mayBondAgain(id: string, facts: Asked): boolean {
  const panel = facts.boxes.find((b) => b.id === id && b.part.kind === 'sub-panel');
  if (facts.header.region !== 'ca' || panel === undefined) return false;
  if (panel.where !== null && panel.where === homeOfService(facts)) return false;
  const has = feedersOf(id, facts).map((l) => l.protectiveConductor);
  return !has.includes('yes') && mayHaveElectrode(panel, facts);
}

function mayHaveElectrode(panel: BoxFacts, facts: Asked): boolean {
  const { bonds, perhaps } = facts.bonding.earthBy;
  const isOpen = !isWhole(facts, 'electrodes') || !isWhole(facts, 'conductors');
  if (isOpen || (perhaps.has(panel.id) && !bonds.has(panel.id))) return true;
  return electrodesAtBuilding(panel, facts, 'perhaps').length > 0;
}
