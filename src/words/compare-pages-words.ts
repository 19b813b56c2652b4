/** What the command says of the pages of a comparison. */
export const comparePagesWords = {
  leaveOut: '--leave-out {kind}: no such thing. It takes, with commas between: {list}.',
  leaveOutAlone:
    '--leave-out is for a statement: give --statement DIR with it. The report of a comparison holds everything.',
  pdfAlone: '--pdf prints pages: give --report DIR or --statement DIR with it.',
  terms:
    'The two are of regions with different words ({before} and {after}), and one page cannot speak both. Give both files the same `region:`, or compare without --report and --statement.',
  twoStates: 'A page compares two states: give --states A,B. The table of more states is printed without --report.',
  open: 'Open: {names}',
  states:
    'A statement tells what was found and what was left: two states of one file are no work done. Compare the file before the work with the file after it, or take --report for the states.',
} as const;
