import type { Facts } from '../facts/facts.ts';
import { factsOf } from '../facts/facts-of.ts';
import { partIndex } from '../facts/part-index.ts';
import { rules } from '../rules/index.ts';
import type { Rule } from '../rules/rule.ts';
import { type Beside, type RulesRun, runRules } from '../rules/run-rules.ts';
import type { Site, State } from '../site/site.ts';
import { lazily } from '../units/lazily.ts';
import { once } from '../units/once.ts';
import { type Speech, say } from '../words/say.ts';
import { sayDefault, sayQuestion } from '../words/say-problem.ts';
import { studyWords } from '../words/study.ts';
import { agreementsOf } from './agreements-of.ts';
import { earthOf } from './earth-of.ts';
import { editionsAssumed } from './edition-assumed.ts';
import { gapsOf } from './gaps-of.ts';
import { guysOf } from './guys-of.ts';
import { lookAtList } from './look-at-list.ts';
import { partsOf } from './parts-of.ts';
import { pathsOf } from './paths-of.ts';
import { pricesOf } from './prices-of.ts';
import { arresterRows, conductorRows, electrodeRows, jointRows, lineRows, tieRows } from './schedules-of.ts';
import { speechOf } from './speech-of.ts';
import { strikeOfFacts } from './strike-study.ts';
import { type Study, type StudySource, studyFormat } from './study.ts';
import { unknownsOf } from './unknowns-of.ts';
import { verdictOf } from './verdict-of.ts';
import { writtenLists } from './written-lists.ts';

export interface StudyOptions {
  /** A state of the file; null: as typed. */
  readonly state: string | null;
  readonly version: string;
  /** Of the bytes of the file, as hexadecimal text. */
  readonly checksum: string;
  /** Printed as the date of the study; null: what the file says. */
  readonly date: string | null;
  /** What an owner asks beside the code, and findings agreed to in a file of their own. */
  readonly beside?: Beside;
  /** Also what only a page shows: the earth in every season, curves, the potential of the surface. Default false. */
  readonly detail?: boolean;
  /** Without the rules that need a strike: for a quick look at what changes of a site do. Default false. */
  readonly withoutStrike?: boolean;
}

export interface StudyRun {
  readonly study: Study;
  /** Rules that failed by a fault of the program. */
  readonly faults: RulesRun['faults'];
}

/**
 * Everything about one site in one state, as one document. Same site, same options: same study. What nobody reads of it is
 * not worked out.
 */
export function runStudy(site: Site, options: StudyOptions): StudyRun {
  const speech = speechOf(site);
  const facts = factsOf(site, options.state, options.detail ?? false);
  const run = runRules(facts, speech, options.beside, options.withoutStrike === true ? needsNoStrike : undefined);
  const head = once(() => headOf(facts, options));
  const study = lazily<Study>({
    format: () => studyFormat,
    tool: () => ({ name: 'evenground', version: options.version }),
    site: () => head().site,
    state: () => head().state,
    states: () => head().states,
    codes: () => head().codes,
    codeSets: () => setsOf(facts, options),
    agreements: () =>
      agreementsOf(
        [...facts.header.agreed, ...(options.beside?.agreed ?? [])],
        run.staleAgreements,
        run.findings,
        partIndex(site).all.map((p) => p.id),
      ),
    buildings: () => head().buildings,
    places: () => site.places.map((p) => ({ id: p.id, positionM: p.position, where: p.where })),
    parts: () => partsOf(facts),
    guys: () => guysOf(facts.site),
    assumptions: () => [...assumptionsOf(facts, speech), ...editionsAssumed(facts, run.conditions, speech)],
    unknowns: () => unknownsOf(facts, speech),
    questions: () =>
      site.questions.map((q) => ({
        path: q.path,
        line: q.source.line,
        column: q.source.column,
        text: sayQuestion(q),
      })),
    bonding: () => bondingOf(facts),
    paths: () => pathsOf(facts.bonding),
    lines: () => lineRows(facts),
    reach: () => facts.bonding.reach,
    reachInStates: () => facts.reachInStates,
    gaps: () => gapsOf(facts, options.state),
    conductors: () => conductorRows(facts),
    electrodes: () => electrodeRows(facts.site),
    joints: () => jointRows(facts),
    arresters: () => arresterRows(facts),
    earth: () => earthOf(facts, speech),
    strikes: () => (options.detail === true ? strikesOf(facts, speech) : []),
    findings: () => run.findings,
    conditions: () => run.conditions,
    lookAt: () => lookAtList(run.findings),
    verdict: () => verdictOf(run.findings, setsOf(facts, options), facts.bonding, speech),
    prices: () => pricesOf(site.prices),
    written: () => writtenLists(site),
    sources: () => sourcesOf(run, facts),
  });
  return { study, faults: run.faults };
}

