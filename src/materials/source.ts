/** Where a figure or a condition comes from. */
export interface Citation {
  readonly document: string;
  readonly edition: string | null;
  readonly clause: string | null;
  /**
   * read: the document itself was read. second-hand: read as quoted elsewhere. memory: from memory of the document named,
   * to be checked against it.
   */
  readonly provenance: 'read' | 'second-hand' | 'memory';
}

/** A row's source in one line. */
export function cite(
  document: string,
  edition: string | null,
  clause: string | null,
  provenance: Citation['provenance'],
): Citation {
  return { document, edition, clause, provenance };
}

/** What practitioners take for granted and no document known to us carries. */
export const commonPractice: Citation = cite('common practice, no source', null, null, 'memory');
