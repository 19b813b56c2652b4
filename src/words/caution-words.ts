/** Method, cautions and sign-off of the report. `[idea]` is a term of the region, `{name}` a value (see say.ts). */
export const methodWords = {
  heading: 'Method and sources',
  method: [
    'Groups: parts are taken as one group when permanent metal joins them. A cable’s shield, the [protective conductor] of a cord, a gap that only a surge closes and the soil itself do not count.',
    'Unknown ties: groups, ways and weak points are worked out once with the ties known to be there and once with all possible ones. Where the two differ the answer is “cannot tell” and the ties that decide are named.',
    'Ways: the best way is the shortest one, an unknown length counting last. Separate ways share no conductor and no joint.',
    'Weak points: each joint, conductor and part is taken away in turn, and what then loses the [service] or the last [electrode] is written down.',
    'Resistances: a joint without a reading has the range of its kind; metal is at 20 °C (68 °F); the figures are bounded by all-low and all-high.',
  ],
  residual: 'The network was solved with a largest current imbalance of {residual} of what was put in{worst}.',
  worst: ', at {at}',
  state: 'This page is about one state of the site, “{state}”. Others in the file, not shown here: {others}.',
  sourcesCaption: 'Documents and formulas that this page rests on',
  noResidual: 'In the network that was solved the currents balance to the last digit.',
  document: 'Document',
  edition: 'edition {edition}',
  clause: 'Clauses',
  provenance: 'How the text is known',
} as const;

export const cautionWords = {
  heading: 'Cautions and limits',
  deference:
    'Local code with its amendments, the [authority] and a [electrician] decide, not this page. Where they ask for more than stands here, or for something else, follow them.',
  list: [
    'This is neither an engineering design nor an electrical one, and no professional seal stands behind it.',
    'It rests on what somebody typed. Parts in the soil, in walls and in boxes were not seen.',
    '“Met” says that one condition did not fail on what the file holds. It says nothing about what was not looked at.',
    'No [grounding] keeps a direct strike from doing damage. It changes the odds and the size of the damage, no more.',
    'A clause is written so that a fault clears and nobody is shocked; a strike asks for other things. Meeting the one does not answer the other.',
    'Work in a [service panel], at a separate building, on a supply whose neutral is tied to the soil at many points, and all work that needs a permit belongs to a [electrician].',
    'Never open the bond between an energised supply and its [electrode] to take a reading: the open ends can be at a deadly voltage.',
    'Do not measure, connect, disconnect, climb or dig when a storm is near. Stop early, and wait 30 minutes after the last thunder.',
    'Before digging or driving an [electrode] have buried cables and pipes marked. Keep well away from overhead lines with masts, ladders and wires.',
    'Climbing, trenches and confined spaces need training and equipment that this page does not speak about.',
    'The strength of a tower, of its foundation and of its anchors was not looked at; a remark on corrosion is no inspection.',
    'Exposure to radio fields, interference, planning rules and covenants were not looked at.',
    'Clause numbers and editions can be out of date or remembered wrongly. The documents themselves are not reproduced here: buy or borrow them and check.',
    'Insurance: the wording of the policy decides. This page is no warranty of cover.',
    'On somebody else’s site the rules of the site’s owner come first.',
    'The program comes without warranty, under the licence it is published with. The page holds for the revision, date and checksum on its first sheet; altered, it is worth nothing.',
    'Addresses, coordinates and photographs can invite theft of metal and equipment. Think about whom you hand this page to.',
  ],
} as const;

export const signatureWords = {
  heading: 'Signatures',
  intro:
    'A signature says who stands for what. The program signs nothing. Whoever prepared this page signs as preparer and not as an engineer, unless one has taken responsibility for it.',
  caption: 'Who stands for what',
  role: 'Role',
  name: 'Name',
  licence: 'Licence or permit no.',
  signature: 'Signature',
  date: 'Date',
  roles: ['Owner', 'Preparer', '[Electrician] or engineer', '[Authority]'],
} as const;
