import type { RuleWords } from '../rule-words.ts';
import { conductorRuns } from './conductor-runs.ts';
import { conductorSizes } from './conductor-sizes.ts';
import { conductors } from './conductors.ts';
import { earthResistance } from './earth-resistance.ts';
import { electrodePlaces } from './electrode-places.ts';
import { electrodeSizes } from './electrode-sizes.ts';
import { electrodes } from './electrodes.ts';
import { entry } from './entry.ts';
import { equipment } from './equipment.ts';
import { field } from './field.ts';
import { groundPoints } from './ground-points.ts';
import { jointMakes } from './joint-makes.ts';
import { joints } from './joints.ts';
import { leadIns } from './lead-ins.ts';
import { lightning } from './lightning.ts';
import { lines } from './lines.ts';
import { mastLeads } from './mast-leads.ts';
import { masts } from './masts.ts';
import { oneEarth } from './one-earth.ts';
import { records } from './records.ts';
import { station } from './station.ts';
import { strike } from './strike.ts';
import { strikeVolts } from './strike-volts.ts';
import { surroundings } from './surroundings.ts';

/** Words of every rule, by id. */
export const ruleWords: Readonly<Record<string, RuleWords>> = {
  ...oneEarth,
  ...masts,
  ...lines,
  ...equipment,
  ...electrodes,
  ...conductors,
  ...joints,
  ...strike,
  ...strikeVolts,
  ...surroundings,
  ...field,
  ...leadIns,
  ...electrodeSizes,
  ...lightning,
  ...conductorSizes,
  ...mastLeads,
  ...groundPoints,
  ...entry,
  ...electrodePlaces,
  ...jointMakes,
  ...station,
  ...conductorRuns,
  ...earthResistance,
  ...records,
};
