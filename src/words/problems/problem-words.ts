/** What is wrong with a site file, and what to do. */
export interface ProblemWords {
  /** A sentence without its full stop; it stands behind the path of the field. */
  readonly wrong: string;
  /** A whole sentence or two. */
  readonly todo: string;
}
