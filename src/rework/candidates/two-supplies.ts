import type { Study, StudyPart } from '../../study/study.ts';
import { onceFor } from '../../units/once-for.ts';
import type { Work } from '../work.ts';
import { feedersOf, hasConductor } from './feeders.ts';
import { ownerOf, type Scene } from './scene.ts';

type Line = Study['lines'][number];

/** Groups, and parts in none, of a site with a panel on a TT supply of its own: as the rules see it (tt-parts.ts). */
interface Sides {
  /** Feeders of such panels. */
  readonly feeders: readonly Line[];
  /** Buildings in which such panels stand. */
  readonly buildings: readonly string[];
  /** What belongs to the TT part, or may. */
  readonly tt: ReadonlySet<string>;
  readonly service: ReadonlySet<string>;
}

const none: Sides = { feeders: [], buildings: [], tt: new Set(), service: new Set() };

/**
 * Whether a work would join a TT part to the other supply: by metal, by the protective conductor of its feeder, or by a shield
 * that it bonds on its way between two buildings. Only where one person reaches both sides is a bond the way out.
 */
export function joinsSupplies(scene: Scene, { changes }: Work): boolean {
  const { feeders, tt } = sidesOfSupply(scene);
  if (tt.size === 0) return false;
  return changes.some((c) => {
    if (c.is === 'set' && c.section === 'lines') {
      if (c.field === 'path') return scene.study.lines.some((l) => l.id === c.id && isShieldAcross(scene, l));
      return c.field === 'protective_conductor' && feeders.some((l) => l.id === c.id);
    }
    if (c.is !== 'add' || c.section !== 'conductors') return false;
    const { from, to } = c.fields;
    return typeof from === 'string' && typeof to === 'string' && areApart(scene, from, to);
  });
}

/** A shielded line from the building of a TT part to another. */
function isShieldAcross(scene: Scene, line: Line): boolean {
  const { buildings } = sidesOfSupply(scene);
  if (!line.conductors.some((c) => c.which === 'shield')) return false;
  const wheres = partsOn(scene, line).flatMap((part) => scene.part(part)?.where ?? []);
  const isTt = (where: string) => buildings.includes(where);
  return wheres.some(isTt) && wheres.some((where) => where !== 'outside' && !isTt(where));
}

function partsOn(scene: Scene, { stops }: Line): readonly string[] {
  return stops.map((s) => ownerOf(s.replace(/^bond /, ''))).filter((id) => scene.part(id) !== undefined);
}

/** Whether two points lie, or may lie, on two supplies. */
function areApart(scene: Scene, a: string, b: string): boolean {
  const { tt, service } = sidesOfSupply(scene);
  const [x, y] = [a, b].map((point) => nameOf(scene, point));
  return (tt.has(x!) && service.has(y!)) || (tt.has(y!) && service.has(x!));
}

/** Whether a bond to the group of the service would join a point to another supply. */
export function isOnOtherSupply(scene: Scene, point: string): boolean {
  return scene.main !== null && areApart(scene, point, scene.main.id);
}

/** Whether a point is on the supply that a building has. */
export function isOfBuilding(scene: Scene, building: string, point: string): boolean {
  const { tt, service, buildings } = sidesOfSupply(scene);
  return !(buildings.includes(building) ? service : tt).has(nameOf(scene, point));
}

function nameOf(scene: Scene, point: string): string {
  return scene.groupOf(point)?.id ?? ownerOf(point);
}

const sidesOfSupply = onceFor((scene: Scene): Sides => {
  if (scene.study.site.supply === 'tt' || scene.main === null) return none;
  const all = scene.parts('equipment').filter((e) => /\btt\b/i.test(e.typed.supply ?? ''));
  const panels = all.filter((p) => scene.groupOf(p.id)?.hasService !== true && !isFedWithEarth(scene, p));
  if (panels.length === 0) return none;
  const own = new Set(panels.map((p) => nameOf(scene, p.id)));
  const service = serviceSide(scene, own);
  const known: Sides = {
    feeders: panels.flatMap((p) => feedersOf(scene, p.id)),
    buildings: panels.flatMap((p) => (p.where === null || p.where === 'outside' ? [] : [p.where])),
    tt: new Set(panels.flatMap((p) => [...ttSide(scene, p, service)])),
    service,
  };
  return isTouched(scene, own, service) ? none : known;
});

function isFedWithEarth(scene: Scene, { id }: StudyPart): boolean {
  return feedersOf(scene, id).some((l) => hasConductor(scene, l) === 'yes');
}

/** The group of the service and what cords tie to it; with the service unknown, all groups but those of the panels. */
function serviceSide(scene: Scene, own: ReadonlySet<string>): ReadonlySet<string> {
  const { main, study } = scene;
  if (main?.hasService !== true) return new Set(study.bonding.groups.map((g) => g.id).filter((id) => !own.has(id)));
  return walk(scene, [main.id], cords(scene), () => false);
}

function ttSide(scene: Scene, { id, where }: StudyPart, service: ReadonlySet<string>): ReadonlySet<string> {
  const things = scene.study.parts.filter((p) => !/^(?:lines|conductors)$/.test(p.section) && p.present !== 'no');
  const home = scene.part(scene.study.site.service)?.where ?? null;
  const isInside = where !== null && where !== 'outside';
  const inside = new Set(things.filter((p) => isInside && p.where === where).map((p) => nameOf(scene, p.id)));
  const isElsewhere = (p: StudyPart) =>
    p.where !== null && p.where !== 'outside' && (isInside ? p.where !== where : p.where === home);
  const elsewhere = new Set(things.filter(isElsewhere).map((p) => nameOf(scene, p.id)));
  const isBarred = (name: string) => service.has(name) || (elsewhere.has(name) && !inside.has(name));
  const lines = scene.study.lines.filter((l) => !(l.kind === 'mains' && hasConductor(scene, l) === 'no'));
  const from = [nameOf(scene, id), ...[...inside].filter((name) => !service.has(name))];
  return walk(scene, from, lines, isBarred);
}

/** Whether a finding says that one person reaches the service and something on the panel itself or fed from it. */
function isTouched(scene: Scene, own: ReadonlySet<string>, service: ReadonlySet<string>): boolean {
  const fed = walk(scene, [...own], cords(scene), (name) => service.has(name));
  return scene.findings('shelters-within-reach-bonded').some(({ at }) => {
    const names = at.map((id) => nameOf(scene, id));
    return names.some((n) => fed.has(n)) && names.some((n) => service.has(n));
  });
}

const cords = (scene: Scene) => scene.study.lines.filter((l) => l.kind === 'mains' && hasConductor(scene, l) === 'yes');

/** What lines join to any of these, one after the other. */
function walk(
  scene: Scene,
  from: readonly string[],
  lines: readonly Line[],
  isBarred: (name: string) => boolean,
): ReadonlySet<string> {
  const there = lines.filter((l) => scene.part(l.id)?.present !== 'no');
  const met = there.map((l) => partsOn(scene, l).map((id) => nameOf(scene, id)));
  const pairs = met.flatMap((names) => names.slice(1).map((name, i) => [names[i]!, name] as const));
  const open = pairs.filter((pair) => !pair.some(isBarred));
  const reached = new Set(from);
  for (let before = 0; before !== reached.size; ) {
    before = reached.size;
    for (const [a, b] of open) if (reached.has(a) || reached.has(b)) reached.add(a).add(b);
  }
  return reached;
}
