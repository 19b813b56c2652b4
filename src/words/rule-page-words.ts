/** A rule's record in words: `explain`, and the page of all rules. */
export const rulePageWords = {
  heading: 'Conditions',
  intro:
    'Every condition that the check knows, made from its record. A condition that does not apply, or whose section nobody looked at, is said to be that. Local code and the authority decide; where the provenance says “from memory”, check against your copy.',
  notStatedHeading: 'Known and not asked as a rule',
  notStatedIntro:
    'Conditions of the same collection that are held elsewhere or cannot be seen in a file, each with why.',
  groups: { hazard: 'Hazards', defect: 'Defects', advice: 'Advice' },
  head: ['Id', 'Holds when', 'Asked in', 'Family', 'Limit', 'Source', 'Seen'],
  record: '{id} ({severity}, {family}, asked in: {sets})',
  why: 'Why: {text}',
  limit: 'Limit: {text}',
  met: 'Met when: {text}',
  exempt: 'Not asked, or easily mistaken: {text}',
  remedy: 'Put right: {text}',
  since: 'Asked since edition {since} of {document}; where an earlier one is adopted it is not asked.',
  clauses: 'Its clause was {list}.',
  clauseFrom: '{clause} from {from}',
  clauseFirst: '{clause} at first',
  source: 'Source: {cited} ({seen}). The local authority decides.',
  least: 'at least {figure}',
  most: 'at most {figure}',
  of: '{limit} of {of}',
  provenance: {
    read: 'read in the document',
    'second-hand': 'as restated elsewhere: check against your copy',
    memory: 'from memory: check against your copy',
    ours: 'ours, no clause',
  },
  families: { code: 'code', strike: 'strike calculation', practice: 'common practice' },
  notStatedList: '{id}: not asked as a rule. {reason}',
  /** What stands for the places and figures of a site where none is at hand. */
  ofNoSite: { at: 'the part', parts: 'what hangs on it' },
  figureOfNoSite: 'the figure',
  count: '{rules} rules, {notStated} conditions that are held elsewhere. Next: evenground explain <rule>',
} as const;
