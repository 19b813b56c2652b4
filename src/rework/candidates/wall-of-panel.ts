import { wallM } from './building-walls.ts';
import { ownerOf, type Scene } from './scene.ts';
import { apartM, spotsOf } from './way-to-lay.ts';

/** Whether a panel outside hangs on the wall of a building; null: nothing tells. */
export function isOnWall(scene: Scene, panel: string, building: string): boolean | null {
  const { buildings } = scene.study;
  if (buildings.length < 2) return true;
  if (buildings.every((b) => b.id !== building)) return null;
  const told = byLines(scene, panel) ?? byWalls(scene, panel) ?? byThingsInside(scene, panel) ?? byWires(scene, panel);
  return told === null ? null : told.includes(building);
}

/** Buildings into which lines go by it. */
function byLines(scene: Scene, panel: string): readonly string[] | null {
  const crossings = scene.study.lines.flatMap((l) => l.crossings);
  const by = crossings.filter((c) => c.bondedTo === panel || scene.part(c.protector ?? '')?.on === panel);
  return declared(
    scene,
    by.map((c) => c.building),
  );
}

/** Those that the file names; `inside` says of none. null: there is none. */
function declared(scene: Scene, wheres: readonly string[]): readonly string[] | null {
  const found = wheres.filter((where) => scene.study.buildings.some((b) => b.id === where));
  return found.length === 0 ? null : [...new Set(found)];
}

/** The building whose wall is nearest, where the corners of all are known. */
function byWalls(scene: Scene, panel: string): readonly string[] | null {
  const [spot] = spotsOf(scene.part(panel));
  if (spot === undefined) return null;
  const walls = scene.study.buildings.map(({ id }) => ({ id, offM: wallM(scene, id, spot) }));
  if (walls.some((w) => w.offM === null)) return null;
  const least = Math.min(...walls.map((w) => w.offM!));
  return walls.filter((w) => w.offM === least).map((w) => w.id);
}

/** The building of which something stands nearest, where what is in every other one is at least twice as far. */
function byThingsInside(scene: Scene, panel: string): readonly string[] | null {
  const [spot] = spotsOf(scene.part(panel));
  if (spot === undefined) return null;
  const near = scene.study.buildings.map(({ id }) => {
    const inside = scene.study.parts.filter((p) => p.where === id && !isRun(p.section) && p.present !== 'no');
    return { id, offM: Math.min(Infinity, ...inside.flatMap((p) => spotsOf(p).map((s) => apartM(s, spot)))) };
  });
  const [first, second] = near.sort((a, b) => a.offM - b.offM);
  // of a building in which nothing has a place nobody knows how far it is
  if (first === undefined || second === undefined || !Number.isFinite(second.offM)) return null;
  return second.offM >= 2 * first.offM ? [first.id] : null;
}

/** Wires and lines end elsewhere, perhaps on the panel itself. */
function isRun(section: string): boolean {
  return section === 'lines' || section === 'conductors';
}

/** A wire that reaches no farther than from one wall of a room to the other; ours. */
const shortM = 6;

/** Buildings in which a short wire from it ends. */
function byWires(scene: Scene, panel: string): readonly string[] | null {
  const short = scene.study.conductors.filter((c) => (c.lengthM?.high ?? Infinity) <= shortM);
  const ends = short.map((c) => [ownerOf(c.from), ownerOf(c.to)]).filter((e) => e.includes(panel));
  const wheres = ends.flat().flatMap((id) => scene.part(id)?.where ?? []);
  const found = declared(scene, wheres);
  return found?.length === 1 ? found : null;
}
