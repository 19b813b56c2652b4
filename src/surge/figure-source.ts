/** Where a published figure comes from; the same shape as a citation of the materials. */
export interface FigureSource {
  readonly document: string;
  readonly edition: string | null;
  readonly clause: string | null;
  /** read: the document itself was read. second-hand: as quoted elsewhere. memory: from memory, to be checked. */
  readonly provenance: 'read' | 'second-hand' | 'memory';
}
