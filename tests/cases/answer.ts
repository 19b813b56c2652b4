import type { Way } from '../../src/bonding/bonding.ts';
import { type Between, wayBetween } from '../../src/bonding/way-between.ts';
import { pointOfText } from '../../src/site/point-text.ts';
import type { Site } from '../../src/site/site.ts';
import type { Study, StudyFinding } from '../../src/study/study.ts';
import type { Interval } from '../../src/units/interval.ts';
import type { Question } from './claim.ts';

/** A layout in one state, and its studies in others. */
export interface Asked {
  readonly site: Site;
  readonly state: string | null;
  readonly study: Study;
  readonly inState: (state: string) => Study;
}

/** Whether the study answers yes. */
export function answers(question: Question, asked: Asked): boolean {
  const { study } = asked;
  if ('finding' in question) return study.findings.some((f) => matches(f, question, study));
  if ('together' in question) return together(question.together, study);
  if ('apart' in question) return apart(question.apart, study);
  if ('unbonded' in question)
    return study.bonding.unbondedElectrodes?.some((id) => isPart(id, question.unbonded)) ?? false;
  if ('perhapsUnbonded' in question)
    return study.bonding.perhapsUnbonded.some((p) => isPart(p.electrode, question.perhapsUnbonded));
  if ('bridgedBy' in question) return study.bonding.bridges.some((b) => b.parts.includes(question.bridgedBy));
  if ('way' in question) return wayAnswers(question, asked);
  if ('noWay' in question) return isNoWay(question.noWay, asked);
  if ('weakPoint' in question) return weakAnswers(question, study);
  if ('reaches' in question)
    return reaches(question.reaches, question.state === undefined ? study : asked.inState(question.state));
  if ('reachesNot' in question)
    return !reaches(question.reachesNot, question.state === undefined ? study : asked.inState(question.state));
  if ('coreUnprotected' in question)
    return cores(question.coreUnprotected, study).some((c) => c.unprotected !== null && c.unprotected > 0);
  if ('coreUndrained' in question) return cores(question.coreUndrained, study).some((c) => c.drainedBy.length === 0);
  if ('crossesUnprotected' in question) return crosses(question.crossesUnprotected, question.building, study);
  if ('unknownAt' in question)
    return (
      study.unknowns.some((u) => question.unknownAt.test(u.path)) ||
      study.questions.some((q) => question.unknownAt.test(q.path))
    );
  if ('askedAbout' in question) return study.questions.some((q) => question.askedAbout.test(q.path));
  if ('earthOhm' in question) return earthAnswers(question.earthOhm, question.within, study);
  if ('contradicted' in question)
    return study.earth.contradictions.some(
      ({ at, text }) => at.includes(question.contradicted) && question.says.test(text),
    );
  return firstAnswers(question.first, question.among, study);
}

function matches(f: StudyFinding, q: Extract<Question, { finding: string }>, study: Study): boolean {
  if (f.rule !== q.finding || f.outcome !== (q.outcome ?? 'not met')) return false;
  if (q.severity !== undefined && f.severity !== q.severity) return false;
  return q.at === undefined || f.at.some((id) => isPart(id, endOf(q.at!, study)));
}

/** `c1:to` and `c1:from` are the joints at the ends of c1, whatever part they are on. */
function endOf(at: string, study: Study): string {
  const [conductor, end] = at.split(':');
  if (end !== 'to' && end !== 'from') return at;
  const row = study.conductors.find((c) => c.id === conductor);
  const ids = row === undefined ? [] : [at, `${conductor}:${bare(row[end])}`];
  return study.joints.find((j) => ids.includes(j.id))?.id ?? `no joint ${at}`;
}

/** `t1-rods.2` is of `t1-rods`. */
const isPart = (id: string, part: string): boolean => id === part || id.startsWith(`${part}.`);

function groupOf(part: string, study: Study): string | undefined {
  return study.bonding.groups.find((g) => g.parts.some((id) => isPart(id, part)))?.id;
}

function together(parts: readonly string[], study: Study): boolean {
  const groups = parts.map((p) => groupOf(p, study));
  return groups[0] !== undefined && groups.every((g) => g === groups[0]);
}

function apart([a, b]: readonly [string, string], study: Study): boolean {
  const [first, second] = [groupOf(a, study), groupOf(b, study)];
  return first !== undefined && second !== undefined && first !== second;
}

/** What there is between two points; a point that the site does not have is a slip of the claim. */
function between([from, to]: readonly [string, string], { site, state }: Asked): Between {
  const answer = wayBetween(site, state, pointOfText(from)!, pointOfText(to)!);
  if (!answer.ok) throw new Error(`${answer.point.text}: ${answer.trouble}`);
  return answer.between;
}

function wayAnswers(q: Extract<Question, { way: readonly [string, string] }>, asked: Asked): boolean {
  const { way, same } = between(q.way, asked);
  return way === null ? same && q.lengthM === undefined && q.inductanceH === undefined : figuresFit(q, way);
}

function isNoWay(pair: readonly [string, string], asked: Asked): boolean {
  const { way, same } = between(pair, asked);
  return way === null && !same;
}

const bare = (point: string): string => point.split('@')[0]!;

type Figures = Pick<Way, 'lengthM' | 'inductanceH' | 'bendsDeg' | 'separatePaths'>;

function figuresFit(q: Extract<Question, { way: readonly [string, string] }>, way: Figures): boolean {
  return (
    overlaps(way.lengthM, q.lengthM) &&
    overlaps(way.inductanceH, q.inductanceH) &&
    (q.bendsDeg === undefined || (way.bendsDeg >= q.bendsDeg[0] && way.bendsDeg <= q.bendsDeg[1])) &&
    (q.separatePaths === undefined || way.separatePaths === q.separatePaths)
  );
}

function overlaps(figure: Interval | null, asked: readonly [number, number] | undefined): boolean {
  if (asked === undefined) return true;
  return figure !== null && figure.low <= asked[1] && figure.high >= asked[0];
}

function weakAnswers(q: Extract<Question, { weakPoint: string }>, study: Study): boolean {
  const weak = study.bonding.weakPoints.find((w) => w.at === endOf(q.weakPoint, study));
  if (weak === undefined) return false;
  const lost = new Set([...weak.losesService, ...weak.losesEarth, ...weak.electrodesLost]);
  return (q.takesOff ?? []).every((part) => [...lost].some((id) => isPart(id, part)));
}

function reaches([part, line]: readonly [string, string], study: Study): boolean {
  return study.reach.some((r) => r.part === part && r.by.some((b) => b.line === line));
}

function cores(line: string, study: Study) {
  return study.lines.find((l) => l.id === line)?.conductors.filter((c) => c.which === 'core') ?? [];
}

function crosses(line: string, building: string | undefined, study: Study): boolean {
  const crossings = study.lines.find((l) => l.id === line)?.crossings ?? [];
  return crossings.some(
    (c) => c.which === 'core' && c.protector === null && (building === undefined || c.building === building),
  );
}

function earthAnswers(of: string, within: readonly [number, number], study: Study): boolean {
  const figure =
    of === 'site' ? study.earth.resistanceOhm : (study.earth.electrodes.find((e) => e.id === of)?.aloneOhm ?? null);
  return figure !== null && figure.low <= within[1] && (figure.high ?? Infinity) >= within[0];
}

/** In the order a person reads: what is not met, and the doubts. */
function firstAnswers(rules: readonly string[], among: number, study: Study): boolean {
  const open = study.findings.filter((f) => f.under === null && f.outcome !== 'met');
  return open.slice(0, among).some((f) => rules.includes(f.rule));
}