/** Rules that `withoutStrike` leaves out. */
export const strikeRules: ReadonlySet<string> = new Set(rules.filter((r) => !needsNoStrike(r)).map((r) => r.id));

function needsNoStrike({ needs }: Pick<Rule, 'needs'>): boolean {
  return !needs.includes('strike');
}

/** Whose conditions were asked: the site's code sets, then the owner's own. */
function setsOf({ header }: Facts, { beside }: StudyOptions): readonly string[] {
  const sets: readonly string[] = header.codeSets ?? [header.region];
  return beside?.standard == null ? sets : [...sets, 'own'];
}

/** The default strike; none where nothing is there that lightning could be taken to strike. */
function strikesOf({ strike, site }: Facts, speech: Speech): Study['strikes'] {
  return strike.refused?.reason === 'nothing to strike' ? [] : [strikeOfFacts(strike, site, false, speech)];
}

function headOf({ site, header }: Facts, options: StudyOptions) {
  const state = site.states.find((s) => s.id === options.state);
  const {
    name,
    region,
    units,
    service,
    supply,
    address,
    owner,
    permit,
    revision,
    prepared,
    northDeg,
    claims,
    temporary,
  } = header;
  return {
    site: {
      name,
      region,
      units,
      file: site.file,
      checksum: options.checksum,
      service,
      supply,
      address,
      owner,
      permit,
      revision,
      prepared: { ...prepared, date: options.date ?? prepared.date },
      northDeg: northDeg ?? 0,
      claims,
      temporary,
    },
    state: stateOf(state),
    states: site.states.map((s) => ({ id: s.id, says: s.says })),
    codes: header.codes,
    buildings: site.buildings.map((b) => ({ id: b.id, cornersM: b.corners ?? [], heightM: b.heightM })),
  };
}

function stateOf(state: State | undefined): Study['state'] {
  if (state === undefined) return { id: 'as typed', says: null };
  const { id, says, frozen, dry, wet, lost } = state;
  const set = Object.entries(state.set).map(([field, value]) => [
    field,
    typeof value === 'string' ? value : JSON.stringify(value),
  ]);
  return { id, says, ground: { frozen, dry, wet }, lost, set: Object.fromEntries(set) };
}

function bondingOf(facts: Facts): Study['bonding'] {
  const { groups, unbondedElectrodes, perhapsUnbonded, bridges, weakPoints, openRings, tiedToNothing } = facts.bonding;
  return {
    groups,
    unbondedElectrodes,
    perhapsUnbonded,
    bridges,
    weakPoints,
    openRings,
    tiedToNothing,
    ties: tieRows(facts),
  };
}

function assumptionsOf({ site, joints, electrodes }: Facts, speech: Speech): Study['assumptions'] {
  const sentence = (key: keyof typeof studyWords) => say(studyWords[key], {}, speech);
  const taken = site.defaults.map((d) => ({ path: d.path, taken: d.taken, effect: sayDefault(d.key) }));
  const general = [
    { path: 'joints', taken: sentence('joints by kind'), effect: '', applies: joints.length > 0 },
    { path: 'conductors', taken: sentence('at 20 degrees'), effect: '', applies: site.conductors.length > 0 },
    {
      path: 'electrodes',
      taken: sentence('closed forms'),
      effect: '',
      applies: electrodes.some((e) => e.how === 'computed'),
    },
  ];
  return [
    ...taken,
    ...general.filter((g) => g.applies).map(({ path, taken: text, effect }) => ({ path, taken: text, effect })),
  ];
}

/** Documents that conditions and figures rest on, each once, by name. */
function sourcesOf(run: RulesRun, { electrodes }: Facts): readonly StudySource[] {
  const all = [
    ...run.conditions.filter((c) => c.outcome !== 'not applicable').map((c) => c.source),
    ...electrodes.flatMap((e) => (e.source === null ? [] : [e.source])),
  ];
  const byName = new Map(all.map((s) => [JSON.stringify([s.document, s.edition, s.clause]), s]));
  return [...byName].sort(([a], [b]) => (a < b ? -1 : 1)).map(([, s]) => s);
}
