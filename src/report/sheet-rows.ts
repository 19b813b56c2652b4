import type { SheetFacts } from '../rework/sheet/sheet-facts.ts';
import { limitM, sheetLimits } from '../rework/sheet/sheet-limits.ts';
import type { Step, Work } from '../rework/work.ts';
import type { StudyFinding, StudyPart } from '../study/study.ts';
import { formatQuantity } from '../units/format.ts';
import type { Interval } from '../units/interval.ts';
import { readQuantity } from '../units/quantity.ts';
import { sheetWords } from '../words/sheet-words.ts';
import { workReason } from '../words/work-title.ts';
import { listCell, type Row, row } from './block.ts';
import { figure, kindName, partName, partNames, sayIn } from './page-context.ts';
import { jointLines } from './sheet-joints.ts';
import { materialLines } from './sheet-material.ts';
import { isOnPlan } from './sheet-plan.ts';
import { receptacleJoints } from './sheet-receptacles.ts';
import { wayLines } from './sheet-way.ts';
import { stepsOf, tape, type WorksContext } from './works-context.ts';

const words = sheetWords;

/** What is asked, item by item; each item is there for each work, so that nobody has to ask whether it was forgotten. */
export function sheetRows(page: WorksContext, step: Step, facts: SheetFacts): readonly Row[] {
  const { work } = step;
  const item = (label: string, lines: readonly string[]) => row(listCell([label]), listCell(lines));
  return [
    item(words.work.what, [...stepsOf(page, step), ...remedies(page, step)]),
    item(words.work.why, whyLines(page, step)),
    item(words.work.where, whereLines(page, step)),
    item(words.work.size, or([...sizeLines(page, facts), ...setLines(page, step)], words.size.nothing)),
    item(
      words.work.way,
      or(wayLines(page, facts), sayIn(page, facts.arresters.length > 0 ? words.way.lead : words.way.none)),
    ),
    item(words.work.depth, or(depthLines(page, facts, work.kind), words.depth.none)),
    item(words.work.bends, [bendLine(page, facts)]),
    item(words.work.joints, or([...jointLines(page, facts), ...receptacleJoints(page, step)], words.joints.none)),
    item(words.work.lands, or(landLines(page, facts), words.lands.none)),
    item(words.work.exposed, or(exposedLines(page, facts), words.exposed.none)),
    item(words.work.opens, [opensLine(page, facts)]),
    item(words.work.material, or(materialLines(page, work.materials), words.material.none)),
    item(words.work.doNot, [doNotLine(page, step, facts)]),
  ];
}

function doNotLine(page: WorksContext, { work }: Step, { bars }: SheetFacts): string {
  const mountsNew = work.kind === 'move-panel' && bars.some((b) => isNew(page, b.id));
  return sayIn(page, mountsNew ? words.doNotOf['new-panel'] : words.doNotOf[work.kind]);
}

function or(lines: readonly string[], none: string): readonly string[] {
  return lines.length === 0 ? [none] : lines;
}

/** Of what only a sentence can describe, what the conditions ask that it was proposed for. */
function remedies(page: WorksContext, { work }: Step): readonly string[] {
  if (work.kind !== 'put-right') return [];
  const answered = page.plan.before.findings.filter((f) => work.answers.includes(f.id) && f.under === null);
  return [...new Set(answered.map((f) => f.remedy))].filter((r) => r !== '').slice(0, mostReasons);
}

/**
 * What it clears, then what has to be looked at once it is done, the worst first; what is folded under another finding is not
 * said again.
 */
function whyLines(page: WorksContext, { work, inTurn }: Step): readonly string[] {
  const rank = ['hazard', 'defect', 'advice'];
  const said = (template: string, findings: readonly StudyFinding[]) =>
    findings
      .filter((f) => f.under === null)
      .sort((a, b) => rank.indexOf(a.severity) - rank.indexOf(b.severity))
      .map((f) => sayIn(page, template, { title: f.title, severity: words.severity[f.severity] }));
  const reason = workReason(work, page.speech);
  const lines = [...said(words.whyOne, inTurn.cleared), ...said(words.whyLook, inTurn.unsettled)];
  return or([...(reason === '' ? [] : [reason]), ...lines.slice(0, mostReasons)], words.whyNothing);
}

const mostReasons = 4;

/** The parts that it is about: kind and place; of a conductor its ends, of a line its stops. */
function whereLines(page: WorksContext, { work }: Step): readonly string[] {
  const ids = [...new Set(work.at.map((p) => p.split(/[@.:]/, 1)[0]!))];
  return ids.flatMap((id) => {
    const part = partAnywhere(page, id);
    if (part === undefined) return [];
    const note = part.note === null ? '' : `; ${part.note}`;
    return [`${partName(page, id)}: ${describe(page, part)}${placeOf(page, id)}${note}`];
  });
}

function partAnywhere({ parts, plan }: WorksContext, id: string): StudyPart | undefined {
  return parts.get(id) ?? plan.before.parts.find((p) => p.id === id);
}

