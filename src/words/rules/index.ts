import type { RuleWords } from '../rule-words.ts';
import { oneEarth } from './one-earth.ts';

/** Words of every rule, by id. */
export const ruleWords: Readonly<Record<string, RuleWords>> = { ...oneEarth };
