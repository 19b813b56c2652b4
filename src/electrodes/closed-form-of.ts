import type { ClosedForm } from './closed-form.ts';
import type { ElectrodeShape } from './electrode.ts';
import { encasedForm } from './encased-form.ts';
import { ringForm, starForm, surfaceStrapForm, wireForm } from './level-form.ts';
import { plateForm } from './plate-form.ts';
import { drilledRodForm, rodForm } from './rod-form.ts';
import { rodsForm } from './rods-form.ts';

/** The closed form for a shape. */
export function closedFormOf(shape: ElectrodeShape): ClosedForm {
  switch (shape.kind) {
    case 'rod':
    case 'well casing':
      return rodForm(shape);
    case 'rods':
      return rodsForm(shape);
    case 'drilled rod':
      return drilledRodForm(shape);
    case 'wire':
    case 'pipe':
      return wireForm(shape);
    case 'ring':
      return ringForm(shape);
    case 'star':
      return starForm(shape);
    case 'plate':
      return plateForm(shape);
    case 'encased':
      return encasedForm(shape);
    case 'surface strap':
      return surfaceStrapForm(shape);
  }
}