function describe(page: WorksContext, { id, kind }: StudyPart): string {
  const studies = [page.study, page.plan.before];
  const conductor = studies.flatMap((s) => s.conductors).find((c) => c.id === id);
  if (conductor !== undefined) {
    const [from, to] = [conductor.from, conductor.to].map((p) => partName(page, p));
    return sayIn(page, words.size.ends, { kind: kindName(page, conductor.role), from: from!, to: to! });
  }
  const line = page.plan.before.lines.find((l) => l.id === id);
  if (line === undefined) return kindName(page, kind);
  return sayIn(page, words.size.stops, { kind: kindName(page, kind), stops: stopsText(page, line.stops) });
}

/** One that is new, or one that is moved with what hangs on it. */
function barLine(page: WorksContext, { id, kind }: StudyPart): string {
  const values = { bar: partName(page, id), kind: kindName(page, kind), along: alongText(page, id) };
  const { newBar, newBarFree, bar, barFree } = words.size;
  const [placed, free] = isNew(page, id) ? [newBar, newBarFree] : [bar, barFree];
  return sayIn(page, isOnPlan(page, id) ? placed : free, values);
}

function isNew({ plan }: WorksContext, id: string): boolean {
  return !plan.before.parts.some((p) => p.id === id);
}

/** What is mounted or lands on a bar that is moved. */
function alongText(page: WorksContext, bar: string): string {
  const { arresters, conductors } = page.study;
  const isOn = (point: string | null) => point !== null && point.split(/[@.:]/, 1)[0] === bar;
  const found = [
    ...arresters.filter((a) => isOn(a.on)),
    ...conductors.filter((c) => isOn(c.from) || isOn(c.to)),
    ...page.study.lines.filter((l) => l.stops.some(isOn)),
  ].map((x) => x.id);
  return found.length === 0 ? '' : sayIn(page, words.size.along, { list: partNames(page, found) });
}

function stopsText(page: WorksContext, stops: readonly string[]): string {
  return stops.map((s) => stopName(page, s)).join(' → ');
}

function placeOf(page: WorksContext, id: string): string {
  const part = partAnywhere(page, id);
  const { inside, outside, at } = words.lands.where;
  if (part?.where === 'outside') return outside;
  if (part?.where === 'inside') return inside;
  return part?.where == null || part.where === 'unknown' ? '' : sayIn(page, at, { place: part.where });
}

function sizeLines(page: WorksContext, facts: SheetFacts): readonly string[] {
  const conductors = facts.conductors.map((c) => {
    const area = areaName(page, c.wire, c);
    const values = {
      conductor: partName(page, c.id),
      wire: c.wire ?? words.size.unknownWire,
      section: area === '' ? '' : sayIn(page, words.size.section, { area }),
      length: lengthText(page, c.lengthM ?? facts.runOf(c.id)?.lengthM ?? null),
      from: partName(page, c.from),
      to: partName(page, c.to),
    };
    return sayIn(page, words.size.conductor, values);
  });
  const protectors = facts.arresters.map((a) => {
    const where = a.on === null ? '' : sayIn(page, words.size.mountedOn, { on: partName(page, a.on) });
    const values = { arrester: partName(page, a.id), kind: kindName(page, a.kind), where };
    return sayIn(page, words.size.protector, values);
  });
  const lines = facts.lines.map((l) =>
    sayIn(page, words.size.line, {
      line: partName(page, l.id),
      stops: stopsText(page, l.stops),
    }),
  );
  const bars = facts.bars.map((b) => barLine(page, b));
  return [...conductors, ...facts.electrodes.map((e) => electrodeLine(page, e)), ...protectors, ...lines, ...bars];
}

/** A length as its owner typed it with the other system behind it; other text as it stands. */
function bothSystems(page: WorksContext, typed: string): string {
  const read = readQuantity(typed, 'length', { bareUnit: page.study.site.units });
  if (!read.ok || /^\d+$/.test(typed.trim())) return typed;
  const other = formatQuantity(read.interval, 'length', /m$/.test(typed.trim()) ? 'us' : 'si');
  return other === null ? typed : `${typed} (${other})`;
}

function lengthText(page: WorksContext, lengthM: Interval | null): string {
  return lengthM === null ? words.size.unknownLength : tape(page, lengthM);
}

/** What is put right, in the words of the file; nothing where the work has sentences of its own, or the field is no plain word. */
function setLines(page: WorksContext, { work }: Step): readonly string[] {
  if (work.kind !== 'put-right' || workReason(work, page.speech) !== '') return [];
  return work.changes.flatMap((c) => {
    if (c.is !== 'set' || c.id === null || (typeof c.value === 'object' && c.value !== null)) return [];
    const value = c.value === null ? words.size.taken : String(c.value);
    return [sayIn(page, words.size.set, { part: partName(page, c.id), field: c.field, value })];
  });
}

/** A section in the unit that was not typed; in both where the wire says neither. */
function areaName(page: WorksContext, wire: string | null, { areaM2 }: SheetFacts['conductors'][number]): string {
  const [us, si] = [formatQuantity(areaM2, 'area', 'us'), formatQuantity(areaM2, 'area', 'si')];
  if (us === null || si === null) return '';
  if (wire?.includes(us)) return si;
  return /\bmm(?:2|²)/.test(wire ?? '') ? us : figure(page, areaM2, 'area');
}

