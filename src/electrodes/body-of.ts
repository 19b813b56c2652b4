import type { Body, Run } from './body.ts';
import { type BodyTrouble, bodyTroubles } from './body-troubles.ts';
import type { Figures } from './closed-form.ts';
import { drilledRodRuns } from './drilled-rod-runs.ts';
import type { ElectrodeShape } from './electrode.ts';
import { type Placement, placedRuns } from './placement.ts';
import { plateRuns } from './plate-runs.ts';
import { ringRuns } from './ring-runs.ts';
import { rodRuns } from './rod-runs.ts';
import { rodsRuns } from './rods-runs.ts';
import { routeRuns } from './route-runs.ts';
import { type LevelShape, sectionOf } from './section.ts';
import { starRuns } from './star-runs.ts';
import { straightRuns } from './straight-runs.ts';

export type MadeBody = { readonly ok: true; readonly body: Body } | ({ readonly ok: false } & BodyTrouble);

/**
 * An electrode as straight runs of metal: its shape with one number for every figure (`figures`, as the closed form of its
 * kind names them), at its place. Refused with the first trouble: above the ground, shorter than thick, a figure missing.
 */
export function bodyOf(shape: ElectrodeShape, figures: Figures, placement: Placement = { at: [0, 0] }): MadeBody {
  const runs = runsOf(shape, figures, placement);
  if (runs === null) return { ok: false, key: 'figure-missing', figures: {} };
  const [trouble] = bodyTroubles({ runs });
  return trouble === undefined ? { ok: true, body: { runs } } : { ok: false, ...trouble };
}

/** null: a count, a layout or the way a plate stands is not known. */
function runsOf(shape: ElectrodeShape, f: Figures, placement: Placement): readonly Run[] | null {
  switch (shape.kind) {
    case 'rod':
    case 'well casing':
      return placedRuns(rodRuns(f), placement);
    case 'drilled rod':
      return placedRuns(drilledRodRuns(f), placement);
    case 'rods': {
      const { count, layout } = shape;
      if (count === null || (layout === null && count > 1)) return null;
      return placedRuns(rodsRuns(count, layout, f), placement);
    }
    case 'plate':
      return shape.stands === null ? null : placedRuns(plateRuns(f, shape.stands), placement);
    default:
      return levelRuns(shape, f, placement);
  }
}

function levelRuns(shape: LevelShape, f: Figures, placement: Placement): readonly Run[] | null {
  const section = sectionOf(shape.kind, f);
  const { route = null, closed = false } = placement;
  if (shape.kind === 'star') {
    return shape.count === null ? null : placedRuns(starRuns(shape.count, f.armLengthM!, section), placement);
  }
  if (route !== null && route.length > 1) return routeRuns(route, section, closed || shape.kind === 'ring');
  const runs = shape.kind === 'ring' ? ringRuns(f.lengthM!, section) : straightRuns(f.lengthM!, section);
  return placedRuns(runs, placement);
}
