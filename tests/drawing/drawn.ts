/** What stands in a drawing, read from its SVG text apart from the code that drew it. */
export interface DrawnText {
  readonly text: string;
  readonly xMm: number;
  readonly yMm: number;
  readonly sizeMm: number;
}

export function textsOf(svg: string): readonly DrawnText[] {
  return [...svg.matchAll(/<text ([^>]*)>([^<]*)<\/text>/g)].map(([, attributes, text]) => ({
    text: text!.replace(/&#(\d+);/g, (_, code: string) => String.fromCodePoint(Number(code))),
    xMm: numberOf(attributes!, 'x'),
    yMm: numberOf(attributes!, 'y'),
    sizeMm: numberOf(attributes!, 'font-size'),
  }));
}

export interface DrawnBox {
  readonly xMm: number;
  readonly yMm: number;
  readonly widthMm: number;
  readonly heightMm: number;
}

/** Rectangles with an attribute that tells them apart, such as `fill-opacity` for the labels of a plan. */
export function boxesOf(svg: string, attribute: string): readonly DrawnBox[] {
  const rects = [...svg.matchAll(/<rect ([^>]*)\/>/g)].map(([, attributes]) => attributes!);
  return rects
    .filter((a) => a.includes(attribute))
    .map((a) => ({
      xMm: numberOf(a, 'x'),
      yMm: numberOf(a, 'y'),
      widthMm: numberOf(a, 'width'),
      heightMm: numberOf(a, 'height'),
    }));
}

export function overlap(a: DrawnBox, b: DrawnBox): boolean {
  const apart = 0.011; // coordinates are written to two decimals
  return (
    a.xMm + apart < b.xMm + b.widthMm &&
    b.xMm + apart < a.xMm + a.widthMm &&
    a.yMm + apart < b.yMm + b.heightMm &&
    b.yMm + apart < a.yMm + a.heightMm
  );
}

function numberOf(attributes: string, name: string): number {
  const found = new RegExp(`(?:^| )${name}="([^"]*)"`).exec(attributes);
  return Number(found?.[1] ?? Number.NaN);
}