function stopName(page: WorksContext, stop: string): string {
  const [, word, at] = /^(bond|bend|plug) (.+)$/.exec(stop) ?? [];
  if (word === undefined) return partName(page, stop);
  return sayIn(page, words.size.stop[word as 'bond'], { at: word === 'plug' ? at! : partName(page, at!) });
}

function electrodeLine(page: WorksContext, { id, kind, typed }: SheetFacts['electrodes'][number]): string {
  const told = ['count', 'length', 'diameter', 'metal', 'spacing', 'layout', 'wire'].flatMap((name) => {
    const value = typed[name];
    return value === undefined ? [] : [`${name} ${bothSystems(page, value)}`];
  });
  const details = told.length === 0 ? words.size.noDetails : told.join(', ');
  return sayIn(page, words.size.electrode, { electrode: partName(page, id), kind: kindName(page, kind), details });
}

/** Runs that lie alike in one line; then the heads of rods. */
function depthLines(page: WorksContext, facts: SheetFacts, kind: Work['kind']): readonly string[] {
  const leastM = leastDepthM(page, kind);
  const runs = facts.conductors
    .filter((c) => facts.inSoil.includes(c.id))
    .map((c) => {
      const depthM = facts.runOf(c.id)?.depthM ?? null;
      const isShallow = depthM !== null && depthM < leastM * printedShare;
      const template = depthM === null ? words.depth.unknown : isShallow ? words.depth.shallow : words.depth.run;
      return { template, depth: tape(page, depthM), id: c.id };
    });
  const rods = facts.electrodes.map(({ id, typed }) => {
    const template = typed.top === undefined ? words.depth.rod : words.depth.rodAt;
    return { template, depth: typed.top === undefined ? '' : bothSystems(page, typed.top), id };
  });
  return alike(page, [...runs, ...rods], { least: tape(page, leastM) });
}

/** A ring of the service lies deeper than what only joins. */
function leastDepthM(page: WorksContext, kind: Work['kind']): number {
  const { region } = page.study.site;
  const ring = kind === 'close-ring' ? sheetLimits(region).find((l) => l.key === 'ring') : undefined;
  return ring?.lengthM ?? limitM(region, 'depth');
}

/** Parts of which the same is said, in one line. */
function alike(
  page: WorksContext,
  said: readonly { readonly template: string; readonly id: string; readonly depth?: string }[],
  values: Readonly<Record<string, string>>,
): readonly string[] {
  const keys = [...new Set(said.map((s) => `${s.template} ${s.depth ?? ''}`))];
  return keys.map((key) => {
    const same = said.filter((s) => `${s.template} ${s.depth ?? ''}` === key);
    const part = partNames(
      page,
      same.map((s) => s.id),
    );
    return sayIn(page, same[0]!.template, { ...values, part, depth: same[0]!.depth ?? '' });
  });
}

/** 30 in is printed as 0.75 m as well. */
const printedShare = 0.98;

function bendLine(page: WorksContext, facts: SheetFacts): string {
  const radius = tape(page, limitM(page.study.site.region, 'radius'));
  return facts.conductors.length + facts.arresters.length === 0
    ? words.bends.none
    : sayIn(page, words.bends.run, { radius });
}

function landLines(page: WorksContext, { lands, panels }: SheetFacts): readonly string[] {
  const each = lands.map(({ part, inService }) => {
    const values = { part: partName(page, part.id), kind: kindName(page, part.kind), where: placeOf(page, part.id) };
    return sayIn(page, inService ? words.lands.inService : words.lands.one, values);
  });
  return [...each, ...panels.map((p) => sayIn(page, words.lands.panel, { part: partName(page, p) }))];
}

function exposedLines(page: WorksContext, facts: SheetFacts): readonly string[] {
  const guard = tape(page, limitM(page.study.site.region, 'guard'));
  const runs = facts.conductors.map((c) => {
    if (facts.inSoil.includes(c.id)) return { id: c.id, template: words.exposed.rising };
    return { id: c.id, template: isIndoors(page, c) ? words.exposed.indoors : words.exposed.air };
  });
  const devices = facts.arresters.map((a) => ({ id: a.id, template: words.exposed.device }));
  return alike(page, [...runs, ...devices], { guard });
}

/** Where it says so itself, or both its ends are in a building. */
function isIndoors(page: WorksContext, c: SheetFacts['conductors'][number]): boolean {
  const isIn = (id: string) => {
    const where = partAnywhere(page, id.split(/[@.:]/, 1)[0]!)?.where ?? null;
    return where !== null && where !== 'outside' && where !== 'unknown';
  };
  return isIn(c.id) || (isIn(c.from) && isIn(c.to));
}

function opensLine(page: WorksContext, { panels }: SheetFacts): string {
  return panels.length === 0
    ? sayIn(page, words.opens.none)
    : sayIn(page, words.opens.only, { list: partNames(page, panels) });
}
