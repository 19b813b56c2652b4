import type { Limit } from '../rule.ts';

/** A figure by the name under which it is typed; `wire` is its section, `area` width times height of a plate. */
export type Figure =
  | 'length'
  | 'diameter'
  | 'coating'
  | 'wire'
  | 'wire diameter'
  | 'depth'
  | 'thickness'
  | 'width'
  | 'height'
  | 'area'
  | 'concrete';

/** `printed`: the figure beside the limit in the other unit system, where the clause rounds the two apart. */
export interface LeastFigure {
  readonly figure: Figure;
  readonly limit: number;
  readonly printed?: number;
}

/** Least figures, SI. A row holds for its metals; an electrode meets a clause by any of its rows. */
export interface SizeRow {
  readonly metals: readonly string[] | 'any';
  readonly least: readonly LeastFigure[];
}

/** Keys of the figures as they are said. */
export const figureKeys: Readonly<Record<Figure, string>> = {
  length: 'runLengthM',
  diameter: 'diameterM',
  coating: 'coatingM',
  wire: 'areaM2',
  'wire diameter': 'diameterM',
  depth: 'depthM',
  thickness: 'thicknessM',
  width: 'widthM',
  height: 'heightM',
  area: 'plateAreaM2',
  concrete: 'concreteM',
};

/** A rod so long (also as printed in metres) and so thick. */
export function rodRow(
  lengthM: number,
  printed: number,
  diameterM: number,
  metals: SizeRow['metals'] = 'any',
): SizeRow {
  return {
    metals,
    least: [
      { figure: 'length', limit: lengthM, printed },
      { figure: 'diameter', limit: diameterM },
    ],
  };
}

/** The limits of a row as a record names them. */
export function limitsOfRow({ least }: SizeRow): readonly Limit[] {
  return least.map(({ figure, limit }) => ({ key: figureKeys[figure], value: limit, sense: 'least' }));
}
