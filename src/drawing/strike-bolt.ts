import { type Point, polygon, type Svg } from './svg.ts';

/** Mark of what is struck: a jagged arrow whose tip is at the point, 6 mm high and half as wide, or smaller by a share. */
export function drawBolt([x, y]: Point, size = 1): Svg {
  const corner = (dx: number, dy: number): Point => [x + dx * size, y - dy * size];
  const outline = [
    corner(0, 0),
    corner(-1, 3.3),
    corner(0.1, 2.9),
    corner(-0.7, 6),
    corner(1.9, 6),
    corner(0.9, 3.9),
    corner(1.9, 4.2),
  ];
  return polygon(outline, { fill: '#8a1c14', stroke: '#ffffff', 'stroke-width': 0.25 });
}
